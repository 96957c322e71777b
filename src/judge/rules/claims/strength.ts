import type { Id } from "../../../base/finding.ts";
import { row, say } from "../../../base/text/said/said.ts";
import type { Said, Text } from "../../../base/text/said/said.ts";
import { labelText } from "../../../link/names/label.ts";
import { reviser } from "../../revise.ts";
import type { Rule } from "../rule.ts";
import { quotedLabel, tell } from "../tell.ts";

/** Standings that change when one argument is taken as of ordinary strength. */
export const verdictDependsOnStrength: Rule = {
  id: "verdict-depends-on-strength",
  level: "note",
  title: say`A standing changes when one weak or strong argument is taken as ordinary.`,
  doc: say`The verdict then rests on your weighing, not on the record alone. Say why the argument weighs more or less in why-strength; without that, this is a warning.`,
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
        return say`${quotedLabel(graph, id)} (${standingWords(was)}, else ${standingWords(would)})`;
      });
      const label = labelText(graph, argument.id);
      const decides =
        argument.strength === "weak"
          ? say`${label} is taken as weak, and that decides ${row(names)}`
          : say`${label} is taken as strong, and that decides ${row(names)}`;
      const message = said ? say`${decides}.` : say`${decides}; expected a reason in why-strength.`;
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

function standingWords(standing: string | null): Text {
  return standings[standing ?? ""] ?? standing ?? "";
}

const standings: Readonly<Record<string, Said>> = {
  stands: say`stands`,
  open: say`open`,
  falls: say`falls`,
  unsupported: say`unsupported`,
};
