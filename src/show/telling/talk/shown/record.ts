import type { Id } from "../../../../base/finding.ts";
import { count, row, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { AnyLinked } from "../../../../link/graph.ts";
import { labelText } from "../../../../link/names/label.ts";
import { labelUnder } from "../../../map/section/boxes/words.ts";
import { printedNames } from "../../review/pieces/printed.ts";
import { numberLines, titleOf, valueWords } from "../../../numbers/value.ts";
import { withheldIn } from "../../../withhold.ts";
import { ofCorpus, ours } from "../slides.ts";
import type { Part, Statement, Worded } from "../slides.ts";
import { examinationTold } from "./examination.ts";
import { imageTold } from "./image.ts";
import { heldIn, positionsFor, questionTold } from "./question.ts";
import { leftOut, onceEach } from "./setting.ts";
import type { Setting, Told } from "./setting.ts";

/** Records in a row, each as what it says; what is withheld or not yet in print is told to be left out. */
export function recordsTold(setting: Setting, ids: readonly Id[]): Told {
  const each = ids.map((id): Told => {
    const without = leftOut(setting.model, id);
    return without === null ? recordTold(setting, id) : { parts: [without], about: [] };
  });
  return {
    parts: onceEach(each.flatMap(({ parts }) => parts)),
    about: each.flatMap(({ about }) => about),
  };
}

function recordTold(setting: Setting, id: Id): Told {
  const { graph } = setting.model;
  const source = graph.sources.get(id);
  if (source !== undefined) {
    const title = source.csl.title ?? "";
    const words = title === "" ? ofCorpus(source.label) : ofCorpus(title, source.csl.language ?? null);
    return { parts: [statement(setting, id, words, title === "" ? [] : [source.label])], about: [id] };
  }
  const record = graph.records.get(id);
  if (record === undefined) return { parts: [], about: [] };
  if (record.list === "questions") return questionTold(setting, id);
  if (record.list === "images") return imageTold(setting, id);
  if (record.list === "examinations") return examinationTold(setting, record);
  const about = record.list === "claims" ? [id, ...positionsFor(setting.model, id)] : [id];
  return { parts: [worded(setting, record)], about };
}

function worded(setting: Setting, record: AnyLinked): Part {
  const { graph } = setting.model;
  const name = (id: Id): Text => labelText(graph, id);
  const { id } = record;
  const of = (words: Worded, under: readonly Text[], quoted = false): Statement =>
    statement(setting, id, words, under, quoted);
  switch (record.list) {
    case "claims":
      return of(ofCorpus(record.values.text), heldIn(setting, id));
    case "observations":
      return of(ofCorpus(record.values.text), [labelUnder(graph, id)]);
    case "measurements": {
      const { dimension, value } = record.values;
      return of(ofCorpus(value.text), [
        say`${dimension} of ${name(record.values.of)}`,
        labelUnder(graph, id),
      ]);
    }
    case "passages": {
      const { quote, paraphrase, lang, translation } = record.values;
      const under = [...(translation === undefined ? [] : [translation]), name(id)];
      if (quote !== undefined) return of(ofCorpus(quote, lang ?? null), under, true);
      return of(ofCorpus(paraphrase ?? "", null), [name(id)]);
    }
    case "positions": {
      const { words } = record.values;
      return words === undefined ? of(ours(name(id)), []) : of(ofCorpus(words), [name(id)], true);
    }
    case "arguments":
      return of(
        record.values.text === undefined ? ours(name(id)) : ofCorpus(record.values.text),
        argued(setting, record),
      );
    case "derivations":
      return of(ours(titleOf(graph, record)), numbersOf(setting, record));
    default:
      return of(ours(name(id)), []);
  }
}

function statement(
  { model }: Setting,
  of: Id,
  words: Worded,
  under: readonly Text[],
  quoted = false,
): Statement {
  const standing = model.judgement.standings.get(of) ?? null;
  return { is: "statement", of, standing, words, quoted, under };
}

/** What an argument is for or against, and whose it is. */
function argued(
  setting: Setting,
  record: Extract<AnyLinked, { readonly list: "arguments" }>,
): readonly Text[] {
  const { graph } = setting.model;
  const { therefore, against = [], text } = record.values;
  const withheld = withheldIn(graph);
  const targets = against.filter((id) => !withheld(id));
  const what =
    therefore !== undefined
      ? [say`for: ${labelText(graph, therefore)}`]
      : targets.length > 0
        ? [say`against: ${row(targets.slice(0, 2).map((id) => labelText(graph, id)))}`]
        : [];
  const more = targets.length > 2 ? [say`and ${count(targets.length - 2)} more`] : [];
  return [...what, ...more, ...(text === undefined ? [] : [labelText(graph, record.id)])];
}

/** The numbers of a derivation that matter most, in lines. */
export function numbersOf(
  { model, plugins }: Setting,
  record: Extract<AnyLinked, { readonly list: "derivations" }>,
): readonly Text[] {
  const derived = model.derivations.byId.get(record.id);
  const plugin = plugins.find((one) => one.id === record.values.plugin);
  if (derived === undefined) return [];
  const main = printedNames(record, derived, plugin);
  return numberLines(derived, plugin)
    .filter(({ name }) => main.includes(name))
    .map((line) => say`${line.name} ${valueWords(line)}`);
}
