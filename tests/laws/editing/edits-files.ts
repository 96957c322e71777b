import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import * as fc from "fast-check";
import { edited } from "../../../src/base/text/edit.ts";
import type { Edit } from "../../../src/base/finding.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import type { CannotChange, TextChange } from "../../../src/read/edit/text-change.ts";
import { textEdits } from "../../../src/read/edit/text-edits.ts";
import { isList } from "../../../src/read/edit/written.ts";
import type { Written } from "../../../src/read/edit/written.ts";
import { listNames } from "../../../src/read/grammar/kinds.ts";
import type { ListName } from "../../../src/read/grammar/field.ts";
import { readYaml } from "../../../src/read/yaml/text.ts";
import type { MapNode, Node, Step } from "../../../src/read/yaml/tree.ts";

const folder = fileURLToPath(new URL("../../corpora/hand-written/", import.meta.url));

/** Files as people write them: every name with its text, line ends as LF. */
export const handWritten: readonly (readonly [string, string])[] = readdirSync(folder)
  .sort()
  .map((name) => [name, readFileSync(join(folder, name), "utf8").replaceAll("\r\n", "\n")]);

/** The ways in which one text may be kept on disk; mixed line ends come from two people and two machines. */
export const keepings: readonly (readonly [string, (text: string) => string])[] = [
  ["as it is", (text) => text],
  ["with CRLF", (text) => text.replaceAll("\n", "\r\n")],
  ["with a byte-order mark and CRLF", (text) => `\ufeff${text.replaceAll("\n", "\r\n")}`],
  ["with mixed line ends", (text) => text.replace(/\n([^\n]*)\n/g, "\r\n$1\n")],
  ["without a final line end", (text) => (/\|[^\n]*\n[^:]*$/.test(text) ? text : text.replace(/\n+$/, ""))],
];

/** The text after a change; null where it cannot be made so. */
export function changed(path: string, text: string, change: TextChange): string | null {
  const edits = editsOf(path, text, change);
  return edits && edited(text, edits);
}

/** The edits of a change; null where it cannot be made so. */
export function editsOf(path: string, text: string, change: TextChange): readonly Edit[] | null {
  const edits = textEdits({ path, text }, change);
  return "problem" in edits ? null : edits;
}

/** What a file reads as: within records, single values and lists of one alike; empty values left out. */
export function saidIn(text: string): ReadonlyMap<string, unknown> {
  const known = read.get(text);
  if (known) return known;
  const said = fileSaid(text);
  read.set(text, said);
  return said;
}

const read = new Map<string, ReadonlyMap<string, unknown>>();

function fileSaid(text: string): ReadonlyMap<string, unknown> {
  const { root } = readYaml("", text);
  if (!root) throw new Error(`unreadable: ${text}`);
  return new Map(
    root.entries
      .filter(({ value }) => !isNothing(value))
      .map(({ key, value }) => [key, value.is === "list" ? value.items.map(plain) : plain(value)]),
  );
}

function plain(node: Node): unknown {
  if (node.is === "text") return node.text;
  if (node.is === "list")
    return node.items.length === 1 && node.items[0]?.is !== "list"
      ? plain(node.items[0] as Node)
      : node.items.map(plain);
  return new Map(
    node.entries.filter(({ value }) => !isNothing(value)).map(({ key, value }) => [key, plain(value)]),
  );
}

function isNothing(node: Node): boolean {
  return node.is === "text" && node.text === "" && node.plain;
}

/** What a value is to read as. */
export function meant(value: Written): unknown {
  if (typeof value === "string") return value;
  if (isList(value)) {
    const [only] = value;
    return value.length === 1 && only !== undefined && !isList(only) ? meant(only) : value.map(meant);
  }
  return new Map(Object.entries(value).map(([key, one]) => [key, meant(one)]));
}

/** A record of a file: its list, its place in it, and its tree. */
export interface Found {
  readonly list: ListName;
  readonly place: number;
  readonly node: MapNode;
}

