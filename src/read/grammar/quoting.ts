import { parseQuantity } from "../../base/quantity/quantity-text.ts";
import type { QuantityContext } from "../../base/quantity/quantity-text.ts";
import { quoted } from "../yaml/split.ts";
import type { Mend } from "../yaml/walk.ts";
import type { Field, Fields } from "./field.ts";
import { everywhere, kinds } from "./kinds.ts";
import { settingsFields } from "./settings.ts";

/** Types whose value may be any text, so that one that was taken apart can only have been meant as a whole. */
const spoken: readonly Field["type"][] = ["text", "texts", "textMap", "citation", "citations"];

const types = typesIn([...Object.values(kinds).map((kind) => kind.fields), everywhere, settingsFields]);

/** The types that each field's name has anywhere in the grammar. */
function typesIn(tables: readonly Fields[]): ReadonlyMap<string, ReadonlySet<Field["type"]>> {
  const known = new Map<string, Set<Field["type"]>>();
  const take = (fields: Fields): void => {
    for (const [name, field] of Object.entries(fields)) {
      known.set(name, (known.get(name) ?? new Set<Field["type"]>()).add(field.type));
      if (field.type === "group" || field.type === "items" || field.type === "named") take(field.fields);
    }
  };
  tables.forEach(take);
  return known;
}

/**
 * What to write for a value that YAML took apart: a text in quotes; a quantity with its decimal sign mended at once,
 * since quotes alone would not make it one. Null for a field that takes no text, and for a number with two readings.
 */
export function mendIn(context: QuantityContext): Mend {
  return (key, whole) => {
    const known = types.get(key);
    if (known === undefined) return key === "source" || key.startsWith("x-") ? quoted(whole) : null;
    const said = [...known];
    const quantity = said.some((type) => type === "quantity" || type === "quantities");
    if (!quantity) return said.some((type) => spoken.includes(type)) ? quoted(whole) : null;
    const read = parseQuantity(whole, context);
    if ("ok" in read) return quoted(whole);
    const { replacement, otherwise } = read.problem;
    return replacement !== undefined && otherwise === undefined ? replacement : null;
  };
}
