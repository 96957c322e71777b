import { isList } from "../../../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../../../read/edit/written.ts";

/** Several values as one types them: one alone, more as a list; null for none. */
export function asTyped(values: readonly string[]): Written | null {
  return values.length === 0 ? null : values.length === 1 ? (values[0] ?? null) : values;
}

/** A value as a list: one that stands alone is a list of one. */
export function listOf(value: Written | undefined): readonly Written[] {
  if (value === undefined || value === "") return [];
  return typeof value !== "string" && isList(value) ? value : [value];
}

/** The texts among the values of a list, or the one. */
export function textsOf(value: Written | undefined): readonly string[] {
  return listOf(value).filter((one): one is string => typeof one === "string" && one !== "");
}

/** The fields of a map; anything else has none. */
export function mapOf(value: Written | undefined): WrittenMap {
  return value === undefined || typeof value === "string" || isList(value) ? {} : value;
}
