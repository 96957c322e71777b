import { byText } from "../../../base/order.ts";
import type { Json } from "../../../base/json.ts";
import type { Model } from "../../../build.ts";
import type { Source } from "../../../read/bibliography/read.ts";
import { citableUnder, shownUnder } from "../../../show/withhold.ts";
import { genreOf } from "../../references/processor/item.ts";

/** The keys of an item that CSL-JSON 1.0.2 knows; the schema refuses any other. */
const known: ReadonlySet<string> = new Set(
  (
    "id type citation-key categories language journalAbbreviation shortTitle author chair collection-editor compiler composer " +
    "container-author contributor curator director editor editorial-director executive-producer guest host interviewer " +
    "illustrator narrator organizer original-author performer producer recipient reviewed-author script-writer " +
    "series-creator translator accessed available-date event-date issued original-date submitted abstract annote archive " +
    "archive_collection archive_location archive-place authority call-number chapter-number citation-number citation-label " +
    "collection-number collection-title container-title container-title-short dimensions division DOI edition event " +
    "event-title event-place first-reference-note-number genre ISBN ISSN issue jurisdiction keyword locator medium note number " +
    "number-of-pages number-of-volumes original-publisher original-publisher-place original-title page page-first part " +
    "part-title PMCID PMID printing publisher publisher-place references reviewed-genre reviewed-title scale section source " +
    "status supplement title title-short URL version volume volume-title volume-title-short year-suffix custom"
  ).split(" "),
);

/** What a scholar keeps beside an entry: other people's abstracts, and notes and words of one's own. */
const working: ReadonlySet<string> = new Set(["abstract", "annote", "keyword", "note"]);

/**
 * The sources that may be named as CSL-JSON 1.0.2, in the order of their keys. Years of BC are historical there: 300 BC is −300.
 * What CSL has no place for stands in `custom`: what the corpus calls the source, which of its scholars wrote it, and keys of other programs. Notes and abstracts stay at home.
 */
export function cslJsonOf(model: Model): string {
  const { graph } = model;
  const [citable, shown] = [citableUnder(model), shownUnder(model)];
  const items = [...graph.sources.values()]
    .filter(({ key, members }) => citable(key) && members.length === 0)
    .toSorted((a, b) => byText(a.key, b.key))
    .map((source) => itemOf(source, graph.authorsOf(source.key).filter(shown)));
  return `${JSON.stringify(items, null, 2)}\n`;
}

function itemOf({ csl, label }: Source, scholars: readonly string[]): Json {
  const fields = Object.entries({ ...csl, genre: genreOf(csl) }).filter(
    (one): one is [string, Json] => one[1] !== undefined && !working.has(one[0]),
  );
  const custom = csl["custom"];
  const others = fields.filter(([name]) => !known.has(name));
  return {
    ...Object.fromEntries(fields.filter(([name]) => known.has(name) && name !== "custom")),
    custom: {
      ...(typeof custom === "object" && custom !== null && !Array.isArray(custom) ? custom : {}),
      variorum: { label, scholars, ...(others.length > 0 ? { other: Object.fromEntries(others) } : {}) },
    },
  };
}
