import type { Id } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Bearing } from "../../../derive/bearing.ts";
import { beatenChoices, trialsOf } from "../../../derive/choices.ts";
import type { Bench, Trial } from "../../../derive/choices.ts";
import { formatSI } from "../../../base/quantity/quantity-print.ts";
import type { Derived } from "../../../derive/derived/derived.ts";
import type { Choice } from "../../../derive/lens.ts";
import type { Judgement } from "../../../judge/judge.ts";
import type { Graph } from "../../../link/graph.ts";
import { authorText, labelText } from "../../../link/names/label.ts";
import { claimText } from "../../pages/question.ts";
import { listedUnder, withheldIn } from "../../withhold.ts";
import { numberLines, valueWords } from "../value.ts";
import { whyWords } from "../why.ts";

/** Another choice of readings, and what comes of it. */
export interface TurnLine {
  /** A source's readings throughout, or another size of the unit; else one single reading. */
  readonly throughout: boolean;
  /** The source or the reading; null for a size of the unit. */
  readonly id: Id | null;
  readonly text: Text;
  readonly numbers: readonly { readonly name: string; readonly value: Text }[];
  /** Why it would give no number; null where it gives one. */
  readonly why: Text | null;
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
  /** Readings that were no choice, since an argument beats them. */
  readonly beaten: readonly { readonly id: Id; readonly text: Text }[];
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
    const id = choice.prefer ?? choice.use ?? null;
    if (other === null) return [];
    const said = numberLines(other, plugin).filter((one) => names.includes(one.name));
    const throughout = choice.use === undefined;
    return [
      {
        throughout,
        id,
        text: choiceWords(graph, choice),
        numbers: said.map((line) => ({ name: line.name, value: valueWords(line) })),
        why: other.status === "computed" ? null : whyWords(graph, other),
        turned: [...turned]
          .filter(([claim]) => listed(claim))
          .map(([claim, says]) => ({ claim, text: claimText(graph, claim), says })),
      },
    ];
  };
  const stands = (id: Id): boolean => judgement.standings.get(id) === "stands";
  const trials = trialsOf(bench, derived, stands);
  const beaten = beatenChoices(graph, derived, stands).filter((id) => !withheld(id));
  const others = trials.filter(
    ({ choice, other }) =>
      !withheld(choice.prefer ?? choice.use ?? "") && (other === null || other.run?.key !== derived.run?.key),
  );
  return {
    tried: others.flatMap(line),
    beaten: beaten.map((id) => ({ id, text: readingWords(graph, id) })),
    pending: others.filter(({ other }) => other === null).length,
  };
}

/** What a choice takes: a source, a reading with whose it is, or a size of the unit with where that is from. */
function choiceWords(graph: Graph, { prefer, use, unit, written }: Choice): Text {
  if (prefer !== undefined) return labelText(graph, prefer);
  const size = unit ?? written?.as;
  if (size === undefined) return readingWords(graph, use ?? "");
  const source = graph.sources.has(size.source) ? labelText(graph, size.source) : size.source;
  const amount = say`${formatSI(size.size, size.kind)} (${source})`;
  return unit === undefined && written !== undefined
    ? say`each ${written.unit} of the measurements read as ${amount}`
    : say`the ${size.name} of ${amount}`;
}

function readingWords(graph: Graph, id: Id): Text {
  return say`${labelText(graph, id)} (${authorText(graph, id) ?? say`the corpus`})`;
}
