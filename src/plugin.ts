import type { Chronicle } from "./base/date/chronicle.ts";
import type { Json } from "./base/json.ts";
import type { Id } from "./base/finding.ts";
import type { Quantity, QuantityKind } from "./base/quantity.ts";
import type { Random } from "./base/outcome/random.ts";
import type { Figure } from "./base/outcome/figure.ts";
import type { Refusal } from "./base/outcome/refusal.ts";
import type { Text } from "./base/text/said/said.ts";

export type { Json } from "./base/json.ts";
export { fieldsOf, membersOf, numberOf, rowsOf, textOf } from "./base/json.ts";
export { formatDrawnP, isUnsettled } from "./base/outcome/drawn-p.ts";
export { holm } from "./base/outcome/holm.ts";
export { commonError, type Factor } from "./base/outcome/propagation.ts";
export { kindWords } from "./base/unit/kind-words.ts";
export {
  alike,
  formatNumber,
  formatP,
  formatProbability,
  writtenUnit,
} from "./base/quantity/quantity-print.ts";
export type { Chronicle, DatedEvent, DateStatement } from "./base/date/chronicle.ts";
export { boundsOf, type Bounds } from "./base/date/differences.ts";
export { smallestImpossible } from "./base/date/minimal.ts";
export { yearText } from "./base/date/year.ts";
export { yearWords } from "./base/date/year-words.ts";
export type { Id } from "./base/finding.ts";
export type { Quantity, QuantityKind, QuantityForm, SharedError } from "./base/quantity.ts";
export type { Random } from "./base/outcome/random.ts";
export { randomFrom } from "./base/outcome/random.ts";
export type { Pair, Dot, Stretch, Bar, Peak, Mark, Axis, Panel, Figure } from "./base/outcome/figure.ts";
export type { Refusal } from "./base/outcome/refusal.ts";
export { refuse, isRefusal, refuseFewer, refuseUnlessPositive } from "./base/outcome/refusal.ts";
export { either } from "./base/text/said/either.ts";
export { inEnglish } from "./base/text/said/english.ts";
export { paragraph } from "./base/text/said/paragraph.ts";
export { coded, count, countInWords, first, row, say } from "./base/text/said/said.ts";
export type { Said, Text } from "./base/text/said/said.ts";
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

/** An observation as a plug-in sees it: of what, of which kind of trace, whether it is there, and who says so. */
export interface Observed {
  readonly id: Id;
  /** The artefact, or several where it is about how they relate. */
  readonly artefacts: readonly Id[];
  /** One name for all spellings; null where the kind of trace is not named. */
  readonly feature: string | null;
  readonly present: "true" | "false" | "unclear" | "not-reported";
  /** First source of the observation, where it has one. */
  readonly source: Id | null;
  /** Further sources that tell the same of the same thing. */
  readonly alsoFrom: readonly Id[];
  readonly by: readonly Id[];
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
  readonly kind: "measurements" | "observations" | "dates" | "number";
  readonly doc: Text;
  /** The plug-in computes without it too, or on an empty one. */
  readonly optional?: boolean;
  /** The other input whose members are matched one to one with this one's. */
  readonly pairedWith?: string;
  /** Take preserved lengths as the lower bounds they are, instead of leaving bounds out. */
  readonly takesBounds?: boolean;
  /** Measurements, or instead of them observations of one feature. */
  readonly takesObservations?: boolean;
  /** The parameter whose text names one more dimension that the selection takes along. */
  readonly takesAlong?: string;
  /** What some source says itself: nothing that an examination is supposed to show is of it. */
  readonly ofSource?: boolean;
}

/** A setting of a plug-in, as data. */
export interface ParameterDeclaration {
  readonly name: string;
  readonly kind: "number" | "quantity" | "text" | "choice" | "unit";
  readonly doc: Text;
  readonly choices?: readonly string[];
  /** Text of the value used when none is given; none means the parameter stays unset. */
  readonly default?: string;
  /** The most that a number may be: what is asked for beyond it would never be done. */
  readonly most?: number;
  /** A size that the data are tested against: no number that was found in these very data can be given for it. */
  readonly beforehand?: true;
}

/** A number that a plug-in gives, as data. */
export interface NumberDeclaration {
  readonly name: string;
  /**
   * `input`: in the kind of the first input's quantities (SI); else a pure number, a count, the `probability` of a test, which
   * supports nothing by being large, or the `chance` that something is so.
   */
  readonly kind: "probability" | "chance" | "count" | "number" | "input";
  readonly doc: Text;
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
  readonly why: Text;
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

/** What an artefact or another record is called, by its id: words of the corpus, or words of ours about it. */
export type Naming = (id: Id) => Text;

/** A condition under which the method misleads, in a sentence. */
export interface Caution {
  readonly id: string;
  readonly text: Text;
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
/** What has no quantity, by the names of the inputs of these kinds: observations, and what is said of dates. */
export interface Recorded {
  readonly observations: Readonly<Record<string, readonly Observed[]>>;
  readonly dates: Readonly<Record<string, Chronicle>>;
}
/** The settings given, by their names. */
export type Settings = Readonly<Record<string, Setting>>;

/** What a computation may use beside its inputs. */
export interface Tools {
  readonly random: Random;
  /** Tells how much of the work is done, 0 to 1. */
  readonly report: (done: number) => void;
  /** How often the data were looked at with other settings for the same claim, this look included; at least 1. */
  readonly looks: number;
  /** Only the numbers are asked for, and what was left out: warnings and data may be empty where they cost time. */
  readonly onlyNumbers?: true;
}

/** What a plug-in is: a value, with neither registration nor state; it sees quantities and settings, never the graph. */
export interface Plugin {
  readonly id: string;
  readonly version: string;
  readonly title: Text;
  readonly doc: Text;
  /** Where the method was published. */
  readonly sources: readonly string[];
  readonly inputs: readonly InputDeclaration[];
  readonly parameters: readonly ParameterDeclaration[];
  readonly numbers: readonly NumberDeclaration[];
  /** Gets what is recorded otherwise than as a quantity where an input has any. */
  readonly compute: (
    inputs: Inputs,
    settings: Settings,
    tools: Tools,
    recorded?: Recorded,
  ) => Computation | Refusal;
  readonly figure: (computation: Computation, settings: Settings, name: Naming) => Figure;
  /**
   * What the review prints in its methods section: one or two sentences with the numbers. It tells single measurements
   * and what comes of them only where `tells` is not `together`.
   */
  readonly sentence: (
    computation: Computation,
    settings: Settings,
    name: Naming,
    tells?: "each" | "together",
  ) => Text;
  readonly cautions: readonly Caution[];
  readonly examples: readonly Example[];
  /** Put in by the host where the plug-in came with a corpus: the hash of its file, and why it cannot be used, if so. */
  readonly guest?: { readonly hash: string; readonly trouble: Text | null };
}
