import type { Id } from "../../base/finding.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Bench } from "../../derive/choices.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import type { Graph } from "../../link/graph.ts";
import { labelText } from "../../link/names/label.ts";
import type { Caution, Plugin } from "../../plugin.ts";
import type { PluginFile } from "../../read/source-file.ts";
import type { Reported } from "../report/report.ts";
import { withheldIn } from "../withhold.ts";
import { bearingLines } from "./bearing-lines.ts";
import type { BearingLine } from "./bearing-lines.ts";
import { entriesOf } from "./entries.ts";
import type { Entries } from "./entries.ts";
import { figureOf, readsWithheld } from "./figure.ts";
import type { ShownFigure } from "./figure.ts";
import { looksAt } from "./looks.ts";
import type { Looks } from "./looks.ts";
import { settingLines, unitOf } from "./settings.ts";
import type { SettingLine, UnitLine } from "./settings.ts";
import { lossLines } from "./tried/losses.ts";
import type { LossLines } from "./tried/losses.ts";
import { turnsOf } from "./tried/turns.ts";
import type { Turns } from "./tried/turns.ts";
import { mainNames, numberLines, titleOf } from "./value.ts";
import type { NumberLine } from "./value.ts";
import { wantedFor } from "./wanted.ts";
import type { WantedLine } from "./wanted.ts";
import { whyWords } from "./why.ts";

/** What is said to be careful about: first what was met in these data, then what holds of the method as such. */
export interface Cautions {
  readonly met: readonly Text[];
  readonly general: readonly Text[];
}

/** A computed number, whole: what it was computed on and how, what it says, and what would turn it. */
export interface NumberPage {
  readonly id: Id;
  readonly title: Text;
  /** The plug-in's name and what it asks; null where there is no such plug-in. */
  readonly method: {
    readonly title: Text;
    readonly doc: Text;
    readonly sources: readonly string[];
    /** SHA-256 of the file of a plug-in of the corpus; null for one of the program's own. */
    readonly guest: string | null;
  } | null;
  readonly status: Derived["status"];
  readonly why: Text | null;
  /** What was computed on what, and what came of it, in a sentence. */
  readonly sentence: Text | null;
  readonly numbers: readonly NumberLine[];
  readonly looks: readonly Looks[];
  readonly figure: ShownFigure | null;
  readonly cautions: Cautions;
  readonly bearings: readonly BearingLine[];
  readonly turns: Turns | null;
  readonly losses: LossLines | null;
  readonly entries: Entries;
  /** What nobody measured and would enter it. */
  readonly wanted: readonly WantedLine[];
  readonly settings: readonly SettingLine[];
  readonly unit: UnitLine | null;
  /** The file of a plug-in of the corpus that has not been allowed, to be read before it is. */
  readonly notAllowed: PluginFile | null;
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
  const bench: Bench = { graph, plugins, memo, lens };
  const asked = mainNames(record, derived, plugin);
  return {
    id,
    title: titleOf(graph, record),
    method: methodOf(plugin),
    status: derived.status,
    why: whyWords(graph, derived),
    sentence: sentenceOf(graph, derived, plugin),
    numbers: numberLines(derived, plugin),
    looks: looksAt(model, plugins, record),
    figure: figureOf(graph, derived, plugin),
    cautions: cautionsOf(derived, plugin),
    bearings: bearingLines(graph, judgement, record, derived, plugin),
    turns: turnsOf(bench, judgement, derived, asked),
    losses: lossLines(bench, judgement, derived, asked),
    entries: entriesOf(graph, judgement, derived),
    wanted: wantedFor(graph, record, derived, plugin, judgement.counts),
    settings: settingLines(record, derived, plugin),
    unit: unitOf(graph, derived),
    notAllowed:
      derived.status === "withheld"
        ? (graph.pluginFiles.find((one) => one.name === record.values.plugin) ?? null)
        : null,
  };
}

function methodOf(plugin: Plugin | undefined): NumberPage["method"] {
  if (plugin === undefined) return null;
  const { title, doc, sources, guest } = plugin;
  return { title, doc, sources, guest: guest?.hash ?? null };
}

/** What was computed on what, and what came of it, in a sentence; null where nothing was. */
export function sentenceOf(graph: Graph, derived: Derived, plugin: Plugin | undefined): Text | null {
  const { outcome, run } = derived;
  if (plugin === undefined || run === null || outcome?.status !== "computed") return null;
  const tells = readsWithheld(graph, derived) ? "together" : "each";
  return plugin.sentence(outcome, run.settings, (one) => labelText(graph, one), tells);
}

/** What is to be careful about in a computed number: what was met in its data, and what holds of its method. */
export function cautionsOf({ warnings }: Derived, plugin: Plugin | undefined): Cautions {
  const all = plugin?.cautions ?? [];
  const isMet = ({ id }: Caution): boolean => warnings.includes(id);
  return {
    met: all.filter(isMet).map((one) => one.text),
    general: all.filter((one) => !isMet(one) && one.whenMet !== true).map((one) => one.text),
  };
}
