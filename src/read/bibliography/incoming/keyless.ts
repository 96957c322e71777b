import { afterSpace, jsonAt } from "../json.ts";
import type { Placed } from "../json.ts";
import type { Format } from "./formats.ts";

/** A text in which every entry has a key, and where those keys begin that were put in. */
export interface Keyed {
  readonly text: string;
  readonly made: ReadonlySet<number>;
}

const bare =
  /^([ \t]{0,200}@[ \t]{0,20}(?!(?:string|comment|preamble)\b)[A-Za-z]{1,60}\s{0,200}[{(]\s{0,200})(,|[A-Za-z][\w:+.-]{0,60}\s{0,20}=)/gim;

/** Gives entries without a key one to be read by; it is replaced by a proper one, and no line moves. A RIS record needs none. */
export function withKeys(text: string, format: Format): Keyed {
  if (format === "bib")
    return putIn(
      text,
      [...text.matchAll(bare)].map(({ 1: head = "", 2: next, index }) => ({
        at: index + head.length,
        key: (name) => `${name}${next === "," ? "" : ", "}`,
        lead: 0,
      })),
    );
  if (format === "json") {
    const items = itemsIn(text).filter(({ value, keys }) => isMap(value) && !keys.has("id"));
    const places = items.map(({ start, keys }) => ({
      at: start + 1,
      key: (name: string) => `"id": "${name}"${keys.size > 0 ? ", " : ""}`,
      lead: 6,
    }));
    return putIn(text, places);
  }
  return { text, made: new Set() };
}

/** The items of a CSL-JSON file with their places, up to the first that cannot be read. */
export function itemsIn(text: string): readonly Placed[] {
  const open = /^\uFEFF?\s*(?:\{\s*"items"\s*:\s*)?\[/.exec(text)?.[0];
  const items: Placed[] = [];
  if (open === undefined) return items;
  for (let at = afterSpace(text, open.length); at < text.length && text[at] !== "]";) {
    const item = jsonAt(text, at);
    if ("message" in item) break;
    items.push(item);
    at = afterSpace(text, item.end);
    if (text[at] === ",") at = afterSpace(text, at + 1);
  }
  return items;
}

function isMap(value: unknown): boolean {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

interface Place {
  readonly at: number;
  readonly key: (name: string) => string;
  /** How far behind the place the value with the key begins. */
  readonly lead: number;
}

function putIn(text: string, places: readonly Place[]): Keyed {
  const parts: string[] = [];
  const made = new Set<number>();
  let from = 0;
  let length = 0;
  places.forEach(({ at, key, lead }, place) => {
    const before = text.slice(from, at);
    const put = key(`-keyless-${place + 1}-`);
    made.add(length + before.length + lead);
    parts.push(before, put);
    length += before.length + put.length;
    from = at;
  });
  return { text: [...parts, text.slice(from)].join(""), made };
}
