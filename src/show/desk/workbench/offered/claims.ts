import type { Id } from "../../../../base/finding.ts";
import type { Judgement } from "../../../../judge/judge.ts";
import type { Graph } from "../../../../link/graph.ts";
import { claimText } from "../../../pages/question.ts";
import { listedUnder } from "../../../withhold.ts";
import type { Choice } from "./choice.ts";

/** The claims that a number can bear on: those that answer a question, then the others, in the order of the corpus. */
export function claimsOffered(graph: Graph, judgement: Judgement): readonly Choice[] {
  const listed = listedUnder({ graph, judgement });
  const answers = graph.list("questions").flatMap(({ values }) => values.answers);
  const ids = new Set<Id>([...answers, ...graph.list("claims").map(({ id }) => id)]);
  return [...ids].filter(listed).map((id) => ({ value: id, text: claimText(graph, id) }));
}
