import type { Id } from "../../base/finding.ts";
import { byText } from "../../base/order.ts";
import { comparable, conflict } from "../../judge/rules/measurements/compare.ts";
import { folded } from "../../link/dimension.ts";
import type { Graph, MeasurementRecord } from "../../link/graph.ts";
import type { PlanBench, Reason } from "../plan.ts";
import { shownIn } from "../consequence.ts";
import { unseenIn } from "./first-hand.ts";
import { nearnessToAnswers } from "./nearness.ts";
import { remembered } from "../../base/text/remembered.ts";

/** An examination that the record suggests, before it is thought through: its id and why. */
export interface Candidate {
  readonly id: Id;
  readonly reason: Reason;
  /** Steps to the answer it bears on, the fewer the better; infinite where it bears on none. */
  readonly nearness: number;
}

/** Refusals that more or better measurements could mend. */
const mendable: readonly (string | null)[] = ["too-few", "empty-selection", "no-observed-values"];

/**
 * All that the record suggests looking at, what is nearest to an open answer first; each examination once, for its
 * first reason. What is only second-hand is worth a look where an answer hangs on it. Yields between its parts.
 */
export function* candidatesIn(bench: PlanBench): Generator<void, readonly Candidate[]> {
  const nearness = nearnessToAnswers(bench);
  yield;
  const readings = yield* inConflict(bench);
  yield;
  const unseen = yield* secondHand(bench);
  yield;
  const shown = shownIn(bench);
  const once = new Map<Id, Candidate>();
  const found = [readings, attacked(bench), unseen, withoutNumber(bench), restedOn(bench)];
  for (const { id, bears, reason } of found.flat()) {
    const steps = Math.min(...bears.map(nearness));
    const about = reason.about.filter(shown);
    const idle = steps === Infinity && reason.kind === "second-hand";
    if (once.has(id) || idle || about.length === 0) continue;
    once.set(id, { id, reason: { ...reason, about }, nearness: steps });
  }
  yield;
  return [...once.values()].sort((a, b) => byNearness(a, b) || byText(a.id, b.id));
}

/** Of two that are nowhere near an answer neither is nearer. */
function byNearness({ nearness: a }: Candidate, { nearness: b }: Candidate): number {
  return a === b ? 0 : a - b;
}

interface Found {
  readonly id: Id;
  /** What must bear on an answer. */
  readonly bears: readonly Id[];
  readonly reason: Reason;
}

/** One dimension of one thing whose readings differ by more than they allow. */
function* inConflict({ graph, judgement }: PlanBench): Generator<void, readonly Found[]> {
  const first = firstReadings(graph);
  yield;
  const groups = comparable({ graph, judgement });
  yield;
  return groups.flatMap((group): readonly Found[] => {
    const clashing = group
      .filter((one) => group.some((other) => other !== one && conflict(one, other, graph)))
      .map((one) => one.id);
    const named = group[0] && first(group[0]);
    if (clashing.length === 0 || named === undefined) return [];
    const reason: Reason = { kind: "in-conflict", about: clashing };
    return [{ id: `measure-again:${named}`, bears: clashing, reason }];
  });
}

/** The first reading of the same dimension of the same thing between the same landmarks: a second measurement is named by it. */
function firstReadings(graph: Graph): (record: MeasurementRecord) => Id | undefined {
  const nameOf = remembered((written) => folded(graph.dimensionName(written)));
  const first = new Map<string, Id>();
  const keyOf = ({ values }: MeasurementRecord): string =>
    `${values.of}\n${nameOf(values.dimension)}\n${values.between ?? ""}`;
  for (const one of graph.list("measurements")) {
    const key = keyOf(one);
    if (one.values.spread !== true && !first.has(key)) first.set(key, one.id);
  }
  return (record) => first.get(keyOf(record));
}

/** Observations and measurements that an argument is against. */
function attacked({ graph, judgement }: PlanBench): readonly Found[] {
  const { contra, arguments: argued } = judgement.compiled;
  return [...contra].flatMap(([id, places]): readonly Found[] => {
    const list = graph.records.get(id)?.list;
    if (list !== "observations" && list !== "measurements") return [];
    const about = places.flatMap((at) => argued[at]?.id ?? []);
    return [{ id: `look-again:${id}`, bears: [id], reason: { kind: "attacked", about } }];
  });
}

function* secondHand({ graph, judgement }: PlanBench): Generator<void, readonly Found[]> {
  const unseen = yield* unseenIn(graph);
  return unseen
    .filter((one) => judgement.counts(one.id) && !isCopy(one))
    .map(({ id }) => ({
      id: `look-again:${id}`,
      bears: [id],
      reason: { kind: "second-hand", about: [id] },
    }));
}

/** A number taken over from another is looked at where that one is. */
function isCopy(record: { readonly list: string; readonly values: object }): boolean {
  return record.list === "measurements" && (record as MeasurementRecord).values.repeats !== undefined;
}

/** Derivations that cannot compute on what there is. */
function withoutNumber({ graph, derivations }: PlanBench): readonly Found[] {
  return [...derivations.byId.values()].flatMap(({ id, status, reason }): readonly Found[] => {
    const record = graph.records.get(id);
    if (status !== "refused" || !mendable.includes(reason) || record?.list !== "derivations") return [];
    const bears = [id, ...(record.values["bears-on"] ?? []).map((one) => one.claim)];
    return [{ id: `measure:${id}`, bears, reason: { kind: "no-number", about: [id] } }];
  });
}

/** Artefacts without which an answer would not stand. */
function restedOn({ graph, restsOn }: PlanBench): readonly Found[] {
  const answers = new Map<Id, Id[]>();
  for (const claim of new Set(graph.list("questions").flatMap((one) => one.values.answers))) {
    for (const id of restsOn.get(claim) ?? []) {
      if (graph.records.get(id)?.list === "artefacts") answers.set(id, [...(answers.get(id) ?? []), claim]);
    }
  }
  return [...answers].map(([id, about]) => ({
    id: `see-again:${id}`,
    bears: about,
    reason: { kind: "rests-on", about },
  }));
}
