import { coded, row, say } from "../../base/text/said/said.ts";
import type { Hole, Said, Text } from "../../base/text/said/said.ts";
import type { Node } from "../yaml/tree.ts";

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
