import type { Id } from "../../base/finding.ts";
import type { Source } from "../../read/bibliography/read.ts";
import type { Citation } from "../../read/grammar/field.ts";
import type { AnyLinked, Provenance } from "../graph.ts";

const nothing: readonly Id[] = [];
const none: Provenance = { sources: nothing, via: nothing, scholars: nothing, year: null };

/** The fields that tell where something was said, whose it is and when. */
interface Saying {
  readonly from?: readonly Citation[];
  readonly via?: Citation;
  readonly by?: readonly Id[];
  readonly who?: readonly Id[];
  readonly year?: number;
}

const isNowhere = ({ from, via, by, who, year }: Saying): boolean =>
  from === undefined && via === undefined && by === undefined && who === undefined && year === undefined;

/** The one thing that a record cites, where it says nothing else of where and by whom it was said; null else. */
function onlyCited({ from, via, by, who }: Saying): Id | null {
  const isAlone = via === undefined && by === undefined && who === undefined;
  return isAlone && from?.length === 1 ? (from[0]?.key ?? null) : null;
}

/** Where each record was said, whose it is, and since when it is in print; passages hand on their own. */
export function provenanceOf(
  records: ReadonlyMap<Id, AnyLinked>,
  sources: ReadonlyMap<Id, Source>,
  authorsOf: (source: Id) => readonly Id[],
): (id: Id) => Provenance {
  const known = new Map<Id, Provenance>();
  /** Of what cites one source and says no more: that is most of all records. */
  const ofSources = new Map<Id, Provenance>();
  const ofSource = (key: Id): Provenance => {
    const had = ofSources.get(key);
    if (had) return had;
    const fresh = { sources: [key], via: nothing, scholars: authorsOf(key), year: yearOf([key]) };
    ofSources.set(key, fresh);
    return fresh;
  };

  const sharedWhere = (keys: readonly Id[]): readonly Id[] => {
    const [first] = keys;
    return first !== undefined && keys.length === 1 ? ofSource(first).sources : keys;
  };

  const yearOf = (keys: readonly Id[]): number | null => {
    const years = keys.flatMap((key) => sources.get(key)?.year ?? []);
    return years.length > 0 ? Math.max(...years) : null;
  };

  const found = (record: AnyLinked): Provenance => {
    const fields = record.values as Saying;
    const keys: Id[] = [];
    const via: Id[] = fields.via ? [keyBehind(fields.via.key)] : [];
    for (const citation of fields.from ?? []) {
      const passage = records.get(citation.key);
      if (passage?.list === "passages") {
        const behind = passage.id === record.id ? none : provenance(passage.id);
        keys.push(...behind.sources);
        via.push(...behind.via);
      } else keys.push(citation.key);
    }
    const unique = [...new Set(keys)];
    const scholars = fields.who ?? fields.by ?? [...new Set(unique.flatMap(authorsOf))];
    const year = unique.length > 0 ? (yearOf(unique) ?? fields.year ?? null) : (fields.year ?? null);
    return {
      sources: sharedWhere(unique),
      via: via.length === 0 ? nothing : [...new Set(via)],
      scholars,
      year,
    };
  };

  const keyBehind = (key: Id): Id => {
    const passage = records.get(key);
    return passage?.list === "passages" ? (provenance(passage.id).sources[0] ?? key) : key;
  };

  /** The one source that something cited leads to; null where there are others, or another was read for it. */
  const sourceBehind = (cited: Id, by: AnyLinked): Id | null => {
    if (records.get(cited)?.list !== "passages") return cited;
    if (by.list === "passages") return null;
    const { sources: behind, via } = provenance(cited);
    return via.length === 0 && behind.length === 1 ? (behind[0] ?? null) : null;
  };

  const provenance = (id: Id): Provenance => {
    const record = records.get(id);
    if (!record) return none;
    const said = record.values as Saying;
    if (isNowhere(said)) return none;
    const only = onlyCited(said);
    const source = only === null ? null : sourceBehind(only, record);
    const where = source === null ? null : ofSource(source);
    // A year of its own counts where that of the source is not known.
    if (where && (where.year !== null || said.year === undefined)) return where;
    const had = known.get(id);
    if (had) return had;
    // Set first, so that passages that cite one another end somewhere.
    known.set(id, none);
    const result = found(record);
    known.set(id, result);
    return result;
  };
  return provenance;
}
