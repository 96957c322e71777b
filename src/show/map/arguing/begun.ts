import type { Id } from "../../../base/finding.ts";
import type { Graph } from "../../../link/graph.ts";
import { ownWritten } from "../../../read/edit/head.ts";
import { isList } from "../../../read/edit/written.ts";
import type { Written } from "../../../read/edit/written.ts";
import { withheldIn } from "../../withhold.ts";
import { nothingInHand } from "./draft.ts";
import type { Aim, ArgumentDraft } from "./draft.ts";

/** An argument of the corpus taken in hand to be changed; null where there is none of that name, or it is withheld. */
export function takenInHand(graph: Graph, id: Id): ArgumentDraft | null {
  const record = graph.records.get(id);
  const withheld = withheldIn(graph);
  if (record?.list !== "arguments" || withheld(id)) return null;
  const { because, therefore, against = [] } = record.values;
  const shown = against.filter((one) => !withheld(one));
  const aim: Aim =
    therefore !== undefined && !withheld(therefore)
      ? { to: "claim", id: therefore }
      : shown.length === 0
        ? { to: "nothing" }
        : { to: "against", ids: shown, claim: graph.records.get(shown[0] ?? "")?.list === "claims" };
  const written = ownWritten(record);
  const text = (name: string): string => {
    const value = written[name];
    return typeof value === "string" ? value : "";
  };
  const shownIn = (name: string): readonly string[] =>
    textsIn(written[name]).filter((one) => !withheld(one.split(/\s/u)[0] ?? ""));
  return {
    ...nothingInHand,
    of: id,
    because: because.filter((one) => !withheld(one)),
    aim,
    text: text("text"),
    scheme: text("scheme"),
    strength: text("strength"),
    why: text("why-strength"),
    by: shownIn("by"),
    from: shownIn("from"),
  };
}

/** The question that a claim answers; the first where it answers several, null where it answers none. */
export function questionOf(graph: Graph, claim: Id): Id | null {
  const withheld = withheldIn(graph);
  const asks = graph.list("questions").find((one) => one.values.answers.includes(claim) && !withheld(one.id));
  return asks?.id ?? null;
}

function textsIn(value: Written | undefined): readonly string[] {
  if (value === undefined) return [];
  if (typeof value === "string") return [value];
  return isList(value) ? value.filter((one) => typeof one === "string") : [];
}
