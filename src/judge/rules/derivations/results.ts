import type { Finding, Level } from "../../../base/finding.ts";
import type { Derived } from "../../../derive/derive.ts";
import { notCounting } from "../../../derive/select.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Step } from "../../../read/yaml/tree.ts";
import { authorLabel, labelOf } from "../../../link/label.ts";
import type { Rule, View } from "../../rule.ts";
import { inWords, tell } from "../../tell.ts";

/** What a rule has to say of a derivation, and of which of its fields. */
interface Said {
  readonly message: string;
  readonly path?: readonly Step[];
}

/** A rule that looks at each derivation by itself. */
function perDerivation(
  id: string,
  level: Level,
  title: string,
  doc: string,
  says: (derived: Derived, view: View) => readonly Said[],
): Rule {
  return {
    id,
    level,
    title,
    doc,
    find: (view) => ({
      findings: [...view.derivations.byId.values()].flatMap((derived) =>
        says(derived, view).map(({ message, path = ["id"] }) =>
          tell(view.graph, id, level, [derived.id], message, { path }),
        ),
      ),
    }),
  };
}

/** A sentence with a capital and a stop. */
const sentence = (text: string): string =>
  `${text.charAt(0).toUpperCase()}${text.slice(1).replace(/\.$/, "")}.`;

const named = (graph: Graph, derived: Derived): string => `“${labelOf(graph, derived.id)}”`;

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

export const refusedDerivation = perDerivation(
  "refused-derivation",
  "warning",
  "The method refused to compute on these data.",
  "A method refuses where its number would mislead: too few values, bounds only, mixed kinds. Give it more or better measurements, or use another method; a refused derivation bears on nothing.",
  (derived, { graph, lens }) =>
    derived.status === "refused" && derived.reason !== "unit-from-these-data" && !isTooEarly(derived, lens)
      ? [{ message: `${named(graph, derived)} was refused. ${sentence(derived.why ?? "")}` }]
      : [],
);

/** Looked at from a year in which its data were not all in print: no fault of the record's. */
function isTooEarly(derived: Derived, lens: View["lens"]): boolean {
  return lens.asOf !== undefined && derived.leftOut.some((one) => one.why === notCounting);
}

export const unitFromTheseData = perDerivation(
  "unit-from-these-data",
  "warning",
  "A unit is tested on the data it was found in.",
  "Such a test would always succeed. Test the unit on other things, or search these data for a unit instead and take the number of that search.",
  (derived, { graph }) =>
    derived.reason === "unit-from-these-data"
      ? [{ message: `${named(graph, derived)} was refused. ${sentence(derived.why ?? "")}` }]
      : [],
);

export const inconclusiveDerivation = perDerivation(
  "inconclusive-derivation",
  "note",
  "A number says nothing about a claim that it bears on.",
  "It meets neither what would support the claim nor what would dispute it, or both. That is a result: print it as one. More measurements may decide it.",
  (derived, { graph }) =>
    derived.status === "computed"
      ? derived.bearings.flatMap((one, place) => {
          if (one.bearing !== "inconclusive" || one.trouble !== null) return [];
          const message = `${named(graph, derived)} neither supports nor disputes “${labelOf(graph, one.claim)}”.`;
          return [{ message, path: ["bears-on", place] }];
        })
      : [],
);

export const supportsByLargeP = perDerivation(
  "supports-by-large-p",
  "warning",
  "A large p is asked to support a claim.",
  "A large p may only mean that the data could not show a difference. Add an upper bound on `detectable` to the same condition, so that a difference that matters would hardly have been missed.",
  (derived, { graph }) =>
    derived.bearings.flatMap((one, place) => {
      if (one.trouble !== "supports-by-large-p") return [];
      const message = `${named(graph, derived)} is to support “${labelOf(graph, one.claim)}” by a large p, expected a bound on what would have been missed.`;
      return [{ message, path: ["bears-on", place, "supports"] }];
    }),
);

export const repeatsMerged = perDerivation(
  "repeats-merged",
  "note",
  "Several readings of one dimension entered a computation as one mean.",
  "One dimension of one thing enters once. The mean is weighted by the uncertainties and keeps at least half the difference as its own. Name the better source in `prefer` to take its reading instead.",
  (derived, { graph }) => {
    if (derived.merged.length === 0) return [];
    const names = derived.merged.map((ids) => {
      const record = graph.records.get(ids[0] ?? "");
      const what =
        record?.list === "measurements"
          ? `${record.values.dimension} of ${labelOf(graph, record.values.of)}`
          : "";
      return `${what} (${inWords(ids.map((id) => authorLabel(graph, id)))})`;
    });
    const few = names.length > 3 ? [...names.slice(0, 3), `${names.length - 3} more`] : names;
    return [{ message: `${named(graph, derived)} takes the mean of several readings: ${inWords(few)}.` }];
  },
);
