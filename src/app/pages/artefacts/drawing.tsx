import { useId, useMemo } from "react";
import { formatSI } from "../../../base/quantity/quantity-print.ts";
import type { BarUnit } from "../../../show/artefacts/drawing/bar.ts";
import type { Drawing } from "../../../show/artefacts/drawing/drawing.ts";
import { pxPerMm, sheetOf } from "../../../show/artefacts/drawing/sheet.ts";
import { worded } from "../../../base/text/said/worded.ts";
import type { Worded } from "../../../base/text/said/worded.ts";
import { sizeWords } from "../../../show/artefacts/si-words.ts";
import { drawSheet, drawingFile, scaleWords } from "../../../write/drawing/drawing.ts";
import { print } from "../../../write/pen/palette.ts";
import { ofThePage } from "../../../write/pen/screen.ts";
import { svgPen } from "../../../write/pen/svg-pen.ts";
import { useNarrow } from "../../parts/narrow.ts";
import { saveSvg } from "../../parts/save.ts";
import { artefactWords as words } from "../../words/shown/artefacts.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { marks } from "../../words/reader/marks.ts";

/** Widths of a sheet in px: an upright A4 page between its margins, and half of it on a narrow screen. */
const wide = 180 * pxPerMm;
const narrow = 90 * pxPerMm;

interface Props {
  readonly drawing: Drawing;
  readonly unit: string | null;
  readonly toLook: (changes: Readonly<Record<string, string | null>>) => void;
  /** What a saved file is called. */
  readonly name: string;
}

/** Things drawn to scale, with what is to be known of the scale, and a way to save the drawing. */
export function DrawingFigure({ drawing: said, unit, toLook, name }: Props) {
  const drawing = useMemo(() => worded(said, inReadersWords), [said]);
  const seat = useId();
  const small = useNarrow();
  const chosen = drawing.units.find((one) => one.name === unit) ?? drawing.units[0] ?? null;
  const sheet = useMemo(
    () => sheetOf(drawing.groups, { width: small ? narrow : wide, unit: chosen, words }),
    [drawing, small, chosen],
  );
  const drawn = useMemo(() => {
    const pen = svgPen(ofThePage, "drawing-");
    drawSheet(pen, sheet);
    return pen.drawn();
  }, [sheet]);
  const things = drawing.groups.flat();
  const described = things.map((one) => one.words).join(" ");
  const title = `${things.map((one) => one.name).join(marks.comma)}, ${scaleWords(sheet)}`;
  return (
    <figure className="drawing">
      {things.length > 0 && (
        <svg
          width={sheet.width}
          height={sheet.height}
          viewBox={`0 0 ${sheet.width} ${sheet.height}`}
          role="img"
          aria-labelledby={`${seat}-title`}
          aria-describedby={`${seat}-said`}
        >
          <title id={`${seat}-title`}>{title}</title>
          <desc id={`${seat}-said`}>{described}</desc>
          <g dangerouslySetInnerHTML={{ __html: drawn }} />
        </svg>
      )}
      <figcaption className="quiet">
        {things.length > 0 && (
          <>
            <p>
              {words.scale(scaleWords(sheet))} {legendOf(drawing).join(" ")}
            </p>
            <UnitLine units={drawing.units} chosen={chosen} tooLong={sheet.unitTooLong} toLook={toLook} />
          </>
        )}
        {drawing.undrawn.map((one) => (
          <p key={one.id} dir="auto">
            {words.undrawn(one.name, one.lacks.join(marks.comma))}
          </p>
        ))}
      </figcaption>
      {things.length > 0 && (
        <button type="button" onClick={() => saveSvg(drawingFile(sheet, title, print), `${name}.svg`)}>
          {words.save}
        </button>
      )}
    </figure>
  );
}

/** What the lines of a drawing mean, as far as they are in it. */
function legendOf({ groups }: Worded<Drawing>): readonly string[] {
  const things = groups.flat();
  const states = things.flatMap((one) => one.outline.edges.map((edge) => edge.state));
  return [
    things.some((one) => one.thin.length > 0) && words.thin,
    states.includes("broken") && words.brokenEdges,
    states.includes("supplied") && words.suppliedEdges,
    things.some((one) => one.form === "profile") && words.profileNote,
    groups.length > 1 && words.rows,
  ].filter((one) => one !== false);
}

interface UnitProps {
  readonly units: readonly Worded<BarUnit>[];
  readonly chosen: Worded<BarUnit> | null;
  readonly tooLong: boolean;
  readonly toLook: Props["toLook"];
}

/** What the unit of the second bar is and who says so; a choice where there are several. */
function UnitLine({ units, chosen, tooLong, toLook }: UnitProps) {
  if (chosen === null) return null;
  const { size, u, name, source, uAssumed } = chosen;
  return (
    <p className="unit">
      {units.length > 1 && (
        <label>
          {words.secondBar}{" "}
          <select value={name} onChange={(event) => toLook({ unit: event.target.value })}>
            {units.map((one) => (
              <option key={one.name}>{one.name}</option>
            ))}
          </select>
        </label>
      )}
      <span dir="auto">
        {words.unitIs(name, u > 0 ? sizeWords(size, u, "length") : formatSI(size, "length"), source)}{" "}
        {uAssumed && words.unitAssumed} {tooLong ? words.unitTooLong(name) : words.combed}
      </span>
    </p>
  );
}
