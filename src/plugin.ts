import type { Json } from "./base/json.ts";
import type { Id } from "./base/finding.ts";
import type { Quantity, QuantityKind } from "./base/quantity.ts";
import type { Random } from "./base/random.ts";
import type { Refusal } from "./base/refusal.ts";

export type { Json } from "./base/json.ts";
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

/** Marks a plug-in puts into a figure; positions are in data units, the drawing is somebody else's. */
export type Mark =
  | {
      readonly mark: "line";
      readonly points: readonly (readonly [number, number])[];
      readonly role: "main" | "null" | "step";
      readonly label?: string;
    }
  | {
      readonly mark: "dots";
      readonly points: readonly (readonly [number, number])[];
      readonly labels?: readonly string[];
      readonly open?: boolean;
    }
  | {
      readonly mark: "bars";
      readonly bars: readonly {
        readonly at: number;
        readonly low: number;
        readonly high: number;
        readonly label?: string;
      }[];
    }
  | { readonly mark: "rule"; readonly axis: "x" | "y"; readonly at: number; readonly label: string }
  | {
      readonly mark: "edge";
      readonly spans: readonly {
        readonly from: number;
        readonly to: number;
        readonly broken: boolean;
        readonly label?: string;
      }[];
    };

/** A figure as data: axes and marks; the drawing is somebody else's. */
export interface Figure {
  readonly title: string;
  readonly x: { readonly label: string; readonly unit: string };
  readonly y: { readonly label: string; readonly unit: string };
  readonly marks: readonly Mark[];
}

/** A condition under which the method misleads, in a sentence. */
export interface Caution {
  readonly id: string;
  readonly text: string;
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
  readonly figure: (computation: Computation, settings: Settings) => Figure;
  /** What the review prints in its methods section: one or two sentences with the numbers. */
  readonly sentence: (computation: Computation, settings: Settings) => string;
  readonly cautions: readonly Caution[];
  readonly examples: readonly Example[];
}
