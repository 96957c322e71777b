import { Fragment } from "react";
import type { Observed } from "../../../show/artefacts/observed.ts";
import { PageLink, RecordLink } from "../../parts/link.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { artefactWords as words } from "../../words/shown/artefacts.ts";
import { marks } from "../../words/reader/marks.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { choiceName } from "../../../read/grammar/field-words.ts";
import { Pieces } from "../../parts/pieces.tsx";

/** What was seen, looked for or passed over on a thing and its parts. */
export function Observations({
  observed,
  asOf,
}: {
  readonly observed: readonly Observed[];
  readonly asOf: number | null;
}) {
  return (
    <section>
      <h2 className="label">{words.observations}</h2>
      {observed.length === 0 && <p className="quiet">{words.noObservations}</p>}
      <ul className="observed">
        {observed.map((one) => (
          <li key={one.id}>
            <span className={`presence ${one.present}`}>{words.presence[one.present]}</span>
            <div>
              <p className="sentence">
                <RecordLink id={one.id} text={one.text} asOf={asOf} />
              </p>
              <p className="quiet said">
                {one.feature !== null && <span dir="auto">{one.feature}</span>}
                {one.on.length > 0 && (
                  <span>
                    {words.on}{" "}
                    {one.on.map((thing, place) => (
                      <Fragment key={thing.id}>
                        {place > 0 && marks.comma}
                        <PageLink page="artefact" id={thing.id} text={thing.name} asOf={asOf} />
                      </Fragment>
                    ))}
                  </span>
                )}
                {one.basis !== null && <span>{inReadersWords(choiceName(one.basis))}</span>}
                {one.year !== null && <span>{inReadersWords(one.year)}</span>}
                <span>
                  {one.from.length > 0 ? <Pieces pieces={one.from} asOf={asOf} /> : inReadersWords(one.by)}
                </span>
              </p>
            </div>
            {one.standing !== null && <StandingMark standing={one.standing} />}
          </li>
        ))}
      </ul>
    </section>
  );
}
