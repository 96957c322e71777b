import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { formatNumber } from "../../../base/quantity/quantity-print.ts";
import { riseOf, sensitivityOf } from "./points.ts";
import type { Point, Taken } from "./points.ts";
import type { Pointed } from "./pointing.ts";
import type { OnPicture, Scale } from "./scale.ts";

/** What is known of a measurement on a picture when its cautions are given. */
export interface Cautioned {
  readonly kind: string | null;
  readonly width: number;
  readonly height: number;
  readonly taken: Taken;
  readonly readings: readonly (readonly Point[])[];
  readonly figure: Pointed | null;
  readonly ends: Pointed | null;
  readonly scale: Scale | null;
  readonly measured: OnPicture | null;
}

/** A share in percent, to two digits. */
export const percent = (share: number): string => `${formatNumber(100 * share, 2)} %`;

/** The conditions under which a figure from a picture misleads: first those that are met, with figures, then the usual ones. */
export function cautionsOf(what: Cautioned): readonly Text[] {
  return [...scaleCautions(what), ...pointCautions(what), ...usualCautions(what.kind)];
}

/** Beyond so many times its length, the error of a scale bar is the figure's main one, however well its ends are seen. */
function scaleCautions({ figure, ends, scale, measured, taken }: Cautioned): readonly Text[] {
  if (!figure || !ends || !scale || !measured || taken === "angle") return [];
  const times = figure.mean / ends.mean;
  const own = measured.own / measured.value;
  if (times <= 1.5 || scale.relative <= own) return [];
  return [
    say`What is measured is ${formatNumber(times, 2)} times as long as what the scale is set by: of its uncertainty of ${percent(Math.hypot(own, scale.relative))}, the scale makes ${percent(scale.relative)} and pointing ${percent(own)}. A longer scale would help, more readings would not.`,
  ];
}

/** A picture as far from its edges as this share of its side is told nothing about its lens. */
const edge = 0.1;
/** Below so many pixels a line is hardly more than its ends. */
const fewPixels = 50;

function pointCautions({ kind, width, height, taken, readings, figure }: Cautioned): readonly Text[] {
  const points = readings.flat();
  const atEdge = points.some(
    ({ x, y }) => Math.min(x, width - x) < edge * width || Math.min(y, height - y) < edge * height,
  );
  const [first] = readings;
  const rise = taken === "diameter" && first ? riseOf(first) : null;
  return [
    ...(atEdge && (kind === "photograph" || kind === null)
      ? [
          say`A point lies in the outer tenth of the picture, where lenses bend straight lines most (common practice).`,
        ]
      : []),
    ...(figure && taken === "distance" && figure.mean < fewPixels
      ? [
          say`The distance is ${formatNumber(figure.mean, 3)} pixels: one pixel is ${percent(1 / figure.mean)} of it.`,
        ]
      : []),
    ...(rise !== null && first && figure && figure.u > 0.05 * figure.mean
      ? [
          say`The arc rises by ${formatNumber(rise, 3)} pixels only: one pixel at each point changes the diameter by ${percent(sensitivityOf(taken, first) / figure.mean)}. Take points farther apart.`,
        ]
      : []),
  ];
}

const ofCameras: readonly Text[] = [
  say`Parallax: a scale nearer to the camera than what is measured, by 1 % of the distance, makes it 1 % too small; they have to lie in one plane.`,
  say`Perspective: what leans away from the picture by 10° is seen 1.5 % too short, by 20° 6 %.`,
  say`Lenses bend lines towards the edges of a picture; the middle is safer (common practice).`,
];
const shrunk = say`Prints and copies shrink, and are seldom at the scale they name: a scale bar printed along with the picture is safer than a ratio (common practice).`;
const drawnLine = say`A drawn line has a width: say in the landmarks which edge of it was taken (common practice).`;

/** What is true of any picture of the kind; the figures are plain geometry. */
function usualCautions(kind: string | null): readonly Text[] {
  if (kind === "photograph") return [...ofCameras, shrunk];
  return kind === "drawing" || kind === "scan" ? [shrunk, drawnLine] : [...ofCameras, shrunk, drawnLine];
}
