import type { Id } from "../../../base/finding.ts";
import type { Citation } from "../../../read/grammar/field.ts";
import { yearInEdtf, putTime } from "./dates.ts";
import { part, plain } from "./ground.ts";
import type { Ground } from "./ground.ts";
import { at } from "./sheet.ts";
import type { Known, Node } from "./sheet.ts";

/** What the records that were said somewhere have in common. */
interface Said {
  readonly from?: readonly Citation[];
  readonly via?: Citation;
  readonly note?: string;
  readonly year?: number;
}

/** The place that a citation leads to: a passage, a source, or a place in one; null where it may not be named. */
export function placeOf(ground: Ground, owner: Node, name: string, { key, locator }: Citation): Node | null {
  const { graph, sheet, citable, node } = ground;
  if (!citable(key)) return null;
  if (locator === null || !graph.sources.has(key)) return node(key);
  const place = part(owner, name);
  sheet.is(place, "oa:SpecificResource", "crm:E73_Information_Object");
  sheet.has(place, "oa:hasSource", node(key));
  sheet.has(place, "crm:P106i_forms_part_of", node(key));
  sheet.has(place, "vr:locator", plain(locator));
  return place;
}

/** Says where a record is said, in what it was really read, and what is noted with it. */
export function putSaid(ground: Ground, subject: Node, values: Said): void {
  const { sheet, words } = ground;
  putFrom(ground, subject, values.from);
  if (values.via) sheet.has(subject, "vr:read-in", placeOf(ground, subject, "via", values.via));
  if (values.note !== undefined) sheet.has(subject, "crm:P3_has_note", words(values.note));
}

/** Says where something is said. */
export function putFrom(ground: Ground, subject: Node, from: readonly Citation[] = []): void {
  from.forEach((citation, place) =>
    ground.sheet.has(subject, "dcterms:source", placeOf(ground, subject, `from-${place + 1}`, citation)),
  );
}

/** Says who did what a record tells: its scholars; the compilers where it is from nowhere and nobody's. */
export function putActors(ground: Ground, activity: Node, id: Id): void {
  const { graph, sheet, shown, node, compilers } = ground;
  const { scholars, sources } = graph.provenance(id);
  sheet.has(activity, "crm:P14_carried_out_by", ...scholars.filter(shown).map(node));
  if (scholars.length === 0 && sources.length === 0) sheet.has(activity, "crm:P14_carried_out_by", compilers);
}

/** Says when an activity was, where its year is recorded. */
export function putYear(ground: Ground, activity: Node, year: number | undefined): void {
  if (year === undefined) return;
  const span = part(activity, "time");
  putTime(ground.sheet, span, yearInEdtf(year));
  ground.sheet.has(activity, "crm:P4_has_time-span", span);
}

/** Gives a node concepts of ours. */
export function putTypes(ground: Ground, subject: Node, ...types: readonly Known[]): void {
  ground.sheet.has(subject, "crm:P2_has_type", ...types.map(at));
}

/** A concept of the corpus's own: a kind of thing, a feature, a dimension. */
export function ownConcept(ground: Ground, scheme: string, name: string): Node {
  const { sheet, named, corpus, words } = ground;
  const concept = named(scheme, name);
  const within = part(corpus, `${scheme}-scheme`);
  sheet.is(concept, "skos:Concept", "crm:E55_Type");
  sheet.is(within, "skos:ConceptScheme");
  sheet.has(within, "skos:prefLabel", { words: `${scheme} terms of the corpus`, lang: "en" });
  sheet.has(concept, "skos:inScheme", within);
  sheet.has(concept, "skos:prefLabel", words(name));
  sheet.has(concept, "rdfs:label", words(name));
  return concept;
}
