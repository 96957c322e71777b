import type { Id } from "../../../base/finding.ts";
import { labelOf } from "../../../link/label.ts";
import { judge } from "../../judge.ts";
import type { Rule } from "../rule.ts";
import { inWords, tell } from "../tell.ts";

/** Standings that change when one argument is taken as of ordinary strength. */
export const verdictDependsOnStrength: Rule = {
  id: "verdict-depends-on-strength",
  level: "note",
  title: "A standing changes when one weak or strong argument is taken as ordinary.",
  doc: "The verdict then rests on your weighing, not on the record alone. Say why the argument weighs more or less in why-strength; without that, this is a warning.",
  find: ({ graph, derivations, judgement, lens }) => {
    const weighed = judgement.compiled.arguments.filter((one) => one.strength !== "ordinary");
    const findings = weighed.flatMap((argument) => {
      const record = graph.records.get(argument.from);
      if (record?.list === "positions") return [];
      const other = judge(graph, derivations, lens, (id, strength) =>
        id === argument.id ? "ordinary" : strength,
      );
      const changed: Id[] = [];
      for (const { id } of graph.list("claims")) {
        if (judgement.standings.get(id) !== other.standings.get(id)) changed.push(id);
      }
      if (changed.length === 0) return [];
      const said = record?.list === "arguments" && record.values["why-strength"] !== undefined;
      const names = changed.map((id) => {
        const [was, would] = [judgement.standings.get(id) ?? "", other.standings.get(id) ?? ""];
        return `“${labelOf(graph, id)}” (${was}, else ${would})`;
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
