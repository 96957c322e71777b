import type { ComponentPage, FateRow } from "../../../../show/judged/standpoints/component.ts";
import { RecordLink } from "../../../parts/link.tsx";
import { StandingMark } from "../../../parts/standing.tsx";
import { standpointWords as words } from "../../../words/judged/standpoints.ts";
import { FitLists } from "./fits.tsx";

interface Props {
  readonly part: ComponentPage;
  readonly at: number;
  readonly asOf: number | null;
}

/** One alternative where there is no room for a table: its claims one under the other, and whom it fits. */
export function WayList({ part, at, asOf }: Props) {
  const way = part.ways[at];
  if (!way) return null;
  const told = new Set(way.toldBy.map((one) => one.id));
  const first = part.claims.filter((row) => told.has(row.id));
  const claims = [...first, ...part.claims.filter((row) => !told.has(row.id))];
  const others = [...part.evidence, ...part.arguments];
  const list = (rows: readonly FateRow[]) => (
    <ul className="fates">
      {rows.map((row) => (
        <li key={row.id}>
          <StandingMark standing={row.fates[at] ?? "falls"} />
          <span className="sentence">
            <RecordLink id={row.id} text={row.text} asOf={asOf} />
          </span>
        </li>
      ))}
    </ul>
  );
  return (
    <section className="way">
      <h3 className="label">{part.ways.length === 1 ? words.throughout : words.alternative(at + 1)}</h3>
      {list(claims)}
      {way.ways > 1 && <p className="quiet">{words.alike(way.ways)}</p>}
      <FitLists fits={way.fits} unknown={[]} asOf={asOf} />
      {claims.length === 0 && list(others)}
      {claims.length > 0 && others.length > 0 && (
        <details>
          <summary>{words.below(others.length)}</summary>
          {list(others)}
        </details>
      )}
    </section>
  );
}