/** All records of a file, anchored ones once. */
export function recordsIn(text: string): readonly Found[] {
  const { root } = readYaml("", text);
  return listNames.flatMap((list) => {
    const value = root?.entries.find(({ key }) => key === list)?.value;
    if (value?.is !== "list") return [];
    return value.items.flatMap((node, place) => (node.is === "map" ? [{ list, place, node }] : []));
  });
}

const signs = [
  ..."ab 1:#,-[]{}\"'\\|>&*!%@`?~=<\n\t.;()/é🪵اب\u0308\u200f\u00a0\u2028\ufeff\r",
  ": ",
  " #",
  "- ",
  "\ud83e",
  "null",
  "\n\n",
];

/** A text with everything in it that may part, end or disguise a value. */
export const nasty = fc.string({ unit: fc.constantFrom(...signs), minLength: 1, maxLength: 24 });

/** A text as it is mostly typed: words in one line. */
export const tame = fc.stringMatching(/^[A-Za-z][a-z ,.'-]{0,30}[a-z.]$/);

/** A value of any shape a field may have. */
export const anyValue: fc.Arbitrary<Written> = fc.oneof(
  { weight: 4, arbitrary: nasty },
  { weight: 3, arbitrary: tame },
  { weight: 2, arbitrary: fc.array(fc.oneof(nasty, tame), { maxLength: 4 }) },
  {
    weight: 1,
    arbitrary: fc.dictionary(fc.constantFrom("is", "by", "x: y", "note", "يد"), fc.oneof(nasty, tame), {
      minKeys: 1,
      maxKeys: 4,
    }),
  },
  {
    weight: 1,
    arbitrary: fc.array(
      fc.dictionary(
        fc.constantFrom("when", "what", "kind"),
        fc.oneof(tame, fc.array(tame, { minLength: 2, maxLength: 3 })),
        { minKeys: 1 },
      ),
      { minLength: 1, maxLength: 3 },
    ),
  },
);

/** The paths of all texts that stand deeper in a record than its fields. */
export function pathsIn(node: Node, path: readonly Step[] = []): readonly (readonly Step[])[] {
  if (node.is === "text") return path.length > 1 ? [path] : [];
  if (node.is === "list") return node.items.flatMap((one, place) => pathsIn(one, [...path, place]));
  return node.entries.flatMap(({ key, value }) => pathsIn(value, [...path, key]));
}

/** A value with another put in at a path that leads to one, or without it (null). */
export function withPut(whole: Written, path: readonly Step[], value: Written | null): Written {
  const [step, ...rest] = path;
  if (step === undefined || typeof whole === "string") return value ?? "";
  if (isList(whole)) {
    const last = rest.length === 0;
    if (last && value === null) return whole.filter((_, place) => place !== step);
    return whole.map((one, place) => (place === step ? withPut(one, rest, value) : one));
  }
  const entries = Object.entries(whole).filter(([key]) => key !== step || rest.length > 0 || value !== null);
  return Object.fromEntries(
    entries.map(([key, one]) => [key, key === step ? withPut(one, rest, value) : one]),
  );
}

/** The lines of a text without their ends. */
export function linesOf(text: string): readonly string[] {
  return text.replace(/^\ufeff/, "").split(/\r?\n/);
}

/** The comments of a file that stand in lines of their own. */
export function commentsIn(text: string): readonly string[] {
  return linesOf(text)
    .map((line) => line.trim())
    .filter((line) => line.startsWith("#"));
}

/** Whether all lines of one text stand in another in their order. */
export function isKept(lines: readonly string[], among: readonly string[]): boolean {
  let at = 0;
  for (const line of among) if (line === lines[at]) at++;
  return at === lines.length;
}

/** The records of a list as it is read. */
export function recordsOf(said: unknown): readonly unknown[] {
  return Array.isArray(said) ? said : [];
}

/** What a file says but for one list. */
export function without(said: ReadonlyMap<string, unknown>, list: string): ReadonlyMap<string, unknown> {
  return new Map(
    [...said].filter(([key, value]) => key !== list && !(Array.isArray(value) && value.length === 0)),
  );
}

/** Why a change was not made, in English; null where it was. */
export function whyNot(made: readonly Edit[] | CannotChange): string | null {
  return "problem" in made ? inEnglish(made.problem) : null;
}
