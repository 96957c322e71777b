import { Link } from "wouter";
import type { SearchLine, SearchLog as Log } from "../../../../show/desk/literature/search-log.ts";
import { pathOf, underLens } from "../../../address.ts";
import { literatureWords as words } from "../../../words/reading/literature.ts";
import { inReadersWords } from "../../../words/reader/said.ts";

interface Props {
  readonly log: Log;
  /** Where a search is logged; null where nothing can be saved. */
  readonly fresh: string | null;
  readonly asOf: number | null;
}

/** The searches as they were made, and what they come to together. */
export function SearchLog({ log, fresh, asOf }: Props) {
  const { searches, flow } = log;
  return (
    <div className="search-log">
      {fresh !== null && (
        <p className="crossing">
          <Link href={fresh} aria-keyshortcuts="l">
            {words.logOne}
          </Link>
        </p>
      )}
      {searches.length === 0 && <p className="sentence">{words.noSearches}</p>}
      {searches.length > 0 && (
        <section aria-labelledby="flow">
          <h2 id="flow" className="label">
            {words.together}
          </h2>
          <p>{words.flow(flow)}</p>
          {flow.uncounted > 0 && <p className="quiet">{words.atLeast(flow.uncounted)}</p>}
          {searches.length > 1 && <p className="quiet">{words.twice}</p>}
          {flow.reasons.length > 0 && (
            <details>
              <summary>{words.reasons}</summary>
              <Reasons reasons={flow.reasons} />
            </details>
          )}
        </section>
      )}
      <ol className="searches">
        {searches.map((one) => (
          <Search key={one.id} search={one} asOf={asOf} canSave={fresh !== null} />
        ))}
      </ol>
    </div>
  );
}

function Reasons({ reasons }: { readonly reasons: SearchLine["leftOut"] }) {
  return (
    <ul className="reasons">
      {reasons.map(({ n, why }) => (
        <li key={why}>
          <span className="figure">{n}</span>
          <span dir="auto">{why}</span>
        </li>
      ))}
    </ul>
  );
}

function Search({
  search,
  asOf,
  canSave,
}: {
  readonly search: SearchLine;
  readonly asOf: number | null;
  readonly canSave: boolean;
}) {
  const { id, where, when, by, found, screened, kept, leftOut, unaccounted } = search;
  const who = by.map((one) => words.by(inReadersWords(one)));
  const counts = [
    [words.found, found],
    [words.screened, screened],
    [words.kept, kept],
  ] as const;
  return (
    <li>
      <p className="quiet">{[...(when === null ? [] : [when]), ...who].join(" · ")}</p>
      <h2 dir="auto">{where}</h2>
      <p className="sentence" dir="auto">
        {search.words}
      </p>
      <dl className="numbers">
        {counts.map(([name, count]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{count ?? words.notCounted}</dd>
          </div>
        ))}
      </dl>
      {leftOut.length > 0 && (
        <>
          <p className="label">{words.leftOut}</p>
          <Reasons reasons={leftOut} />
        </>
      )}
      {unaccounted !== null && unaccounted !== 0 && <p className="odd">{words.unaccounted(search)}</p>}
      {canSave && (
        <p className="crossing">
          <Link href={underLens(pathOf("edit", id), asOf)} aria-label={words.changeOf(where)}>
            {words.change}
          </Link>
        </p>
      )}
    </li>
  );
}
