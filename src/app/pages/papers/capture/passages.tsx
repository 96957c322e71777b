import { useRef, useState } from "react";
import type { PaperData, PassageLine } from "../../../../show/desk/papers/page.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { RecordLink } from "../../../parts/link.tsx";
import { Pieces } from "../../../parts/pieces.tsx";
import { StandingMark } from "../../../parts/standing.tsx";
import { captureWords as words } from "../../../words/reading/capture.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { FindingList } from "../../lists/findings.tsx";
import { Beside } from "./beside.tsx";
import { begunWith, draftNameOf } from "./begun.ts";
import { useDrafts } from "./drafts.ts";
import { TakingSheet } from "./taking-sheet.tsx";

interface Props {
  readonly page: PaperData;
  /** The numbers that passages have at the edge of the paper that is open. */
  readonly places: ReadonlyMap<string, { readonly number: number; readonly page: number }>;
  readonly onGo: (id: string) => void;
  readonly asOf: number | null;
}

/** The passages that were taken from a source, in the order of the paper, each with what rests on it. */
export function Passages({ page, places, onGo, asOf }: Props) {
  const [more, setMore] = useState<string | null>(null);
  const numberOf = ({ id }: PassageLine): number => places.get(id)?.number ?? Number.MAX_SAFE_INTEGER;
  const inOrder = page.passages.toSorted((a, b) => numberOf(a) - numberOf(b));
  return (
    <section className="passages">
      <h2 className="label">{words.passages}</h2>
      {inOrder.length === 0 && <p className="quiet">{words.none}</p>}
      <ol>
        {inOrder.map((one) => (
          <OnePassage
            key={one.id}
            page={page}
            one={one}
            number={places.get(one.id)?.number ?? null}
            onGo={onGo}
            asOf={asOf}
            more={more === one.id}
            onMore={(open) => setMore(open ? one.id : null)}
          />
        ))}
      </ol>
    </section>
  );
}

interface OneProps {
  readonly page: PaperData;
  readonly one: PassageLine;
  readonly number: number | null;
  readonly onGo: (id: string) => void;
  readonly asOf: number | null;
  readonly more: boolean;
  readonly onMore: (open: boolean) => void;
}

function OnePassage({ page, one, number, onGo, asOf, more, onMore }: OneProps) {
  const { id, at, quote, lang, translation, paraphrase, of, above, findings } = one;
  const { readOnly } = useDesk().state;
  const opener = useRef<HTMLButtonElement>(null);
  return (
    <li>
      <p className="place">
        <span className="number">{number}</span>
        <RecordLink id={id} text={at} asOf={asOf} />
        {of !== null && (
          <span className="quiet">
            {words.quoting} <Pieces pieces={[of]} asOf={asOf} />
          </span>
        )}
      </p>
      {quote !== null && <Beside quote={quote} lang={lang} translation={translation} />}
      {paraphrase !== null && (
        <p className="sentence paraphrase" dir="auto">
          {paraphrase}
        </p>
      )}
      {above.length > 0 && (
        <ul className="above">
          {above.map((other) => (
            <li key={other.id}>
              <span className="how">{inReadersWords(other.kind)}</span>
              <span className="sentence">
                <RecordLink id={other.id} text={other.text} asOf={asOf} />
              </span>
              {other.standing !== null && <StandingMark standing={other.standing} />}
            </li>
          ))}
        </ul>
      )}
      {findings.length > 0 && <FindingList findings={findings} asOf={asOf} />}
      <p className="does">
        {number !== null && (
          <button type="button" className="plain" aria-label={words.inPaperOne(at)} onClick={() => onGo(id)}>
            {words.inPaper}
          </button>
        )}
        {number === null && one.selector !== null && <span className="quiet">{words.notFound}</span>}
        {readOnly === null && (
          <button
            type="button"
            ref={opener}
            className="plain"
            aria-expanded={more}
            aria-label={words.takeMoreOne(at)}
            onClick={() => onMore(!more)}
          >
            {words.takeMore}
          </button>
        )}
      </p>
      {more && (
        <MoreFrom
          page={page}
          one={one}
          onDone={() => {
            opener.current?.focus();
            onMore(false);
          }}
        />
      )}
    </li>
  );
}

/** The sheet on which more is taken from a passage; what was begun on it before goes on. */
function MoreFrom({ page, one, onDone }: Pick<OneProps, "page" | "one"> & { readonly onDone: () => void }) {
  const { drafts } = useDrafts(page.key);
  if (drafts === null) return null;
  const begun = begunWith(page, one);
  const before = drafts.find((draft) => draftNameOf(draft) === draftNameOf(begun));
  return <TakingSheet source={page} begun={before ?? begun} title={words.more(one.at)} onDone={onDone} />;
}
