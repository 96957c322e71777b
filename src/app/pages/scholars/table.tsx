import type { Years } from "../../../show/scholars/active.ts";
import type { ScholarLine } from "../../../show/scholars/scholars.ts";
import { PageLink, RecordLink } from "../../parts/link.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { scholarWords as words } from "../../words/shown/scholars.ts";
import { yearIn } from "../../words/index.ts";

/** From when to when somebody is in print. */
export function yearsText(years: Years | null): string {
  if (years === null) return words.undated;
  const first = yearIn(years.first);
  return years.first === years.last ? first : words.span(years.first, years.last);
}

/** Each scholar: years in print, what they hold now and how it stands, on how many claims a stance is recorded. */
export function ScholarTable({
  scholars,
  asOf,
}: {
  readonly scholars: readonly ScholarLine[];
  readonly asOf: number | null;
}) {
  return (
    <table className="scholars">
      <thead>
        <tr>
          <th scope="col">{words.name}</th>
          <th scope="col">{words.inPrint}</th>
          <th scope="col">{words.holdsNow}</th>
          <th scope="col" className="figure">
            {words.claimCount}
          </th>
          <th scope="col" className="figure">
            {words.changedCount}
          </th>
        </tr>
      </thead>
      <tbody>
        {scholars.map((one) => (
          <tr key={one.id}>
            <th scope="row" className="sentence">
              <PageLink page="scholar" id={one.id} text={one.name} asOf={asOf} />
            </th>
            <td className="in-print">{yearsText(one.years)}</td>
            <td>
              {one.holds.length === 0 && <span className="quiet">{words.nothingHeld}</span>}
              <ul className="held">
                {one.holds.map((held) => (
                  <li key={held.claim}>
                    <StandingMark standing={held.standing} bare />
                    <span className="sentence">
                      <RecordLink id={held.claim} text={held.text} asOf={asOf} />
                    </span>
                    {held.since !== null && <span className="quiet">{words.since(yearIn(held.since))}</span>}
                  </li>
                ))}
              </ul>
            </td>
            <td className="figure" data-head={words.claimCount}>
              {one.claims}
            </td>
            <td className="figure" data-head={words.changedCount}>
              {one.changed > 0 ? one.changed : ""}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
