import type { InHandTold, Turned } from "../../../../show/map/arguing/told.ts";
import { RecordLink } from "../../../parts/link.tsx";
import { StandingMark } from "../../../parts/standing.tsx";
import { arguingWords as words } from "../../../words/arguing/arguing.ts";
import { inReadersWords } from "../../../words/reader/said.ts";

interface Props {
  readonly turned: readonly Turned[];
  readonly asOf: number | null;
}

/** What stands otherwise: each with its standing before, where it had one, and its standing after. */
export function TurnedList({ turned, asOf }: Props) {
  return (
    <ul className="turned">
      {turned.map((one) => (
        <li key={one.id}>
          <span className="sentence">
            {one.was === null ? (
              <span dir="auto">{inReadersWords(one.label)}</span>
            ) : (
              <RecordLink id={one.id} text={one.label} asOf={asOf} />
            )}
          </span>
          <span className="standings">
            {one.was !== null && (
              <>
                <StandingMark standing={one.was} />
                <span aria-hidden="true">{words.becomes}</span>
              </>
            )}
            <StandingMark standing={one.is} />
          </span>
        </li>
      ))}
    </ul>
  );
}

/** What would change with the argument in hand, while it is being made: said aloud when it is another. */
export function WouldChange({
  told,
  asOf,
}: {
  readonly told: InHandTold | null;
  readonly asOf: number | null;
}) {
  const turned = told?.turned ?? null;
  return (
    <section className="would-change" aria-live="polite">
      <h3 className="label">{words.wouldChange}</h3>
      {turned === null && <p className="quiet">{words.notTried}</p>}
      {told?.own && (
        <p className="own">
          <span className="quiet">{words.itself}</span> <StandingMark standing={told.own.standing} />
          <span className="sentence" dir="auto">
            {inReadersWords(told.own.why)}
          </span>
        </p>
      )}
      {turned !== null && turned.length === 0 && <p className="quiet">{words.nothingElse}</p>}
      {turned !== null && <TurnedList turned={turned} asOf={asOf} />}
    </section>
  );
}
