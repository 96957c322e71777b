import "@citation-js/plugin-bibtex";
import { plugins } from "@citation-js/core";
import type { Finding, Id } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Collector } from "../../decode/collector.ts";
import type { SourceFile } from "../../source-file.ts";
import { datesOf } from "./dates.ts";
import { inheritance } from "./inherit.ts";
import type { Fields } from "./inherit.ts";
import { lexBibtex } from "./lexer.ts";
import type { BibEntry } from "./lexer.ts";
import { kindAlias, knownKinds, languageTags, nameFields, usedFields } from "./names.ts";
import { cslItem, isObject } from "../csl.ts";
import { orcidIn, sourceOf } from "../source.ts";
import type { Source } from "../source.ts";

const longestField = 1024 * 1024;
const longestName = 1000;
const others = /(?:^|\sand\s)others$/i;

/** The sources of a BibTeX or biblatex file. A value that TeX could not read costs its field; a broken entry itself. */
export function readBibtex(file: SourceFile): {
  readonly sources: readonly Source[];
  readonly findings: readonly Finding[];
} {
  const { entries, found } = lexBibtex(file);
  const inherit = inheritance(entries, found);
  const sources: Source[] = [];
  const byKey = new Map<Id, Source>();
  const sets: { readonly at: number; readonly entry: BibEntry }[] = [];
  for (const entry of entries) {
    if (entry.type === "xdata") continue;
    tellDoubles(entry, found);
    if (entry.type === "set") sets.push({ at: sources.length, entry });
    const source = sourceFrom(entry, inherit(entry), found);
    if (!byKey.has(entry.key)) byKey.set(entry.key, source);
    sources.push(source);
  }
  for (const { at, entry } of sets) sources[at] = setOf(entry, byKey, found) ?? sources[at]!;
  return { sources, findings: found.all() };
}

function tellDoubles(entry: BibEntry, found: Collector): void {
  const seen = new Set<string>();
  for (const { name, span } of entry.fields) {
    if (seen.has(name)) {
      const message = say`Duplicate field \`${name}\` in entry \`${entry.key}\`, expected it once; the first is kept`;
      found.bad(message, span, { rule: "duplicate-key", about: [entry.key] });
    }
    seen.add(name);
  }
}

function sourceFrom(entry: BibEntry, fields: Fields, found: Collector): Source {
  const properties = propertiesOf(entry, fields, found);
  const named = fields.get("author") ? "author" : "editor";
  const andOthers = others.test(oneLine(fields.get(named)?.text ?? ""));
  const raw = { ...readFields(entry, properties, fields, found), ...datesOf(fields) };
  const language = languageOf((fields.get("language") ?? fields.get("langid"))?.text ?? "");
  const { csl, problems } = cslItem(language === undefined ? raw : { ...raw, language }, entry.key);
  const about = [entry.key];
  for (const { message, level, field } of problems)
    if (field !== "type") found.bad(message, entry.keySpan, { level, about });
  if (!knownKinds.has(entry.type)) {
    const message = say`Unknown kind of entry \`@${entry.type}\`, read as a document`;
    found.bad(message, entry.keySpan, { level: "note", about });
  }
  const orcids = orcidsOf(fields.get(`${named}+an:orcid`)?.text ?? "");
  return sourceOf({ csl, span: entry.span, keySpan: entry.keySpan, andOthers, orcids });
}

/** The language of the work as tags of BCP 47; undefined when one of them is none that we know. */
function languageOf(text: string): string | undefined {
  const tags = oneLine(text)
    .toLowerCase()
    .split(" and ")
    .map((name) => languageTags.get(name.replace(/^lang/, "")));
  return tags.includes(undefined) ? undefined : tags.join(", ");
}

/** Annotations of names in biblatex: `1="0000-0002-1825-0097"; 2="…"`. */
function orcidsOf(text: string): readonly (string | null)[] {
  const orcids: (string | null)[] = [];
  for (const [, place, said] of text.matchAll(/(?<!\d)(\d{1,3})\s{0,9}=\s{0,9}"([^"]{1,100})"/g))
    orcids[Number(place) - 1] = orcidIn(said);
  return Array.from(orcids, (orcid) => orcid ?? null);
}

