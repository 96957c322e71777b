import { isList } from "../../../base/json.ts";
import type { Json } from "../../../base/json.ts";
import { mergedText } from "../../../base/text/merging/merge.ts";
import type { Merged } from "../../../base/text/merging/marking.ts";
import { readBibliography } from "../../bibliography/read.ts";
import type { Alike } from "./alike.ts";

/** An entry of a bibliography as it is typed, with the comment lines right above it. */
interface Entry {
  readonly key: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** A bibliography as its entries, by their keys in the order of the file, and what stands beside them. */
interface Shelf {
  readonly text: string;
  readonly entries: ReadonlyMap<string, Entry>;
  readonly beside: string;
}

/** What became of an entry: its text in each version, the same in all where it does not clash; null where it is gone. */
interface Outcome {
  readonly base: string | null;
  readonly mine: string | null;
  readonly theirs: string | null;
}

/**
 * Two versions of a bibliography merged entry by entry, and line by line in an entry that both changed; `lines` is the
 * file merged by lines where that can be. Null where a version cannot be read, or where lines clash beside its entries.
 */
export function mergedEntries(
  path: string,
  { base, mine, theirs }: Alike,
  lines: string | null,
): Merged | null {
  const [old, own, other] = [base, mine, theirs].map((text) => shelfIn(path, text));
  if (!old || !own || !other) return null;
  const outcomes = new Map<string, Outcome>();
  for (const key of new Set([...own.entries.keys(), ...other.entries.keys()])) {
    const [was, one, two] = [old, own, other].map((shelf) => shelf.entries.get(key)?.text ?? null);
    outcomes.set(key, outcomeOf(path, was ?? null, one ?? null, two ?? null));
  }
  const clash = [...outcomes.values()].some((one) => one.mine !== one.theirs);
  if (lines !== null && !clash && isMade(path, lines, outcomes, "mine")) return { text: lines };
  // Lines that leave a key twice, or bring back an entry that is gone, are no merge.
  const apart = lines === null ? null : { base, mine, theirs };
  if (other.beside !== old.beside) return apart;
  const [one, two, was] = (["mine", "theirs", "base"] as const).map((side) =>
    writtenFor(path, side, own, other, outcomes),
  );
  if (one === undefined || two === undefined || !isMade(path, one, outcomes, "mine")) return apart;
  if (!clash) return { text: one };
  return isMade(path, two, outcomes, "theirs") ? { base: was ?? null, mine: one, theirs: two } : apart;
}

/** The entries of a bibliography; null where it cannot be read whole, or has a key twice. */
function shelfIn(path: string, text: string): Shelf | null {
  const { sources, findings } = readBibliography({
    path,
    text: text === "" && path.endsWith(".json") ? "[]" : text,
  });
  if (findings.some((one) => one.level === "error")) return null;
  const entries = new Map<string, Entry>();
  let beside = "";
  let at = 0;
  for (const { key, span } of sources.toSorted((a, b) => a.span.start - b.span.start)) {
    const start = path.endsWith(".bib") ? commentsAbove(text, span.start, at) : span.start;
    if (entries.has(key) || start < at) return null;
    const end = path.endsWith(".ris") ? pastLastLine(text, span.end) : span.end;
    entries.set(key, { key, start, end, text: text.slice(start, end) });
    beside += text.slice(at, start);
    at = end;
  }
  beside += text.slice(at);
  return {
    text,
    entries,
    beside: beside.replace(path.endsWith(".json") ? /[\s,[\]\ufeff]+/gu : /[\s\ufeff]+/gu, ""),
  };
}

/** Behind the line that ends an entry of RIS, which says nothing of the entry itself. */
function pastLastLine(text: string, end: number): number {
  return end + (/^(?:[ \t]*\r?\n)*ER {2}-[^\r\n]*/u.exec(text.slice(end, end + 200))?.[0].length ?? 0);
}

/** Where the comment lines begin that stand right above an entry of BibTeX; what is no entry is a comment there. */
function commentsAbove(text: string, start: number, from: number): number {
  let at = start;
  while (at > from && text[at - 1] === "\n") {
    const line = text.lastIndexOf("\n", at - 2) + 1;
    if (line < from || !/^\ufeff?[ \t]*%/u.test(text.slice(line, at))) break;
    at = line + (text[line] === "\ufeff" ? 1 : 0);
  }
  return at;
}

function outcomeOf(path: string, base: string | null, mine: string | null, theirs: string | null): Outcome {
  const all = (text: string | null): Outcome => ({ base: text, mine: text, theirs: text });
  if (mine === theirs || theirs === base) return all(mine);
  if (mine === base) return all(theirs);
  if (base === null || mine === null || theirs === null) return { base, mine, theirs };
  const merged = mergedText(base, mine, theirs);
  const isOne = "text" in merged && !isDivided(path, base, mine, theirs);
  return isOne ? all(merged.text) : { base, mine, theirs };
}

/** Whether both sides gave a field of an entry another value, in lines apart: merged by lines it would stand there twice. */
function isDivided(path: string, base: string, mine: string, theirs: string): boolean {
  const [was, one, two] = [base, mine, theirs].map((text) => fieldsOf(path, text));
  if (!was || !one || !two) return false;
  return [...new Set([...Object.keys(one), ...Object.keys(two)])].some((name) => {
    const [old, own, other] = [was, one, two].map((fields) => JSON.stringify(fields[name]));
    // Several people, or words, may each come from one side.
    return (
      old !== own &&
      old !== other &&
      own !== other &&
      name !== "keyword" &&
      !isList(one[name] ?? two[name] ?? null)
    );
  });
}

function fieldsOf(path: string, entry: string): Readonly<Record<string, Json | undefined>> | null {
  const { sources } = readBibliography({ path, text: path.endsWith(".json") ? `[${entry}]` : entry });
  return sources.length === 1
    ? ((sources[0]?.csl ?? null) as Readonly<Record<string, Json | undefined>> | null)
    : null;
}

/** Whether a text has just these entries, once each, in the form in which they are wanted. */
function isMade(
  path: string,
  text: string,
  outcomes: ReadonlyMap<string, Outcome>,
  side: keyof Outcome,
): boolean {
  const made = shelfIn(path, text);
  const wanted = [...outcomes].filter(([, one]) => one[side] !== null);
  return (
    made !== null &&
    made.entries.size === wanted.length &&
    wanted.every(([key, one]) => made.entries.get(key)?.text === one[side])
  );
}

/** My text with the entries of one side: those of theirs that it lacks behind the entry that they stand behind there. */
function writtenFor(
  path: string,
  side: keyof Outcome,
  own: Shelf,
  other: Shelf,
  outcomes: ReadonlyMap<string, Outcome>,
): string | undefined {
  const { text } = own;
  const nl = text.includes("\r\n") ? "\r\n" : "\n";
  const there = [...own.entries.values()];
  const incoming = new Map<string | null, string[]>();
  let last: string | null = null;
  for (const { key } of other.entries.values()) {
    const made = outcomes.get(key)?.[side] ?? null;
    if (own.entries.has(key)) last = key;
    else if (made !== null) incoming.set(last, [...(incoming.get(last) ?? []), made]);
  }
  const [first] = there;
  if (!first) return undefined;
  const isJson = path.endsWith(".json");
  const between = there[1] ? text.slice(first.end, there[1].start) : "";
  const gap = isJson
    ? /^[\s,]+$/u.test(between)
      ? between
      : `,${/\r?\n[ \t]*$/u.exec(text.slice(0, first.start))?.[0] ?? " "}`
    : `${nl}${nl}`;
  const rows = there.map(({ key, end }, place) => ({
    texts: [outcomes.get(key)?.[side] ?? null, ...(incoming.get(key) ?? [])].filter((one) => one !== null),
    gap: text.slice(end, there[place + 1]?.start ?? text.length),
  }));
  const before = incoming.get(null) ?? [];
  const head = text.slice(0, first.start);
  if (isJson) {
    const all = [...before, ...rows.flatMap(({ texts }) => texts)];
    return `${head}${all.join(gap)}${rows.at(-1)?.gap ?? ""}`;
  }
  const opening = before.map((one) => `${one}${gap}`).join("");
  return `${head}${opening}${rows
    .map(({ texts, gap: after }) =>
      texts.length === 0 && after.trim() === "" ? "" : `${texts.join(gap)}${after}`,
    )
    .join("")}`;
}
