import type { Id } from "../../../base/finding.ts";
import { labelOf } from "../../../link/names/label.ts";
import { reviser } from "../../revise.ts";
import type { Rule } from "../rule.ts";
import { inWords, tell } from "../tell.ts";

/** Standings that change when one argument is taken as of ordinary strength. */
export const verdictDependsOnStrength: Rule = {
  id: "verdict-depends-on-strength",
  level: "note",
  title: "A standing changes when one weak or strong argument is taken as ordinary.",
  doc: "The verdict then rests on your weighing, not on the record alone. Say why the argument weighs more or less in why-strength; without that, this is a warning.",
  find: ({ graph, derivations, judgement }) => {
    const weighed = judgement.compiled.arguments.filter((one) => one.strength !== "ordinary");
    const revise = reviser(graph, derivations, judgement);
    const order = new Map(graph.list("claims").map(({ id }, at) => [id, at]));
    const placeOf = (id: Id): number => order.get(id) ?? -1;
    const findings = weighed.flatMap((argument) => {
      const record = graph.records.get(argument.from);
      if (record?.list === "positions") return [];
      const { standings } = revise({ strengths: new Map([[argument.id, "ordinary"]]) });
      const changed = [...standings.keys()]
        .filter((id) => order.has(id))
        .sort((a, b) => placeOf(a) - placeOf(b));
      if (changed.length === 0) return [];
      // Of what is only supposed nobody is asked why.
      const said =
        graph.supposed?.records.has(argument.id) === true ||
        (record?.list === "arguments" && record.values["why-strength"] !== undefined);
      const names = changed.map((id) => {
        const [was, would] = standings.get(id) ?? [null, ""];
        return `“${labelOf(graph, id)}” (${was ?? ""}, else ${would})`;
      });
      const message = `${labelOf(graph, argument.id)} is taken as ${argument.strength}, and that decides ${inWords(names)}${said ? "" : "; expected a reason in why-strength"}.`;
      const about = [argument.from, ...changed];
      return [
        tell(graph, "verdict-depends-on-strength", said ? "note" : "warning", about, message, {
          path: ["strength"],
        }),
      ];
    });
    return { findings };
  },
};