type Properties = Readonly<Record<string, string>>;

/** The values that reach CSL, in a form that citation-js reads. */
function propertiesOf(entry: BibEntry, fields: Fields, found: Collector): Properties {
  const pairs: (readonly [string, string])[] = [];
  for (const [name, { text, span }] of fields) {
    if (!usedFields.has(name)) continue;
    const tooLong = text.length > longestField || (nameFields.has(name) && longName(oneLine(text)));
    if (tooLong) {
      found.bad(say`Unexpected length of \`${name}\`, expected a text of ordinary length`, span, {
        about: [entry.key],
      });
      continue;
    }
    const plain = readable(oneLine(text));
    const value = nameFields.has(name) ? plain.replace(others, "").trim() : plain;
    if (value !== "") pairs.push([name, value]);
  }
  return Object.fromEntries(pairs);
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}

/** Commands that citation-js cannot read, in words that it can; TeX takes the space after a command away. */
function readable(text: string): string {
  return text
    .replace(/\\enquote\*/g, "\\enquote")
    .replace(/\\hyphen(?![A-Za-z])(?:\{\}| ?)/g, "-")
    .replace(/\\((?:La|Bib)?TeX)(?![A-Za-z])(?:\{\}| ?)/g, "$1");
}

function longName(text: string): boolean {
  return text.split(/ and /i).some((name) => name.length > longestName);
}

/** The entry as citation-js reads it; a value that it cannot read costs its field. */
function readFields(
  entry: BibEntry,
  properties: Properties,
  fields: Fields,
  found: Collector,
): Record<string, unknown> {
  const whole = converted(entry, properties);
  if (whole !== null) return whole;
  const good: Record<string, string> = {};
  for (const [name, value] of Object.entries(properties)) {
    if (converted(entry, { [name]: value }) !== null) good[name] = value;
    else {
      good[name] = value.replace(/[{}$\\]/g, "");
      const at = fields.get(name)?.span ?? entry.keySpan;
      found.bad(
        say`Unreadable \`${name}\` of entry \`${entry.key}\`, expected ${"TeX"} that ends what it begins`,
        at,
        {
          about: [entry.key],
        },
      );
    }
  }
  return converted(entry, good) ?? { type: "document" };
}

function converted(entry: BibEntry, properties: Properties): Record<string, unknown> | null {
  const type = kindAlias.get(entry.type) ?? entry.type;
  try {
    const list = plugins.input.data([{ type, label: entry.key, properties }], "@biblatex/entries+list");
    const first: unknown = Array.isArray(list) ? list[0] : null;
    if (!isObject(first)) return null;
    const known = Object.entries(first).filter(([name]) => name !== "issued" && name !== "_graph");
    return Object.fromEntries(known);
  } catch {
    return null;
  }
}

/** A set stands for its members: it takes the first one's data, so that it has a title and a date. */
function setOf(entry: BibEntry, byKey: ReadonlyMap<Id, Source>, found: Collector): Source | null {
  const named = entry.fields.find((field) => field.name === "entryset");
  const members = (named?.text ?? "")
    .split(",")
    .map((key) => key.trim())
    .filter((key) => key !== "");
  const unknown = members.find((key) => !byKey.has(key));
  if (named && unknown !== undefined) {
    const message = say`Unknown entry \`${unknown}\` in the set \`${entry.key}\`, expected a key of this file`;
    found.bad(message, named.span, { about: [entry.key] });
  }
  const first = members.map((key) => byKey.get(key)).find((source) => source !== undefined);
  if (!first) return null;
  const csl = { ...first.csl, id: entry.key };
  const { andOthers } = first;
  return { ...sourceOf({ csl, span: entry.span, keySpan: entry.keySpan, andOthers }), members };
}
