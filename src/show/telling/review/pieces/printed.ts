import { say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Derived } from "../../../../derive/derived/derived.ts";
import { mainNames, valueWords } from "../../../numbers/value.ts";
import type { DerivationRecord } from "../../../../link/graph.ts";
import type { Plugin } from "../../../../plugin.ts";
import type { NumberLine } from "../../../numbers/value.ts";
import type { Inline, Inlines } from "../../blocks/block.ts";

/** A text with computed numbers in it, with the key of their computation; as it is where nothing was computed. */
export function printed({ run }: Derived, text: Text): Inline {
  return run === null ? text : { is: "printed", text, run: run.key };
}

/** The names of the numbers to print of a result: those that matter most, a p with what it comes to for all looks at the data. */
export function printedNames(
  record: DerivationRecord,
  derived: Derived,
  plugin: Plugin | undefined,
): readonly string[] {
  const names = mainNames(record, derived, plugin);
  const [p, adjusted] = [derived.numbers["p"]?.value, derived.numbers["p-adjusted"]?.value];
  const pays = names.includes("p") && adjusted !== undefined && adjusted !== p;
  return pays ? [...new Set([...names, "p-adjusted"])] : names;
}

/** A computed number by its name: `p = 0.002`. */
export function printedNumber(derived: Derived, line: NumberLine): Inlines {
  const value = valueWords(line);
  const name = plainNames(line.name);
  return [printed(derived, /^[<>]/u.test(line.value) ? say`${name} ${value}` : say`${name} = ${value}`)];
}

/** Names of numbers, and conditions on them, as one reads them: `likelihood ratio > 3`, `k from 1.9 to 2.1`. */
export function plainNames(written: string): string {
  return written
    .replace(/(?<![\w-])([a-z]{2,})-([a-z]{2,})(?![\w-])/gu, "$1 $2")
    .replace(/\bwithin (\S+)\.\.(\S+)/gu, "from $1 to $2");
}
