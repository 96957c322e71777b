import type { Id } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
import type { Compiled } from "../compile.ts";
import type { Component } from "./component.ts";

/** Open things by their kind. */
export type Kinds = Pick<Component, "claims" | "evidence" | "arguments">;

/** Sorts open things: claims, the answers of questions first; evidence; arguments, and positions with them. */
export function kindsIn(ids: readonly Id[], graph: Graph, { arguments: steps }: Compiled): Kinds {
  const answers = new Set(graph.list("questions").flatMap((one) => one.values.answers));
  const spoken = new Set(steps.map((one) => one.id));
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
