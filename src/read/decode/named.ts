import { nearestAmong } from "../../base/nearest.ts";
import { coded, row, say } from "../../base/text/said/said.ts";
import type { Hole, Said, Text } from "../../base/text/said/said.ts";
import { slipAmong } from "../../base/text/slip.ts";
import type { Fields } from "../grammar/field.ts";
import type { Node } from "../yaml/tree.ts";

/** What is like a word among the names of some fields: the nearest, and the one that it can only be a slip for. */
export interface Likeness {
  readonly names: readonly string[];
  readonly nearTo: (word: string) => readonly string[];
  readonly meantBy: (word: string) => string | null;
}

const likenesses = new WeakMap<object, Likeness>();

/** The names of fields, made ready once for all words that are none. */
export function likenessIn(fields: Readonly<Record<string, unknown>>): Likeness {
  const known = likenesses.get(fields) ?? likenessAmong(Object.keys(fields));
  likenesses.set(fields, known);
  return known;
}

/** The same of any names. */
export function likenessAmong(names: readonly string[]): Likeness {
  return { names, nearTo: nearestAmong(names), meantBy: slipAmong(names) };
}

/** What a value is by its shape. */
export const shapeWords: Readonly<Record<Node["is"], Said>> = {
  map: say`map`,
  list: say`list`,
  text: say`text`,
};

/** What was to be written: the names most like what was, or any of all there are. */
export function nearOrAny(near: readonly string[], all: readonly string[]): Said {
  return near.length > 0 ? eitherOf(near) : say`one of ${row(all, "comma")}`;
}

/** `a`, `a or b`, `a or b or c`: one of a few. */
export function eitherOf(few: readonly Hole[]): Said {
  const [one = "", ...others] = few;
  return others.reduce<Said>((before, other) => say`${before} or ${other}`, say`${one}`);
}

/** What was expected, with the names most like what was written, where there are any. */
export function suchAs(due: Text, near: readonly string[]): Text {
  return near.length > 0 ? say`${due} such as ${eitherOf(near.map(coded))}` : due;
}

const required = new WeakMap<Fields, readonly string[]>();

/** The names of the fields that may not be missing. */
export function requiredIn(fields: Fields): readonly string[] {
  const known = required.get(fields) ?? Object.keys(fields).filter((name) => fields[name]?.required);
  required.set(fields, known);
  return known;
}
