import type { Id } from "../../base/finding.ts";
import { byYear } from "../../base/order.ts";
import { stances } from "../../judge/argument.ts";
import type { Stance } from "../../judge/argument.ts";
import type { Judgement } from "../../judge/judge.ts";
import type { Graph } from "../../link/graph.ts";
import type { Text } from "../../base/text/said/said.ts";
import { labelText } from "../../link/names/label.ts";
import { withheldIn } from "../withhold.ts";

/** How a scholar stands to a claim. */
export type StanceName = Stance["stance"];

/** A claim that takes the place of another: its rival, held since. */
export interface Left {
  readonly claim: Id;
  readonly text: Text;
  readonly year: number | null;
}

/** What one scholar makes of one claim: every stance in the order of years, the last of them the present one. */
export interface Taken {
  readonly scholar: Id;
  readonly claim: Id;
  readonly stances: readonly Stance[];
  readonly stance: StanceName;
  /** Astronomical year since when the present stance is in print without another between; null when not known. */
  readonly since: number | null;
  /** Another stance was taken before. */
  readonly changed: boolean;
  /** The present stance is `holds`, and a claim that cannot be right together with it was held later. */
  readonly left: Left | null;
}

/** What every scholar makes of every claim under the lens, in corpus order; nothing withheld is among it. */
export function takenIn(graph: Graph, judgement: Judgement): readonly Taken[] {
  const withheld = withheldIn(graph);
  const all = new Map<string, Stance[]>();
  const held = new Map<Id, Stance[]>();
  for (const one of stances(graph, judgement.counts)) {
    if ([one.position, one.scholar, one.claim].some(withheld)) continue;
    const key = `${one.scholar}\n${one.claim}`;
    all.set(key, [...(all.get(key) ?? []), one]);
    if (one.stance === "holds") held.set(one.scholar, [...(held.get(one.scholar) ?? []), one]);
  }
  return [...all.values()].flatMap((list): readonly Taken[] => {
    const inOrder = list.toSorted((a, b) => byYear("first")(a.year, b.year));
    const last = inOrder.at(-1);
    if (!last) return [];
    const { scholar, claim, stance } = last;
    const other = inOrder.findLastIndex((one) => one.stance !== stance);
    const first = inOrder[other + 1] ?? last;
    const rivals = new Set(stance === "holds" ? graph.rivalsOf(claim) : []);
    const next = (held.get(scholar) ?? [])
      .filter((one) => rivals.has(one.claim) && byYear("first")(one.year, last.year) > 0)
      .toSorted((a, b) => byYear("first")(a.year, b.year))[0];
    const left = next ? { claim: next.claim, text: labelText(graph, next.claim), year: next.year } : null;
    return [{ scholar, claim, stances: inOrder, stance, since: first.year, changed: other >= 0, left }];
  });
}
