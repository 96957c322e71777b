import type { Id } from "../../base/finding.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import type { Graph } from "../../link/graph.ts";
import { labelText } from "../../link/names/label.ts";
import type { Planned } from "../../plan/plan.ts";
import { named } from "../judged/standpoints/named.ts";
import type { Named } from "../judged/standpoints/named.ts";
import { bitsFigure, noGainInWords, percent } from "./wording.ts";

/** What an examination is expected to tell of a question: how probable each answer is now, and after each outcome. */
export interface GainTable {
  readonly question: Named;
  /** Expected gain in bits. */
  readonly bits: string;
  readonly answers: readonly Named[];
  readonly prior: { readonly answers: readonly string[]; readonly bits: string };
  readonly outcomes: readonly {
    readonly text: Text;
    readonly p: string;
    /** In the order of the answers; empty where the outcome cannot be. */
    readonly posterior: readonly string[];
    readonly bits: string;
  }[];
  /** Bits for one unit of cost, and its place among all in that order; null without a cost. */
  readonly perCost: { readonly bits: string; readonly place: number } | null;
}

/** The table of an examination's gain; null where it has none. `place` is its place by gain for its cost. */
export function gainTable(graph: Graph, planned: Planned, place: number | null): GainTable | null {
  const { gain, gainPerCost } = planned;
  if (gain === null) return null;
  const texts = planned.outcomes.map((one) => one.text);
  return {
    question: named(graph, gain.question),
    bits: bitsFigure(gain.bits),
    answers: [...gain.prior.keys()].map((id) => named(graph, id)),
    prior: { answers: [...gain.prior.values()].map(percent), bits: bitsFigure(gain.priorBits) },
    outcomes: gain.outcomes.map(({ p, posterior, entropy }, at) => ({
      text: texts[at] ?? "",
      p: percent(p),
      posterior: posterior.map(percent),
      bits: bitsFigure(entropy),
    })),
    perCost:
      gainPerCost === null || gainPerCost === 0 || place === null
        ? null
        : { bits: bitsFigure(gainPerCost), place },
  };
}

/** Why an examination has no gain in words; null where it has one. */
export function noGainLine(graph: Graph, { noGain }: Planned): Said | null {
  return noGain === null ? null : noGainInWords(noGain, (answer: Id) => labelText(graph, answer));
}
