import type { TripRow, TripTable } from "../../../show/plan/trip.ts";
import { Link } from "wouter";
import { underLens, visitPath } from "../../address.ts";
import { RecordLink } from "../../parts/link.tsx";
import { examinationWords as words } from "../../words/judged/examinations.ts";
import { visitWords } from "../../words/recording/visit.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { marks } from "../../words/reader/marks.ts";
import { Several } from "./several.tsx";
import { ToLook } from "./to-look.tsx";

interface Props {
  readonly trips: readonly TripTable[];
  readonly asOf: number | null;
}

/** The examinations by whom to ask, as one table that can be printed and taken along. */
export function Trips({ trips, asOf }: Props) {
  if (trips.length === 0) return null;
  return (
    <section className="trips">
      <h2>{words.trips}</h2>
      <p className="quiet">{words.begins}</p>
      <table>
        <caption className="unseen">{words.trip}</caption>
        <thead>
          <tr>
            <th scope="col">{words.what}</th>
            <th scope="col">{words.permit}</th>
            <th scope="col">{words.leadTime}</th>
            <th scope="col">{words.cost}</th>
          </tr>
        </thead>
        {trips.map((trip) => (
          <tbody key={trip.keeper ?? ""}>
            <tr className="with">
              <th scope="rowgroup" colSpan={4}>
                <span dir="auto">{trip.keeper ?? words.nobody}</span>
                <span className="quiet">{total(trip)}</span>{" "}
                {trip.keeper !== null && (
                  <Link
                    href={underLens(visitPath({ examination: null, keeper: trip.keeper, also: [] }), asOf)}
                  >
                    {visitWords.title}
                  </Link>
                )}
              </th>
            </tr>
            {trip.rows.map((row) => (
              <Row key={row.id} row={row} asOf={asOf} />
            ))}
          </tbody>
        ))}
      </table>
    </section>
  );
}

function total({ cost, uncosted, rows, together }: TripTable): string {
  return [
    ...(cost !== null && rows.length > 1 ? [words.inAll(cost)] : []),
    ...(uncosted > 0 && rows.length > 1 ? [words.uncosted(uncosted)] : []),
    ...(together === null
      ? []
      : [words.together(together.count, together.bits, inReadersWords(together.question.text))]),
  ].join(marks.semicolon);
}

function Row({ row, asOf }: { readonly row: TripRow; readonly asOf: number | null }) {
  const { id, method, things, destructive, permits, leadTimes, cost } = row;
  return (
    <tr>
      <th scope="row">
        <span className="sentence">
          <ToLook id={id} text={method} asOf={asOf} />
        </span>
        <span className="quiet">
          {destructive && <strong>{words.destructive}. </strong>}
          {things.map((one, at) => (
            <span key={one.id}>
              {at > 0 && marks.comma}
              <RecordLink {...one} asOf={asOf} />
            </span>
          ))}
        </span>
      </th>
      <td dir="auto">
        {permits.length > 0 && <span className="narrowly">{words.permit} </span>}
        <Several texts={permits} />
      </td>
      <td className="ahead" dir="auto">
        {leadTimes.length > 0 && <span className="narrowly">{words.leadTime} </span>}
        <Several texts={leadTimes} />
      </td>
      <td className="numeral">
        <span className="narrowly">{words.cost} </span>
        {cost === null ? words.noCost : <bdi>{cost}</bdi>}
      </td>
    </tr>
  );
}
