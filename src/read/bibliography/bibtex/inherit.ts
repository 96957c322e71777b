import type { Id } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Collector } from "../../decode/collector.ts";
import type { BibEntry, BibField } from "./lexer.ts";
import { notInherited, titleInheritance } from "./names.ts";

/** An entry's fields by name: its own, and those it has from its parents. */
export type Fields = ReadonlyMap<string, BibField>;

const longestLine = 16;
const mostInherited = 128 * 1024 * 1024;

interface Family {
  readonly byKey: ReadonlyMap<Id, BibEntry>;
  readonly found: Collector;
  /** Keys that were told to stand in a circle. */
  readonly circles: Set<Id>;
  spent: number;
  tooMuch: boolean;
}

/**
 * Gives each entry of one file its fields with those from `crossref` and `xdata` (biblatex manual, appendix B): a parent's
 * fields fill what the child lacks, its title becomes that of the book or journal. Unknown parents and circles are findings.
 */
export function inheritance(entries: readonly BibEntry[], found: Collector): (entry: BibEntry) => Fields {
  const byKey = new Map<Id, BibEntry>();
  for (const entry of entries) if (!byKey.has(entry.key)) byKey.set(entry.key, entry);
  const family: Family = { byKey, found, circles: new Set(), spent: 0, tooMuch: false };
  return (entry) => complete(family, entry, [], new Set());
}

function complete(
  family: Family,
  entry: BibEntry,
  line: readonly Id[],
  met: Set<BibEntry>,
): Map<string, BibField> {
  const fields = new Map<string, BibField>();
  for (const field of entry.fields) if (!fields.has(field.name)) fields.set(field.name, field);
  for (const by of ["xdata", "crossref"] as const) {
    const named = fields.get(by);
    if (named === undefined) continue;
    const keys = by === "xdata" ? named.text.split(",", 1000) : [named.text];
    for (const key of keys) {
      const parent = parentOf(family, entry, named, key.trim(), line);
      if (parent === null || met.has(parent)) continue;
      met.add(parent);
      const whole = complete(family, parent, [...line, entry.key], met);
      family.spent += 100;
      for (const [name, field] of by === "xdata" ? whole : handedDown(entry.type, parent.type, whole)) {
        family.spent += field.text.length;
        if (!fields.has(name)) fields.set(name, field);
      }
    }
  }
  return fields;
}

function parentOf(
  family: Family,
  entry: BibEntry,
  named: BibField,
  key: Id,
  line: readonly Id[],
): BibEntry | null {
  const parent = family.byKey.get(key);
  const tell = (message: Text): null => {
    family.found.bad(message, named.span, { about: [entry.key] });
    return null;
  };
  const root = line[0] ?? entry.key;
  if (parent === undefined)
    return line.length > 0
      ? null
      : tell(say`Unknown entry \`${key}\` in \`${named.name}\`, expected a key of this file`);
  if (key === entry.key || line.includes(key)) {
    if (key !== root || family.circles.has(key)) return null;
    for (const member of [...line, entry.key]) family.circles.add(member);
    return tell(say`Unexpected circle of \`${named.name}\` through \`${key}\`, expected entries that end it`);
  }
  if (line.length < longestLine && family.spent < mostInherited) return parent;
  if (family.tooMuch) return null;
  family.tooMuch = true;
  return tell(
    say`Unexpected amount of \`${named.name}\`, expected at most ${String(longestLine)} in a line and ${"128 MiB"} in all`,
  );
}

function handedDown(child: string, parent: string, fields: Fields): readonly (readonly [string, BibField])[] {
  const rule = titleInheritance.get(parent);
  const kept = [...fields].filter(([name]) => !notInherited.has(name));
  if (rule === undefined || !rule.children.has(child)) return kept;
  return kept.flatMap(([name, field]): (readonly [string, BibField])[] => {
    if (/^(title|subtitle|titleaddon)$/.test(name)) return [[`${rule.prefix}${name}`, field]];
    if (/^(short|index|sort|indexsort)title$/.test(name)) return [];
    const both = name === "author" && rule.prefix === "book" && parent === "book";
    return both
      ? [
          [name, field],
          ["bookauthor", field],
        ]
      : [[name, field]];
  });
}
