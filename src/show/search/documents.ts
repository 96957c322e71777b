import type { Id } from "../../base/finding.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { AnyLinked, Graph } from "../../link/graph.ts";
import { labelOf, labelText } from "../../link/names/label.ts";
import type { Plugin } from "../../plugin.ts";
import type { Source } from "../../read/bibliography/source.ts";
import { plainText } from "../../read/bibliography/csl.ts";
import type { CslName } from "../../read/bibliography/csl.ts";
import { yearText } from "../../base/date/year.ts";
import { spanOf } from "../../read/record.ts";
import { nodeAt } from "../../read/yaml/tree.ts";
import { placesIn } from "../../base/text/lines/place.ts";
import { withheldIn } from "../withhold.ts";
import type { SearchDocument, SearchText, Weight } from "./document.ts";
import { fieldTexts } from "./field-texts.ts";
import type { FieldText } from "./field-texts.ts";

/** The whole corpus as it is searched, in its order; what is withheld is not in it, whatever the year that is looked at. */
export function searchDocuments(
  graph: Graph,
  plugins: readonly Plugin[],
  texts: ReadonlyMap<string, string>,
): readonly SearchDocument[] {
  const withheld = withheldIn(graph);
  const place = placesIn(texts);
  const dimensions = dimensionNames(graph);
  const records = [...graph.records.values()].filter((record) => !withheld(record.id));
  const sources = [...graph.sources.values()].filter((source) => !withheld(source.key));
  const placed = (record: AnyLinked, one: FieldText): SearchText => {
    const span = spanOf(record, ...one.path);
    const { line, endLine } = place(span);
    const { path, ...text } = one;
    const written = nodeAt(record.node, path).is === "text" && endLine > line;
    const raw = written ? (texts.get(record.file) ?? "").slice(span.start, span.end) : "";
    return { ...text, line, breaks: written ? breaksIn(one.text, raw) : [] };
  };
  return [
    ...records.map((record) => {
      const { file, line } = place(spanOf(record));
      const label = labelText(graph, record.id);
      const said = [
        ...idText(record),
        ...fieldTexts(graph, record),
        ...alsoCalled(graph, record, dimensions),
        ...pluginTexts(record, plugins),
      ];
      return {
        id: record.id,
        kind: record.list,
        title: inEnglish(label),
        ...(typeof label === "string" ? {} : { said: label }),
        file,
        line,
        year: graph.provenance(record.id).year,
        texts: said.map((one) => placed(record, one)),
      };
    }),
    ...sources.map((source) => sourceDocument(graph, source, place(source.keySpan))),
  ];
}

/** A made name is no field, and yet others refer to the record by it. */
function idText(record: AnyLinked): readonly FieldText[] {
  return record.named ? [] : [{ field: "id", text: record.id, lang: null, weight: "key", path: [] }];
}

/** Other names of the dimension that was measured, as the corpus gives them. */
function alsoCalled(
  graph: Graph,
  record: AnyLinked,
  names: ReadonlyMap<string, string>,
): readonly FieldText[] {
  if (record.list !== "measurements") return [];
  const text = names.get(graph.dimensionName(record.values.dimension));
  return text === undefined
    ? []
    : [{ field: "also called", text, lang: null, weight: "tie", path: ["dimension"] }];
}

function dimensionNames(graph: Graph): ReadonlyMap<string, string> {
  return new Map(
    [...graph.settings.dimensions.values()]
      .filter((one) => one.also.length > 0)
      .map((one) => [graph.dimensionName(one.name), [one.name, ...one.also].join(", ")]),
  );
}

/** What the plug-in of a derivation is called, and what it does. */
function pluginTexts(record: AnyLinked, plugins: readonly Plugin[]): readonly FieldText[] {
  if (record.list !== "derivations") return [];
  const plugin = plugins.find((one) => one.id === record.values.plugin);
  const line = (text: string): FieldText => ({
    field: "plugin",
    text,
    lang: "en",
    weight: "tie",
    path: ["plugin"],
  });
  return plugin ? [line(inEnglish(plugin.title)), line(inEnglish(plugin.doc))] : [];
}

/** Where the further lines of a text begin in it, as far as they stand there as they are written. */
function breaksIn(text: string, raw: string): readonly number[] {
  let from = 0;
  const starts = raw
    .split("\n")
    .slice(1)
    .map((written) => {
      const line = written.trim().replace(/["']$/, "");
      const at = line === "" ? -1 : text.indexOf(line, from);
      if (at >= 0) from = at + line.length;
      return at;
    });
  // A line that is empty, or written otherwise, begins where the next one does.
  let next = text.length;
  return starts
    .toReversed()
    .map((at) => (next = at < 0 ? next : at))
    .toReversed();
}

function sourceDocument(
  graph: Graph,
  source: Source,
  at: { readonly file: string; readonly line: number },
): SearchDocument {
  const { csl, key, year } = source;
  const lang = csl.language ?? null;
  const text = (field: string, said: string | undefined, weight: Weight): readonly SearchText[] =>
    said === undefined || said === ""
      ? []
      : [{ field, text: plainText(said), lang, weight, line: at.line, breaks: [] }];
  const people = (field: string, names: readonly CslName[] | undefined): readonly SearchText[] =>
    text(field, names?.map(nameText).join("; "), "name");
  return {
    id: key,
    kind: "sources",
    title: csl.title === undefined ? labelOf(graph, key) : `${labelOf(graph, key)}: ${plainText(csl.title)}`,
    file: at.file,
    line: at.line,
    year,
    texts: [
      ...text("key", key, "key"),
      ...text("title", csl.title, "name"),
      ...people("authors", csl.author),
      ...people("editors", csl.editor),
      ...text("in", csl["container-title"], "says"),
      ...text("year", year === null ? undefined : yearText(year), "says"),
      ...text("publisher", [csl["publisher-place"], csl.publisher].filter(Boolean).join(": "), "says"),
      ...text("volume", csl.volume, "says"),
      ...text("pages", csl.page, "says"),
      ...text("doi", csl.DOI, "number"),
      ...memberTexts(graph, source.members, at.line),
    ],
  };
}

function nameText(name: CslName): string {
  return (
    name.literal ??
    [name.given, name["non-dropping-particle"], name["dropping-particle"], name.family, name.suffix]
      .filter((part) => part !== undefined)
      .join(" ")
  );
}

/** The entries that an entry set stands for. */
function memberTexts(graph: Graph, members: readonly Id[], line: number): readonly SearchText[] {
  const withheld = withheldIn(graph);
  return members
    .filter((key) => !withheld(key))
    .map((text) => ({ field: "members", text, lang: null, weight: "tie", line, breaks: [] }));
}
