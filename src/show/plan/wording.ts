import { formatNumber } from "../../base/quantity/quantity-print.ts";
import type { NoGain, Reason } from "../../plan/plan.ts";

/** The order of a plan, in one sentence (format.md 7). */
export const rankingRule =
  "Ranked by how many answers each can decide, then by how many claims it can change; of equals, what is not destructive comes first, then what costs less, then by id.";

/**
 * What an examination would decide, names between the words: `It decides “a roof”, whatever comes of it.` What stands
 * or falls already is overturned, not decided.
 */
export function decidesInWords<Name>(told: Consequence<Name>, quoted: (name: Name) => string): string {
  const { idle, pending, decides, overturns, changed, outcomes } = told;
  if (idle && pending) return "What it can change hangs on numbers that are still to be computed.";
  if (idle)
    return changed === 0
      ? "Nothing it can show changes a standing."
      : "It changes the same standings whatever comes of it: nothing it can show tells one outcome from another.";
  const others = changed - decides.length - overturns.length;
  if (decides.length + overturns.length === 0)
    return `It decides no answer, and can change ${claims(changed)}.`;
  const named = (names: readonly Name[]): string => inARow(names.map(quoted));
  const does = (decide: string, overturn: string): string =>
    [
      ...(decides.length > 0 ? [`${decide} ${named(decides)}`] : []),
      ...(overturns.length > 0 ? [`${overturn} the standing of ${named(overturns)}`] : []),
    ].join(decides.length > 1 ? ", and " : " and ");
  const besides = (change: string): string => (others > 0 ? `, and ${change} ${claims(others)} besides` : "");
  if (outcomes === 1)
    return `If it ends as recorded, it ${does("decides", "overturns")}${besides("changes")}; no other outcome is recorded.`;
  return told.always
    ? `It ${does("decides", "overturns")}, whatever comes of it${besides("can change")}.`
    : `It can ${does("decide", "overturn")}${besides("can change")}.`;
}

/** What follows from an examination, as far as one line tells it. */
export interface Consequence<Name> {
  /** Answers that neither stand nor fall now, and can. */
  readonly decides: readonly Name[];
  /** Answers that stand now and can fall, or the other way about. */
  readonly overturns: readonly Name[];
  /** Claims that can change, those that are decided and overturned among them. */
  readonly changed: number;
  /** Every outcome decides or overturns each of them. */
  readonly always: boolean;
  /** How many outcomes are recorded. */
  readonly outcomes: number;
  readonly idle: boolean;
  /** Numbers of its outcomes are still to be computed. */
  readonly pending: boolean;
}

/** Names in a row: `a, b and c`. */
export function inARow(names: readonly string[]): string {
  if (names.length < 2) return names.join("");
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
}

function claims(n: number): string {
  return n === 1 ? "one claim" : `${n} claims`;
}

/** A cost in the corpus's measure: `1 day`, `4 days`; null where none is recorded. */
export function costInWords(cost: number | null, costsIn: string): string | null {
  if (cost === null) return null;
  return `${formatNumber(cost)}\u00a0${cost === 1 ? oneOf(costsIn) : costsIn}`;
}

/** The measure of one unit of cost, as far as a plain plural shows it: `day` for `days`. */
export function oneOf(costsIn: string): string {
  return /^[a-z]+[^s]s$/.test(costsIn) ? costsIn.slice(0, -1) : costsIn;
}

/** What one pays one of: `day` for `days`, else `unit of cost, in pounds sterling`. */
export function unitOfCost(costsIn: string): string {
  const one = oneOf(costsIn);
  return one === costsIn ? `unit of cost, in ${costsIn}` : one;
}

/** A probability in per cent, to two digits. */
export function percent(p: number): string {
  return `${formatNumber(p * 100, p > 0.995 && p < 1 ? 4 : 2)}\u00a0%`;
}

/** Bits to three digits: `0.31 bits`. */
export function bits(value: number): string {
  return bitsOf(bitsFigure(value));
}

/** A figure of bits with its unit: `1 bit`, `0.4 bits`. */
export function bitsOf(figure: string): string {
  return `${figure}\u00a0${figure === "1" ? "bit" : "bits"}`;
}

/** Bits as a figure alone; what is less than can matter is told so. */
export function bitsFigure(value: number): string {
  return value > 0 && value < 0.0005 ? "< 0.0005" : formatNumber(Number(value.toFixed(3)), 3);
}

/** Why no gain is told. */
export function noGainInWords(why: NoGain, label: (answer: string) => string): string {
  switch (why.why) {
    case "no-prior":
      return "No gain is told: no question has a prior.";
    case "no-probabilities":
      return "No gain is told: not every outcome has a probability.";
    case "answer-left-out":
      return `No gain is told: the probabilities leave out “${label(why.answer)}”.`;
    case "not-one":
      return `No gain is told: under “${label(why.answer)}” the probabilities add up to ${formatNumber(why.sum, 3)}, not to 1.`;
  }
}

/** Titles of what the record itself suggests, by the reason for it, and the reason in a sentence. */
export const suggestions: Readonly<
  Record<Reason["kind"], { readonly title: string; readonly because: string; readonly about: string }>
> = {
  "second-hand": {
    title: "Evidence that nobody has seen first-hand",
    because: "An answer leans on it, and all that is recorded of it is second-hand.",
    about: "Evidence",
  },
  attacked: {
    title: "Evidence that is disputed",
    because: "An argument is against it; a second look would show whether it is so.",
    about: "Against it",
  },
  "in-conflict": {
    title: "Measurements that do not agree",
    because: "Two readings of one dimension lie further apart than their uncertainty allows.",
    about: "Readings",
  },
  "rests-on": {
    title: "Things that an answer rests on",
    because: "Without what is recorded of it, an answer would not stand.",
    about: "Would not stand without it",
  },
  "no-number": {
    title: "Numbers that could not be computed",
    because: "A measurement is missing that the computation asks for.",
    about: "Number",
  },
};

/** Why the record suggests an examination: the answers that lean on the thing by name. */
export function becauseOf({ kind, about }: Reason, label: (id: string) => string): string {
  return kind === "rests-on"
    ? `Without what is recorded of it, ${inARow(about.map((id) => `“${label(id)}”`))} would not stand.`
    : suggestions[kind].because;
}

/** The kinds of suggestion in the order in which they are listed. */
export const suggestionOrder: readonly Reason["kind"][] = [
  "attacked",
  "in-conflict",
  "second-hand",
  "rests-on",
  "no-number",
];
