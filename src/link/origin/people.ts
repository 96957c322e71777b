import type { Id } from "../../base/finding.ts";
import type { Source } from "../../read/bibliography/read.ts";
import type { Linked } from "../graph.ts";

/** The scholars among a source's authors (else its editors), and the names that match none. */
export interface Authors {
  readonly scholars: readonly Id[];
  readonly unlisted: readonly string[];
}

/** Finds the scholar of a name: by ORCID, or by a name alike but for case, accents, points and order. */
export function authorship(scholars: readonly Linked<"scholars">[]): (source: Source) => Authors {
  const byName = new Map<string, Id>();
  const byOrcid = new Map<string, Id>();
  for (const scholar of scholars) {
    if (scholar.values.orcid) byOrcid.set(orcidOf(scholar.values.orcid), scholar.id);
    for (const name of [scholar.values.name, ...(scholar.values["known-as"] ?? [])]) {
      const folded = foldedName(name);
      if (!byName.has(folded)) byName.set(folded, scholar.id);
    }
  }
  return (source) => {
    const found: Id[] = [];
    const unlisted: string[] = [];
    for (const name of source.names) {
      const written =
        name.literal ?? [name.given, name["non-dropping-particle"], name.family].filter(Boolean).join(" ");
      const id =
        (name.orcid ? byOrcid.get(orcidOf(name.orcid)) : undefined) ?? byName.get(foldedName(written));
      if (id === undefined) unlisted.push(written);
      else if (!found.includes(id)) found.push(id);
    }
    // A list that grew has room for over sixteen more.
    return { scholars: found.slice(), unlisted };
  };
}

/** A name's words without accents, points and case, sorted: `Vane, R. J.` is `R J Vane`. */
export function foldedName(name: string): string {
  const words = name
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
  return words.sort().join(" ");
}

function orcidOf(written: string): string {
  return written.replace(/^https?:\/\/orcid\.org\//, "").toUpperCase();
}
