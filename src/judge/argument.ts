import type { Id } from "../base/finding.ts";
import type { Derivations } from "../derive/derive.ts";
import type { ArgumentRecord, Graph } from "../link/graph.ts";
import { spokenBy } from "../link/spoken.ts";

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
  taken: (id: Id, strength: Strength) => Strength,
): readonly Argument[] {
  const found: Argument[] = [];
  for (const record of graph.list("arguments")) {
    if (!counts(record.id)) continue;
    const { because, therefore, against, strength } = record.values;
    found.push({
      id: record.id,
      because: [...new Set(because)],
      therefore: therefore ?? null,
      against: [...new Set(against ?? [])],
      strength: taken(record.id, strength ?? "ordinary"),
      silent: isSilent(record, graph),
      from: record.id,
    });
  }
  for (const derived of derivations.byId.values()) {
    for (const { claim, bearing, strength } of derived.bearings) {
      if (bearing === "inconclusive" || !counts(claim)) continue;
      found.push({
        id: spokenBy(derived.id, claim),
        because: [derived.id],
        therefore: bearing === "supports" ? claim : null,
        against: bearing === "disputes" ? [claim] : [],
        strength: taken(spokenBy(derived.id, claim), strength),
        silent: false,
        from: derived.id,
      });
    }
  }
  if (graph.settings.testimony) found.push(...testimony(graph, counts));
  return found;
}

/** All its premises pass a thing over in silence, or it says that it argues so. */
function isSilent(record: ArgumentRecord, graph: Graph): boolean {
  if (record.values.scheme === "silence") return true;
  return record.values.because.every((id) => {
    const premise = graph.records.get(id);
    return premise?.list === "observations" && premise.values.present === "not-reported";
  });
}

/** Each scholar's latest position on each claim as a weak argument with nothing under it. */
function testimony(graph: Graph, counts: (id: Id) => boolean): readonly Argument[] {
  return latestPositions(graph, counts).flatMap(({ position, claim, stance }): readonly Argument[] => {
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
  });
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

/** Of each scholar's stances on each claim the one with the latest year; of two in one year, the later in the corpus. */
export function latestPositions(graph: Graph, counts: (id: Id) => boolean): readonly Stance[] {
  const latest = new Map<string, Stance>();
  for (const stance of stances(graph, counts)) {
    const key = `${stance.scholar}\n${stance.claim}`;
    const known = latest.get(key);
    if (!known || (stance.year ?? -Infinity) >= (known.year ?? -Infinity)) latest.set(key, stance);
  }
  return [...latest.values()];
}
