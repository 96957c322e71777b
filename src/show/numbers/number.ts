import type { Id } from "../../base/finding.ts";
import type { Bench } from "../../derive/choices.ts";
import type { Derived } from "../../derive/derive.ts";
import type { Judgement } from "../../judge/judge.ts";
import type { DerivationRecord, Graph } from "../../link/graph.ts";
import { labelOf, withoutStop } from "../../link/label.ts";
import type { Caution, Plugin } from "../../plugin.ts";
import type { Reported } from "../report/report.ts";
import { withheldIn } from "../withhold.ts";
import { bearingLines } from "./bearing-lines.ts";
import type { BearingLine } from "./bearing-lines.ts";
import { entriesOf } from "./entries.ts";
import type { Entries } from "./entries.ts";
import { figureOf } from "./figure.ts";
import type { ShownFigure } from "./figure.ts";
import { settingLines, unitOf } from "./settings.ts";
import type { SettingLine, UnitLine } from "./settings.ts";
import { turnsOf } from "./turns.ts";
import type { Turns } from "./turns.ts";
import { mainNames, numberLines } from "./value.ts";
import type { NumberLine } from "./value.ts";
import { whyWords } from "./why.ts";

/** What is said to be careful about: first what was met in these data, then what holds of the method as such. */
export interface Cautions {
  readonly met: readonly string[];
  readonly general: readonly string[];
}

/** A computed number, whole: what it was computed on and how, what it says, and what would turn it. */
export interface NumberPage {
  readonly id: Id;
  readonly title: string;
  /** The plug-in's name and what it asks; null where there is no such plug-in. */
  readonly method: {
    readonly title: string;
    readonly doc: string;
    readonly sources: readonly string[];
  } | null;
  readonly status: Derived["status"];
  readonly why: string | null;
  /** What was computed on what, and what came of it, in a sentence. */
  readonly sentence: string | null;
  readonly numbers: readonly NumberLine[];
  readonly looks: { readonly times: number; readonly adjusted: string | null } | null;
  readonly figure: ShownFigure | null;
  readonly cautions: Cautions;
  readonly bearings: readonly BearingLine[];
  readonly turns: Turns | null;
  readonly entries: Entries;
  readonly settings: readonly SettingLine[];
  readonly unit: UnitLine | null;
}

/** The page of one derivation under the model's lens; null where there is none of that name. */
export function numberPage(
  model: Reported,
  plugins: Bench["plugins"],
  memo: Bench["memo"],
  id: Id,
): NumberPage | null {
  const { graph, derivations, judgement, lens } = model;
  const record = graph.records.get(id);
  const derived = derivations.byId.get(id);
  if (record?.list !== "derivations" || derived === undefined || withheldIn(graph)(id)) return null;
  const plugin = plugins.find((one) => one.id === record.values.plugin);
  return {
    id,
    title: withoutStop(record.values.text ?? labelOf(graph, id)),
    method: plugin === undefined ? null : { title: plugin.title, doc: plugin.doc, sources: plugin.sources },
    status: derived.status,
    why: whyWords(graph, derived),
    sentence: sentenceOf(graph, derived, plugin),
    numbers: numberLines(derived, plugin),
    looks: looksOf(record, numberLines(derived, plugin)),
    figure: figureOf(graph, derived, plugin),
    cautions: cautionsOf(derived, plugin),
    bearings: bearingLines(graph, judgement, record, derived, plugin),
    turns: turnsFor({ graph, plugins, memo, lens }, judgement, record, derived, plugin),
    entries: entriesOf(graph, derived),
    settings: settingLines(record, derived, plugin),
    unit: unitOf(graph, derived),
  };
}

function turnsFor(
  bench: Bench,
  judgement: Judgement,
  record: DerivationRecord,
  derived: Derived,
  plugin: Plugin | undefined,
): Turns | null {
  return turnsOf(bench, judgement, derived, mainNames(record, derived, plugin));
}

function sentenceOf(graph: Graph, { outcome, run }: Derived, plugin: Plugin | undefined): string | null {
  if (plugin === undefined || run === null || outcome?.status !== "computed") return null;
  return plugin.sentence(outcome, run.settings, (one) => labelOf(graph, one));
}

function looksOf({ values }: DerivationRecord, lines: readonly NumberLine[]): NumberPage["looks"] {
  const times = values.looks ?? 1;
  if (times <= 1) return null;
  return { times, adjusted: lines.find((line) => line.name === "p-adjusted")?.value ?? null };
}

function cautionsOf({ warnings }: Derived, plugin: Plugin | undefined): Cautions {
  const all = plugin?.cautions ?? [];
  const isMet = ({ id }: Caution): boolean => warnings.includes(id);
  return {
    met: all.filter(isMet).map((one) => one.text),
    general: all.filter((one) => !isMet(one) && one.whenMet !== true).map((one) => one.text),
  };
}
