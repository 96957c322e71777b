import { isList } from "../../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../../read/edit/written.ts";
import type { Action } from "../../../../link/edit/action.ts";
import type { Id } from "../../../../base/finding.ts";
import type { Draft } from "./draft.ts";

/** The fields of a derivation in the order in which one types them; others keep their place behind these. */
const order = ["id", "plugin", "short", "inputs", "parameters", "looks", "bears-on", "text"];

/** The record that a draft comes to: what is not there yet is left out, and the looks are counted. */
export function recordOf(draft: Draft, id: Id, looks: number): WrittenMap {
  const values: WrittenMap = {
    ...draft.values,
    id,
    looks: looks > 1 ? String(looks) : (draft.recorded?.["looks"] ?? ""),
  };
  const entries = Object.entries(values).flatMap(([name, value]): readonly (readonly [string, Written])[] => {
    // An empty map of inputs is said all the same: without one a derivation is none.
    const kept =
      name === "inputs" ? (complete(value) ?? {}) : complete(name === "bears-on" ? bearing(value) : value);
    return kept === null ? [] : [[name, kept]];
  });
  if (!Object.hasOwn(values, "inputs")) entries.push(["inputs", {}]);
  if (draft.recorded !== null) return Object.fromEntries(entries);
  const placeOf = (name: string): number => (order.includes(name) ? order.indexOf(name) : order.length);
  return Object.fromEntries(entries.toSorted(([a], [b]) => placeOf(a) - placeOf(b)));
}

/** What of a value says something; null where nothing does. */
function complete(value: Written): Written | null {
  if (typeof value === "string") return value.trim() === "" ? null : value;
  if (isList(value)) {
    const items = value.map(complete).filter((one) => one !== null);
    return items.length === 0 ? null : items;
  }
  const fields = Object.entries(value).flatMap(([name, one]): readonly (readonly [string, Written])[] => {
    const kept = complete(one);
    return kept === null ? [] : [[name, kept]];
  });
  return fields.length === 0 ? null : Object.fromEntries(fields);
}

/** Entries that name a claim, without comparisons that have no value yet. */
function bearing(value: Written): Written {
  const entries = typeof value === "string" || !isList(value) ? [value] : value;
  return entries
    .filter((one) => typeof one !== "string" && !isList(one) && one["claim"] !== "")
    .map(compared);
}

const begun = /^\s*(?:<=?|>=?|≤|≥|within)\s*$/u;

function compared(value: Written): Written {
  if (typeof value === "string") return begun.test(value) ? "" : value;
  if (isList(value)) return value.map(compared);
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, compared(one)]));
}

/** What is done to the corpus when a draft is saved. */
export function savingOf(draft: Draft, id: Id, looks: number): Action {
  const record = recordOf(draft, id, looks);
  return draft.of === null || draft.recorded === null
    ? { do: "add", list: "derivations", records: [record] }
    : { do: "change", id: draft.of, seen: draft.recorded, values: record };
}
