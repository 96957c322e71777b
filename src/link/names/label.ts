import type { Id } from "../../base/finding.ts";
import { yearText } from "../../base/date/year.ts";
import type { AnyLinked, Graph } from "../graph.ts";
import { speakerOf } from "./spoken.ts";
import { withheldIn } from "../withheld.ts";

/** What a record is called in a sentence: its `short`, its text or name, never its id; what is only supposed says so. */
export function labelOf(graph: Graph, id: Id): string {
  if (withheldIn(graph)(id)) return "something withheld";
  const source = graph.sources.get(id);
  if (source) return source.label;
  const record = graph.records.get(id);
  if (!record) return bearingLabel(graph, id);
  return asSupposed(graph, id, record.values.short ?? ownLabel(graph, record));
}

function ownLabel(graph: Graph, record: AnyLinked): string {
  switch (record.list) {
    case "scholars":
      return record.values.name;
    case "artefacts":
      return (
        record.values.name ?? [...(record.values.numbers?.values() ?? [])][0] ?? "a thing without a name"
      );
    case "claims":
    case "questions":
    case "observations":
      return withoutStop(record.values.text);
    case "passages":
      return [graph.provenance(record.id).sources.map((key) => labelOf(graph, key))[0], record.values.at]
        .filter((part) => part !== undefined)
        .join(", ");
    case "positions":
      return `${record.values.who.map((id) => labelOf(graph, id)).join(" and ")} ${stanceWords[record.values.stance]}: ${withoutStop(labelOf(graph, record.values.claim))}`;
    case "images":
      return `${record.values.kind ?? "picture"} of ${record.values.of.map((id) => labelOf(graph, id)).join(", ")}`;
    case "measurements": {
      const { of, dimension, value } = record.values;
      return `${dimension} of ${labelOf(graph, of)}, ${value.text}`;
    }
    case "relations":
      return record.values["same-time"]
        ? `${record.values["same-time"].map((it) => labelOr(graph, it)).join(" at the time of ")}`
        : `${labelOr(graph, record.values.earlier ?? "")} before ${labelOr(graph, record.values.later ?? "")}`;
    case "arguments":
      return argumentLabel(graph, record.id, record.values.scheme);
    case "derivations":
      return withoutStop(record.values.text ?? `the ${record.values.plugin.replace(/-/g, " ")} number`);
    case "examinations":
      return withoutStop(record.values.method);
    case "talks":
      return record.values.title;
    case "searches":
      return `search of ${record.values.where}`;
    case "readings":
      return `reading of ${record.values.from.map((citation) => labelOf(graph, citation.key)).join(", ")}`;
  }
}

const stanceWords = {
  holds: "holds",
  rejects: "rejects",
  doubts: "doubts",
  "leaves-open": "leaves open",
} as const;

/** Who argues, when and how: `Oyelaran 2004, by function`. */
function argumentLabel(graph: Graph, id: Id, scheme: string | undefined): string {
  const who = authorLabel(graph, id);
  return scheme === undefined || scheme === "other"
    ? `${who}'s argument`
    : `${who}'s argument ${schemeWords(scheme)}`;
}

/** How a scheme of argument is named in a sentence. */
export function schemeWords(scheme: string): string {
  return scheme === "text-or-image"
    ? "from text or image"
    : scheme === "trace"
      ? "from traces"
      : `from ${scheme}`;
}

/** Whose a record is, with its year: `Oyelaran 2004`; the corpus's own where nobody is named. */
export function authorLabel(graph: Graph, id: Id): string {
  if (isSupposed(graph, id)) return "the supposed outcome";
  const { scholars, sources, year } = graph.provenance(id);
  const first = sources[0];
  const authors = first === undefined ? [] : graph.authorsOf(first);
  const same = scholars.length > 0 && scholars.every((one) => authors.includes(one));
  if (first !== undefined && (same || scholars.length === 0)) return isolated(labelOf(graph, first));
  if (scholars.length === 0) return "the corpus";
  const names = scholars.map((one) => familyName(labelOf(graph, one)));
  return isolated(year === null ? names.join(" and ") : `${names.join(" and ")} ${yearText(year)}`);
}

/** A name that runs from right to left, kept together among words that do not (Unicode's first-strong isolate). */
function isolated(name: string): string {
  return /[\u0590-\u08ff\ufb1d-\ufefc]/.test(name) ? `\u2068${name}\u2069` : name;
}

/** The last word of a name, or what stands before its comma. */
export function familyName(name: string): string {
  const comma = name.indexOf(",");
  return comma > 0 ? name.slice(0, comma) : (name.trim().split(/\s+/).at(-1) ?? name);
}

/** The argument that a number makes for or against a claim. */
function bearingLabel(graph: Graph, id: Id): string {
  const derivation = speakerOf(id);
  return graph.records.has(derivation) ? `the number ${labelOf(graph, derivation)}` : id;
}

/** Whether a record is there only because an outcome is taken as found. */
export function isSupposed(graph: Graph, id: Id): boolean {
  return graph.supposed?.records.has(id) === true;
}

/** What is cited from an examination that is supposed to be made is no more than supposed. */
function asSupposed(graph: Graph, id: Id, label: string): string {
  const marked = isSupposed(graph, id)
    ? graph.records.get(id)?.list !== "arguments"
    : graph.supposed?.examination.id === id;
  return marked ? `${label} (supposed)` : label;
}

function labelOr(graph: Graph, words: string): string {
  return graph.records.has(words) || graph.sources.has(words) ? labelOf(graph, words) : words;
}

/** A sentence without the stop at its end, to stand inside another. */
export function withoutStop(sentence: string): string {
  return sentence.replace(/[.。]\s*$/u, "");
}
