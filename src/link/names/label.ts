import type { Id } from "../../base/finding.ts";
import { yearText } from "../../base/date/year.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import { row, say } from "../../base/text/said/said.ts";
import type { Hole, Said, Text } from "../../base/text/said/said.ts";
import type { AnyLinked, Graph, Linked } from "../graph.ts";
import { speakerOf } from "./spoken.ts";
import { withheldIn } from "../withheld.ts";

/** What a record is called in a sentence, in English: its `short`, its text or name, never its id; what is only supposed says so. */
export function labelOf(graph: Graph, id: Id): string {
  return inEnglish(labelText(graph, id));
}

/** The same, to be put into any language. */
export function labelText(graph: Graph, id: Id): Text {
  if (withheldIn(graph)(id)) return say`something withheld`;
  const source = graph.sources.get(id);
  if (source) return source.label;
  const record = graph.records.get(id);
  if (!record) return bearingLabel(graph, id);
  return asSupposed(graph, id, record.values.short ?? ownLabel(graph, record));
}

function ownLabel(graph: Graph, record: AnyLinked): Text {
  switch (record.list) {
    case "scholars":
      return record.values.name;
    case "artefacts":
      return (
        record.values.name ?? [...(record.values.numbers?.values() ?? [])][0] ?? say`a thing without a name`
      );
    case "claims":
    case "questions":
    case "observations":
      return withoutStop(record.values.text);
    case "passages":
      return passageLabel(graph, graph.provenance(record.id).sources[0], record.values.at);
    case "positions": {
      const claim = labelText(graph, record.values.claim);
      const held = typeof claim === "string" ? withoutStop(claim) : claim;
      return stanceLabel(record.values, together(graph, record.values.who), held);
    }
    case "images":
      return pictureLabel(record.values.kind, row(namesIn(graph, record.values.of), "comma"));
    case "measurements": {
      const { of, dimension, value } = record.values;
      return say`${dimension} of ${labelText(graph, of)}, ${value.text}`;
    }
    case "relations":
      return relationLabel(graph, record.values);
    case "arguments":
      return argumentLabel(graph, record.id, record.values.scheme);
    case "derivations":
      return record.values.text === undefined
        ? say`the ${record.values.plugin.replace(/-/g, " ")} number`
        : withoutStop(record.values.text);
    case "examinations":
      return withoutStop(record.values.method);
    case "talks":
      return record.values.title;
    case "searches":
      return say`search of ${record.values.where}`;
    case "readings":
      return say`reading of ${row(
        namesIn(
          graph,
          record.values.from.map(({ key }) => key),
        ),
        "comma",
      )}`;
  }
}

const namesIn = (graph: Graph, ids: readonly Id[]): readonly Text[] => ids.map((id) => labelText(graph, id));

/** Where a passage stands: its source and the place in it, whatever is known of the two. */
function passageLabel(graph: Graph, source: Id | undefined, at: string | undefined): Text {
  const name = source === undefined ? undefined : labelText(graph, source);
  if (name === undefined || at === undefined) return name ?? at ?? "";
  return typeof name === "string" ? `${name}, ${at}` : say`${name}, ${at}`;
}

/** Names by `and` between each two. */
function together(graph: Graph, ids: readonly Id[]): Text {
  const [one = "", ...others] = namesIn(graph, ids);
  return others.reduce((before, other) => say`${before} and ${other}`, one);
}

function stanceLabel(position: Linked<"positions">["values"], who: Text, claim: Text): Said {
  const several = position.who.length > 1;
  switch (position.stance) {
    case "holds":
      return several ? say`${who} hold: ${claim}` : say`${who} holds: ${claim}`;
    case "rejects":
      return several ? say`${who} reject: ${claim}` : say`${who} rejects: ${claim}`;
    case "doubts":
      return several ? say`${who} doubt: ${claim}` : say`${who} doubts: ${claim}`;
    case "leaves-open":
      return several ? say`${who} leave open: ${claim}` : say`${who} leaves open: ${claim}`;
  }
}

function pictureLabel(kind: "photograph" | "drawing" | "scan" | "plate" | undefined, of: Hole): Said {
  switch (kind) {
    case undefined:
      return say`picture of ${of}`;
    case "photograph":
      return say`photograph of ${of}`;
    case "drawing":
      return say`drawing of ${of}`;
    case "scan":
      return say`scan of ${of}`;
    case "plate":
      return say`plate of ${of}`;
  }
}

function relationLabel(
  graph: Graph,
  values: Extract<AnyLinked, { readonly list: "relations" }>["values"],
): Text {
  const same = values["same-time"]?.map((it) => labelOr(graph, it));
  if (!same) return say`${labelOr(graph, values.earlier ?? "")} before ${labelOr(graph, values.later ?? "")}`;
  const [one = "", ...others] = same;
  return others.reduce((before, other) => say`${before} at the time of ${other}`, one);
}

