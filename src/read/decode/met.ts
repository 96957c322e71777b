import type { Json } from "../../base/json.ts";
import type { Quantity } from "../../base/quantity.ts";
import type { QuantityContext } from "../../base/quantity/quantity-text.ts";
import { apart } from "../../base/text/apart.ts";
import type { Citation } from "../grammar/field.ts";

/**
 * What was met in the files that are read together. Ids, keys, short words and quantities are met again and again: each is
 * kept once, and apart from the text that it was cut from.
 */
const words = new Map<string, string>();
const citations = new Map<string, Citation>();
const alone = new Map<unknown, readonly unknown[]>();
const plain = new Map<string, unknown>();
let quantities = new WeakMap<QuantityContext, Map<string, Quantity>>();

/** More is not kept in mind at once: who reads files one by one need not say when the last was read. */
const most = 1 << 18;

/** Longer texts are hardly ever met again. */
const longestWord = 48;

/** Ends what is read together. */
export function forgetMet(): void {
  words.clear();
  citations.clear();
  alone.clear();
  plain.clear();
  quantities = new WeakMap();
}

/** The same text, apart from the file's; as it was met before where it was, unless it is longer than a word. */
export function wordMet(text: string): string {
  if (text.length > longestWord) return apart(text);
  return met(words, text, apart);
}

/** The citation that a text was found to be before; else what `read` makes of it, null where it is none. */
export function citationMet(text: string, read: (text: string) => Citation | null): Citation | null {
  return met(citations, text, read);
}

/** The quantity that a text was found to be before in the same context. */
export function quantityMet(context: QuantityContext, text: string): Quantity | undefined {
  return quantities.get(context)?.get(text);
}

/** Keeps the quantity that a text was found to be. */
export function keptAsMet(context: QuantityContext, text: string, quantity: Quantity): Quantity {
  const known = quantities.get(context) ?? new Map<string, Quantity>();
  quantities.set(context, known);
  return met(known, text, () => quantity);
}

/** A list of one thing, the same list each time. */
export function listOfOne(one: unknown): readonly unknown[] {
  return met(alone, one, () => [one]);
}

/** A value of JSON, as it was met before where one says the same. */
export function plainMet<T extends Json>(value: T): T {
  // What is written alike has the same fields in the same order.
  return met(plain as Map<string, T>, JSON.stringify(value), () => value);
}

function met<K, V, N extends V | null>(known: Map<K, V>, key: K, read: (key: K) => N): V | N {
  const had = known.get(key);
  if (had !== undefined) return had;
  const found = read(key);
  if (found === null) return found;
  if (known.size >= most) known.clear();
  known.set(key, found);
  return found;
}
