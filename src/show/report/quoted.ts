import type { Finding, Id, Span } from "../../base/finding.ts";
import { someTexts } from "../../base/text/texts.ts";
import type { Texts } from "../../base/text/texts.ts";
import type { AnyLinked, Graph } from "../../link/graph.ts";
import { placeWithheld, unread, unreadSpans, withheldIn } from "../../link/withheld.ts";
import { spanOf } from "../../read/record.ts";
import { ownerOfFile } from "../../read/settings/companions/files.ts";
import { prosePath } from "../../read/source-file.ts";
import { plainOf, valueAt } from "../../read/yaml/tree.ts";

/** The files that findings, and what would mend them, quote. */
export function quotedBy(findings: readonly Finding[]): ReadonlySet<string> {
  return new Set(
    findings.flatMap(({ at, fix }) => [
      ...(at ? [at.file] : []),
      ...(fix?.edits.map(({ file }) => file) ?? []),
    ]),
  );
}

/**
 * What of some files may not be quoted where something is withheld, or where they are of a companion corpus: all but
 * the records and sources that are known to be open, the heads of lists and tables, and the settings; in these, every id
 * of what is withheld. So what could not be read, and what is only read there, is in no excerpt.
 */
export function closedSpans(graph: Graph, texts: Texts, quoted: ReadonlySet<string>): readonly Span[] {
  const isStrict = (file: string): boolean =>
    graph.settings.withhold.length > 0 || ownerOfFile(graph.companions, file) !== null;
  const files = someTexts(texts, (file) => quoted.has(file) && !prosePath.test(file) && isStrict(file));
  if (files.size === 0) return [];
  const open = openIn(graph, new Set(files.keys()));
  return [...files].flatMap(([file, text]) => {
    const spans = file === graph.settings.file ? whole(file, text) : (open.get(file) ?? []);
    const head = file.endsWith(".csv") ? [{ file, start: 0, end: lineEnd(text, 0) }] : [];
    return [...between(file, text, [...head, ...spans]), ...namesIn(graph, file, text)];
  });
}

function openIn(graph: Graph, files: ReadonlySet<string>): ReadonlyMap<string, readonly Span[]> {
  const open = new Map([...files].map((file): [string, Span[]] => [file, []]));
  const put = (span: Span): void => void open.get(span.file)?.push(span);
  const withheld = withheldIn(graph);
  const closed = new Set(unreadSpans(graph).map(({ file, start }) => `${start} ${file}`));
  for (const record of graph.records.values())
    if (files.has(record.file) && !withheld(record.id)) put(spanOf(record));
  for (const one of unread(graph))
    if (files.has(one.file) && !closed.has(`${one.node.start} ${one.file}`)) put(spanOf(one));
  for (const { key, span } of graph.sources.values()) if (files.has(span.file) && !withheld(key)) put(span);
  return open;
}

const whole = (file: string, text: string): readonly Span[] => [{ file, start: 0, end: text.length }];

function lineEnd(text: string, from: number): number {
  const end = text.indexOf("\n", from);
  return end < 0 ? text.length : end;
}

/** What lies between some spans, line by line, without the heads of lists. */
function between(file: string, text: string, spans: readonly Span[]): readonly Span[] {
  const closed: Span[] = [];
  const close = (from: number, to: number): void => {
    for (let at = from; at < to; at = lineEnd(text, at) + 1) {
      const end = Math.min(lineEnd(text, at), to);
      const line = text.slice(at, end);
      const lead = /^[\s\ufeff]*(?:-\s+)*/u.exec(line)?.[0].length ?? 0;
      if (!/^\ufeff?[a-z]+:\s*$/u.test(line)) closed.push({ file, start: at + lead, end });
    }
  };
  let at = 0;
  for (const { start, end } of spans.toSorted((a, b) => a.start - b.start)) {
    close(at, start);
    at = Math.max(at, end);
  }
  close(at, text.length);
  return closed;
}

const word = /[\p{L}\p{N}](?:[\p{L}\p{N}/.:@#>_-]*[\p{L}\p{N}])?/gu;

/** Where a file names what is withheld, by its id there. */
function namesIn(graph: Graph, file: string, text: string): readonly Span[] {
  const withheld = withheldIn(graph);
  const of = ownerOfFile(graph.companions, file);
  const isNamed = (name: Id): boolean =>
    withheld(name) || graph.settings.withhold.some((one) => name === one || name.startsWith(`${one}/`));
  return [...text.matchAll(word)].flatMap(({ 0: name, index }) =>
    isNamed(of ? `${of.as}/${name}` : name) ? [{ file, start: index, end: index + name.length }] : [],
  );
}

/**
 * Where some files give exact places, read or not: coordinates, and where a thing was found of which that is withheld. A
 * word about it that cannot be read is taken for one that withholds it.
 */
export function exactPlaces(graph: Graph, files: ReadonlySet<string>): readonly Span[] {
  const artefacts = [...graph.records.values()].filter(({ list }) => list === "artefacts");
  const ofOne = (one: Pick<AnyLinked, "file" | "node">, isWithheld: boolean): readonly Span[] => {
    const kept = plainOf(one.node) as Readonly<Record<string, unknown>>;
    const flag = kept["withhold-location"] ?? "false";
    const fields = isWithheld || flag !== "false" ? ["coordinates", "found-at"] : ["coordinates"];
    return fields.flatMap((field) => (valueAt(one.node, field) === null ? [] : [spanOf(one, field)]));
  };
  return [
    ...artefacts
      .filter(({ file }) => files.has(file))
      .flatMap((one) => ofOne(one, placeWithheld(graph, one.id))),
    ...unread(graph)
      .filter(({ file }) => files.has(file))
      .flatMap((one) => ofOne(one, false)),
  ];
}
