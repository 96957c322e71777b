import type { Finding, Id } from "../../../base/finding.ts";
import { isList } from "../../../base/json.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Json } from "../../../base/json.ts";
import { entersAsObservations } from "../../../derive/recorded/observations.ts";
import { asMap } from "../../../derive/prepare/settings.ts";
import { texts } from "../../../derive/prepare/select.ts";
import type { InputDeclaration, Plugin } from "../../../plugin.ts";
import { entriesOf } from "../../numbers/entries.ts";
import type { EntryLine } from "../../numbers/entries.ts";
import type { Trial } from "./trial.ts";
import { pairsOf, takenAlone, takenByInput } from "./counts.ts";
import type { Selecting, Taken } from "./counts.ts";
import type { Typing } from "./typing.ts";
import { offeredByHand } from "./offered/by-hand.ts";
import type { Choice } from "./offered/choice.ts";
import { narrowingOf, unnarrowed } from "./offered/narrowing.ts";
import type { Narrowing } from "./offered/narrowing.ts";
import { numbersFor } from "./offered/numbers.ts";
import { dimensionsOf, featuresOf, thingsFor } from "./offered/things.ts";
import { numberUnderstood } from "./settings.ts";
import type { Understood } from "./settings.ts";

/** An input of the plug-in as it is filled in, with what it takes and leaves now. */
export interface InputField {
  readonly name: string;
  readonly kind: InputDeclaration["kind"];
  readonly doc: Text;
  readonly optional: boolean;
  readonly takesObservations: boolean;
  /** Measurements may be given by another derivation's number too. */
  readonly way: "selection" | "by-hand" | "number";
  /** What it takes is observations, and no measurements. */
  readonly observed: boolean;
  readonly things: readonly Choice[];
  readonly dimensions: readonly Choice[];
  readonly features: readonly Choice[];
  readonly narrowing: Narrowing;
  readonly byHand: { readonly choices: readonly Choice[]; readonly all: number };
  readonly numbers: readonly Choice[];
  readonly number: Understood | null;
  readonly counts: { readonly taken: number; readonly left: number; readonly withheld: number };
  readonly lines: readonly EntryLine[];
  /** Lines beyond those that are told. */
  readonly more: number;
  /** Records that another of the same thing contradicts. */
  readonly disputed: readonly Id[];
}

/** Two things that are matched, as what entered of each. */
export interface PairLine {
  readonly first: readonly EntryLine[];
  readonly second: readonly EntryLine[];
}

/** So many records of an input are told one by one. */
const mostLines = 300;

/** A plug-in whose inputs are filled in, and what is typed into them so far. */
export interface Filling {
  readonly plugin: Plugin;
  readonly written: Json | undefined;
}

/** The inputs of a plug-in as a draft fills them in. */
export function inputFields(
  at: Selecting,
  trial: Trial,
  { plugin, written }: Filling,
  findings: readonly Finding[],
  typing: Typing | null,
): readonly InputField[] {
  const { record, derived } = trial;
  const taken = record && derived ? takenByInput(at, record, plugin, derived) : new Map<string, Taken>();
  const clashing = new Set(
    findings
      .filter(({ rule }) => rule === "conflicting-measurements" || rule === "conflicting-observations")
      .flatMap(({ about }) => about),
  );
  const given = asMap(record?.values.inputs);
  return plugin.inputs.map((input): InputField => {
    const selection = given[input.name];
    const its = taken.get(input.name) ?? nothing;
    const { lines, withheld } = linesOf(trial, its);
    return {
      name: input.name,
      kind: input.kind,
      doc: input.doc,
      optional: input.optional === true,
      takesObservations: input.takesObservations === true,
      observed: selection !== undefined && entersAsObservations(input, selection, at.graph),
      ...offered(at, trial, { plugin, written }, input, typing),
      counts: {
        taken: lines.filter(({ why }) => why === null).length,
        left: lines.filter(({ why }) => why !== null).length,
        withheld,
      },
      lines: lines.slice(0, mostLines),
      more: Math.max(0, lines.length - mostLines),
      disputed: lines.map(({ id }) => id).filter((id) => clashing.has(id)),
    };
  });
}

const nothing: Taken = { used: [], leftOut: [], merged: [] };

type Offered = Pick<
  InputField,
  "way" | "things" | "dimensions" | "features" | "narrowing" | "byHand" | "numbers" | "number"
>;

function offered(
  at: Selecting,
  { id, record, derivations }: Trial,
  { plugin, written }: Filling,
  input: InputDeclaration,
  typing: Typing | null,
): Offered {
  const { graph } = at;
  const selection = asMap(record?.values.inputs)[input.name];
  const way = wayOf(input, asMap(written)[input.name]);
  const listed = way === "by-hand" || asMap(written)["pairs"] !== undefined;
  const things = thingsFor(graph, input);
  const of = texts(asMap(selection)["of"]).filter((one) => things.some(({ value }) => value === one));
  const all =
    record && way === "selection" && selection !== undefined
      ? takenAlone(at, record, input, plugin, unnarrowed(selection))
      : nothing;
  const reference = asMap(selection)["number"];
  const sought = typing?.at === `find.${input.name}` ? typing.text : "";
  const numbers = input.kind === "measurements" || input.kind === "number";
  return {
    way,
    things,
    dimensions: input.kind === "measurements" ? dimensionsOf(graph, of) : [],
    features: input.kind === "observations" || input.takesObservations === true ? featuresOf(graph, of) : [],
    narrowing: narrowingOf(graph, [...all.used, ...all.leftOut.map((one) => one.id)]),
    byHand: listed ? offeredByHand(graph, input, sought) : { choices: [], all: 0 },
    numbers: numbers ? numbersFor(graph, derivations, id) : [],
    number: typeof reference === "string" ? numberUnderstood(graph, derivations, reference) : null,
  };
}

function wayOf({ kind }: InputDeclaration, selection: Json | undefined): InputField["way"] {
  if (kind === "number" || asMap(selection)["number"] !== undefined) return "number";
  if (kind === "dates" || selection === undefined) return "selection";
  return typeof selection === "string" || isList(selection) ? "by-hand" : "selection";
}

function linesOf(
  { graph, judgement, derived }: Trial,
  { used, leftOut, merged }: Taken,
): { readonly lines: readonly EntryLine[]; readonly withheld: number } {
  if (derived === null) return { lines: [], withheld: 0 };
  const entries = entriesOf(graph, judgement, { ...derived, used, leftOut, merged });
  return { lines: [...entries.taken, ...entries.left], withheld: entries.withheld };
}

/** The pairs that the inputs come to; null where the plug-in matches nothing. Nothing withheld is in them. */
export function pairLines(at: Selecting, trial: Trial, plugin: Plugin): readonly PairLine[] | null {
  const pairs = trial.record ? pairsOf(at, trial.record, plugin) : null;
  if (pairs === null) return null;
  const of = (used: readonly Id[]): readonly EntryLine[] =>
    linesOf(trial, { ...nothing, used }).lines.map((line) => ({ ...line, input: null }));
  return pairs
    .slice(0, mostLines)
    .map(([first, second]) => ({ first: of(first), second: of(second) }))
    .filter(({ first, second }) => first.length > 0 && second.length > 0);
}
