import type { Finding } from "../../../base/finding.ts";
import { labelOf } from "../../../link/names/label.ts";
import type { Rule } from "../rule.ts";
import { inWords, tell } from "../tell.ts";
import { sentence, named } from "./per-derivation.ts";

export const failedDerivation: Rule = {
  id: "failed-derivation",
  level: "error",
  title: "A derivation could not be computed.",
  doc: "The message says what is wrong with its plug-in, inputs or parameters, or which derivations lean on one another in a circle. It then supports and disputes nothing.",
  find: ({ graph, derivations }) => {
    const circles = derivations.circles.map((circle) => {
      const names = inWords(circle.map((id) => `“${labelOf(graph, id)}”`));
      const message = `${names} ${circle.length === 1 ? "leans on itself" : "lean on one another"}, expected derivations that do not lean on themselves.`;
      return tell(graph, "failed-derivation", "error", circle, message, { path: ["inputs"] });
    });
    const inCircles = new Set(derivations.circles.flat());
    const others = [...derivations.byId.values()].flatMap((derived) => {
      const about = (message: string, path: string): Finding =>
        tell(graph, "failed-derivation", "error", [derived.id], message, { path: [path] });
      if (inCircles.has(derived.id)) return [];
      if (derived.status === "failed") {
        return [
          about(`${named(graph, derived)} could not be computed. ${sentence(derived.why ?? "")}`, "id"),
        ];
      }
      return derived.bearings
        .filter((one) => one.trouble === "unreadable")
        .map((one) =>
          about(
            `What ${named(graph, derived)} bears on cannot be read. ${sentence(one.why ?? "")}`,
            "bears-on",
          ),
        );
    });
    return { findings: [...circles, ...others] };
  },
};
