import type { Json } from "./base/json.ts";
import type { Id } from "./base/finding.ts";
import type { Quantity, QuantityKind } from "./base/quantity.ts";
import type { Random } from "./base/random.ts";
import type { Refusal } from "./base/refusal.ts";

export type { Json } from "./base/json.ts";
export { fieldsOf, membersOf, numberOf, rowsOf, textOf } from "./base/json.ts";
export { formatNumber, formatP, writtenUnit } from "./base/quantity/quantity-print.ts";
export type { Id } from "./base/finding.ts";
export type { Quantity, QuantityKind, QuantityForm, SharedError } from "./base/quantity.ts";
export type { Random } from "./base/random.ts";
export { randomFrom } from "./base/random.ts";
export type { Refusal } from "./base/refusal.ts";
export { refuse, isRefusal, refuseFewer, refuseUnlessPositive } from "./base/refusal.ts";
export * from "./base/numeric/index.ts";

/** A measurement as a plug-in sees it: one dimension of one artefact, after selection and merging. */
export interface Measured {
  readonly id: Id;
  readonly artefact: Id;
  readonly dimension: string;
  readonly quantity: Quantity;
  /** `complete`, `preserved` (its quantity is then a lower bound) or `reconstructed`. */
  readonly state: "complete" | "preserved" | "reconstructed";
  /** First source of the measurement, where it has one. */
  readonly source: Id | null;
}

/** A unit as a plug-in sees it: a size in SI with its standard uncertainty, and where it comes from. */
export interface UnitValue {
  readonly name: string;
  readonly kind: QuantityKind;
  readonly size: number;
  readonly u: number;
}

/** A setting after reading: a pure number, a quantity, a text or choice, a unit, or another derivation's number. */
export type Setting =
  | { readonly kind: "number"; readonly value: number }
  | { readonly kind: "quantity"; readonly value: Quantity }
  | { readonly kind: "text"; readonly value: string }
  | { readonly kind: "unit"; readonly value: UnitValue };

/** What a plug-in computes on, as data. */
export interface InputDeclaration {
  readonly name: string;
  /** A `number` is another derivation's: one pure number, in a list like the measurements. */
  readonly kind: "measurements" | "observations" | "number";
  readonly doc: string;
  readonly optional?: boolean;
  /** The other input whose members are matched one to one with this one's. */
  readonly pairedWith?: string;
  /** Take preserved lengths as the lower bounds they are, instead of leaving bounds out. */
  readonly takesBounds?: boolean;
}

/** A setting of a plug-in, as data. */
export interface ParameterDeclaration {
  readonly name: string;
  readonly kind: "number" | "quantity" | "text" | "choice" | "unit";
  readonly doc: string;
  readonly choices?: readonly string[];
  /** Text of the value used when none is given; none means the parameter stays unset. */
  readonly default?: string;
}

/** A number that a plug-in gives, as data. */
export interface NumberDeclaration {
  readonly name: string;
  /** `input`: in the kind of the first input's quantities (SI); else a pure number, a count or a probability. */
  readonly kind: "probability" | "count" | "number" | "input";
  readonly doc: string;
}

/** A computed number in SI, with its interval (95 % unless `doc` says otherwise); null where an end is not to be had. */
export interface ComputedNumber {
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
}

/** An input or the whole run left out of the computation by the plug-in itself, with the reason. */
export interface LeftOut {
  readonly id: Id;
  readonly why: string;
}

/** What came of a computation: numbers, what was left out, conditions met, and data for the figure. */
export interface Computation {
  readonly numbers: Readonly<Record<string, ComputedNumber>>;
  readonly leftOut: readonly LeftOut[];
  /** Short kebab-case words of conditions met in this run (`small-sample`), explained in `cautions`. */
  readonly warnings: readonly string[];
  /** Plot data for `figure`: plain, small, everything the figure needs. */
  readonly data: Json;
}

/** Two numbers: a place x, y in a panel, or the lower and the upper end of an interval. */
export type Pair = readonly [number, number];

/** A point with its 95 % intervals where it has any; `open` for one that stands apart from the rest. */
export interface Dot {
  readonly at: Pair;
  readonly xEnds?: Pair;
  readonly yEnds?: Pair;
  readonly label: string;
  readonly open?: boolean;
}

/** A stretch of an edge between two features; `open` is the end where the edge is broken off. */
export interface Stretch {
  /** Place of the row among the names of the y axis. */
  readonly row: number;
  readonly from: number;
  readonly to: number;
  readonly open: "start" | "end" | null;
}

