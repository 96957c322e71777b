import type { Id } from "../../../base/finding.ts";
import type { FileChange } from "../../../base/text/edit.ts";
import { inPlace } from "../../../base/text/edit.ts";
import { hashOf } from "../../../base/text/hash.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import { notHere } from "../../../link/edit/theirs.ts";
import { namesakesOf } from "../../../link/origin/namesakes.ts";
import { companionFor } from "../../../link/origin/companions.ts";
import { usedFields } from "../../../read/bibliography/bibtex/names.ts";
import type { CslItem } from "../../../read/bibliography/csl.ts";
import {
  entryAlone,
  rowEdits,
  rowsOf,
  troubleInFile,
} from "../../../read/bibliography/incoming/fields/change.ts";
import type { Row } from "../../../read/bibliography/incoming/fields/change.ts";
import { formatOf } from "../../../read/bibliography/incoming/formats.ts";
import type { Format } from "../../../read/bibliography/incoming/formats.ts";
import type { Source } from "../../../read/bibliography/source.ts";
import type { Companion } from "../../../read/settings/companions/corpus.ts";
import type { ReferenceOf } from "../../pages/sheet.ts";
import { withheldIn } from "../../withhold.ts";

/** An entry of a bibliography to be changed: its fields as they are written, and what its reference is made from. */
export interface EntryPage {
  readonly key: Id;
  readonly label: string;
  readonly language: string | null;
  readonly file: string;
  readonly format: Format;
  readonly rows: readonly Row[];
  readonly reference: ReferenceOf;
  /** Names of fields that can be added. */
  readonly names: readonly string[];
  /** The other corpus that it is taken from: it is changed in that one's folder alone. */
  readonly takenFrom: Companion | null;
}

/** What a form of an entry comes to now: the items its reference is made from, and what stands against it. */
export interface EntryDraft {
  readonly items: readonly CslItem[];
  readonly problem: Text | null;
  readonly field: string | null;
  /** Another has changed the entry since the form was opened. */
  readonly stale: boolean;
  readonly changes: readonly FileChange[];
}

interface Found {
  readonly source: Source;
  readonly text: string;
  readonly format: Format;
}

function found(graph: Graph, texts: ReadonlyMap<string, string>, key: Id): Found | null {
  const source = graph.sources.get(key);
  if (!source || withheldIn(graph)(key)) return null;
  const text = texts.get(source.span.file);
  const format = formatOf(source.span.file, text ?? "");
  return text === undefined || format === null ? null : { source, text, format };
}

/** The form of an entry; null where there is none of that key. */
export function entryPage(graph: Graph, texts: ReadonlyMap<string, string>, key: Id): EntryPage | null {
  const one = found(graph, texts, key);
  if (!one) return null;
  const { source, text, format } = one;
  const { citationStyle: style, settings } = graph;
  const items = namesakesOf(graph, key).map((other) => other.csl);
  return {
    key,
    label: source.label,
    language: source.csl.language ?? null,
    file: source.span.file,
    format,
    rows: rowsOf(format, text, source),
    reference: { key, style, language: settings.language, items },
    takenFrom: companionFor(graph, key),
    names: format === "bib" ? ["date", "year", ...usedFields].toSorted() : namesOf[format],
  };
}

/** Tags of RIS and variables of CSL that are often wanted (RIS specification of 2011; CSL 1.0.2). */
const namesOf: Readonly<Record<"ris" | "json", readonly string[]>> = {
  ris: "A2 AB AU CY DO ED EP ET IS J2 KW LA N1 PB PY SN SP T2 T3 TI UR VL".split(" "),
  json: (
    "abstract author chapter-number collection-title container-title DOI edition editor genre ISBN ISSN issue issued " +
    "language note number-of-pages number original-date page publisher publisher-place title title-short translator URL volume"
  ).split(" "),
};

/** What a form of an entry comes to; with `whole`, its changes of files, after the rest of the file was read with them. */
export function entryDraft(
  graph: Graph,
  texts: ReadonlyMap<string, string>,
  asked: {
    readonly key: Id;
    readonly seen: readonly Row[];
    readonly rows: readonly Row[];
    readonly whole: boolean;
  },
): EntryDraft | null {
  const one = found(graph, texts, asked.key);
  if (!one) return null;
  const { source, text, format } = one;
  const items = namesakesOf(graph, asked.key).map((other) => other.csl);
  const nothing = { items, problem: null, field: null, stale: false, changes: [] };
  const other = companionFor(graph, asked.key);
  if (other) return { ...nothing, problem: notHere(other) };
  if (JSON.stringify(rowsOf(format, text, source)) !== JSON.stringify(asked.seen))
    return { ...nothing, stale: true };
  const made = rowEdits(format, text, source, asked.rows);
  if ("problem" in made) return { ...nothing, ...made };
  const now = entryAlone(format, text, source, made.edits);
  if (!now) return { ...nothing, problem: "Unreadable entry, expected its braces balanced" };
  const fresh = items.map((item) => (item.id === asked.key ? now.csl : item));
  if (!asked.whole || made.edits.length === 0) return { ...nothing, items: fresh };
  const { file } = source.span;
  const trouble = troubleInFile(format, { path: file, text }, source, made.edits);
  if (trouble) return { ...nothing, ...trouble, items: fresh };
  const edits = made.edits.map((edit) => ({ file, ...edit })).toSorted(inPlace);
  return { ...nothing, items: fresh, changes: [{ file, madeFor: hashOf(text), edits }] };
}
