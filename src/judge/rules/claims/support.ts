import type { Id } from "../../../base/finding.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import { row, say } from "../../../base/text/said/said.ts";
import type { Row, Said, Text } from "../../../base/text/said/said.ts";
import { latestPositions } from "../../argument.ts";
import { reasonOf } from "../../explain/reason.ts";
import { apart } from "../acceptance.ts";
import type { Rule, View } from "../rule.ts";
import { byCause, labels, quotedLabels, tell } from "../tell.ts";

/** What an unsupported claim lacks, and the claims through which. */
export type Lack = {
  readonly rule: "unsupported-claim" | "circular-support" | "silence-only";
  readonly through: readonly Id[];
};

/** What a claim that somebody holds lacks, of three the last that fits; null when it is no unsupported claim. */
export function lackOf(view: View, claim: Id): Lack | null {
  const { graph, derivations, judgement, footings } = view;
  if (judgement.standings.get(claim) !== "unsupported") return null;
  if (footings.get(claim) === "silent") return { rule: "silence-only", through: [] };
  const reason = reasonOf(graph, derivations, judgement, claim);
  if (reason.why === "circle") return { rule: "circular-support", through: reason.through };
  return { rule: "unsupported-claim", through: [barest(view, claim)] };
}

/** The unsupported claim farthest down the arguments for a claim. */
export function barest({ judgement }: View, claim: Id): Id {
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

/** Who holds each claim now. */
export function held(view: View): ReadonlyMap<Id, readonly Id[]> {
  const holders = new Map<Id, Id[]>();
  for (const { claim, scholar, stance } of latestPositions(view.graph, view.judgement.counts)) {
    if (stance === "holds") holders.set(claim, [...(holders.get(claim) ?? []), scholar]);
  }
  return holders;
}

/** A claim that somebody holds, what those are called who do, and what the claim lacks. */
export interface Lacking {
  readonly claim: Id;
  readonly who: Row;
  readonly holders: number;
  readonly lack: Lack;
}

/** A rule about claims that somebody holds and that lack support in one way; those of one cause are told together. */
export function support(
  id: Lack["rule"],
  title: Text,
  doc: Text,
  causeOf: (one: Lacking) => string,
  says: (view: View, group: readonly [Lacking, ...Lacking[]]) => Said,
): Rule {
  return {
    id,
    level: "warning",
    title,
    doc,
    find: (view) => {
      const lacking = [...held(view)].flatMap(([claim, scholars]): readonly Lacking[] => {
        const lack = lackOf(view, claim);
        if (lack?.rule !== id) return [];
        return [{ claim, who: labels(view.graph, scholars), holders: scholars.length, lack }];
      });
      const side = apart(view.graph, id);
      const findings = byCause(lacking, (one) => `${causeOf(one)}\n${side(one.claim)}`).map((group) => {
        const about = [...group.map(({ claim }) => claim), ...group.flatMap(({ lack }) => lack.through)];
        return tell(view.graph, id, "warning", [...new Set(about)], says(view, group));
      });
      return { findings };
    },
  };
}

/** Who holds which claims: `Vane holds “A” and “B” and Hale holds “C”`. */
export function holding({ graph }: View, group: readonly Lacking[]): Row {
  return row(
    byCause(group, ({ who }) => inEnglish(say`${who}`)).map((those) => {
      const [{ who, holders }] = those;
      const names = quotedLabels(
        graph,
        those.map(({ claim }) => claim),
      );
      return holders === 1 ? say`${who} holds ${names}` : say`${who} hold ${names}`;
    }),
  );
}
