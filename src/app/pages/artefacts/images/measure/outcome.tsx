import type { ComparedLine, PictureTold } from "../../../../../show/artefacts/picture/asked.ts";
import type { Taken } from "../../../../../show/artefacts/picture/points.ts";
import { RecordLink } from "../../../../parts/link.tsx";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { imageWords as words } from "../../../../words/recording/images.ts";
import { marks } from "../../../../words/reader/marks.ts";
import { troubleAt } from "./fields.tsx";

/** What comes of the points: the figure with its uncertainty, what each part of that is, and the cautions. */
export function Outcome({ told, taken }: { readonly told: PictureTold | null; readonly taken: Taken }) {
  const amiss = troubleAt(told, "points");
  return (
    <section className="came">
      <h2 className="label">{words.comes}</h2>
      <output>
        {told?.figure ? (
          <>
            <span className="value figures">
              <bdi>{told.figure.si}</bdi>
            </span>
            {told.figure.readings.length > 1 && (
              <span className="quiet figures line">
                {words.readEach(told.figure.readings.join(marks.comma))}
              </span>
            )}
            <span className="line">{inReadersWords(told.figure.own)}</span>
            {told.figure.shared && <span className="line">{inReadersWords(told.figure.shared)}</span>}
          </>
        ) : (
          amiss === null && (
            <span className="quiet">{taken === "angle" ? words.nothingYetAngle : words.nothingYet}</span>
          )
        )}
        {amiss !== null && <span className="problem line">{inReadersWords(amiss)}</span>}
      </output>
      <details>
        <summary>{words.formula}</summary>
        <p className="quiet">{words.formulaText}</p>
      </details>
    </section>
  );
}

/** The conditions under which the figure misleads. */
export function Cautions({ told }: { readonly told: PictureTold | null }) {
  if (!told || told.cautions.length === 0) return null;
  return (
    <section className="cautions">
      <h2 className="label">{words.cautions}</h2>
      <ul>
        {told.cautions.map((one, place) => (
          <li key={place}>{inReadersWords(one)}</li>
        ))}
      </ul>
    </section>
  );
}

/** What is on record of the same dimension, each held against what was measured. */
export function Compared({
  lines,
  isAsked,
  asOf,
}: {
  readonly lines: readonly ComparedLine[];
  readonly isAsked: boolean;
  readonly asOf: number | null;
}) {
  if (!isAsked) return null;
  return (
    <section className="compared">
      <h2 className="label">{words.compared}</h2>
      {lines.length === 0 && <p className="quiet">{words.noneAlike}</p>}
      <ul>
        {lines.map((one) => (
          <li key={one.id} className={one.verdict}>
            <span className="figures">
              <RecordLink id={one.id} text={one.figure} asOf={asOf} /> <bdi className="quiet">{one.si}</bdi>
            </span>
            <span>
              {inReadersWords(one.by)}
              {one.year !== null && `${marks.comma}${inReadersWords(one.year)}`}
            </span>
            <span className="verdict-word">
              {words.verdicts[one.verdict]}
              {one.difference !== null && `${marks.comma}${words.differs(one.difference)}`}
              {one.withinScale && <span className="quiet">{`${marks.comma}${words.withinScale}`}</span>}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
