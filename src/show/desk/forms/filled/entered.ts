import type { Text } from "../../../../base/text/said/said.ts";
import type { Field, Fields } from "../../../../read/grammar/field.ts";
import { isList } from "../../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../../read/edit/written.ts";
import type { Step } from "../../../../read/yaml/tree.ts";
import { flowText, readFlow } from "./flow.ts";

/**
 * A value as it stands in a form: what was typed, empty places among it. A map with names of the scholar's own is a list of
 * `{ name, value }`; a value of any shape is the text that a file would have for it.
 */
export type Entered = string | readonly Entered[] | EnteredMap;

/** The fields of a form, or of a part of one, by name. */
export interface EnteredMap {
  readonly [field: string]: Entered;
}

/** A text in a form that cannot be read as a value, with where it stands. */
export interface Misread {
  readonly path: readonly Step[];
  readonly message: Text;
}

/** Types of fields whose value is a list of single texts. */
const listed: readonly Field["type"][] = ["texts", "refs", "citations", "quantities"];

/** Whether a field holds several single texts. */
export function isListed(field: Field): boolean {
  return listed.includes(field.type);
}

/** What stands in a form for a value of a file; null where the value has not the shape that its field asks for. */
export function enteredOf(field: Field, written: Written): Entered | null {
  if (isListed(field)) {
    const all = typeof written === "string" ? [written] : isList(written) ? written : null;
    return all?.every((one) => typeof one === "string") ? all : null;
  }
  switch (field.type) {
    case "json":
      return flowText(written);
    case "textMap":
    case "numberMap":
      return pairsOf(written);
    case "probability":
      return typeof written === "string" ? written : pairsOf(written);
    case "group":
      return mapOf(field.fields, written);
    case "items": {
      const all = isList(written) ? written : [written];
      const items = all.map((one) =>
        typeof one === "string" && field.short !== undefined
          ? { [field.short]: one }
          : mapOf(field.fields, one),
      );
      return items.every((one) => one !== null) ? items : null;
    }
    default:
      return typeof written === "string" ? written : null;
  }
}

function pairsOf(written: Written): Entered | null {
  if (typeof written === "string" || isList(written)) return null;
  const pairs = Object.entries(written).map(([name, value]) =>
    typeof value === "string" ? { name, value } : null,
  );
  return pairs.every((one) => one !== null) ? pairs : null;
}

function mapOf(fields: Fields, written: Written): EnteredMap | null {
  if (typeof written === "string" || isList(written)) return null;
  const pairs = Object.entries(written).map(([name, value]) => {
    const field = Object.hasOwn(fields, name) ? fields[name] : undefined;
    return [name, field ? enteredOf(field, value) : null] as const;
  });
  return pairs.some(([, value]) => value === null) ? null : (Object.fromEntries(pairs) as EnteredMap);
}

/** The value that a form's field says, as it would be typed into a file; null where nothing was put in. */
export function writtenFrom(
  field: Field,
  entered: Entered,
  path: readonly Step[],
  misread: Misread[],
): Written | null {
  if (typeof entered === "string") {
    if (entered.trim() === "") return null;
    if (field.type !== "json") return entered.trim();
    const read = readFlow(entered);
    if ("value" in read) return read.value;
    misread.push({ path, message: read.message });
    return null;
  }
  if (isEnteredList(entered)) {
    if (field.type === "textMap" || field.type === "numberMap" || field.type === "probability")
      return fromPairs(entered);
    const inner: Field = field.type === "items" ? { ...field, type: "group" } : { doc: "", type: "text" };
    const all = entered.flatMap((one, place) => writtenFrom(inner, one, [...path, place], misread) ?? []);
    const short = field.type === "items" ? field.short : undefined;
    const items = all.map((one) => (short === undefined ? one : shortened(one, short)));
    // One value stands for a list of one, as people write it; a map of several fields looks like a list of one beside others.
    const alone = items.length === 1 && (field.type !== "items" || typeof items[0] === "string");
    return items.length === 0 ? null : alone ? (items[0] ?? null) : items;
  }
  if (field.type !== "group") return null;
  const map = writtenMap(field.fields, entered, path, misread);
  return Object.keys(map).length === 0 ? null : map;
}

/** The fields of a map that were filled in, in the grammar's order. */
export function writtenMap(
  fields: Fields,
  entered: EnteredMap,
  path: readonly Step[],
  misread: Misread[],
): WrittenMap {
  const map = Object.create(null) as Record<string, Written>;
  for (const [name, field] of Object.entries(fields)) {
    const value = enteredAt(entered, name);
    const written = value === null ? null : writtenFrom(field, value, [...path, name], misread);
    if (written !== null) map[name] = written;
  }
  return map;
}

/** What was put in under a name; null where nothing was. */
export function enteredAt(entered: EnteredMap, name: string): Entered | null {
  return Object.hasOwn(entered, name) ? (entered[name] ?? null) : null;
}

function fromPairs(entered: readonly Entered[]): WrittenMap | null {
  const map = Object.create(null) as Record<string, Written>;
  for (const one of entered) {
    if (typeof one === "string" || isEnteredList(one)) continue;
    const { name = "", value = "" } = one;
    if (typeof name !== "string" || typeof value !== "string") continue;
    if (name.trim() !== "" && value.trim() !== "") map[name.trim()] = value.trim();
  }
  return Object.keys(map).length === 0 ? null : map;
}

function shortened(written: Written, short: string): Written {
  if (typeof written === "string" || isList(written)) return written;
  const only = Object.keys(written).length === 1 ? written[short] : undefined;
  return only ?? written;
}

/** Tells a list in a form from a map of fields. */
export function isEnteredList(entered: Entered): entered is readonly Entered[] {
  return Array.isArray(entered);
}

/** A form in which one place says something else; null takes the place out. */
export function withEntered(entered: Entered, path: readonly Step[], value: Entered | null): Entered {
  const [step, ...rest] = path;
  if (step === undefined) return value ?? "";
  if (typeof step === "number") {
    const list = isEnteredList(entered) ? entered : [];
    const next = rest.length === 0 ? value : withEntered(list[step] ?? {}, rest, value);
    return next === null
      ? list.toSpliced(step, 1)
      : step < list.length
        ? list.with(step, next)
        : [...list, next];
  }
  const map = typeof entered === "string" || isEnteredList(entered) ? {} : entered;
  const next = rest.length === 0 ? value : withEntered(enteredAt(map, step) ?? empty(rest), rest, value);
  if (next !== null) return { ...map, [step]: next };
  return Object.fromEntries(Object.entries(map).filter(([name]) => name !== step));
}

function empty(rest: readonly Step[]): Entered {
  return typeof rest[0] === "number" ? [] : {};
}
