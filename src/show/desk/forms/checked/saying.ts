import type { Id } from "../../../../base/finding.ts";
import type { Graph } from "../../../../link/graph.ts";
import { kindOf } from "../../../../read/grammar/kinds.ts";
import { saidBy } from "../filled/asked.ts";
import type { FormAsked, Said } from "../filled/asked.ts";
import { proposedId, withOutcomeIds } from "../offered/proposed.ts";
import type { Meaning } from "./understood.ts";

/** What a form has written, the ids among it that are proposed where none was typed. */
export interface Saying extends Said {
  readonly proposed: Id | null;
  /** Ids that were given within the record. */
  readonly given: readonly Meaning[];
}

/** What is written when a form is saved, and what it is compared with; what its page does not show is in it. */
export function sayingOf(graph: Graph, asked: FormAsked): Saying {
  const { list, id } = asked;
  const said = saidBy(graph, asked);
  const needsId = kindOf(list).fields["id"]?.required === true;
  const proposed = id === null && needsId ? proposedId(graph, list, said.values) : null;
  const named =
    proposed === null || said.values["id"] !== undefined ? said.values : { id: proposed, ...said.values };
  return { ...said, proposed, ...withOutcomeIds(named) };
}
