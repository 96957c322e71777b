import type { Years } from "../../../show/scholars/active.ts";
import type { ScholarLine } from "../../../show/scholars/scholars.ts";
import { useSome } from "../../parts/leaves/some.tsx";
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
  const isMuch = scholars.reduce((sum, one) => sum + one.holds.length, 0) > muchHeld;
  const [some, more] = useSome(scholars, isMuch ? 100 : 200);
  return (
    <>
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
          {some.map((one) => (
            <tr key={one.id}>
              <th scope="row" className="sentence">
                <PageLink page="scholar" id={one.id} text={one.name} asOf={asOf} />
              </th>
              <td className="in-print">{yearsText(one.years)}</td>
              <td>
                {one.holds.length === 0 && <span className="quiet">{words.nothingHeld}</span>}
                <Held holds={one.holds} most={isMuch ? 4 : 40} asOf={asOf} />
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
      {more}
    </>
  );
}

/** What somebody holds: of very many claims the first. */
function Held({
  holds,
  most,
  asOf,
}: {
  readonly holds: ScholarLine["holds"];
  readonly most: number;
  readonly asOf: number | null;
}) {
  const [some, more] = useSome(holds, most);
  return (
    <>
      <ul className="held">
        {some.map((held) => (
          <li key={held.claim}>
            <StandingMark standing={held.standing} bare />
            <span className="sentence">
              <RecordLink id={held.claim} text={held.text} asOf={asOf} />
            </span>
            {held.since !== null && <span className="quiet">{words.since(yearIn(held.since))}</span>}
          </li>
        ))}
      </ul>
      {more}
    </>
  );
}

/** Beyond so many claims that are held, of each scholar a few are shown first. */
const muchHeld = 1500;
