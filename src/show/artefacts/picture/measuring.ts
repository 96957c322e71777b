import type { Quantity } from "../../../base/quantity.ts";
import { formatNumber } from "../../../base/quantity/quantity-print.ts";
import { parseQuantity } from "../../../base/quantity/quantity-text.ts";
import { parseYear } from "../../../base/date/year.ts";
import { coded, count, say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { kindWords } from "../../../base/unit/kind-words.ts";
import type { Unit } from "../../../base/unit/unit.ts";
import { measuredOf } from "../../../derive/prepare/select.ts";
import type { Graph, Linked } from "../../../link/graph.ts";
import { withheldIn } from "../../withhold.ts";
import { differenceWords, siUnitFor, siWords, valueWords, wholeU } from "../si-words.ts";
import type { ComparedLine, PictureAsked, PictureTold, PictureTrouble } from "./asked.ts";
import { cautionsOf, percent } from "./cautions.ts";
import { comparedWith } from "./compared.ts";
import { pointed } from "./pointing.ts";
import type { Pointed } from "./pointing.ts";
import { recordOf, valueText } from "./record.ts";
import { onPicture, printedScale, scaleOf, useless } from "./scale.ts";
import type { OnPicture, Scale } from "./scale.ts";

/** What comes of what is being measured on a picture; null where there is no such picture, or it is withheld. */
export function measuredOnPicture(graph: Graph, asked: PictureAsked): PictureTold | null {
  const image = graph.records.get(asked.image);
  if (image?.list !== "images" || withheldIn(graph)(image.id)) return null;
  const troubles: PictureTrouble[] = [];
  const trouble = (at: PictureTrouble["at"], message: Text): null => {
    troubles.push({ at, message });
    return null;
  };
  const half = halfWidthOf(asked, trouble);
  const ends = pointed("distance", asked.scale.readings, half);
  const length = lengthOf(graph, asked, trouble);
  const scale = asked.taken === "angle" ? null : scaleIn(asked, length, ends, trouble);
  const figure = figureIn(asked, half, trouble);
  const measured = figure && onPicture(asked.taken, figure, scale);
  const unit = unitIn(graph, asked);
  const named = namedIn(graph, asked, trouble);
  const isWhole = troubles.length === 0 && asked.of !== null && named !== null;
  const { kind = null } = image.values;
  return {
    troubles,
    lengthRead: length === null ? null : siWords(length, siUnitFor("length", [length.value])),
    scale: scale && scaleWords(asked, scale, ends),
    figure: figure && measured && figureWords(measured, figure),
    cautions: cautionsOf({ ...asked, kind, figure, ends, scale, measured }),
    compared: measured === null ? [] : comparedIn(graph, image, asked, measured, unit),
    record: isWhole && figure && measured ? recordOf(graph, image, asked, figure, measured, unit) : null,
  };
}

type Tell = (at: PictureTrouble["at"], message: Text) => null;

function halfWidthOf({ halfWidth }: PictureAsked, tell: Tell): number | null {
  if (halfWidth.trim() === "") return null;
  const half = Number(halfWidth);
  return half > 0 && Number.isFinite(half)
    ? half
    : tell(
        "halfWidth",
        say`Unexpected \`${halfWidth}\`, expected so many pixels above 0, such as ${coded("1.5")}`,
      );
}

/** The length that the scale is set by. */
function lengthOf(graph: Graph, { scale, of, dimension, taken }: PictureAsked, tell: Tell): Quantity | null {
  if (taken === "angle" || scale.way === "printed") return null;
  if (scale.way === "bar") {
    if (scale.length.trim() === "") return null;
    const read = parseQuantity(scale.length, { ...graph.settings.quantities, kind: "length" });
    if ("problem" in read) return tell("length", read.problem.message);
    return read.ok.u !== null && read.ok.value > 0
      ? read.ok
      : tell("length", say`Unexpected \`${scale.length}\`, expected a length above 0 that is no bound`);
  }
  const record = scale.known === null ? undefined : graph.records.get(scale.known);
  if (record?.list !== "measurements" || withheldIn(graph)(record.id)) return null;
  const isSame =
    record.values.of === of &&
    dimension.trim() !== "" &&
    graph.dimensionName(record.values.dimension) === graph.dimensionName(dimension.trim());
  return isSame
    ? tell(
        "known",
        say`The scale is set by this very dimension, expected another: it would only be given back`,
      )
    : measuredOf(record, graph).quantity;
}

function scaleIn(
  { scale }: PictureAsked,
  length: Quantity | null,
  ends: Pointed | null,
  tell: Tell,
): Scale | null {
  if (scale.way !== "printed") {
    if (!length || !ends) return null;
    return (
      scaleOf(length, ends) ??
      tell("length", say`Unexpected scale, expected ends that lie apart and a length that is known`)
    );
  }
  if (scale.ratio.trim() === "") return null;
  const [, one = "", other = ""] =
    /^\s*(\d+(?:\.\d+)?)\s*[:/∶]\s*(\d+(?:\.\d+)?)\s*$/u.exec(scale.ratio) ?? [];
  const ratio = Number(other) / Number(one);
  if (!(one !== "" && ratio > 0 && Number.isFinite(ratio)))
    return tell("ratio", say`Unexpected \`${scale.ratio}\`, expected a ratio such as ${coded("1:150")}`);
  const perInch = Number(scale.perInch);
  if (!(perInch > 0 && Number.isFinite(perInch)))
    return tell(
      "perInch",
      say`Unexpected \`${scale.perInch}\`, expected so many pixels to the inch, such as ${coded("300")}`,
    );
  const within = /^\s*(\d+(?:\.\d+)?)\s*%?\s*$/u.exec(scale.within)?.[1];
  const share = within === undefined ? Number.NaN : Number(within) / 100;
  return (
    printedScale(ratio, perInch, share) ??
    tell("within", say`Unexpected share \`${scale.within}\`, expected one such as ${coded("1 %")}`)
  );
}

/** A flat arc looks less uncertain than it is where it happens to be seen too round, so that it has to be told from a line the better. */
const uselessArc = 0.15;

function figureIn({ taken, readings }: PictureAsked, half: number | null, tell: Tell): Pointed | null {
  if (readings.length === 0) return null;
  const figure = pointed(taken, readings, half);
  const most = taken === "diameter" ? uselessArc : useless;
  if (figure && figure.mean > 0 && figure.u <= most * figure.mean) return figure;
  return tell(
    "points",
    taken === "diameter"
      ? say`Three points that lie nearly in one line give no diameter, expected an arc that rises well above a pixel`
      : say`Points that lie this near together give no figure, expected them well apart`,
  );
}

/** The unit that the value is written in. */
function unitIn(graph: Graph, { taken, unit }: PictureAsked): Pick<Unit, "name" | "size"> {
  if (taken === "angle") return { name: "°", size: Math.PI / 180 };
  const found = graph.settings.quantities.units.find(unit);
  return found?.kind === "length" && found.u === 0 ? found : { name: "m", size: 1 };
}

/** The dimension, where it and the year are as they should be. */
function namedIn(graph: Graph, { dimension, taken, year }: PictureAsked, tell: Tell): string | null {
  const at = year.trim() === "" ? null : parseYear(year);
  if (at && "problem" in at) tell("year", at.problem.message);
  if (dimension.trim() === "") return null;
  const kind = graph.dimensionKind(graph.dimensionName(dimension.trim()));
  const due = taken === "angle" ? "angle" : "length";
  if (kind === null || kind === due) return dimension.trim();
  return tell(
    "dimension",
    say`Unexpected ${kindWords[due]} for ${dimension.trim()}, expected a ${kindWords[kind]}`,
  );
}

function scaleWords(
  { scale }: PictureAsked,
  { perPixel, relative, pointing, given }: Scale,
  ends: Pointed | null,
): Text {
  const pixels = say`1 m is ${formatNumber(1 / perPixel, 4)} pixels`;
  return scale.way === "printed" || !ends
    ? say`${pixels}, good to ${percent(relative)} (1 s), as you say.`
    : say`${pixels}, good to ${percent(relative)} (1 s): ${percent(pointing)} from pointing at its ends (${pointedWords(ends)}), ${percent(given)} from the length between them.`;
}

function figureWords(measured: OnPicture, figure: Pointed): PictureTold["figure"] {
  const { value, own, whole, shared, taken } = measured;
  const unit = siUnitFor(taken === "angle" ? "angle" : "length", [value]);
  return {
    si: valueWords(value, whole, unit),
    readings: figure.readings.map((one) => valueWords((one / figure.mean) * value, null, unit)),
    own: say`${differenceWords(own, unit)} from pointing (${pointedWords(figure)})`,
    shared:
      shared === 0 ? null : say`${percent(shared)} from the scale, common to all that is measured by it`,
  };
}

function pointedWords({ by, readings }: Pointed): Text {
  if (by === "repeats") return say`${count(readings.length)} readings`;
  return by === "spread" ? say`as far as the readings lie apart` : say`what each point is good to`;
}

function comparedIn(
  graph: Graph,
  image: Linked<"images">,
  asked: PictureAsked,
  measured: OnPicture,
  unit: Pick<Unit, "name" | "size">,
): readonly ComparedLine[] {
  const { of, dimension, between } = asked;
  if (of === null || dimension.trim() === "") return [];
  const read = parseQuantity(valueText(measured, unit), { ...graph.settings.quantities, coverage: 1 });
  if (!("ok" in read) || wholeU(read.ok) === null) return [];
  const year = asked.year.trim() === "" ? null : parseYear(asked.year);
  return comparedWith(graph, {
    of,
    dimension: dimension.trim(),
    between: between.trim(),
    value: read.ok,
    year: year && "ok" in year ? year.ok : (graph.provenance(image.id).year ?? Number.NaN),
    shared: measured.shared,
  });
}
