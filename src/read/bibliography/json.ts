import { coded, count, say } from "../../base/text/said/said.ts";
import type { Said, Text } from "../../base/text/said/said.ts";

/** A value of JSON with its place; `keys` are the places of an object's values. */
export interface Placed {
  readonly value: unknown;
  readonly start: number;
  readonly end: number;
  readonly keys: ReadonlyMap<string, Placed>;
}

/** What ended the reading of a value, and where. */
export interface Trouble {
  readonly message: Text;
  readonly at: number;
}

const deepest = 64;
const space = /[ \t\r\n]*/y;
const number = /-?(?:0|[1-9]\d{0,400})(?:\.\d{1,400})?(?:[eE][+-]?\d{1,9})?/y;
const word = /true|false|null/y;
const shown = /[^\s,[\]{}]{1,30}|./uy;
const noKeys: ReadonlyMap<string, Placed> = new Map();

/** The place of the next character that is no white space of JSON. */
export function afterSpace(text: string, at: number): number {
  return at + (matched(space, text, at)?.length ?? 0);
}

/** Reads the value of JSON (RFC 8259) at a place; of a key that stands twice the first is kept. */
export function jsonAt(text: string, from: number, depth = 0): Placed | Trouble {
  const start = afterSpace(text, from);
  const mark = text[start];
  if (depth > deepest)
    return {
      message: say`Unexpected nesting of more than ${count(deepest)} brackets, expected less`,
      at: start,
    };
  if (mark === "{") return objectAt(text, start, depth);
  if (mark === "[") return arrayAt(text, start, depth);
  if (mark === '"') return stringAt(text, start);
  const said = matched(word, text, start) ?? matched(number, text, start);
  if (said === undefined) return unexpected(text, start, say`a value`);
  const value = said === "null" ? null : said === "true" || said === "false" ? said === "true" : Number(said);
  return { value, start, end: start + said.length, keys: noKeys };
}

/** Says what stands at a place and what should. */
export function unexpected(text: string, at: number, expected: Said): Trouble {
  const said = matched(shown, text, at);
  return {
    message: say`Unexpected ${said === undefined ? say`end` : coded(said)}, expected ${expected}`,
    at,
  };
}

function objectAt(text: string, start: number, depth: number): Placed | Trouble {
  const keys = new Map<string, Placed>();
  let at = afterSpace(text, start + 1);
  while (text[at] !== "}") {
    if (keys.size > 0) {
      if (text[at] !== ",") return unexpected(text, at, say`${coded(",")} or ${coded("}")}`);
      at = afterSpace(text, at + 1);
    }
    if (text[at] !== '"') return unexpected(text, at, say`a key in quotes`);
    const key = stringAt(text, at);
    if ("message" in key) return key;
    at = afterSpace(text, key.end);
    if (text[at] !== ":") return unexpected(text, at, say`${coded(":")} after the key`);
    const value = jsonAt(text, at + 1, depth + 1);
    if ("message" in value) return value;
    if (!keys.has(`${key.value}`)) keys.set(`${key.value}`, value);
    at = afterSpace(text, value.end);
  }
  const value = Object.fromEntries([...keys].map(([key, inner]) => [key, inner.value]));
  return { value, start, end: at + 1, keys };
}

function arrayAt(text: string, start: number, depth: number): Placed | Trouble {
  const value: unknown[] = [];
  let at = afterSpace(text, start + 1);
  while (text[at] !== "]") {
    if (value.length > 0) {
      if (text[at] !== ",") return unexpected(text, at, say`${coded(",")} or ${coded("]")}`);
      at++;
    }
    const item = jsonAt(text, at, depth + 1);
    if ("message" in item) return item;
    value.push(item.value);
    at = afterSpace(text, item.end);
  }
  return { value, start, end: at + 1, keys: noKeys };
}

const escapes: ReadonlyMap<string, string> = new Map(
  Object.entries({ '"': '"', "\\": "\\", "/": "/", b: "\b", f: "\f", n: "\n", r: "\r", t: "\t" }),
);

function stringAt(text: string, start: number): Placed | Trouble {
  // No string of JSON runs over a line; a control character shows where one was left open.
  const stop = /[^\u0020-\uffff]|["\\]/g;
  const parts: string[] = [];
  let from = start + 1;
  for (;;) {
    stop.lastIndex = from;
    const at = stop.exec(text)?.index ?? text.length;
    parts.push(text.slice(from, at));
    if (text[at] === '"') return { value: parts.join(""), start, end: at + 1, keys: noKeys };
    if (text[at] !== "\\")
      return { message: say`Unexpected \`"\` that is never closed, expected a closing one`, at: start };
    const simple = escapes.get(text[at + 1] ?? "");
    const code =
      simple === undefined ? /^u([0-9a-fA-F]{4})/.exec(text.slice(at + 1, at + 6))?.[1] : undefined;
    if (simple === undefined && code === undefined) return unexpected(text, at, say`an escape of ${"JSON"}`);
    parts.push(simple ?? String.fromCharCode(Number.parseInt(code ?? "", 16)));
    from = at + (simple === undefined ? 6 : 2);
  }
}

function matched(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}
