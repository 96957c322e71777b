import type { Finding, Id, Span } from "../base/finding.ts";
import { listsBy } from "../base/lists/gathered.ts";
import { inEnglish } from "../base/text/said/english.ts";
import { say } from "../base/text/said/said.ts";
import type { Text } from "../base/text/said/said.ts";
import { someTexts, textsWith } from "../base/text/texts.ts";
import type { Texts } from "../base/text/texts.ts";
import type { Lens } from "../derive/lens.ts";
import type { Judgement } from "../judge/judge.ts";
import type { AnyLinked, Graph } from "../link/graph.ts";
import { placeWithheld, unreadSpans, withheldIn, withheldSpans } from "../link/withheld.ts";
import { namedBy } from "../read/prose/prose.ts";
import { spanOf } from "../read/record.ts";
import { closedSpans, exactPlaces, quotedBy } from "./report/quoted.ts";

export { placeWithheld, withheldIn } from "../link/withheld.ts";

/** As much of a judged corpus as tells what its lens hides. */
interface Judged {
  readonly graph: Graph;
  readonly judgement: Pick<Judgement, "counts" | "listed">;
}

/** Tells what may be shown under the lens: what counts in its year and is not withheld. */
export function shownUnder({ graph, judgement }: Judged): (id: Id) => boolean {
  const withheld = withheldIn(graph);
  return (id) => judgement.counts(id) && !withheld(id);
}

/** Tells which claims may be listed under the lens: those that something in print by its year names, and none withheld. */
export function listedUnder({ graph, judgement }: Judged): (claim: Id) => boolean {
  const withheld = withheldIn(graph);
  return (claim) => judgement.listed(claim) && !withheld(claim);
}

/** Tells which sources and passages may be cited under the lens: those in print by its year, and none withheld. */
export function citableUnder({
  graph,
  lens,
}: {
  readonly graph: Graph;
  readonly lens: Lens;
}): (key: Id) => boolean {
  const withheld = withheldIn(graph);
  return (key) => {
    const passage = graph.records.get(key)?.list === "passages";
    const year = passage ? graph.provenance(key).year : (graph.sources.get(key)?.year ?? null);
    return !withheld(key) && (lens.asOf === undefined || year === null || year <= lens.asOf);
  };
}

/**
 * Findings that may be shown: one that is about something withheld, or names it, goes; of an error, that there is one
 * stays, and of one at an exact place where it is.
 */
export function shownFindings(graph: Graph | null, findings: readonly Finding[]): readonly Finding[] {
  if (!graph) return findings;
  const shown = withoutPlaces(graph, findings);
  return graph.settings.withhold.length === 0 ? shown : withoutWithheld(graph, shown);
}

/** What is said of a value may repeat it. */
function withoutPlaces(graph: Graph, findings: readonly Finding[]): readonly Finding[] {
  const errors = findings.filter(({ level, at }) => level === "error" && at !== null);
  if (errors.length === 0) return findings;
  const places = exactPlaces(graph, quotedBy(errors));
  const isPlace = (at: Span): boolean =>
    places.some(({ file, start, end }) => file === at.file && start <= at.start && at.start < end);
  return findings.map((one) =>
    one.at && isPlace(one.at) ? { ...masked(one), at: one.at, about: one.about } : one,
  );
}

function withoutWithheld(graph: Graph, findings: readonly Finding[]): readonly Finding[] {
  const ids = withheldIn(graph);
  // A part that could not be read is in no graph, and is withheld all the same.
  const withheld = (id: Id): boolean =>
    ids(id) || graph.settings.withhold.some((whole) => id.startsWith(`${whole}/`));
  const spans = withheldSpans(graph);
  const within = (at: Span): boolean =>
    spans.some((span) => span.file === at.file && span.start <= at.start && at.start < span.end);
  const names = (message: Text): boolean =>
    [...inEnglish(message).matchAll(/`([^`]+)`/gu)].some(([, id = ""]) => withheld(id));
  return findings.flatMap((one) => {
    if (!one.about.some(withheld) && (one.at === null || !within(one.at)) && !names(one.message))
      return [one];
    if (one.level !== "error") return [];
    // Which of the ids that are withheld leads nowhere is found by its place alone.
    return [one.at?.file === graph.settings.file ? { ...masked(one), at: one.at } : masked(one)];
  });
}

function masked({ rule, level }: Finding): Finding {
  const message = say`Something that the corpus withholds has this error, expected none`;
  return { rule, level, message, about: [], at: null, fix: null, accepted: null };
}

/**
 * The texts for excerpts: what may not be shown is dotted out, so that every offset stays what it was. `quoted` are the
 * files of which lines are shown, usually all.
 */
export function shownTexts(
  graph: Graph,
  texts: Texts,
  quoted: ReadonlySet<string> = new Set(texts.keys()),
): Texts {
  const withPlaces = [...someTexts(texts, (file) => quoted.has(file))].filter(([, text]) =>
    /coordinates|found-at/u.test(text),
  );
  const spans = [
    ...[...graph.records.values()].flatMap((record) => hiddenSpans(graph, record)),
    ...unreadSpans(graph),
    ...exactPlaces(graph, new Set(withPlaces.map(([file]) => file))),
    ...closedSpans(graph, texts, quoted),
    ...prosePlaces(graph),
  ];
  const byFile = listsBy(spans, (span) => [span.file]);
  const closed = [...byFile].flatMap(([file, some]): readonly (readonly [string, string])[] => {
    const text = texts.get(file);
    return text === undefined ? [] : [[file, dotted(text, some)]];
  });
  return textsWith(texts, new Map(closed));
}

function dotted(text: string, spans: readonly Span[]): string {
  const parts: string[] = [];
  let at = 0;
  for (const { start, end } of spans.toSorted((a, b) => a.start - b.start)) {
    if (end <= at) continue;
    const from = Math.max(at, start);
    parts.push(text.slice(at, from), text.slice(from, end).replace(/[^\r\n]/g, "·"));
    at = end;
  }
  return [...parts, text.slice(at)].join("");
}

/** Where prose names something withheld. */
function prosePlaces(graph: Graph): readonly Span[] {
  const withheld = withheldIn(graph);
  return graph.prose.flatMap(({ pieces }) =>
    pieces.filter((one) => namedBy(one).some(({ id }) => withheld(id))).map(({ at }) => at),
  );
}

function hiddenSpans(graph: Graph, record: AnyLinked): readonly Span[] {
  if (withheldIn(graph)(record.id)) return [spanOf(record)];
  if (record.list !== "artefacts") return [];
  const exact = record.values.coordinates === undefined ? [] : [spanOf(record, "coordinates")];
  const place = placeWithheld(graph, record.id) && record.values["found-at"] !== undefined;
  return place ? [...exact, spanOf(record, "found-at")] : exact;
}
