import type { Id } from "../../base/finding.ts";
import type { Source } from "../../read/bibliography/read.ts";
import type { Citation } from "../../read/grammar/field.ts";
import type { AnyLinked, Provenance } from "../graph.ts";

const nothing: readonly Id[] = [];
const none: Provenance = { sources: nothing, via: nothing, scholars: nothing, year: null };

/** Where each record was said, whose it is, and since when it is in print; passages hand on their own. */
export function provenanceOf(
  records: ReadonlyMap<Id, AnyLinked>,
  sources: ReadonlyMap<Id, Source>,
  authorsOf: (source: Id) => readonly Id[],
): (id: Id) => Provenance {
  const known = new Map<Id, Provenance>();
  // Most records of a source were said in the same place: ten of them share what is kept.
  const alike = new Map<string, Provenance>();
  const kept = (fresh: Provenance): Provenance => {
    const { sources: from, via, scholars, year } = fresh;
    const key = [from.join(" "), via.join(" "), scholars.join(" "), year].join("\n");
    const had = alike.get(key);
    if (had) return had;
    alike.set(key, fresh);
    return fresh;
  };

  const yearOf = (keys: readonly Id[]): number | null => {
    const years = keys.flatMap((key) => sources.get(key)?.year ?? []);
    return years.length > 0 ? Math.max(...years) : null;
  };

  const found = (id: Id): Provenance => {
    const record = records.get(id);
    if (!record) return none;
    const fields = record.values as {
      readonly from?: readonly Citation[];
      readonly via?: Citation;
      readonly by?: readonly Id[];
      readonly who?: readonly Id[];
      readonly year?: number;
    };
    const keys: Id[] = [];
    const via: Id[] = fields.via ? [keyBehind(fields.via.key)] : [];
    for (const citation of fields.from ?? []) {
      const passage = records.get(citation.key);
      if (passage?.list === "passages") {
        const behind = passage.id === id ? none : provenance(passage.id);
        keys.push(...behind.sources);
        via.push(...behind.via);
      } else keys.push(citation.key);
    }
    const unique = [...new Set(keys)];
    const scholars = fields.who ?? fields.by ?? [...new Set(unique.flatMap(authorsOf))];
    const year = unique.length > 0 ? (yearOf(unique) ?? fields.year ?? null) : (fields.year ?? null);
    return { sources: unique, via: [...new Set(via)], scholars, year };
  };

  const keyBehind = (key: Id): Id => {
    const passage = records.get(key);
    return passage?.list === "passages" ? (provenance(passage.id).sources[0] ?? key) : key;
  };

  const provenance = (id: Id): Provenance => {
    const had = known.get(id);
    if (had) return had;
    // Set first, so that passages that cite one another end somewhere.
    known.set(id, none);
    const result = kept(found(id));
    known.set(id, result);
    return result;
  };
  return provenance;
}
