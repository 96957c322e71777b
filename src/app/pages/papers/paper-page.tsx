import { useState } from "react";
import type { ReactNode } from "react";
import { Link } from "wouter";
import type { PaperData } from "../../../show/desk/papers/page.ts";
import { freePaper, papersOf } from "../../../show/desk/papers/papers.ts";
import { recordPath, underLens } from "../../address.ts";
import type { useAddress } from "../../address.ts";
import { useEnclosed } from "../../model/enclosed.ts";
import { useNarrow } from "../../parts/narrow.ts";
import { words as general } from "../../words/index.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { paperWords as words } from "../../words/reading/papers.ts";
import { ToGrid } from "../desk/grid/to-grid.tsx";
import { BringPaper } from "./bring.tsx";
import { Passages } from "./capture/passages.tsx";
import { Division, useDivision } from "./division.tsx";
import { ReadPaper } from "./read-paper.tsx";
import { bundleWith, bundlesOf } from "./reader/open.ts";
import type { Bundle } from "./reader/open.ts";
import { usePaper } from "./reader/use-paper.ts";

interface Props {
  readonly data: PaperData;
  readonly address: ReturnType<typeof useAddress>;
}

/** The page of a source's papers: one of them is read, beside what is taken from it. */
export function PaperPage({ data, address }: Props) {
  const enclosed = useEnclosed();
  const [said, setSaid] = useState<readonly string[]>([]);
  const { query, toLook, asOf } = address;
  if (enclosed === null) return <p className="quiet">{general.reading}</p>;
  const files = enclosed.map(({ file }) => file);
  const papers = papersOf(data.keys, files).get(data.key) ?? [];
  const bundles = bundlesOf(papers);
  const passage = data.passages.find(({ id }) => id === query.get("passage"));
  const bundle = bundleWith(bundles, query.get("file") ?? passage?.file ?? null);
  const open = (file: string): void => toLook({ file, page: null, passage: null });
  const bring = <BringPaper source={data.key} files={files} onBrought={open} onSaid={setSaid} />;
  return (
    <article className="paper-page">
      <header className="paper-head">
        <h1 dir="auto">{inReadersWords(data.title)}</h1>
        <p className="quiet">
          <Link href={underLens(recordPath(data.key), asOf)} dir="auto">
            {data.label}
          </Link>
        </p>
        <ToGrid known={{ from: data.key }} asOf={asOf} />
        {bundles.length > 1 && <Choice bundles={bundles} now={bundle} open={open} />}
        {bundle && (
          <details className="paper-more">
            <summary>{words.bring}</summary>
            {bring}
          </details>
        )}
      </header>
      <output className="paper-said">
        {said.map((one) => (
          <p key={one}>{one}</p>
        ))}
      </output>
      {bundle ? (
        <Opened key={bundle.file} data={data} bundle={bundle} papers={papers} address={address} />
      ) : (
        <NoPaper data={data} asOf={asOf}>
          {bring}
        </NoPaper>
      )}
    </article>
  );
}

function Choice({
  bundles,
  now,
  open,
}: {
  readonly bundles: readonly Bundle[];
  readonly now: Bundle | null;
  readonly open: (file: string) => void;
}) {
  return (
    <label className="paper-choice">
      <span className="unseen">{words.papers}</span>
      <select value={now?.file ?? ""} onChange={(event) => open(event.target.value)}>
        {bundles.map(({ file, pictures }) => (
          <option key={file} value={file}>
            {pictures === null || pictures.length === 1
              ? file
              : `${file} · ${words.pictures(pictures.length)}`}
          </option>
        ))}
      </select>
    </label>
  );
}

/** What is open of a source, or why it cannot be; in a narrow window the paper is hidden while one writes, if that is wished. */
function Opened({
  data,
  bundle,
  papers,
  address,
}: Props & { readonly bundle: Bundle; readonly papers: readonly string[] }) {
  const opened = usePaper(bundle);
  const [share, setShare] = useDivision();
  const narrow = useNarrow();
  const [isHidden, setHidden] = useState(false);
  if (opened === "opening") return <p className="quiet">{words.opening}</p>;
  if (typeof opened === "string")
    return (
      <>
        <p className="trouble" role="alert">
          <bdi>{bundle.file}</bdi>: {words.refused[opened]}
        </p>
        <Recorded data={data} asOf={address.asOf} />
      </>
    );
  const columns = `minmax(0, ${share}fr) 24px minmax(0, ${100 - share}fr)`;
  return (
    <>
      {narrow && (
        <p className="paper-switch">
          <button type="button" aria-pressed={isHidden} onClick={() => setHidden(!isHidden)}>
            {isHidden ? words.showPaper : words.hidePaper}
          </button>
        </p>
      )}
      <div
        className={narrow && isHidden ? "paper-desk hidden-paper" : "paper-desk"}
        style={narrow ? {} : { gridTemplateColumns: columns }}
      >
        <ReadPaper data={data} paper={opened} papers={papers} address={address}>
          {narrow ? null : <Division share={share} onShare={setShare} />}
        </ReadPaper>
      </div>
    </>
  );
}

/** What was taken from a source whose paper is not open. */
function Recorded({ data, asOf }: { readonly data: PaperData; readonly asOf: number | null }) {
  if (data.passages.length === 0) return null;
  return <Passages page={data} places={new Map()} onGo={() => undefined} asOf={asOf} />;
}

function NoPaper({
  data,
  asOf,
  children,
}: {
  readonly data: PaperData;
  readonly asOf: number | null;
  readonly children: ReactNode;
}) {
  return (
    <>
      <p className="paper-none">{words.none}</p>
      <p className="quiet">{words.noneHere(freePaper(data.key, "pdf", []))}</p>
      {children}
      <Recorded data={data} asOf={asOf} />
    </>
  );
}
