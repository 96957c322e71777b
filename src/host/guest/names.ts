import type { Json } from "../../base/json.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { Naming } from "../../plugin.ts";
import { nameMarks } from "./inside.ts";

const marked = new RegExp(`${nameMarks[0]}([^${nameMarks.join("")}]*)${nameMarks[1]}`, "g");
const stray = new RegExp(`[${nameMarks.join("")}]`, "g");

/** A text, or texts at any depth, with names where the guest asked for them. */
export function named<T>(value: T, naming: Naming): T {
  return replaced(value, (text) =>
    text.replace(marked, (_, id: string) => inEnglish(naming(id))).replace(stray, ""),
  );
}

/** The same with the marks of those ids alone: a guest learns no name of what it was not given. */
export function namesOnly(value: Json, ids: ReadonlySet<string>): Json {
  return replaced(value, (text) =>
    text.replace(marked, (asked: string, id: string) => (ids.has(id) ? asked : id)),
  );
}

function replaced<T>(value: T, by: (text: string) => string): T {
  if (typeof value === "string") return by(value) as T & string;
  if (Array.isArray(value)) return value.map((one: unknown) => replaced(one, by)) as T & unknown[];
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, one]: [string, unknown]) => [key, replaced(one, by)]),
  ) as T;
}
