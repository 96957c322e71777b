import type { Json } from "../../../base/json.ts";
import type { CslItem } from "../../../read/bibliography/csl.ts";

/** Keys that the processor takes for something else than CSL 1.0.2 does. */
const foreign: ReadonlySet<string> = new Set([
  "categories",
  "custom",
  "legislation_id",
  "container_id",
  "multi",
  "shortTitle",
  "__proto__",
]);

/** An item as the processor takes it, under a key of ours: ids of a corpus may be names that objects have already. */
export function itemFor(csl: CslItem, key: string): unknown {
  const fields = Object.entries(csl).filter(
    (field): field is [string, Json] => field[1] !== undefined && !foreign.has(field[0]),
  );
  return { ...Object.fromEntries(fields), id: key };
}
