import { useRef, useState } from "react";
import type { RecordsKind } from "../../../show/pages/contents.ts";
import { plainWords } from "../../../show/search/fold.ts";
import type { useAddress } from "../../address.ts";
import { useActions } from "../../parts/actions.tsx";
import { useSome } from "../../parts/leaves/some.tsx";
import { RecordLink } from "../../parts/link.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { Empty } from "../../parts/empty.tsx";
import { empty } from "../../words/shown/empty.ts";
import { words } from "../../words/index.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { openingWords } from "../../words/shown/opening.ts";
import { listWords } from "../../words/shown/lists.ts";
import { ToImport } from "../desk/import/to-import.tsx";
import { DraftList } from "../sheet/form/draft-list.tsx";
import { NewRecords } from "../sheet/form/to-form.tsx";

/** Everything in the corpus by kind, narrowed by words. */
export function RecordsPage({
  index,
  address,
}: {
  readonly index: readonly RecordsKind[];
  readonly address: ReturnType<typeof useAddress>;
}) {
  const { asOf, query, toLook } = address;
  const [filter, setFilter] = useState(query.get("words") ?? "");
  const type = (text: string): void => {
    setFilter(text);
    // What is here is narrowed here; of many records only the first are, and the others are asked for.
    if (index.some((kind) => kind.all > kind.entries.length))
      toLook({ words: text.trim() === "" ? null : text }, "replace");
  };
  const field = useRef<HTMLInputElement>(null);
  useActions(words.records, [{ name: words.filter, key: "f", run: () => field.current?.focus() }]);
  const wanted = plainWords(filter).split(/\s+/).filter(Boolean);
  const kinds = index.flatMap((kind) => {
    const entries = kind.entries.filter((entry) => {
      const text = plainWords(`${inReadersWords(entry.text)} ${entry.id}`);
      return wanted.every((word) => text.includes(word));
    });
    const isWhole = kind.count === kind.entries.length;
    return entries.length > 0 ? [{ ...kind, entries, count: isWhole ? entries.length : kind.count }] : [];
  });
  return (
    <>
      <h1>{words.records}</h1>
      {index.every((kind) => kind.all === 0) && <Empty {...empty.records} />}
      <NewRecords asOf={asOf} />
      <ToImport asOf={asOf} />
      <DraftList />
      <label className="filter">
        {words.filter}
        <input ref={field} type="search" value={filter} onChange={(event) => type(event.target.value)} />
      </label>
      {kinds.length === 0 && wanted.length > 0 && <p>{words.none}</p>}
      {kinds.map((kind) => (
        <Kind key={kind.name} kind={kind} open={wanted.length > 0 || kind.count <= 40} asOf={asOf} />
      ))}
    </>
  );
}

/** The records of one kind; those of a fold that was never opened are not made. */
function Kind({
  kind,
  open,
  asOf,
}: {
  readonly kind: RecordsKind;
  readonly open: boolean;
  readonly asOf: number | null;
}) {
  const [opened, setOpened] = useState(false);
  const [some, more] = useSome(kind.entries);
  const isMade = open || opened || kind.count <= few;
  return (
    <details open={open} onToggle={(event) => setOpened(opened || event.currentTarget.open)}>
      <summary>
        <h2 className="label kind-name">
          {listWords(kind.name)} <span className="count">{kind.count}</span>
        </h2>
      </summary>
      {isMade && (
        <ul className="index">
          {some.map((entry) => (
            <li key={entry.id}>
              <span className="sentence">
                <RecordLink id={entry.id} text={entry.text} asOf={asOf} />
              </span>
              {entry.standing !== null && <StandingMark standing={entry.standing} />}
            </li>
          ))}
        </ul>
      )}
      {isMade && more}
      {isMade && more === null && kind.count > kind.entries.length && (
        <p className="quiet">{openingWords.others(kind.count - kind.entries.length)}</p>
      )}
    </details>
  );
}

/** So many records stand in a fold before it is opened. */
const few = 200;
