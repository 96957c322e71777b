import type { Arrived, Entry } from "../arrived.ts";
import type { Held } from "../shelf.ts";
import { acrossFields } from "./across.ts";
import { bibFields } from "./bib-merge.ts";
import type { MergeField } from "./field.ts";
import { jsonFields } from "./json-merge.ts";
import { risFields } from "./ris-merge.ts";

/** What an entry that came in says beyond the corpus's entry, and otherwise than it. */
export interface Merge {
  readonly held: Held;
  readonly missing: readonly MergeField[];
  readonly differing: readonly MergeField[];
}

/** Holds an entry that came in against the entry of the corpus that it is taken for, field by field. */
export function mergeOf(held: Held, arrived: Arrived, entry: Entry): Merge {
  const { format } = held.holding;
  const all =
    format !== arrived.format
      ? acrossFields(held, entry)
      : format === "bib"
        ? bibFields(held, entry)
        : format === "ris"
          ? risFields(held, arrived, entry)
          : jsonFields(held, arrived, entry);
  return {
    held,
    missing: all.filter((one) => one.here === null),
    differing: all.filter((one) => one.here !== null),
  };
}
