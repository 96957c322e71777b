import type { Id } from "../../../base/finding.ts";
import type { Judgement, Standing } from "../../../judge/judge.ts";
import type { Graph } from "../../../link/graph.ts";
import { withheldIn } from "../../withhold.ts";

/** One line of the outline: a record, how it stands to the line above it, and what lies under it. */
export interface Branch {
  readonly id: Id;
  readonly role: "answer" | "for" | "against" | "from" | "used" | "thing";
  readonly standing: Standing | null;
  /** The record is shown in full elsewhere above, since it would lead round in a circle. */
  readonly again: boolean;
  readonly under: readonly Branch[];
}

/** What a claim, an argument or a piece of evidence rests on, and what is against it, down to the things themselves. */
export function outlineOf(
  graph: Graph,
  judgement: Judgement,
  id: Id,
  role: Branch["role"] = "answer",
): Branch {
  const { compiled, standings } = judgement;
  const withheld = withheldIn(graph);
  const branch = (one: Id, as: Branch["role"], above: readonly Id[]): Branch => {
    const again = above.includes(one);
    const path = [...above, one];
    return {
      id: one,
      role: as,
      standing: standings.get(one) ?? null,
      again,
      under: again ? [] : below(one).map(([next, how]) => branch(next, how, path)),
    };
  };
  const below = (one: Id): readonly (readonly [Id, Branch["role"]])[] => {
    const found: (readonly [Id, Branch["role"]])[] = [];
    const idAt = (at: number): Id => compiled.arguments[at]?.id ?? one;
    const at = compiled.named.placeOf(one);
    if (at !== -1) {
      for (const premise of compiled.arguments[at]?.because ?? []) found.push([premise, "from"]);
    } else {
      for (const step of compiled.pro.get(one) ?? []) found.push([idAt(step), "for"]);
    }
    for (const step of compiled.contra.get(one) ?? []) found.push([idAt(step), "against"]);
    const record = graph.records.get(one);
    if (record?.list === "observations") for (const thing of record.values.of) found.push([thing, "thing"]);
    if (record?.list === "measurements") found.push([record.values.of, "thing"]);
    return found.filter(([other]) => !withheld(other));
  };
  return branch(id, role, []);
}