/** A place that is pointed out on a curve, with a line down to the axis. */
export interface Peak {
  readonly at: Pair;
  readonly label: string;
  readonly detail: string;
  readonly strong: boolean;
}

/** Marks a plug-in puts into a panel; positions are in the units of the axes, the drawing is somebody else's. */
export type Mark =
  | {
      readonly mark: "line";
      readonly points: readonly Pair[];
      /** `main` is what the panel is about, `other` what it is held against, `null` what chance or one factor would give. */
      readonly role: "main" | "other" | "null";
      readonly label: string;
    }
  /** Between two curves: x, lower y, upper y. */
  | {
      readonly mark: "band";
      readonly points: readonly (readonly [number, number, number])[];
      readonly label: string;
    }
  /** Across the whole panel, between two places of one axis. */
  | {
      readonly mark: "reach";
      readonly axis: "x" | "y";
      readonly from: number;
      readonly to: number;
      readonly label: string;
    }
  | { readonly mark: "dots"; readonly dots: readonly Dot[]; readonly label: string }
  /** Short strokes across a curve. */
  | { readonly mark: "strokes"; readonly points: readonly Pair[]; readonly label: string }
  | {
      readonly mark: "rule";
      readonly axis: "x" | "y";
      readonly at: number;
      readonly role: "main" | "null" | "zero";
      readonly label: string;
      /** Tells the size of a single measurement, in a panel that else shows none. */
      readonly each?: true;
    }
  | { readonly mark: "peaks"; readonly peaks: readonly Peak[]; readonly label: string }
  | { readonly mark: "edge"; readonly stretches: readonly Stretch[]; readonly label: string };

/** An axis; `unit` is `1` where there is none. Its ends are the marks' own where they are not given. */
export interface Axis {
  readonly label: string;
  readonly unit: string;
  readonly scale?: "log";
  readonly from?: number;
  readonly to?: number;
  /** Names of the places 0, 1, 2 …, from the top, on an axis that tells things apart. */
  readonly names?: readonly string[];
}

/** One coordinate system of a figure, with the words that belong under it. */
export interface Panel {
  readonly title: string;
  /** What is to be seen, in sentences: the caption, and what is read aloud in place of the drawing. */
  readonly caption: string;
  /** Whether single measurements can be read off it, or only what they come to together. */
  readonly shows: "each" | "together";
  readonly x: Axis;
  readonly y: Axis;
  readonly marks: readonly Mark[];
}

/** A figure as data: panels from top to bottom; the drawing is somebody else's. */
export interface Figure {
  readonly title: string;
  readonly panels: readonly Panel[];
}

/** What an artefact or another record is called, by its id. */
export type Naming = (id: Id) => string;

/** A condition under which the method misleads, in a sentence. */
export interface Caution {
  readonly id: string;
  readonly text: string;
  /** Said of a run in which its warning was met, and of no other; else it holds for the method as such. */
  readonly whenMet?: true;
}

/** A worked example: a small corpus as text (YAML records by file name), and numbers expected from an outside source. */
export interface Example {
  readonly title: string;
  readonly source: string;
  readonly files: Readonly<Record<string, string>>;
  readonly derivation: Id;
  readonly expected: Readonly<Record<string, { readonly value: number; readonly tolerance: number }>>;
}

/** The measurements of each input by its name. */
export type Inputs = Readonly<Record<string, readonly Measured[]>>;
/** The settings given, by their names. */
export type Settings = Readonly<Record<string, Setting>>;

/** What a computation may use beside its inputs. */
export interface Tools {
  readonly random: Random;
  /** Tells how much of the work is done, 0 to 1. */
  readonly report: (done: number) => void;
  /** How often the data were looked at with other settings for the same claim, this look included; at least 1. */
  readonly looks: number;
}

/** What a plug-in is: a value, with neither registration nor state; it sees quantities and settings, never the graph. */
export interface Plugin {
  readonly id: string;
  readonly version: string;
  readonly title: string;
  readonly doc: string;
  /** Where the method was published. */
  readonly sources: readonly string[];
  readonly inputs: readonly InputDeclaration[];
  readonly parameters: readonly ParameterDeclaration[];
  readonly numbers: readonly NumberDeclaration[];
  readonly compute: (inputs: Inputs, settings: Settings, tools: Tools) => Computation | Refusal;
  readonly figure: (computation: Computation, settings: Settings, name: Naming) => Figure;
  /** What the review prints in its methods section: one or two sentences with the numbers. */
  readonly sentence: (computation: Computation, settings: Settings, name: Naming) => string;
  readonly cautions: readonly Caution[];
  readonly examples: readonly Example[];
}
