import { useRef, useState } from "react";
import type { IndexKind } from "../../../show/pages/contents.ts";
import { plainWords } from "../../../show/search/fold.ts";
import { useActions } from "../../parts/actions.tsx";
import { RecordLink } from "../../parts/link.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { Empty } from "../../parts/empty.tsx";
import { empty } from "../../words/shown/empty.ts";
import { words } from "../../words/index.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { listWords } from "../../words/shown/lists.ts";
import { ToImport } from "../desk/import/to-import.tsx";
import { DraftList } from "../sheet/form/draft-list.tsx";
import { NewRecords } from "../sheet/form/to-form.tsx";

/** Everything in the corpus by kind, narrowed by words. */
export function RecordsPage({
  index,
  asOf,
}: {
  readonly index: readonly IndexKind[];
  readonly asOf: number | null;
}) {
  const [filter, setFilter] = useState("");
  const field = useRef<HTMLInputElement>(null);
  useActions(words.records, [{ name: words.filter, key: "f", run: () => field.current?.focus() }]);
  const wanted = plainWords(filter).split(/\s+/).filter(Boolean);
  const kinds = index
    .map((kind) => ({
      ...kind,
      entries: kind.entries.filter((entry) => {
        const text = plainWords(`${inReadersWords(entry.text)} ${entry.id}`);
        return wanted.every((word) => text.includes(word));
      }),
    }))
    .filter((kind) => kind.entries.length > 0);
  return (
    <>
      <h1>{words.records}</h1>
      {index.every((kind) => kind.entries.length === 0) && <Empty {...empty.records} />}
      <NewRecords asOf={asOf} />
      <ToImport asOf={asOf} />
      <DraftList />
      <label className="filter">
        {words.filter}
        <input ref={field} type="search" value={filter} onChange={(event) => setFilter(event.target.value)} />
      </label>
      {kinds.length === 0 && wanted.length > 0 && <p>{words.none}</p>}
      {kinds.map((kind) => (
        <details key={kind.name} open={wanted.length > 0 || kind.entries.length <= 40}>
          <summary>
            <h2 className="label kind-name">
              {listWords(kind.name)} <span className="count">{kind.entries.length}</span>
            </h2>
          </summary>
          <ul className="index">
            {kind.entries.map((entry) => (
              <li key={entry.id}>
                <span className="sentence">
                  <RecordLink id={entry.id} text={entry.text} asOf={asOf} />
                </span>
                {entry.standing !== null && <StandingMark standing={entry.standing} />}
              </li>
            ))}
          </ul>
        </details>
      ))}
    </>
  );
}
