import { everywhere, kinds } from "../../grammar/kinds.ts";
import { settingsFields } from "../../grammar/settings.ts";
import type { Fields } from "../../grammar/field.ts";
import type { Entry } from "../tree.ts";
import { isLineEnd } from "./cursor.ts";
import type { Cursor } from "./cursor.ts";
import { canBegin, canName } from "./signs.ts";

const [space, point, colon] = [32, 46, 58];

/** Nobody writes longer keys; YAML has a limit of its own for them. */
const longest = 200;

const size = 2048;

/** The grammar's own words by a sum of their signs, so that a key that is one of them need not be cut from its text. */
const words: readonly (string | undefined)[] = wordsIn([
  ...Object.values(kinds).map((kind) => kind.fields),
  everywhere,
  settingsFields,
]);

function wordsIn(tables: readonly Fields[]): readonly (string | undefined)[] {
  const table: (string | undefined)[] = Array.from({ length: size }, () => undefined);
  const put = (word: string): void => void (table[sumOf(word)] ??= word);
  const take = (fields: Fields): void => {
    for (const [name, field] of Object.entries(fields)) {
      put(name);
      if (field.type === "group" || field.type === "items" || field.type === "named") take(field.fields);
    }
  };
  [...Object.keys(kinds), "source"].forEach(put);
  tables.forEach(take);
  return table;
}

function sumOf(word: string): number {
  let sum = 0;
  for (let at = 0; at < word.length; at++) sum = added(sum, word.charCodeAt(at));
  return sum;
}

function added(sum: number, code: number): number {
  return (sum * 31 + code) & (size - 1);
}

/** The key at a place, its colon next; null where there is no plain one. */
export function keyAt(cursor: Cursor): string | null {
  const { text, at: start } = cursor;
  const first = text.charCodeAt(start);
  // Points at the beginning of a line may be the end of the text.
  if (!canBegin(first) || first === point) return null;
  let sum = 0;
  let at = start;
  for (; ; at++) {
    const code = text.charCodeAt(at);
    if (code === colon) break;
    if (!canName(code)) return null;
    sum = added(sum, code);
  }
  const next = text.charCodeAt(at + 1);
  if (next !== space && !isLineEnd(next)) return null;
  if (at - start > longest || text.charCodeAt(at - 1) === space) return null;
  cursor.at = at;
  const word = words[sum];
  return word?.length === at - start && text.startsWith(word, start) ? word : text.slice(start, at);
}

/** So many keys are looked through one by one; the other reader takes larger maps. */
const mostKeys = 200;

/** Whether a map has a key already, or too many to tell. */
export function hasKey(entries: readonly Entry[], key: string): boolean {
  if (entries.length >= mostKeys) return true;
  for (const entry of entries) if (entry.key === key) return true;
  return false;
}
