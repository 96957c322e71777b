import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import { isSupposed } from "../../../../link/names/label.ts";
import type { Citation } from "../../../../read/grammar/field.ts";
import type { Citing, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { familyOf } from "../dispute/stances.ts";
import { listed } from "./inlines.ts";

type Cites = Citing["cites"];

/** Where a record says that it is said: sources with the places in them, passages by theirs; none that may not be cited. */
export function citesOf({ graph, citable }: Sight, citations: readonly Citation[]): Cites {
  const cites = citations.flatMap(({ key, locator }): Cites => {
    const record = graph.records.get(key);
    const [of] = record?.list === "passages" ? graph.provenance(key).sources : [key];
    const at = record?.list === "passages" ? record.values.at : locator;
    if (of === undefined || !citable(key) || !citable(of) || !graph.sources.has(of)) return [];
    return [at === null ? { id: of } : { id: of, at }];
  });
  return [...new Map(cites.map((one) => [`${one.id}\n${one.at ?? ""}`, one])).values()];
}

/** The places that a record names itself, else its sources. */
export function citesFor(sight: Sight, id: Id): Cites {
  const record = sight.graph.records.get(id);
  const own = record && "from" in record.values ? (record.values.from ?? []) : [];
  if (own.length > 0) return citesOf(sight, own);
  const sources = sight.graph.provenance(id).sources;
  return citesOf(
    sight,
    sources.map((key) => ({ key, locator: null })),
  );
}

/** Sources cited aside, after the words they bear out; without those of `said`, which were cited in the same sentence. */
export function aside(cites: Cites, said: Cites = []): Inlines {
  const left = cites.filter((one) => !said.some(({ id, at }) => id === one.id && at === one.at));
  return left.length === 0 ? [] : [" ", { is: "citing", manner: "aside", cites: left }];
}

/** The same for a record, with the source it was really read in where that is another. */
export function asideFor(sight: Sight, id: Id, said: Cites = []): Inlines {
  const record = sight.graph.records.get(id);
  const via =
    record && "via" in record.values && record.values.via ? citesOf(sight, [record.values.via]) : [];
  const told = aside(citesFor(sight, id), said);
  return via.length === 0
    ? told
    : [...told, say`, as reported by `, { is: "citing", manner: "sentence", cites: via }];
}

/** Whose something is, to begin a sentence, and the places that are cited by saying so. */
export interface Subject {
  readonly of: Inlines;
  readonly cites: Cites;
  /** Several do it. */
  readonly several: boolean;
}

/** Whose a record is: its source where that is its author's, else scholars by their family names, else the review's own. */
export function subjectOf(sight: Sight, id: Id): Subject {
  const { graph, withheld } = sight;
  if (isSupposed(graph, id)) return { of: [say`the supposed outcome`], cites: [], several: false };
  const { scholars, sources } = graph.provenance(id);
  const [first] = sources;
  const cites = citesFor(sight, id);
  const authors = first === undefined ? [] : graph.authorsOf(first);
  const own = scholars.every((one) => authors.includes(one));
  const names = first === undefined ? 0 : (graph.sources.get(first)?.names.length ?? 0);
  if (cites.length > 0 && own && names > 0 && cites.every((one) => one.id === first))
    return { of: [{ is: "citing", manner: "sentence", cites }], cites, several: names > 1 };
  if (scholars.some(withheld)) return { of: [say`somebody withheld`], cites: [], several: false };
  if (scholars.length === 0) {
    return cites.length > 0
      ? { of: [{ is: "citing", manner: "sentence", cites }], cites, several: names > 1 }
      : { of: [sight.itself], cites: [], several: false };
  }
  const of = listed(scholars.map((one) => familyOf(sight, one)));
  return { of: [...of, ...aside(cites)], cites, several: scholars.length > 1 };
}
