import type { Id } from "../base/finding.ts";
import type { Json } from "../base/json.ts";
import { row, say } from "../base/text/said/said.ts";
import type { Text } from "../base/text/said/said.ts";
import type { QuantityKind } from "../base/quantity.ts";
import { parseQuantity } from "../base/quantity/quantity-text.ts";
import type { QuantityContext } from "../base/quantity/quantity-text.ts";
import type { DerivationRecord } from "../link/graph.ts";
import type { ComputedNumber, NumberDeclaration, Plugin } from "../plugin.ts";
import { asMap } from "./prepare/settings.ts";

/** What a number says about a claim. */
export type Bearing = "supports" | "disputes" | "inconclusive";

/** What a derivation says about one claim. */
export interface BearingOn {
  readonly claim: Id;
  readonly bearing: Bearing;
  readonly strength: "weak" | "ordinary" | "strong";
  /** What is wrong with the entry, if anything; it then says nothing. */
  readonly trouble: "unreadable" | "supports-by-large-p" | null;
  readonly why: Text | null;
}

/** A comparison read: both limits in SI, open ones infinite. */
export interface Comparison {
  readonly number: string;
  readonly text: string;
  readonly low: number;
  readonly high: number;
  readonly lowIn: boolean;
  readonly highIn: boolean;
}

/** Maps of comparisons of which one must hold wholly. */
export type Condition = readonly (readonly Comparison[])[];

type Read = { readonly condition: Condition } | { readonly why: Text };

/** A number is compared again and again, with every other choice and after every edit: what is asked of it is read once. */
const readBefore = new WeakMap<
  object,
  { readonly plugin: Plugin; readonly context: QuantityContext; readonly read: Read }
>();

/** Reads what a `bears-on` entry asks of the numbers; `why` says what is wrong with it. */
export function conditionOf(written: Json | undefined, plugin: Plugin, context: QuantityContext): Read {
  if (written === undefined) return { condition: [] };
  if (typeof written !== "object" || written === null) return conditionIn(written, plugin, context);
  const known = readBefore.get(written);
  if (known?.plugin === plugin && known.context === context) return known.read;
  const read = conditionIn(written, plugin, context);
  readBefore.set(written, { plugin, context, read });
  return read;
}

function conditionIn(written: Json, plugin: Plugin, context: QuantityContext): Read {
  const maps = Array.isArray(written) ? (written as readonly Json[]) : [written];
  const condition: (readonly Comparison[])[] = [];
  for (const map of maps) {
    const comparisons: Comparison[] = [];
    for (const [name, text] of Object.entries(asMap(map))) {
      const declared = plugin.numbers.find((number) => number.name === name);
      if (!declared) {
        const names = row(
          plugin.numbers.map((number) => number.name),
          "comma",
        );
        return { why: say`Unknown number \`${name}\`, expected one of ${names}` };
      }
      const read = typeof text === "string" ? comparisonOf(declared, text, context) : null;
      if (!read)
        return {
          why: say`Unexpected comparison \`${String(text)}\`, expected one such as "< 0.01" or "within 2..3"`,
        };
      comparisons.push(read);
    }
    if (comparisons.length === 0)
      return { why: say`Unexpected empty condition, expected at least one comparison` };
    condition.push(comparisons);
  }
  return { condition };
}

