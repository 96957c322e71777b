import type { Id } from "../base/finding.ts";
import type { Derivations } from "../derive/derive.ts";
import type { Derived } from "../derive/derived/derived.ts";
import { everyRecord } from "../derive/lens.ts";
import type { ArgumentRecord, Graph } from "../link/graph.ts";
import { sayingOf } from "../link/origin/changed.ts";
import { spokenBy } from "../link/names/spoken.ts";

/** How much an argument weighs against a rival. */
export type Strength = "weak" | "ordinary" | "strong";

/** A step of reasoning, whoever took it: a record, a number that bears on a claim, or a scholar's word where testimony counts. */
export interface Argument {
  readonly id: Id;
  readonly because: readonly Id[];
  readonly therefore: Id | null;
  readonly against: readonly Id[];
  readonly strength: Strength;
  /** It argues from silence, and leans besides on the weight of that silence. */
  readonly silent: boolean;
  /** The record, derivation or position it comes from. */
  readonly from: Id;
}

/** All arguments that count, those made of numbers and testimony among them, in corpus order. */
export function argumentsIn(
  graph: Graph,
  derivations: Derivations,
  counts: (id: Id) => boolean,
): readonly Argument[] {
  const found = recordedIn(graph).filter(({ id }) => counts(id));
  for (const derived of derivations.byId.values()) found.push(...argumentsOfNumber(derived, counts));
  if (graph.settings.testimony) {
    for (const stance of latestPositions(graph, counts)) found.push(...argumentsOfStance(stance));
  }
  return found;
}

/** What was made of what a list of arguments says, beside what the observations say that it leans on. */
const made = new WeakMap<object, { readonly seen: object; readonly arguments: readonly Argument[] }>();

/** The arguments of records: the same objects as long as no argument and no observation says anything else. */
function recordedIn(graph: Graph): readonly Argument[] {
  const records = graph.list("arguments");
  const [said, seen] = [sayingOf(records), sayingOf(graph.list("observations"))];
  const before = made.get(said);
  if (before?.seen === seen) return before.arguments;
  const found = records.map((record) => argumentOf(record, graph));
  made.set(said, { seen, arguments: found });
  return found;
}

/** The argument of a record. */
export function argumentOf(record: ArgumentRecord, graph: Graph): Argument {
  const { because, therefore, against, strength } = record.values;
  return {
    id: record.id,
    because: eachOnce(because),
    therefore: therefore ?? null,
    against: eachOnce(against ?? nothing),
    strength: strength ?? "ordinary",
    silent: isSilent(record, graph),
    from: record.id,
  };
}

const nothing: readonly Id[] = [];

/** Ids without those that stand there twice: the same list where none does. */
function eachOnce(ids: readonly Id[]): readonly Id[] {
  const once = new Set(ids);
  return once.size === ids.length ? ids : [...once];
}

/** What a number argues: one argument for each claim on which it is not inconclusive. */
export function argumentsOfNumber(derived: Derived, counts: (id: Id) => boolean): readonly Argument[] {
  return derived.bearings.flatMap(({ claim, bearing, strength }): readonly Argument[] => {
    if (bearing === "inconclusive" || !counts(claim)) return [];
    return [
      {
        id: spokenBy(derived.id, claim),
        because: [derived.id],
        therefore: bearing === "supports" ? claim : null,
        against: bearing === "disputes" ? [claim] : [],
        strength,
        silent: false,
        from: derived.id,
      },
    ];
  });
}

/** All its premises pass a thing over in silence, or it says that it argues so. */
function isSilent(record: ArgumentRecord, graph: Graph): boolean {
  if (record.values.scheme === "silence") return true;
  return record.values.because.every((id) => {
    const premise = graph.records.get(id);
    return premise?.list === "observations" && premise.values.present === "not-reported";
  });
}

/** Where testimony counts, what a scholar's word argues: a weak argument with nothing under it, or none. */
export function argumentsOfStance({ position, claim, stance }: Stance): readonly Argument[] {
  if (stance !== "holds" && stance !== "rejects") return [];
  return [
    {
      id: spokenBy(position, claim),
      because: [],
      therefore: stance === "holds" ? claim : null,
      against: stance === "holds" ? [] : [claim],
      strength: "weak",
      silent: false,
      from: position,
    },
  ];
}

/** A scholar's present stance on a claim. */
export interface Stance {
  readonly scholar: Id;
  readonly claim: Id;
  readonly position: Id;
  readonly stance: "holds" | "rejects" | "doubts" | "leaves-open";
  /** Year of the position, else of its source; null when neither is known. */
  readonly year: number | null;
}

/** Every stance taken, in the order of the corpus. */
export function stances(graph: Graph, counts: (id: Id) => boolean): readonly Stance[] {
  return graph.list("positions").flatMap(({ id, values }) => {
    if (!counts(id)) return [];
    const year = values.year ?? graph.provenance(id).year;
    return values.who.map((scholar) => ({
      scholar,
      claim: values.claim,
      position: id,
      stance: values.stance,
      year,
    }));
  });
}

/** The latest of all stances by what the positions say, beside what tells where they were said. */
const latest = new WeakMap<
  object,
  { readonly from: Graph["provenance"]; readonly stances: readonly Stance[] }
>();

/** Of each scholar's stances on each claim the one with the latest year; of two in one year, the later in the corpus. */
export function latestPositions(graph: Graph, counts: (id: Id) => boolean): readonly Stance[] {
  if (counts !== everyRecord) return latestOf(stances(graph, counts));
  const [said, from] = [sayingOf(graph.list("positions")), graph.provenance];
  const before = latest.get(said);
  if (before?.from === from) return before.stances;
  const found = latestOf(stances(graph, counts));
  latest.set(said, { from, stances: found });
  return found;
}

/** Of stances in the order of the corpus, the latest of each scholar on each claim. */
export function latestOf(taken: readonly Stance[]): readonly Stance[] {
  const last = new Map<string, Stance>();
  for (const stance of taken) {
    const key = `${stance.scholar}\n${stance.claim}`;
    const known = last.get(key);
    if (!known || (stance.year ?? -Infinity) >= (known.year ?? -Infinity)) last.set(key, stance);
  }
  return [...last.values()];
}
