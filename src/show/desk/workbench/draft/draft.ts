import type { Id } from "../../../../base/finding.ts";
import { isList } from "../../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../../read/edit/written.ts";
import type { Step } from "../../../../read/yaml/tree.ts";

/** A derivation that is being made or changed, as its author has it so far; it is in no file yet. */
export interface Draft {
  /** The derivation whose record it changes; null for a new one. */
  readonly of: Id | null;
  /** What that record said when it was opened; null for a new one. */
  readonly recorded: WrittenMap | null;
  /** Its fields as typed so far; what is empty is not there yet. */
  readonly values: WrittenMap;
  /** Looks that its record counted before those of `seen`. */
  readonly looksBefore: number;
  /** Settings whose numbers were seen, by their keys, in the order in which they were. */
  readonly seen: readonly string[];
  /** Nothing of it is computed until its author says so, or changes it. */
  readonly stopped: boolean;
}

/** A draft of nothing. */
export const emptyDraft: Draft = {
  of: null,
  recorded: null,
  values: {},
  looksBefore: 0,
  seen: [],
  stopped: false,
};

/** A draft that begins as a record is written; `key` is that of its settings, where they give a number. */
export function draftOf(id: Id, recorded: WrittenMap, key: string | null): Draft {
  const looks = Number(recorded["looks"] ?? 1);
  const counted = Number.isInteger(looks) && looks > 1 ? looks : 1;
  return {
    ...emptyDraft,
    of: id,
    recorded,
    values: recorded,
    looksBefore: counted - 1,
    seen: key === null ? [] : [key],
  };
}

/** What stands at a place in a draft's fields; undefined where nothing does. */
export function writtenAt(values: Written, path: readonly Step[]): Written | undefined {
  let at: Written | undefined = values;
  for (const step of path) {
    if (at === undefined || typeof at === "string") return undefined;
    if (isList(at)) at = at[Number(step)];
    else at = Object.hasOwn(at, step) ? at[step] : undefined;
  }
  return at;
}

/** The fields with something else at a place; null takes away what stands there. */
export function withWritten(values: WrittenMap, path: readonly Step[], value: Written | null): WrittenMap {
  return put(values, path, value) as WrittenMap;
}

function put(at: Written | undefined, path: readonly Step[], value: Written | null): Written {
  const [step, ...rest] = path;
  if (step === undefined) return value ?? "";
  if (typeof step === "number") {
    const items =
      at !== undefined && typeof at !== "string" && isList(at) ? at : at === undefined ? [] : [at];
    if (rest.length === 0 && value === null) return items.toSpliced(step, 1);
    return items.toSpliced(step, 1, put(items[step], rest, value));
  }
  const fields: WrittenMap = at === undefined || typeof at === "string" || isList(at) ? {} : at;
  if (rest.length > 0) return { ...fields, [step]: put(fields[step], rest, value) };
  return Object.fromEntries([
    ...Object.entries(fields).flatMap(([name, one]): readonly (readonly [string, Written])[] =>
      name !== step ? [[name, one]] : value === null ? [] : [[name, value]],
    ),
    ...(value !== null && !Object.hasOwn(fields, step) ? [[step, value] as const] : []),
  ]);
}

/** One value or several as texts; a map has none. */
export function textsAt(values: Written, path: readonly Step[]): readonly string[] {
  const at = writtenAt(values, path);
  if (at === undefined) return [];
  if (typeof at === "string") return at === "" ? [] : [at];
  return isList(at) ? at.filter((one): one is string => typeof one === "string" && one !== "") : [];
}
