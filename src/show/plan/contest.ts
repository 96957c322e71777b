import type { Id } from "../../base/finding.ts";
import type { Plan } from "../../plan/plan.ts";
import { named } from "../judged/standpoints/named.ts";
import type { Named } from "../judged/standpoints/named.ts";
import type { Lines } from "./line.ts";
import { costInWords } from "./wording.ts";

/** What all examinations together could decide, and what none of them can. */
export interface ContestLines {
  /** Rivals that no recorded examination tells apart, and suggested ones that would. */
  readonly pairs: readonly {
    readonly answers: readonly [Named, Named];
    readonly suggested: readonly Named[];
  }[];
  /** Answers that no outcome makes stand or fall, and suggested examinations that would. */
  readonly answers: readonly { readonly answer: Named; readonly suggested: readonly Named[] }[];
  /** How many pairs of rivals are open. */
  readonly rivals: number;
  /** How many of them the set tells apart. */
  readonly told: number;
  /** The smallest set of examinations that tells them apart. */
  readonly set: readonly (Named & { readonly cost: string | null })[];
  readonly setCost: string | null;
  readonly nearMinimal: boolean;
}

/** The contest of a plan in names. */
export function contestLines({ graph, methodOf, costsIn }: Lines, { recorded, contest }: Plan): ContestLines {
  const { undecided, pairs, set, nearMinimal } = contest;
  const costs = new Map(recorded.map(({ examination }) => [examination.id, examination.cost]));
  const known = set.flatMap((id) => costs.get(id) ?? []);
  const looks = (ids: readonly Id[]): readonly Named[] => ids.map((id) => ({ id, text: methodOf(id) }));
  return {
    pairs: undecided.pairs.map(({ answers: [one, other], proposed }) => ({
      answers: [named(graph, one), named(graph, other)],
      suggested: looks(proposed),
    })),
    answers: undecided.answers.map(({ answer, proposed }) => ({
      answer: named(graph, answer),
      suggested: looks(proposed),
    })),
    rivals: pairs.length,
    told: pairs.filter((one) => one.by.length > 0).length,
    set: looks(set).map((one) => ({ ...one, cost: costInWords(costs.get(one.id) ?? null, costsIn) })),
    setCost:
      known.length < set.length
        ? null
        : costInWords(
            known.reduce((sum, one) => sum + one, 0),
            costsIn,
          ),
    nearMinimal,
  };
}
