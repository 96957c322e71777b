import type { Id } from "../../../base/finding.ts";
import { labelOf } from "../../../link/label.ts";
import { latestPositions } from "../../argument.ts";
import { reasonOf } from "../../explain/reason.ts";
import type { Rule, View } from "../../rule.ts";
import { inWords, tell } from "../../tell.ts";

type Lack = {
  readonly rule: "unsupported-claim" | "circular-support" | "silence-only";
  readonly through: readonly Id[];
};

/** What a claim that somebody holds lacks, of three the last that fits; null when it is no unsupported claim. */
function lackOf(view: View, claim: Id): Lack | null {
  const { graph, derivations, judgement, footings } = view;
  if (judgement.standings.get(claim) !== "unsupported") return null;
  if (footings.get(claim) === "silent") return { rule: "silence-only", through: [] };
  const reason = reasonOf(graph, derivations, judgement, claim);
  if (reason.why === "circle") return { rule: "circular-support", through: reason.through };
  return { rule: "unsupported-claim", through: [barest(view, claim)] };
}

/** The unsupported claim farthest down the arguments for a claim. */
function barest({ judgement }: View, claim: Id): Id {
  const { compiled, standings } = judgement;
  const seen = new Set<Id>([claim]);
  for (let at = claim; ;) {
    const premises = (compiled.pro.get(at) ?? []).flatMap((one) => compiled.arguments[one]?.because ?? []);
    const next = premises.find((one) => standings.get(one) === "unsupported" && !seen.has(one));
    if (next === undefined) return at;
    seen.add(next);
    at = next;
  }
}

function held(view: View): ReadonlyMap<Id, readonly Id[]> {
  const holders = new Map<Id, Id[]>();
  for (const { claim, scholar, stance } of latestPositions(view.graph, view.judgement.counts)) {
    if (stance === "holds") holders.set(claim, [...(holders.get(claim) ?? []), scholar]);
  }
  return holders;
}

function support(
  id: Lack["rule"],
  title: string,
  doc: string,
  says: (view: View, claim: Id, who: string, lack: Lack) => string,
): Rule {
  return {
    id,
    level: "warning",
    title,
    doc,
    find: (view) => {
      const findings = [...held(view)].flatMap(([claim, scholars]) => {
        const lack = lackOf(view, claim);
        if (lack?.rule !== id) return [];
        const who = inWords(scholars.map((scholar) => labelOf(view.graph, scholar)));
        const about = [claim, ...lack.through.filter((one) => one !== claim)];
        return [tell(view.graph, id, "warning", about, says(view, claim, who, lack))];
      });
      return { findings };
    },
  };
}

export const unsupportedClaim = support(
  "unsupported-claim",
  "A claim that a scholar holds has no argument, or only such as lean on what is bare.",
  "Read the passage again: is a reason given there that was not recorded? If so, record it; if not, the claim is a bare assertion, and the review should say so. An argument of your own may be put under it.",
  ({ graph }, claim, who, { through }) => {
    const bare = through[0];
    return bare === undefined || bare === claim
      ? `${who} holds “${labelOf(graph, claim)}” without an argument, expected at least one under it.`
      : `${who} holds “${labelOf(graph, claim)}”, which leans on “${labelOf(graph, bare)}”, under which there is nothing.`;
  },
);

export const circularSupport = support(
  "circular-support",
  "Every argument for a claim that a scholar holds leans on the claim itself.",
  "Claims that hold one another up support nothing. Find evidence for one of them that does not come from the others.",
  ({ graph }, claim, who, { through }) => {
    const others = through.filter((one) => one !== claim).map((one) => `“${labelOf(graph, one)}”`);
    const way = others.length > 0 ? `through ${inWords(others)}` : "directly";
    return `${who} holds “${labelOf(graph, claim)}”, and every argument for it leans on itself, ${way}.`;
  },
);

export const silenceOnly = support(
  "silence-only",
  "For a claim that a scholar holds, only things passed over in silence are reached.",
  "Silence is weighed, not counted. Ask how often that author reports such traces where others saw them, and let a derivation of silence bear on the claim; or find somebody who looked.",
  ({ graph }, claim, who) =>
    `${who} holds “${labelOf(graph, claim)}” on silence alone, expected something seen or a weight for the silence.`,
);
