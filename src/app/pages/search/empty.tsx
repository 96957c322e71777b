import { Link } from "wouter";
import type { StockKind } from "../../../show/pages/contents.ts";
import type { Found } from "../../../show/search/found.ts";
import { underLens } from "../../address.ts";
import { searchWords as words } from "../../words/search.ts";
import { listWords } from "../../words/shown/lists.ts";
import { marks } from "../../words/reader/marks.ts";
import { searchPath } from "./field.tsx";

/** Before anything is typed: what can be found, and how much of it there is. */
export function NothingYet({
  index,
  asOf,
}: {
  readonly index: readonly StockKind[];
  readonly asOf: number | null;
}) {
  return (
    <>
      <h2 className="label">{words.canBeFound}</h2>
      <dl className="teach">
        {words.teach.map(([what, how]) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{how}</dd>
          </div>
        ))}
      </dl>
      <p className="quiet">{words.together}</p>
      <h2 className="label">{words.inThisCorpus}</h2>
      <p className="stock">
        {index.map((kind) => (
          <span key={kind.name}>
            {listWords(kind.name)} <span className="count">{kind.entries.length}</span>
          </span>
        ))}
        <Link href={underLens("/records", asOf)}>{words.allRecords}</Link>
      </p>
    </>
  );
}

/** Words that stand nowhere, with the nearest that do: each leads to the search with it in its place. */
export function Unknown({ found, asOf }: { readonly found: Found; readonly asOf: number | null }) {
  if (found.unknown.length === 0) return null;
  return (
    <ul className="unknown">
      {found.unknown.map(({ word, nearest }) => (
        <li key={word}>
          <span dir="auto">{words.unknown(word)}</span>
          {nearest.length > 0 && (
            <>
              {" "}
              {words.nearest}{" "}
              {nearest.map((near, place) => (
                <span key={near}>
                  {place > 0 && marks.comma}
                  <Link href={underLens(searchPath(found.text.replace(word, () => near)), asOf)} dir="auto">
                    {near}
                  </Link>
                </span>
              ))}
            </>
          )}
        </li>
      ))}
    </ul>
  );
}