function comparisonOf(
  declared: NumberDeclaration,
  text: string,
  context: QuantityContext,
): Comparison | null {
  const value = (written: string): number | null => {
    const read = parseQuantity(written.trim(), context);
    if (!("ok" in read)) return null;
    const plain: readonly QuantityKind[] = ["number", "count"];
    return declared.kind !== "input" && !plain.includes(read.ok.kind) ? null : read.ok.value;
  };
  const base = { number: declared.name, text, low: -Infinity, high: Infinity, lowIn: true, highIn: true };
  const within = /^within\s+(.+?)\s*\.\.\s*(.+)$/.exec(text.trim());
  if (within) {
    const unit = /[^\d\s.±−+-].*$/.exec(within[2] ?? "")?.[0] ?? "";
    const lowText = within[1] ?? "";
    const low = value(/[^\d\s.−-]/.test(lowText) ? lowText : `${lowText} ${unit}`);
    const high = value(within[2] ?? "");
    return low === null || high === null || low > high ? null : { ...base, low, high };
  }
  const plain = /^(<=|>=|<|>|≤|≥)\s*(.+)$/.exec(text.trim());
  const limit = plain ? value(plain[2] ?? "") : null;
  if (!plain || limit === null) return null;
  const strict = plain[1] === "<" || plain[1] === ">";
  return plain[1] === "<" || plain[1] === "<=" || plain[1] === "≤"
    ? { ...base, high: limit, highIn: !strict }
    : { ...base, low: limit, lowIn: !strict };
}

/** What several entries together say of one claim: of two that do not agree, nothing; null where none is about it. */
export function bearingOn(
  entries: readonly { readonly claim: Id; readonly bearing: Bearing }[],
  claim: Id,
): Bearing | null {
  const said = new Set(entries.filter((one) => one.claim === claim).map((one) => one.bearing));
  if (said.size === 0) return null;
  if (said.has("supports") === said.has("disputes")) return "inconclusive";
  return said.has("supports") ? "supports" : "disputes";
}

/** Tells whether a condition holds for the whole interval of each number; none holds that asks nothing. */
export function holds(condition: Condition, numbers: Readonly<Record<string, ComputedNumber>>): boolean {
  return condition.some((comparisons) =>
    comparisons.every((one) => comparisonHolds(one, numbers[one.number])),
  );
}

/** A number with one end missing is open there; one with neither is compared as it stands. */
function comparisonHolds(one: Comparison, number: ComputedNumber | undefined): boolean {
  if (!number) return false;
  const bare = number.low === null && number.high === null;
  const low = bare ? number.value : (number.low ?? -Infinity);
  const high = bare ? number.value : (number.high ?? Infinity);
  const aboveLow = one.lowIn ? low >= one.low : low > one.low;
  const belowHigh = one.highIn ? high <= one.high : high < one.high;
  return aboveLow && belowHigh;
}

/** A condition that asks p to be above something without bounding what would have been missed supports nothing. */
export function asksLargeP(condition: Condition, plugin: Plugin): boolean {
  const probabilities = plugin.numbers.filter((one) => one.kind === "probability").map((one) => one.name);
  return condition.some(
    (comparisons) =>
      comparisons.some((one) => probabilities.includes(one.number) && one.low > 0) &&
      !comparisons.some((one) => one.number === "detectable" && one.high < Infinity),
  );
}

/** What a derivation's numbers say of each claim that it bears on. */
export function bearingsOf(
  derivation: DerivationRecord,
  plugin: Plugin,
  numbers: Readonly<Record<string, ComputedNumber>>,
  context: QuantityContext,
): readonly BearingOn[] {
  return (derivation.values["bears-on"] ?? []).map((entry): BearingOn => {
    const common = { claim: entry.claim, strength: entry.strength ?? ("ordinary" as const) };
    const supports = conditionOf(entry.supports, plugin, context);
    const disputes = conditionOf(entry.disputes, plugin, context);
    const wrong = "why" in supports ? supports.why : "why" in disputes ? disputes.why : null;
    if (wrong !== null || "why" in supports || "why" in disputes) {
      return { ...common, bearing: "inconclusive", trouble: "unreadable", why: wrong };
    }
    const largeP = asksLargeP(supports.condition, plugin);
    const forIt = !largeP && holds(supports.condition, numbers);
    const againstIt = holds(disputes.condition, numbers);
    const bearing = forIt === againstIt ? "inconclusive" : forIt ? "supports" : "disputes";
    return { ...common, bearing, trouble: largeP ? "supports-by-large-p" : null, why: null };
  });
}
