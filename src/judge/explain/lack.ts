import type { Id } from "../../base/finding.ts";
import type { Derivations } from "../../derive/derive.ts";
import type { Graph } from "../../link/graph.ts";
import type { Judgement } from "../judge.ts";
import { rowsOf } from "../solver/program.ts";
import { circlesOf } from "../solver/strong-components.ts";
import { evaluationOf } from "./evaluation.ts";
import type { Evaluation } from "./evaluation.ts";
import { presenceOf } from "./reason.ts";
import { waysTo } from "./ways.ts";

/** What is missing under something unsupported. */
export type Missing =
  /** A claim under which there is no argument. */
  | { readonly what: "no-argument"; readonly of: Id }
  /** An argument for a claim that was left out, since what it leans on is not there or could not be read. */
  | { readonly what: "unread-argument"; readonly of: Id; readonly by: Id }
  /** Something that could not be read, or that does not count here: not in print yet, or left out. */
  | { readonly what: "not-read" | "not-counted"; readonly of: Id }
  | { readonly what: "not-computed"; readonly of: Id; readonly status: string }
  /** A number that was computed and decides nothing about the claim it bears on. */
  | { readonly what: "inconclusive"; readonly of: Id; readonly claim: Id }
  | { readonly what: "silence-unweighed"; readonly of: Id }
  /** Claims and arguments that hold one another up and nothing else does. */
  | { readonly what: "circle"; readonly members: readonly Id[] };

/** What is missing, and the way down to it, from what is unsupported to what lacks it. */
export interface Lack {
  readonly way: readonly Id[];
  readonly missing: Missing;
}

/** All that is missing under something unsupported, the nearest first. */
export function lacksOf(
  graph: Graph,
  derivations: Derivations,
  judgement: Judgement,
  id: Id,
): readonly Lack[] {
  const evaluation = evaluationOf(judgement);
  const bare = (of: Id): readonly Id[] => evaluation.needsOf(of).filter(evaluation.isBare);
  const lacks = waysTo(id, bare, () => true).flatMap((way): readonly Lack[] => {
    const end = way.at(-1) ?? id;
    return missingAt(graph, derivations, judgement, evaluation, end).map((missing) => ({ way, missing }));
  });
  return [...lacks, ...circlesBelow(id, bare)].sort((a, b) => a.way.length - b.way.length);
}

/** What one record lacks itself, whatever those below it lack. */
function missingAt(
  graph: Graph,
  derivations: Derivations,
  judgement: Judgement,
  { argument, needsOf, unweighed }: Evaluation,
  of: Id,
): readonly Missing[] {
  if (argument(of)) return unweighed(of) ? [{ what: "silence-unweighed", of }] : [];
  const presence = presenceOf(graph, judgement, of);
  if (presence !== "counts") return [{ what: presence, of }];
  const status = derivations.byId.get(of)?.status;
  if (status !== undefined) return status === "computed" ? [] : [{ what: "not-computed", of, status }];
  if (graph.records.get(of)?.list !== "claims" || needsOf(of).length > 0) return [];
  return [{ what: "no-argument", of }, ...saysNothing(graph, derivations, of)];
}

/** Arguments and numbers that were meant for a claim and say nothing: not read, not computed, or inconclusive. */
function saysNothing(graph: Graph, derivations: Derivations, claim: Id): readonly Missing[] {
  const unread = graph.leftOut.flatMap((one): readonly Missing[] =>
    one.list === "arguments" && one.values.therefore === claim
      ? [{ what: "unread-argument", of: claim, by: one.id }]
      : [],
  );
  const numbers = graph.list("derivations").flatMap(({ id, values }): readonly Missing[] => {
    const derived = derivations.byId.get(id);
    if (!derived || !values["bears-on"]?.some((entry) => entry.claim === claim)) return [];
    if (derived.status !== "computed") return [{ what: "not-computed", of: id, status: derived.status }];
    const decides = derived.bearings.some(
      (entry) => entry.claim === claim && entry.bearing !== "inconclusive",
    );
    return decides ? [] : [{ what: "inconclusive", of: id, claim }];
  });
  return [...unread, ...numbers];
}

/** The circles below a record in which each leans on the others. */
function circlesBelow(from: Id, bare: (of: Id) => readonly Id[]): readonly Lack[] {
  const ways = waysTo(from, bare, () => true);
  const ids = ways.map((way) => way.at(-1) ?? from);
  const place = new Map(ids.map((id, at) => [id, at]));
  const circle = circlesOf(rowsOf(ids.map((id) => bare(id).flatMap((need) => place.get(need) ?? []))));
  const found = new Map<number, { readonly way: readonly Id[]; readonly members: Id[] }>();
  ids.forEach((id, at) => {
    const of = circle[at] ?? -1;
    if (of < 0) return;
    const known = found.get(of) ?? { way: ways[at] ?? [from], members: [] };
    found.set(of, known);
    known.members.push(id);
  });
  return [...found.values()].map(({ way, members }) => ({ way, missing: { what: "circle", members } }));
}
