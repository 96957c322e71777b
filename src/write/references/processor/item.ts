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

/** Sorts of work as BibTeX names its entries, and what a reader calls them. */
const sorts: ReadonlyMap<string, string> = new Map(
  Object.entries({
    phdthesis: "PhD thesis",
    mastersthesis: "Master’s thesis",
    mathesis: "MA thesis",
    techreport: "Technical report",
    resreport: "Research report",
  }),
);

/** The sort of work of an item as a reader calls it, which is what CSL prints; undefined where it has none. */
export function genreOf({ genre }: CslItem): Json | undefined {
  return (typeof genre === "string" ? sorts.get(genre.toLowerCase()) : undefined) ?? genre;
}

/** An item as the processor takes it, under a key of ours: ids of a corpus may be names that objects have already. */
export function itemFor(csl: CslItem, key: string): unknown {
  const fields = Object.entries(csl).filter(
    (field): field is [string, Json] => field[1] !== undefined && !foreign.has(field[0]),
  );
  const genre = genreOf(csl);
  return { ...Object.fromEntries(fields), ...(genre === undefined ? {} : { genre }), id: key };
}
