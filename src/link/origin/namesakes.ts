import type { Id } from "../../base/finding.ts";
import type { CslItem, CslName } from "../../read/bibliography/csl.ts";
import type { Source } from "../../read/bibliography/read.ts";
import type { Graph } from "../graph.ts";
import { withheldIn } from "../withheld.ts";
import { foldedName } from "./people.ts";

/**
 * A source with those that a short citation could take it for: they share a year and the name that comes first among
 * authors, editors or others, or that no author is named. Only these bear on whether it is 1998a or 1998b.
 * What is withheld is not among them.
 */
export function namesakesOf(graph: Graph, id: Id): readonly Source[] {
  const withheld = withheldIn(graph);
  const own = graph.sources.get(id);
  if (!own || withheld(id)) return [];
  const [years, names] = [yearsOf(own.csl), namesOf(own.csl)];
  const shares = (one: ReadonlySet<string>, other: ReadonlySet<string>): boolean =>
    [...one].some((word) => other.has(word));
  return [...graph.sources.values()].filter(
    (source) =>
      source === own ||
      (!withheld(source.key) && shares(years, yearsOf(source.csl)) && shares(names, namesOf(source.csl))),
  );
}

function yearsOf(csl: CslItem): ReadonlySet<string> {
  const dates = [csl.issued, csl["original-date"]].filter((date) => date !== undefined);
  const years = dates.map((date) => `${date["date-parts"]?.[0]?.[0] ?? date.literal ?? ""}`);
  return new Set(years.length > 0 ? years : [""]);
}

function namesOf(csl: CslItem): ReadonlySet<string> {
  const first = Object.values(csl).flatMap((value) => {
    const name: unknown = Array.isArray(value) ? value[0] : null;
    return typeof name === "object" && name !== null ? (name as CslName) : [];
  });
  const names = first.map(({ literal, family, given }) => {
    // A particle may be written with the family or apart from it.
    const last = family?.trim().split(/\s+/u).at(-1);
    return foldedName(last ?? literal ?? given ?? "");
  });
  // Without an author a style may print a word for nobody, which is the same for all such sources.
  return new Set(csl.author?.length ? names : [...names, ""]);
}
