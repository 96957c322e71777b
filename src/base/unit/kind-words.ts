import type { QuantityKind } from "../quantity.ts";
import { say } from "../text/said/said.ts";
import type { Said } from "../text/said/said.ts";

/** What each kind of quantity is called. */
export const kindWords: Readonly<Record<QuantityKind, Said>> = {
  length: say`length`,
  mass: say`mass`,
  angle: say`angle`,
  time: say`time`,
  area: say`area`,
  volume: say`volume`,
  count: say`count`,
  number: say`number`,
};

/** One of a kind, as a sentence asks for it. */
export const oneOfKind: Readonly<Record<QuantityKind, Said>> = {
  length: say`a length`,
  mass: say`a mass`,
  angle: say`an angle`,
  time: say`a time`,
  area: say`an area`,
  volume: say`a volume`,
  count: say`a count`,
  number: say`a number`,
};
