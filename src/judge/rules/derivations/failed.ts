import type { Finding } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Rule } from "../rule.ts";
import { quotedLabel, quotedLabels, tell } from "../tell.ts";
import { sentence } from "./per-derivation.ts";

export const failedDerivation: Rule = {
  id: "failed-derivation",
  level: "error",
  title: say`A derivation could not be computed.`,
  doc: say`The message says what is wrong with its plug-in, inputs or parameters, or which derivations lean on one another in a circle. It then supports and disputes nothing.`,
  find: ({ graph, derivations }) => {
    const circles = derivations.circles.map((circle) => {
      const names = quotedLabels(graph, circle);
      const message =
        circle.length === 1
          ? say`${names} leans on itself, expected derivations that do not lean on themselves.`
          : say`${names} lean on one another, expected derivations that do not lean on themselves.`;
      return tell(graph, "failed-derivation", "error", circle, message, { path: ["inputs"] });
    });
    const inCircles = new Set(derivations.circles.flat());
    const others = [...derivations.byId.values()].flatMap((derived) => {
      const about = (message: Text, path: string): Finding =>
        tell(graph, "failed-derivation", "error", [derived.id], message, { path: [path] });
      if (inCircles.has(derived.id)) return [];
      const name = quotedLabel(graph, derived.id);
      if (derived.status === "failed") {
        return [about(say`${name} could not be computed. ${sentence(derived.why ?? "")}`, "id")];
      }
      return derived.bearings
        .filter((one) => one.trouble === "unreadable")
        .map((one) =>
          about(say`What ${name} bears on cannot be read. ${sentence(one.why ?? "")}`, "bears-on"),
        );
    });
    return { findings: [...circles, ...others] };
  },
};
