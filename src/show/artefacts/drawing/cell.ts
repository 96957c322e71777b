import { broken, isRightToLeft, textWidth } from "../../map/letters/letters.ts";
import type { Point } from "../../map/scene.ts";
import type { Drawn, DrawnInWords, Side } from "./drawn.ts";

/** What a label on a drawing is. */
export type LabelRole = "figure" | "dimension" | "title" | "form";

/** A line of text in its place: px, from the middle of the thing's top. */
export interface Label {
  readonly role: LabelRole;
  readonly text: string;
  readonly at: Point;
  readonly anchor: "start" | "middle";
  readonly rtl: boolean;
}

/** A dimension line with the two thin lines that lead to it from the thing. */
export interface DimensionLine {
  readonly from: Point;
  readonly to: Point;
  readonly leads: readonly (readonly [Point, Point])[];
}

/** A thing with its dimension lines and labels at a scale, in px from the middle of its top. */
export interface Cell {
  readonly drawn: DrawnInWords;
  readonly lines: readonly DimensionLine[];
  readonly labels: readonly Label[];
  readonly left: number;
  readonly right: number;
  readonly above: number;
  readonly height: number;
  readonly below: number;
}

/** Sizes of letters by what they say, in px. */
export const letterSizes: Readonly<Record<LabelRole, number>> = {
  figure: 13,
  dimension: 12,
  title: 15,
  form: 12,
};

/** How words on drawings are worded. */
export interface DrawingWords {
  readonly meanOf: (readings: number) => string;
  readonly form: Readonly<Record<Drawn["form"], string>>;
}

const reach = 14;
const lead = 4;
const leastTitle = 116;

/** Puts lines and labels round a thing at so many px to the metre. */
export function cellOf(drawn: DrawnInWords, perMetre: number, words: DrawingWords): Cell {
  const { outline } = drawn;
  const [width, height] = [outline.width * perMetre, outline.height * perMetre];
  const extra = beyond(drawn, perMetre);
  const placed = drawn.sides.map((side) => sideOf(side, perMetre, extra, words));
  const has = (side: Side["side"]): boolean => drawn.sides.some((one) => one.side === side);
  const lowest = Math.max(
    0,
    ...placed.flatMap((one) => one.labels).map(({ at, anchor }) => (anchor === "start" ? at.y - height : 0)),
  );
  const below = Math.max(extra.y + (has("below") ? 54 : 12), lowest + 10);
  const labels = placed.flatMap((one) => one.labels);
  const half = width / 2 + extra.x;
  const rights = labels.map(({ at, anchor, text, role }) => {
    const wide = textWidth(text, "sans", letterSizes[role]);
    return at.x + (anchor === "middle" ? wide / 2 : wide);
  });
  const lefts = labels
    .filter((one) => one.anchor === "middle")
    .map((one) => textWidth(one.text, "sans", letterSizes[one.role]) / 2);
  const left = Math.max(half, ...lefts, leastTitle / 2);
  const right = Math.max(half, ...rights, leastTitle / 2);
  const title = broken(drawn.name, {
    face: "serif",
    size: letterSizes.title,
    width: 2 * Math.min(left, right),
    lines: 2,
  });
  const titleLabels = title.map((text, n): Label =>
    label("title", text, { x: 0, y: height + below + 14 + 19 * n }, "middle"),
  );
  const formAt = height + below + 14 + 19 * title.length - 2;
  return {
    drawn,
    lines: placed.map((one) => one.line),
    labels: [...labels, ...titleLabels, label("form", words.form[drawn.form], { x: 0, y: formAt }, "middle")],
    left,
    right,
    above: has("above") ? 52 : 4 + (drawn.form === "circle" ? extra.y : 0),
    height,
    below: below + 14 + 19 * title.length + 6,
  };
}

/** How far the outlines of the uncertainty reach beyond the thing, sideways and below, in px. */
function beyond({ outline, thin }: DrawnInWords, perMetre: number): Point {
  const most = (size: "width" | "height"): number =>
    Math.max(0, ...thin.map((one) => one[size] - outline[size])) * perMetre;
  const round = outline.round !== null || thin.some((one) => one.round !== null);
  return { x: most("width") / 2, y: round ? most("height") / 2 : most("height") };
}

function label(role: LabelRole, text: string, at: Point, anchor: Label["anchor"]): Label {
  return { role, text, at, anchor, rtl: isRightToLeft(text) };
}

function sideOf(
  side: Side,
  perMetre: number,
  extra: Point,
  words: DrawingWords,
): { readonly line: DimensionLine; readonly labels: readonly Label[] } {
  const [a, b] = [scaled(side.from, perMetre), scaled(side.to, perMetre)];
  const { dimension, readings } = side;
  const mean = readings > 1 ? words.meanOf(readings) : "";
  const name = mean === "" ? dimension : `${dimension}, ${mean}`;
  const off: Point =
    side.side === "right"
      ? { x: reach + extra.x, y: 0 }
      : { x: 0, y: side.side === "above" ? -reach : side.side === "below" ? reach + extra.y : 0 };
  const [from, to] = [moved(a, off), moved(b, off)];
  const past = { x: Math.sign(off.x) * lead, y: Math.sign(off.y) * lead };
  const leads =
    side.side === "across"
      ? []
      : ([
          [moved(a, past), moved(from, past)],
          [moved(b, past), moved(to, past)],
        ] as const);
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const two = (at: Point, anchor: Label["anchor"]): readonly Label[] => [
    label("figure", side.figure, at, anchor),
    label("dimension", name, { x: at.x, y: at.y + 15 }, anchor),
  ];
  const labels =
    side.side === "right"
      ? [side.figure, dimension, mean]
          .filter((text) => text !== "")
          .map((text, n) =>
            label(
              n === 0 ? "figure" : "dimension",
              text,
              { x: middle.x + 9, y: middle.y - 2 + 15 * n },
              "start",
            ),
          )
      : side.side === "above"
        ? two({ x: middle.x, y: middle.y - 23 }, "middle")
        : side.side === "below"
          ? two({ x: middle.x, y: middle.y + 18 }, "middle")
          : inside(side, to.x, middle.y);
  return { line: { from, to, leads }, labels };
}

/** A figure within the thing, right of its middle line; left to the table where it has no room. */
function inside({ figure }: Side, half: number, y: number): readonly Label[] {
  const fits = textWidth(figure, "sans", letterSizes.figure) + 14 <= half && y >= 24;
  return fits ? [label("figure", figure, { x: 7, y: y - 5 }, "start")] : [];
}

function scaled({ x, y }: Point, perMetre: number): Point {
  return { x: x * perMetre, y: y * perMetre };
}

function moved({ x, y }: Point, by: Point): Point {
  return { x: x + by.x, y: y + by.y };
}
