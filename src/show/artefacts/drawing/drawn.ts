import type { Id } from "../../../base/finding.ts";
import type { Quantity } from "../../../base/quantity.ts";
import { folded } from "../../../link/dimension.ts";
import type { ArtefactRecord } from "../../../link/graph.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Said, Text } from "../../../base/text/said/said.ts";
import type { Worded } from "../../../base/text/said/worded.ts";
import { labelText } from "../../../link/names/label.ts";
import type { Point } from "../../map/scene.ts";
import type { Reported } from "../../report/report.ts";
import { siUnitFor, siWords, wholeU } from "../si-words.ts";
import { takingOf } from "../taken.ts";
import type { Taken } from "../taken.ts";
import { outlineOf } from "./outline.ts";
import type { EdgeState, Form, Length, Outline } from "./outline.ts";

/** A line that carries a dimension's figure: where it runs in metres, and on which side of the shape. */
export interface Side {
  readonly from: Point;
  readonly to: Point;
  readonly side: "above" | "below" | "right" | "across";
  readonly dimension: string;
  /** The figure as written, of one reading; of several the mean in SI. */
  readonly figure: string;
  readonly readings: number;
}

/** A thing as it is drawn to scale, in metres. */
export interface Drawn {
  readonly id: Id;
  readonly name: Text;
  readonly form: Form;
  readonly outline: Outline;
  /** The outlines of its dimensions less and plus their standard uncertainties. */
  readonly thin: readonly Outline[];
  readonly sides: readonly Side[];
  /** What it looks like, for those who do not see it. */
  readonly words: Text;
}

/** The same, its words in a language. */
export type DrawnInWords = Worded<Drawn>;

/** A thing that has a shape and cannot be drawn, with the dimension that nothing gives. */
export interface Undrawn {
  readonly id: Id;
  readonly name: Text;
  readonly lacks: readonly string[];
}

/** The shape of a thing by the values that a derivation would take; a reconstructed one only where there is no other. */
export function drawnOf(model: Reported, record: ArtefactRecord): Drawn | Undrawn | null {
  const { graph } = model;
  const { id, values } = record;
  const shape = values.shape;
  if (shape === undefined) return null;
  const [form, names] = formOf(shape);
  const own = takingOf(model, id, false).taken;
  const supplied = takingOf(model, id, false, true).taken;
  const found = names.map((name) => valueOf(graph.dimensionName(name), own, supplied));
  const name = labelText(graph, id);
  const lengths = found.flatMap((one) => (one === null ? [] : [one]));
  const outline = outlineOf(form, lengths.map(lengthOf));
  if (lengths.length < names.length || outline === null) {
    const lacks = names.filter((_, place) => found[place] === null);
    return { id, name, lacks: lacks.length > 0 ? lacks : names };
  }
  const thin = [-1, 1].flatMap((sign) => {
    const other = outlineOf(
      form,
      lengths.map(({ quantity }): Length => {
        const u = wholeU(quantity) ?? 0;
        return { metres: quantity.value + sign * u, state: "whole" };
      }),
    );
    return other === null || lengths.every(({ quantity }) => !wholeU(quantity))
      ? []
      : [around(outline, other)];
  });
  const sides = sidesOf(form, outline, lengths);
  return { id, name, form, outline, thin, sides, words: wordsOf(name, form, lengths) };
}

/** A circle's other outlines have its own middle; all others hang from the same top. */
function around(outline: Outline, other: Outline): Outline {
  if (other.round === null) return other;
  return { ...other, round: { ...other.round, at: { x: 0, y: outline.height / 2 } } };
}

type Shape = NonNullable<ArtefactRecord["values"]["shape"]>;

function formOf(shape: Shape): readonly [Form, readonly string[]] {
  if (shape.circle) return ["circle", shape.circle.slice(0, 1)];
  if (shape.rectangle) return ["rectangle", shape.rectangle.slice(0, 2)];
  return ["profile", shape.profile ?? []];
}

interface Used {
  readonly dimension: string;
  readonly quantity: Quantity;
  readonly state: EdgeState;
  readonly readings: number;
}

function valueOf(name: string, own: readonly Taken[], supplied: readonly Taken[]): Used | null {
  const named = (all: readonly Taken[]): Taken | undefined => {
    const those = all.filter(
      (one) => folded(one.dimension) === folded(name) && one.value.quantity.kind === "length",
    );
    return those.find((one) => one.between === null) ?? those[0];
  };
  const taken = named(own) ?? named(supplied);
  if (taken === undefined) return null;
  const { quantity, state } = taken.value;
  const bound: EdgeState =
    quantity.form === "at-least" ? "broken" : quantity.form === "at-most" ? "supplied" : "whole";
  return {
    dimension: name,
    quantity,
    state: state === "reconstructed" ? "supplied" : bound,
    readings: taken.ids.length,
  };
}

function lengthOf({ quantity, state }: Used): Length {
  return { metres: quantity.value, state };
}

/** The figure on a dimension line: as written, or of several readings their mean. */
function figureOf({ quantity, readings }: Used): string {
  return readings > 1 ? siWords(quantity, siUnitFor(quantity.kind, [quantity.value])) : quantity.text;
}

function sidesOf(form: Form, outline: Outline, lengths: readonly Used[]): readonly Side[] {
  const height = outline.height;
  const line = (used: Used, side: Side["side"], from: Point, to: Point): Side => ({
    from,
    to,
    side,
    dimension: used.dimension,
    figure: figureOf(used),
    readings: used.readings,
  });
  const level = (used: Used, side: Side["side"], y: number): Side => {
    const half = used.quantity.value / 2;
    return line(used, side, { x: -half, y }, { x: half, y });
  };
  const [first] = lengths;
  const last = lengths.at(-1);
  if (!first || !last) return [];
  if (form === "circle") return [level(first, "below", height)];
  const x = outline.width / 2;
  const upright = line(last, "right", { x, y: 0 }, { x, y: height });
  if (form === "rectangle") return [level(first, "below", height), upright];
  const widths = lengths.slice(0, -1);
  const across = widths.map((used, n) => {
    const y = widths.length > 1 ? (height * n) / (widths.length - 1) : 0;
    return level(used, n === 0 ? "above" : n === widths.length - 1 ? "below" : "across", y);
  });
  return [...across, upright];
}

const formWords: Readonly<Record<Form, Said>> = {
  circle: say`circle`,
  rectangle: say`rectangle`,
  profile: say`profile`,
};

function wordsOf(name: Text, form: Form, lengths: readonly Used[]): Text {
  const [one = "", ...others] = lengths.map(lengthWords);
  const all = others.reduce((before, next) => say`${before}; ${next}`, one);
  return say`${name}, ${formWords[form]}: ${all}.`;
}

function lengthWords(used: Used): Text {
  const { dimension, state } = used;
  switch (state) {
    case "whole":
      return say`${dimension} ${figureOf(used)}`;
    case "broken":
      return say`${dimension} ${figureOf(used)}, broken there`;
    case "supplied":
      return say`${dimension} ${figureOf(used)}, supplied`;
  }
}
