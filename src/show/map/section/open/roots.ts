import type { Id } from "../../../../base/finding.ts";
import type { Net } from "../net/net.ts";
import { universeOf } from "../net/reach.ts";

/** What stands at the top of the map, and all that the map is about. */
export interface Ground {
  readonly answers: readonly Id[];
  /** Claims that answer nothing and serve nothing, and what else would otherwise be on no map. */
  readonly others: readonly Id[];
  readonly universe: ReadonlySet<Id>;
}

/** The answers of a question with all they rest on, or of all questions with the rest of the corpus's claims. */
export function groundOf(net: Net, question: Id | null): Ground {
  const questions = net.graph.list("questions").filter(({ id }) => question === null || id === question);
  const shown = (id: Id): boolean => net.kindOf(id) === "claim";
  const answers = [...new Set(questions.flatMap(({ values }) => values.answers))].filter(shown);
  const universe = new Set(universeOf(net, answers));
  if (question !== null) return { answers, others: [], universe };
  const others: Id[] = [];
  const take = (id: Id): void => {
    if (universe.has(id)) return;
    others.push(id);
    for (const one of universeOf(net, [id])) universe.add(one);
  };
  for (const claim of net.claims) if (net.usedIn(claim).length === 0) take(claim);
  for (const claim of net.claims) take(claim);
  for (const step of net.steps.values()) if (!universe.has(step.id)) take(step.against[0] ?? step.id);
  return { answers, others, universe };
}
