import type { Id } from "../../base/finding.ts";
import type { Bearing } from "../../derive/bearing.ts";
import { trialsOf } from "../../derive/choices.ts";
import type { Bench, Trial } from "../../derive/choices.ts";
import type { Derived } from "../../derive/derive.ts";
import type { Judgement } from "../../judge/judge.ts";
import { authorLabel, labelOf } from "../../link/label.ts";
import { claimText } from "../pages/question.ts";
import { listedUnder, withheldIn } from "../withhold.ts";
import { numberLines, valueWords } from "./value.ts";
import { whyWords } from "./why.ts";

/** Another choice of readings, and what comes of it. */
export interface TurnLine {
  /** A source's readings throughout, or one single reading. */
  readonly throughout: boolean;
  readonly id: Id;
  readonly text: string;
  readonly numbers: readonly { readonly name: string; readonly value: string }[];
  /** Why it would give no number; null where it gives one. */
  readonly why: string | null;
  /** The claims of which it would say something else. */
  readonly turned: readonly {
    readonly claim: Id;
    readonly text: string;
    readonly says: Bearing | "says nothing of";
  }[];
}

/** What other choices of readings there are, and which of them would turn what a number says. */
export interface Turns {
  /** Choices looked at, those that give the very same numbers left out. */
  readonly tried: readonly TurnLine[];
  /** Choices whose numbers are still being computed. */
  readonly pending: number;
}

/** Tries every other choice of readings; `names` are the numbers to tell. Null where there is nothing that could turn. */
export function turnsOf(
  bench: Bench,
  judgement: Judgement,
  derived: Derived,
  names: readonly string[],
): Turns | null {
  if (derived.status !== "computed" || derived.bearings.length === 0) return null;
  const { graph } = bench;
  const withheld = withheldIn(graph);
  const listed = listedUnder({ graph, judgement });
  const plugin = bench.plugins.find((one) => one.id === derived.run?.plugin);
  const line = ({ choice, other, turned }: Trial): readonly TurnLine[] => {
    const id = choice.prefer ?? choice.use;
    if (id === undefined || other === null) return [];
    const said = numberLines(other, plugin).filter((one) => names.includes(one.name));
    const throughout = choice.prefer !== undefined;
    return [
      {
        throughout,
        id,
        text: throughout ? labelOf(graph, id) : `${labelOf(graph, id)} (${authorLabel(graph, id)})`,
        numbers: said.map((line) => ({ name: line.name, value: valueWords(line) })),
        why: other.status === "computed" ? null : whyWords(graph, other),
        turned: [...turned]
          .filter(([claim]) => listed(claim))
          .map(([claim, says]) => ({ claim, text: claimText(graph, claim), says })),
      },
    ];
  };
  const trials = trialsOf(bench, derived, (id) => judgement.standings.get(id) === "stands");
  const others = trials.filter(
    ({ choice, other }) =>
      !withheld(choice.prefer ?? choice.use ?? "") && (other === null || other.run?.key !== derived.run?.key),
  );
  return { tried: others.flatMap(line), pending: others.filter(({ other }) => other === null).length };
}
