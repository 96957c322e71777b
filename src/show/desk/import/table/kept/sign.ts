import { everywhere, kindOf } from "../../../../../read/grammar/kinds.ts";
import type { Asked } from "../asked.ts";
import { exchanged } from "../figure.ts";

/** Types of fields whose text is a number. */
const numeric: ReadonlySet<string> = new Set(["quantity", "number", "amount"]);

/** The text of a field with the decimal sign that tables of the corpus have. */
export function signed({ graph, list }: Asked, name: string, text: string): string {
  const all = { ...kindOf(list).fields, ...everywhere };
  const type = Object.hasOwn(all, name) ? all[name as keyof typeof all].type : null;
  return graph.settings.decimal === "comma" && type !== null && numeric.has(type) ? exchanged(text) : text;
}
