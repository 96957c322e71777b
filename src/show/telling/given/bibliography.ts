import type { Id } from "../../../base/finding.ts";
import type { Json } from "../../../base/json.ts";
import type { CslName } from "../../../read/bibliography/csl.ts";
import type { Source } from "../../../read/bibliography/read.ts";
import type { SourceFile } from "../../../read/source-file.ts";

/** What of an item of CSL-JSON 1.0.2 describes the work; notes, abstracts and what programs keep for themselves do not. */
const described: ReadonlySet<string> = new Set(
  (
    "language author chair collection-editor compiler composer container-author contributor curator director editor " +
    "editorial-director executive-producer guest host interviewer illustrator narrator organizer original-author performer producer " +
    "recipient reviewed-author script-writer series-creator translator available-date event-date issued original-date submitted " +
    "archive archive_collection archive-place archive_location authority chapter-number collection-number collection-title " +
    "container-title container-title-short dimensions division DOI edition event-place event-title genre ISBN ISSN issue " +
    "jurisdiction medium number number-of-pages number-of-volumes original-publisher original-publisher-place original-title page " +
    "page-first part part-title PMCID PMID printing publisher publisher-place references reviewed-genre reviewed-title scale section " +
    "source status supplement title title-short URL accessed version volume volume-title volume-title-short year-suffix"
  ).split(" "),
);

/** The sources that are given as one bibliography in CSL-JSON; null where there are none. */
export function bibliographyGiven(sources: ReadonlyMap<Id, Source>): SourceFile | null {
  if (sources.size === 0) return null;
  const items = [...sources.values()].map(itemOf);
  return { path: "bibliography.json", text: `${JSON.stringify(items, null, 2)}\n` };
}

function itemOf({ key, csl, names }: Source): Json {
  const people = csl.author?.length ? "author" : csl.editor ? "editor" : null;
  const named = names.map((one): CslName & { readonly ORCID?: string } => {
    const { orcid, ...name } = one;
    return orcid === undefined ? name : { ...name, ORCID: orcid };
  });
  const fields = Object.entries(csl).filter((one): one is [string, Json] => described.has(one[0]));
  return {
    id: key,
    type: csl.type,
    ...Object.fromEntries(fields),
    ...(people === null ? {} : { [people]: named }),
  };
}
