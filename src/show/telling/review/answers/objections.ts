import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import type { Argument } from "../../../../judge/argument.ts";
import { evaluationOf } from "../../../../judge/explain/evaluation.ts";
import { labelText } from "../../../../link/names/label.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { paragraph } from "../pieces/inlines.ts";
import { argumentSentences } from "./argument.ts";

/** An objection, and what in an argument it is against: the step itself, or a piece of evidence it leans on. */
interface Objection {
  readonly by: Argument;
  readonly on: readonly Id[];
}

/**
 * The objections to an argument that name it or its evidence, a paragraph for each, with what is replied to it and what
 * became of it; arguments for a rival are none.
 */
export function objectionBlocks(sight: Sight, argument: Argument): readonly Block[] {
  return objectionsTo(sight, argument).flatMap(({ by, on }) => {
    const told = argumentSentences(sight, by, "objects", aim(sight, argument, on));
    if (told.length === 0) return [];
    const replies = objectionsTo(sight, by)
      .filter(({ by: reply }) => reply.id !== argument.id)
      .flatMap(({ by: reply }) => argumentSentences(sight, reply, "replies", say`In reply, `));
    return paragraph([...told, ...replies, outcome(sight, by)]);
  });
}

function objectionsTo(sight: Sight, argument: Argument): readonly Objection[] {
  const { attackersOf } = evaluationOf(sight.model.judgement);
  const found = new Map<Id, { by: Argument; on: Id[] }>();
  const evidence = argument.because.filter((id) => sight.graph.records.get(id)?.list !== "claims");
  for (const target of [argument.id, ...evidence])
    for (const by of attackersOf(target)) {
      if (!by.against.includes(target) || by.id === argument.id) continue;
      const known = found.get(by.id) ?? { by, on: [] };
      known.on.push(target);
      found.set(by.id, known);
    }
  return [...found.values()];
}

/** What an objection is against, to begin its sentence. */
function aim({ graph, withheld }: Sight, argument: Argument, on: readonly Id[]): Said {
  if (on.includes(argument.id)) return say`Against this step, `;
  const [first] = on;
  if (on.length !== 1 || first === undefined || withheld(first) || argument.because.length === 1)
    return say`Against this evidence, `;
  return say`Against one piece of this evidence, “${labelText(graph, first)}”, `;
}

/** Whether an objection works. */
function outcome({ model }: Sight, by: Argument): Inlines {
  switch (model.judgement.standings.get(by.id)) {
    case "stands":
      return [say`Nothing that works answers this objection.`];
    case "open":
      return [say`Whether this objection holds is open.`];
    case "falls":
      return [say`The objection falls.`];
    default:
      return [say`The objection has no support.`];
  }
}
