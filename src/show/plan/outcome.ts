import type { Id } from "../../base/finding.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { bearingOn } from "../../derive/bearing.ts";
import type { Bearing } from "../../derive/bearing.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import type { Standing } from "../../judge/judge.ts";
import type { Graph } from "../../link/graph.ts";
import type { PlannedOutcome } from "../../plan/plan.ts";
import type { Plugin } from "../../plugin.ts";
import { named } from "../judged/standpoints/named.ts";
import type { Named } from "../judged/standpoints/named.ts";
import { mainNames, numberLines, valueWords } from "../numbers/value.ts";
import { whyWords } from "../numbers/why.ts";
import { percent } from "./wording.ts";

/** One outcome of an examination, and what would follow from it. */
export interface OutcomeLine {
  readonly id: Id;
  readonly text: Text;
  /** Claims that would stand differently, answers first. */
  readonly claims: readonly ClaimTurn[];
  /** How many arguments and pieces of evidence would stand differently. */
  readonly others: number;
  readonly numbers: readonly NumberTurn[];
  /** Numbers that are still to be computed; what hangs on them is taken as now. */
  readonly pending: readonly Named[];
  /** As recorded; what is expected of it where answers have priors. */
  readonly probability: Text | null;
  /** Where one sees most of what it would change. */
  readonly lands: { readonly page: "question" | "record"; readonly id: Id } | null;
}

/** A claim whose standing an outcome would change. */
export interface ClaimTurn extends Named {
  readonly was: Standing;
  readonly is: Standing;
}

/** A computed number that an outcome would change, and what it would then say of claims. */
export interface NumberTurn extends Named {
  readonly values: readonly {
    readonly name: string;
    readonly was: Text | null;
    readonly is: Text | null;
  }[];
  /** Why there would be no number; null where there would be one. */
  readonly why: Text | null;
  readonly says: readonly {
    readonly claim: Named;
    readonly was: Bearing | null;
    readonly is: Bearing | null;
  }[];
}

/** What outcomes are told with: the corpus, its methods, and which claims may be listed. */
export interface Telling {
  readonly graph: Graph;
  readonly plugins: readonly Plugin[];
  readonly listed: (claim: Id) => boolean;
  /** The questions that a claim answers. */
  readonly questionsOf: (claim: Id) => readonly Id[];
  /** The place of a claim among all answers in the order of the questions; infinite for other claims. */
  readonly placeOf: (claim: Id) => number;
}

/** One outcome; `expected` is how probable it is before it is known, where that can be told. */
export function outcomeLine(telling: Telling, outcome: PlannedOutcome, expected: number | null): OutcomeLine {
  const { graph, listed } = telling;
  const claims = [...outcome.changes].flatMap(([id, [was, is]]) =>
    graph.records.get(id)?.list === "claims" && listed(id) ? [{ ...named(graph, id), was, is }] : [],
  );
  const others = [...outcome.changes.keys()].filter((id) => graph.records.get(id)?.list !== "claims");
  const inOrder = claims.toSorted(
    (a, b) =>
      Number(outcome.decides.includes(b.id)) - Number(outcome.decides.includes(a.id)) ||
      byPlace(telling)(a.id, b.id),
  );
  return {
    id: outcome.id,
    text: outcome.text,
    claims: inOrder,
    others: others.length,
    numbers: [...outcome.numbers.values()].flatMap(([now, then]) => numberTurn(telling, now, then)),
    pending: outcome.pending.map((id) => named(graph, id)),
    probability: probabilityWords(outcome, expected),
    lands: landing(
      telling,
      inOrder.map((one) => one.id),
    ),
  };
}

/** Answers in the order in which the questions have them, other claims after them. */
export function byPlace({ placeOf }: Pick<Telling, "placeOf">): (a: Id, b: Id) => number {
  return (a, b) => (placeOf(a) === placeOf(b) ? 0 : placeOf(a) - placeOf(b));
}

/** The question that the first of the claims answers, else that claim's own sheet. */
function landing({ questionsOf }: Telling, claims: readonly Id[]): OutcomeLine["lands"] {
  const [question] = claims.flatMap(questionsOf);
  if (question !== undefined) return { page: "question", id: question };
  const [claim] = claims;
  return claim === undefined ? null : { page: "record", id: claim };
}

function probabilityWords({ probability }: PlannedOutcome, expected: number | null): Text | null {
  if (expected !== null) return percent(expected);
  if (probability === null) return null;
  if (typeof probability === "number") return percent(probability);
  const all = [...probability.values()];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  if (all.length === 0) return null;
  return low === high ? percent(low) : say`${percent(low)} to ${percent(high)}`;
}

/** A number that comes out otherwise to the digits one reads, or says something else; nothing where it does neither. */
function numberTurn(telling: Telling, now: Derived, then: Derived): readonly NumberTurn[] {
  const { graph, plugins, listed } = telling;
  const record = graph.records.get(now.id);
  if (record?.list !== "derivations") return [];
  const plugin = plugins.find((one) => one.id === record.values.plugin);
  const names = mainNames(record, now.status === "computed" ? now : then, plugin);
  const said = (derived: Derived): ReadonlyMap<string, Text> =>
    new Map(numberLines(derived, plugin).map((line) => [line.name, valueWords(line)]));
  const [before, after] = [said(now), said(then)];
  const values = names
    .map((name) => ({ name, was: before.get(name) ?? null, is: after.get(name) ?? null }))
    .filter((one) => inEnglish(one.was ?? "") !== inEnglish(one.is ?? ""));
  const asked = new Set([...now.bearings, ...then.bearings].map((one) => one.claim).filter(listed));
  const says = [...asked]
    .map((claim) => ({
      claim: named(graph, claim),
      was: bearingOn(now.bearings, claim),
      is: bearingOn(then.bearings, claim),
    }))
    .filter((one) => one.was !== one.is);
  const why = then.status === "computed" ? null : whyWords(graph, then);
  if (values.length + says.length === 0) return [];
  return [{ ...named(graph, now.id), values, why, says }];
}
