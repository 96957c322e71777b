import type { Id } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
import type { Compiled } from "../compile.ts";
import type { Component } from "./component.ts";

/** Open things by their kind. */
export type Kinds = Pick<Component, "claims" | "evidence" | "arguments">;

const answering = new WeakMap<Graph, ReadonlySet<Id>>();
const speaking = new WeakMap<Compiled, ReadonlySet<Id>>();

/** The answers of all questions: the same for each of many parts. */
function answersIn(graph: Graph): ReadonlySet<Id> {
  const known = answering.get(graph) ?? new Set(graph.list("questions").flatMap((one) => one.values.answers));
  answering.set(graph, known);
  return known;
}

/** The ids of all arguments, likewise. */
function spokenIn(compiled: Compiled): ReadonlySet<Id> {
  const known = speaking.get(compiled) ?? new Set(compiled.arguments.map((one) => one.id));
  speaking.set(compiled, known);
  return known;
}

/** Sorts open things: claims, the answers of questions first; evidence; arguments, and positions with them. */
export function kindsIn(ids: readonly Id[], graph: Graph, compiled: Compiled): Kinds {
  const answers = answersIn(graph);
  const spoken = spokenIn(compiled);
  const isA = (list: string) => (id: Id) => graph.records.get(id)?.list === list && !spoken.has(id);
  const claims = ids.filter(isA("claims"));
  const evidence = ["observations", "measurements", "relations", "derivations"].flatMap((list) =>
    ids.filter(isA(list)),
  );
  return {
    claims: [...claims.filter((id) => answers.has(id)), ...claims.filter((id) => !answers.has(id))],
    evidence,
    arguments: ids.filter((id) => spoken.has(id) || isA("positions")(id)),
  };
}
