import type { ComponentPage, FateRow } from "../../../../show/judged/standpoints/component.ts";
import { RecordLink } from "../../../parts/link.tsx";
import { StandingMark } from "../../../parts/standing.tsx";
import { standpointWords as words } from "../../../words/judged/standpoints.ts";
import { Nearly, Wholly } from "./fits.tsx";
import { Told } from "./told.tsx";

interface Props {
  readonly part: ComponentPage;
  /** Which alternatives, by their place among those laid out. */
  readonly places: readonly number[];
  readonly asOf: number | null;
}

/** Alternatives side by side: a row for each claim, and under each alternative the scholars it fits. */
export function WayTable({ part, places, asOf }: Props) {
  const others = part.evidence.length + part.arguments.length;
  return (
    <>
      {part.claims.length > 0 && <ClaimTable part={part} places={places} asOf={asOf} />}
      {others > 0 &&
        (part.claims.length > 0 ? (
          <details>
            <summary>{words.below(others)}</summary>
            <OtherTables part={part} places={places} asOf={asOf} />
          </details>
        ) : (
          <OtherTables part={part} places={places} asOf={asOf} />
        ))}
    </>
  );
}

/** What becomes of each claim, under what tells the alternatives apart. */
function ClaimTable({ part, places, asOf }: Props) {
  const [first = 0] = places;
  const ways = places.flatMap((at) => part.ways[at] ?? []);
  const single = part.ways.length === 1;
  const committed = part.ways.some((way) => way.fits.length > 0);
  return (
    <table className={`ways abreast-${places.length}`}>
      <caption className="unseen">{words.alternatives(first + 1, first + places.length)}</caption>
      <thead>
        <tr>
          <th scope="col">{words.claim}</th>
          {ways.map((way, at) => (
            <th key={at} scope="col">
              <span className="label">{single ? words.throughout : words.alternative(first + at + 1)}</span>
              <Told way={way} />
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {part.claims.map((row) => (
          <Row key={row.id} row={row} places={places} asOf={asOf} />
        ))}
      </tbody>
      {committed && (
        <tbody className="whom">
          <tr>
            <th scope="row" className="label">
              {words.fits}
            </th>
            {ways.map((way, at) => (
              <td key={at}>
                <Wholly fits={way.fits} asOf={asOf} />
              </td>
            ))}
          </tr>
          {ways.some((way) => way.fits.some((one) => one.but !== null)) && (
            <tr>
              <th scope="row" className="label">
                {words.fitsNearly}
              </th>
              {ways.map((way, at) => (
                <td key={at}>
                  <Nearly fits={way.fits} asOf={asOf} />
                </td>
              ))}
            </tr>
          )}
        </tbody>
      )}
    </table>
  );
}

/** What becomes of evidence and arguments, a table each. */
function OtherTables({ part, places, asOf }: Props) {
  return (["evidence", "arguments"] as const).map(
    (kind) =>
      part[kind].length > 0 && (
        <table key={kind} className={`ways abreast-${places.length}`}>
          <thead>
            <tr>
              <th scope="col">{words[kind]}</th>
              {places.map((at) => (
                <th key={at} scope="col">
                  {part.ways.length === 1 ? words.throughout : words.alternative(at + 1)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {part[kind].map((row) => (
              <Row key={row.id} row={row} places={places} asOf={asOf} />
            ))}
          </tbody>
        </table>
      ),
  );
}

function Row({
  row,
  places,
  asOf,
}: {
  readonly row: FateRow;
  readonly places: readonly number[];
  readonly asOf: number | null;
}) {
  return (
    <tr>
      <th scope="row" className="sentence">
        <RecordLink id={row.id} text={row.text} asOf={asOf} />
      </th>
      {places.map((at) => (
        <td key={at}>
          <StandingMark standing={row.fates[at] ?? "falls"} />
        </td>
      ))}
    </tr>
  );
}
