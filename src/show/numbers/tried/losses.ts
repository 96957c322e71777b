import type { Id } from "../../../base/finding.ts";
import { fieldsOf } from "../../../base/json.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Bearing } from "../../../derive/bearing.ts";
import { lossesOf } from "../../../derive/choices.ts";
import type { Bench, Loss } from "../../../derive/choices.ts";
import type { Derived } from "../../../derive/derived/derived.ts";
import type { InCommon } from "../../../derive/trials/leave-out.ts";
import type { Judgement } from "../../../judge/judge.ts";
import { labelText } from "../../../link/names/label.ts";
import { claimText } from "../../pages/question.ts";
import { listedUnder, withheldIn } from "../../withhold.ts";
import { readsWithheld } from "../figure.ts";
import { numberLines, valueWords } from "../value.ts";
import { whyWords } from "../why.ts";

/** What a number would be without an artefact, a source or a survey. */
export interface LossLine {
  /** All names of the same evidence; a survey has no record. */
  readonly names: readonly { readonly id: Id | null; readonly text: Text }[];
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

/** What comes of leaving out one artefact, source or survey after another. */
export interface LossLines {
  /** How many were left out and gave a number or a refusal. */
  readonly tried: number;
  readonly turning: readonly LossLine[];
  /** Without these nothing can be computed. */
  readonly without: readonly LossLine[];
  /** The smallest and largest that each number asked about comes to. */
  readonly reach: readonly { readonly name: string; readonly low: string; readonly high: string }[];
  /** Sets drawn where that is fewer than for the number itself; null where that was nowhere so. */
  readonly draws: number | null;
  /** Single artefacts that were too many to leave out one by one. */
  readonly untried: number;
  readonly pending: number;
}

/** Refusals of a derivation that has nothing left to compute on. */
const nothingLeft: readonly (string | null)[] = ["empty-selection", "refused-number"];

/** Leaves out what may be named, one at a time; `names` are the numbers to tell. Null where there is nothing to leave out. */
export function lossLines(
  bench: Bench,
  judgement: Judgement,
  derived: Derived,
  names: readonly string[],
): LossLines | null {
  const { graph } = bench;
  const withheld = withheldIn(graph);
  const { each, untried } = lossesOf(bench, derived, (id) => judgement.standings.get(id) === "stands");
  const shown = each.filter(
    ({ leaving }) => !leaving.ids.some(withheld) && leaving.names.some(({ name }) => !withheld(name)),
  );
  // Of a number that leans on something withheld, single values could be told from what is left without the others.
  const told = readsWithheld(graph, derived) ? [] : names;
  // Without one whole side of a comparison nothing is compared: that is no finding about the rest.
  const known = shown.filter(({ other }) => other !== null && !nothingLeft.includes(other.reason));
  const pending = shown.filter(({ other }) => other === null).length;
  if (known.length + pending + untried === 0) return null;
  const lines = known.map((loss) => ({ loss, line: lineOf(bench, judgement, loss, told) }));
  return {
    tried: known.length,
    turning: lines.flatMap(({ line }) => (line.why === null && line.turned.length > 0 ? [line] : [])),
    without: lines.flatMap(({ line }) => (line.why === null ? [] : [line])),
    reach: told.flatMap((name) => reachOf(bench, known, name)),
    draws: known.find(drewFewer)?.draws ?? null,
    untried,
    pending,
  };
}

/** Whether sets were drawn at all, as a plug-in says in its data, and fewer than for the number itself. */
function drewFewer({ draws, other }: Loss): boolean {
  const data = other?.outcome?.status === "computed" ? fieldsOf(other.outcome.data) : {};
  return draws !== null && data["draws"] !== undefined;
}

function lineOf(
  { graph, plugins }: Bench,
  judgement: Judgement,
  { leaving, other, turned }: Loss,
  told: readonly string[],
): LossLine {
  const withheld = withheldIn(graph);
  const listed = listedUnder({ graph, judgement });
  const plugin = plugins.find((one) => one.id === other?.run?.plugin);
  const lines = other === null ? [] : numberLines(other, plugin).filter(({ name }) => told.includes(name));
  const named = ({ sort, name }: InCommon): LossLine["names"][number] =>
    sort === "survey" ? { id: null, text: name } : { id: name, text: labelText(graph, name) };
  return {
    names: leaving.names.filter(({ name }) => !withheld(name)).map(named),
    numbers: lines.map((line) => ({ name: line.name, value: valueWords(line) })),
    why: other === null || other.status === "computed" ? null : whyWords(graph, other),
    turned: [...turned]
      .filter(([claim]) => listed(claim))
      .map(([claim, says]) => ({ claim, text: claimText(graph, claim), says })),
  };
}

/** The smallest and the largest value of a number over all losses that leave one. */
function reachOf({ plugins }: Bench, losses: readonly Loss[], name: string): LossLines["reach"] {
  const found = losses
    .flatMap(({ other }) => {
      const value = other?.numbers[name]?.value;
      if (other === null || value === undefined) return [];
      const plugin = plugins.find((one) => one.id === other.run?.plugin);
      const line = numberLines(other, plugin).find((one) => one.name === name);
      return line === undefined ? [] : [{ value, text: line.value }];
    })
    .toSorted((a, b) => a.value - b.value);
  const [first, last] = [found[0], found.at(-1)];
  return first === undefined || last === undefined ? [] : [{ name, low: first.text, high: last.text }];
}
