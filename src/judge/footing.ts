import type { Id } from "../base/finding.ts";
import type { Graph } from "../link/graph.ts";
import { latestPositions } from "./argument.ts";
import type { Judgement } from "./judge.ts";

/** What a claim reaches when one looks along the arguments for it and disregards attacks. */
export type Footing = "observed" | "silent" | "attested" | "bare";

/** The footing of every claim. */
export function footings(graph: Graph, judgement: Judgement): ReadonlyMap<Id, Footing> {
  const { compiled, counts } = judgement;
  const attested = new Set(
    latestPositions(graph, counts)
      .filter((one) => one.stance === "holds")
      .map((one) => one.claim),
  );
  const result = new Map<Id, Footing>();
  for (const claim of graph.list("claims")) {
    if (!counts(claim.id)) continue;
    const reached = reach(claim.id);
    const footing = reached.seen
      ? "observed"
      : reached.silence
        ? "silent"
        : reached.word || attested.has(claim.id)
          ? "attested"
          : "bare";
    result.set(claim.id, footing);
  }
  return result;

  function reach(claim: Id): { seen: boolean; silence: boolean; word: boolean } {
    const found = { seen: false, silence: false, word: false };
    const visited = new Set<Id>([claim]);
    const waiting = [claim];
    for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
      for (const place of compiled.pro.get(at) ?? []) {
        for (const premise of compiled.arguments[place]?.because ?? []) {
          const record = graph.records.get(premise);
          if (!record || !counts(premise) || visited.has(premise)) continue;
          visited.add(premise);
          if (record.list === "claims") waiting.push(premise);
          else if (record.list === "positions") found.word = true;
          else if (record.list === "observations" && record.values.present === "not-reported")
            found.silence = true;
          // Nothing says more than that.
          else return { ...found, seen: true };
        }
      }
    }
    return found;
  }
}
