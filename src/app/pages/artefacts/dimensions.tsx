import { Link } from "wouter";
import type { Dimension, Measured } from "../../../show/artefacts/dimensions.ts";
import type { Reading } from "../../../show/artefacts/reading.ts";
import { pathOf, recordPath, underLens } from "../../address.ts";
import { artefactWords as words } from "../../words/shown/artefacts.ts";
import { marks } from "../../words/reader/marks.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { choiceName } from "../../../read/grammar/field-words.ts";
import { Pieces } from "../../parts/pieces.tsx";

interface Props {
  readonly measured: readonly Measured[];
  readonly own: string;
  readonly asOf: number | null;
}

/** The tables of dimensions: of the thing itself, then folded up those of its parts. */
export function DimensionTables({ measured, own, asOf }: Props) {
  const itself = measured.filter((one) => one.thing === own);
  const parts = measured.filter((one) => one.thing !== own);
  return (
    <>
      <section>
        <h2 className="label">{words.dimensions}</h2>
        {itself.length === 0 && <p className="quiet">{words.noDimensions}</p>}
        {itself.map((one) => (
          <Dimensions key={one.thing} dimensions={one.dimensions} asOf={asOf} />
        ))}
      </section>
      {parts.length > 0 && (
        <section>
          <h2 className="label">{words.ofParts}</h2>
          {parts.map((one) => (
            <details key={one.thing} className="part-dimensions">
              <summary>
                <h3 dir="auto">{inReadersWords(one.name)}</h3> <Summary dimensions={one.dimensions} />
              </summary>
              <p className="where">
                <Link href={underLens(pathOf("artefact", one.thing), asOf)}>{words.itsPage}</Link>
              </p>
              <Dimensions dimensions={one.dimensions} asOf={asOf} />
            </details>
          ))}
        </section>
      )}
    </>
  );
}

/** What a folded part holds: its dimensions with what a derivation takes, and how many are in conflict. */
function Summary({ dimensions }: Pick<Measured, "dimensions">) {
  const clashing = dimensions.filter(
    ({ clashes, ties }) => clashes.length > 0 || ties.some((one) => one.disagrees),
  ).length;
  return (
    <span className="quiet figures">
      <bdi>{dimensions.map((one) => `${one.name} ${one.taken?.si ?? "–"}`).join(marks.semicolon)}</bdi>
      {clashing > 0 && <span className="clash-word">{words.inConflict(clashing)}</span>}
    </span>
  );
}

/** As many pairs in conflict are told one by one. */
const fewClashes = 3;

/** One table for a thing: its dimensions one below the other, the readings of each side by side. */
function Dimensions({ dimensions, asOf }: Pick<Measured, "dimensions"> & { readonly asOf: number | null }) {
  return (
    <table className="dimensions">
      <thead>
        <tr>
          <th scope="col">{words.figure}</th>
          <th scope="col">{words.si}</th>
          <th scope="col">{words.state}</th>
          <th scope="col">{words.source}</th>
          <th scope="col">{words.year}</th>
          <th scope="col">{words.use}</th>
        </tr>
      </thead>
      {dimensions.map((one, place) => (
        <tbody key={`${one.name}\n${one.between ?? ""}`}>
          {dimensions[place - 1]?.name !== one.name && (
            <tr className="dimension">
              <th scope="rowgroup" colSpan={6}>
                <span className="sentence" dir="auto">
                  {one.name}
                </span>{" "}
                {one.how !== null && <span className="quiet">{words.how(one.how)}</span>}
              </th>
            </tr>
          )}
          {one.readings.map((reading) => (
            <ReadingRow key={reading.id} reading={reading} landmarks={one.between} asOf={asOf} />
          ))}
          <Verdict dimension={one} />
          <Ties ties={one.ties} />
        </tbody>
      ))}
    </table>
  );
}

/** What the readings of a dimension come to: where they differ, and what a derivation takes of several. */
function Verdict({ dimension: { clashes, taken, readings } }: { readonly dimension: Dimension }) {
  if (readings.length === 1) return null;
  return (
    <tr className="verdict-row">
      <td colSpan={6}>
        {clashes.slice(0, fewClashes).map((clash) => (
          <p className="clash" key={clash.ids.join("\n")}>
            {words.clash([inReadersWords(clash.who[0]), inReadersWords(clash.who[1])], clash.by, clash.times)}
          </p>
        ))}
        {clashes.length > fewClashes && (
          <p className="clash">{words.moreClashes(clashes.length - fewClashes)}</p>
        )}
        <p className="quiet">{taken === null ? words.takenNone : words.taken(taken.si, taken.readings)}</p>
      </td>
    </tr>
  );
}

/** What a dimension should equal by the others of the thing. */
function Ties({ ties }: Pick<Dimension, "ties">) {
  if (ties.length === 0) return null;
  return (
    <tr className="verdict-row">
      <td colSpan={6}>
        {ties.map(({ sum, expected, disagrees, by, more, times, bounded }) => (
          <p className={disagrees ? "clash" : "quiet"} key={sum} dir="auto">
            {words.shouldEqual(sum, expected)}
            {disagrees ? words.tieDiffers(by, more, times) : words.tieAgrees(bounded)}
          </p>
        ))}
      </td>
    </tr>
  );
}

interface RowProps {
  readonly reading: Reading;
  readonly landmarks: string | null;
  readonly asOf: number | null;
}

function ReadingRow({ reading, landmarks, asOf }: RowProps) {
  const how = [
    words.states[reading.state],
    reading.basis === null ? null : inReadersWords(choiceName(reading.basis)),
    reading.n === null ? null : words.of(reading.n),
    reading.instrument,
    reading.condition,
  ].filter((one) => one !== null);
  const kinds = [reading.copyOf === null ? "" : "copy", reading.clashing ? "clashing" : "", reading.use];
  return (
    <tr className={kinds.filter((one) => one !== "").join(" ")}>
      <th scope="row">
        {reading.clashing && (
          <svg
            className="dots"
            width="20"
            height="8"
            viewBox="0 0 20 8"
            role="img"
            aria-label={words.conflict}
          >
            <path d="M3 4H18" />
          </svg>
        )}
        <Link href={underLens(recordPath(reading.id), asOf)} dir="auto">
          {reading.figure}
        </Link>
        {landmarks !== null && (
          <span className="quiet note" dir="auto">
            {landmarks}
          </span>
        )}
        {reading.copyOf !== null && (
          <span className="quiet copy-of">{words.copies(inReadersWords(reading.copyOf))}</span>
        )}
      </th>
      <td className="figures">
        <bdi>{reading.si}</bdi>
      </td>
      <td dir="auto">{how.join(marks.comma)}</td>
      <td>
        <Pieces pieces={reading.from} asOf={asOf} />
        {reading.via.length > 0 && (
          <>
            {` ${words.via} `}
            <Pieces pieces={reading.via} asOf={asOf} />
          </>
        )}
        {reading.from.length === 0 && inReadersWords(reading.by)}
        {reading.note !== null && (
          <span className="quiet note" dir="auto">
            {reading.note}
          </span>
        )}
      </td>
      <td className="figures">{reading.year !== null && inReadersWords(reading.year)}</td>
      <td className="use">
        {reading.use === "alone"
          ? words.alone
          : reading.use === "in-mean"
            ? words.inMean
            : words.leftOut(reading.leftOut === null ? null : inReadersWords(reading.leftOut))}
      </td>
    </tr>
  );
}