/** Who argues, when and how: `Oyelaran 2004, by function`. */
function argumentLabel(graph: Graph, id: Id, scheme: string | undefined): Said {
  const who = authorOrCorpus(graph, id);
  return scheme === undefined || scheme === "other"
    ? say`${who}'s argument`
    : say`${who}'s argument ${schemeText(scheme)}`;
}

/** How a scheme of argument is named in a sentence, in English. */
export function schemeWords(scheme: string): string {
  return inEnglish(schemeText(scheme));
}

const schemes: Readonly<Record<string, Said>> = {
  trace: say`from traces`,
  parallel: say`from parallel`,
  analogy: say`from analogy`,
  function: say`from function`,
  experiment: say`from experiment`,
  silence: say`from silence`,
  authority: say`from authority`,
  metrology: say`from metrology`,
  stratigraphy: say`from stratigraphy`,
  context: say`from context`,
  chronology: say`from chronology`,
  "text-or-image": say`from text or image`,
  provenance: say`from provenance`,
};

/** The same, to be put into any language. */
export function schemeText(scheme: string): Text {
  return schemes[scheme] ?? `from ${scheme}`;
}

/** Whose a record is, with its year, in English: `Oyelaran 2004`; the corpus's own where nobody is named. */
export function authorLabel(graph: Graph, id: Id): string {
  return inEnglish(authorOrCorpus(graph, id));
}

/** The same, to be put into any language. */
export function authorOrCorpus(graph: Graph, id: Id): Text {
  return authorText(graph, id) ?? say`the corpus`;
}

/** Whose a record is, to be put into any language; null where nobody is named. */
export function authorText(graph: Graph, id: Id): Text | null {
  if (isSupposed(graph, id)) return say`the supposed outcome`;
  const { scholars, sources, year } = graph.provenance(id);
  const first = sources[0];
  const authors = first === undefined ? [] : graph.authorsOf(first);
  const same = scholars.length > 0 && scholars.every((one) => authors.includes(one));
  if (first !== undefined && (same || scholars.length === 0)) return isolated(labelText(graph, first));
  if (scholars.length === 0) return null;
  const [one = "", ...others] = scholars.map((id) => familyText(labelText(graph, id)));
  const names = others.reduce((before, other) => say`${before} and ${other}`, one);
  return isolated(year === null ? names : dated(names, yearText(year)));
}

/** A name that runs from right to left, kept together among words that do not (Unicode's first-strong isolate). */
function isolated(name: Text): Text {
  if (!/[\u0590-\u08ff\ufb1d-\ufefc]/.test(inEnglish(name))) return name;
  return typeof name === "string" ? `\u2068${name}\u2069` : say`\u2068${name}\u2069`;
}

const dated = (names: Text, year: string): Text =>
  typeof names === "string" ? `${names} ${year}` : say`${names} ${year}`;

/** A family name alone; of somebody withheld no more than that. */
export function familyText(name: Text): Text {
  return typeof name === "string" ? familyName(name) : say`withheld`;
}

/** The last word of a name, or what stands before its comma. */
export function familyName(name: string): string {
  const comma = name.indexOf(",");
  return comma > 0 ? name.slice(0, comma) : (name.trim().split(/\s+/).at(-1) ?? name);
}

/** The argument that a number makes for or against a claim. */
function bearingLabel(graph: Graph, id: Id): Text {
  const derivation = speakerOf(id);
  return graph.records.has(derivation) ? say`the number ${labelText(graph, derivation)}` : id;
}

/** Whether a record is there only because an outcome is taken as found. */
export function isSupposed(graph: Graph, id: Id): boolean {
  return graph.supposed?.records.has(id) === true;
}

/** What is cited from an examination that is supposed to be made is no more than supposed. */
function asSupposed(graph: Graph, id: Id, label: Text): Text {
  const marked = isSupposed(graph, id)
    ? graph.records.get(id)?.list !== "arguments"
    : graph.supposed?.examination.id === id;
  return marked ? say`${label} (supposed)` : label;
}

function labelOr(graph: Graph, words: string): Text {
  // A relation may be put before another, and so on in a circle: what it says is not said again within.
  if (graph.records.get(words)?.list === "relations" && !withheldIn(graph)(words)) return words;
  return graph.records.has(words) || graph.sources.has(words) ? labelText(graph, words) : words;
}

/** A sentence without the stop at its end, to stand inside another. */
export function withoutStop(sentence: string): string {
  return sentence.replace(/[.。]\s*$/u, "");
}
