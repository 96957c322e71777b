import { formatNumber } from "../../base/quantity/quantity-print.ts";
import { count, row, say } from "../../base/text/said/said.ts";
import type { Hole, Row, Said, Text } from "../../base/text/said/said.ts";
import { quoted } from "../../base/text/said/rows.ts";
import type { NoGain, Reason } from "../../plan/plan.ts";

/** The order of a plan, in one sentence (format.md 7). */
export const rankingRule = say`Ranked by how many answers each can decide, then by how many claims it can change; of equals, what is not destructive comes first, then what costs less, then by id.`;

/**
 * What an examination would decide, names between the words: `It decides “a roof”, whatever comes of it.` What stands
 * or falls already is overturned, not decided.
 */
export function decidesInWords<Name>(told: Consequence<Name>, hole: (name: Name) => Hole): Said {
  const { idle, pending, decides, overturns, changed } = told;
  if (idle && pending) return say`What it can change hangs on numbers that are still to be computed.`;
  if (idle)
    return changed === 0
      ? say`Nothing it can show changes a standing.`
      : say`It changes the same standings whatever comes of it: nothing it can show tells one outcome from another.`;
  if (decides.length + overturns.length === 0)
    return changed === 1
      ? say`It decides no answer, and can change one claim.`
      : say`It decides no answer, and can change ${count(changed)} claims.`;
  const rows = [row(decides.map(hole)), row(overturns.map(hole))] as const;
  return besidesWhat(told, told.outcomes === 1 || told.always ? does(told, rows) : can(told, rows));
}

type Rows = readonly [decided: Row, overturned: Row];
type Both = Pick<Consequence<unknown>, "decides" | "overturns">;

function does({ decides, overturns }: Both, [decided, overturned]: Rows): Said {
  if (overturns.length === 0) return say`decides ${decided}`;
  if (decides.length === 0) return say`overturns the standing of ${overturned}`;
  return decides.length > 1
    ? say`decides ${decided}, and overturns the standing of ${overturned}`
    : say`decides ${decided} and overturns the standing of ${overturned}`;
}

function can({ decides, overturns }: Both, [decided, overturned]: Rows): Said {
  if (overturns.length === 0) return say`decide ${decided}`;
  if (decides.length === 0) return say`overturn the standing of ${overturned}`;
  return decides.length > 1
    ? say`decide ${decided}, and overturn the standing of ${overturned}`
    : say`decide ${decided} and overturn the standing of ${overturned}`;
}

function besidesWhat(told: Consequence<unknown>, what: Said): Said {
  const others = told.changed - told.decides.length - told.overturns.length;
  if (told.outcomes === 1) {
    if (others <= 0) return say`If it ends as recorded, it ${what}; no other outcome is recorded.`;
    return others === 1
      ? say`If it ends as recorded, it ${what}, and changes one claim besides; no other outcome is recorded.`
      : say`If it ends as recorded, it ${what}, and changes ${count(others)} claims besides; no other outcome is recorded.`;
  }
  if (told.always) {
    if (others <= 0) return say`It ${what}, whatever comes of it.`;
    return others === 1
      ? say`It ${what}, whatever comes of it, and can change one claim besides.`
      : say`It ${what}, whatever comes of it, and can change ${count(others)} claims besides.`;
  }
  if (others <= 0) return say`It can ${what}.`;
  return others === 1
    ? say`It can ${what}, and can change one claim besides.`
    : say`It can ${what}, and can change ${count(others)} claims besides.`;
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

/** A probability in per cent, to two digits, and to four near 100, which it never is unless it is certain. */
export function percent(p: number): string {
  if (p > 0.9999 && p < 1) return "> 99.99\u00a0%";
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
export function noGainInWords(why: NoGain, label: (answer: string) => Text): Said {
  switch (why.why) {
    case "no-prior":
      return say`No gain is told: no question has a prior.`;
    case "no-probabilities":
      return say`No gain is told: not every outcome has a probability.`;
    case "answer-left-out":
      return say`No gain is told: the probabilities leave out ${quoted(label(why.answer))}.`;
    case "not-one":
      return say`No gain is told: under ${quoted(label(why.answer))} the probabilities add up to ${formatNumber(why.sum, 3)}, not to 1.`;
  }
}

/** Titles of what the record itself suggests, by the reason for it, and the reason in a sentence. */
export const suggestions: Readonly<
  Record<Reason["kind"], { readonly title: Said; readonly because: Said; readonly about: Said }>
> = {
  "second-hand": {
    title: say`Evidence that nobody has seen first-hand`,
    because: say`An answer leans on it, and all that is recorded of it is second-hand.`,
    about: say`Evidence`,
  },
  attacked: {
    title: say`Evidence that is disputed`,
    because: say`An argument is against it; a second look would show whether it is so.`,
    about: say`Against it`,
  },
  "in-conflict": {
    title: say`Measurements that do not agree`,
    because: say`Two readings of one dimension lie further apart than their uncertainty allows.`,
    about: say`Readings`,
  },
  "rests-on": {
    title: say`Things that an answer rests on`,
    because: say`Without what is recorded of it, an answer would not stand.`,
    about: say`Would not stand without it`,
  },
  "no-number": {
    title: say`Numbers that could not be computed`,
    because: say`A measurement is missing that the computation asks for.`,
    about: say`Number`,
  },
};

/** Why the record suggests an examination: the answers that lean on the thing by name. */
export function becauseOf({ kind, about }: Reason, label: (id: string) => Text): Said {
  return kind === "rests-on"
    ? say`Without what is recorded of it, ${row(about.map((id) => quoted(label(id))))} would not stand.`
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
