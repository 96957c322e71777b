import type { Id } from "../../base/finding.ts";
import { isList } from "../../base/json.ts";
import type { Json } from "../../base/json.ts";
import { folded } from "../../link/dimension.ts";
import type { Said } from "../../base/text/said/said.ts";
import type { Graph, ObservationRecord } from "../../link/graph.ts";
import type { InputDeclaration, LeftOut, Observed } from "../../plugin.ts";
import { texts } from "../prepare/select.ts";
import { leftOutFor } from "./left-out.ts";
import { seenOf } from "./seen.ts";
import type { Seen } from "./seen.ts";
import type { Sight } from "../prepare/select.ts";

/** What a selection of observations takes and what it leaves out, with the reasons. */
export interface ObservationSelection {
  readonly observed: readonly Observed[];
  readonly leftOut: readonly LeftOut[];
}

/**
 * Whether an input is one of observations: by its declaration, or where it takes either, by a selection that names a
 * feature or a presence, or that lists observations.
 */
export function entersAsObservations(
  { kind, takesObservations }: InputDeclaration,
  input: Json,
  graph: Graph,
): boolean {
  if (kind === "observations" || takesObservations !== true) return kind === "observations";
  if (typeof input === "string" || isList(input)) {
    const ids = texts(input);
    return ids.length > 0 && ids.every((id) => graph.records.get(id)?.list === "observations");
  }
  return input !== null && typeof input === "object" && ("feature" in input || "present" in input);
}

/**
 * Selects observations as format.md 4 has it: a list of ids as it stands, or artefacts with a feature, and whether it
 * is present, by whom and from where. A described feature of one artefact enters once, a silence once for each source.
 */
export function selectObservations(input: Json, sight: Sight, ofSource = false): ObservationSelection {
  if (typeof input === "string" || isList(input)) return listed(texts(input), sight);
  if (input === null || typeof input !== "object") return { observed: [], leftOut: [] };
  return described(input as { readonly [key: string]: Json }, sight, ofSource);
}

function listed(ids: readonly Id[], { graph, counts, choices }: Sight): ObservationSelection {
  const observed: Observed[] = [];
  const leftOut: LeftOut[] = [];
  for (const id of new Set(ids)) {
    const record = graph.records.get(id);
    if (record?.list !== "observations") continue;
    if (choices.some((choice) => choice.without?.includes(id))) leftOut.push({ id, why: leftOutFor.byName });
    else if (!counts(id)) leftOut.push({ id, why: leftOutFor.notCounting });
    else observed.push(observedOf(record, graph));
  }
  return { observed, leftOut };
}

function described(
  input: { readonly [key: string]: Json },
  sight: Sight,
  ofSource: boolean,
): ObservationSelection {
  const { graph } = sight;
  const asked = (word: string): readonly string[] => texts(input[word]);
  const things = new Set(
    asked("of").flatMap((whole) => (input["parts"] === "false" ? [whole] : graph.withParts(whole))),
  );
  const features = asked("feature").map((name) => folded(graph.featureName(name)));
  const [presences, bases, by, from] = ["present", "basis", "by", "from"].map(asked);
  const without = [...asked("without"), ...sight.choices.flatMap((choice) => choice.without ?? [])];

  const isMeant = ({ record: { values }, feature }: Seen): boolean =>
    (input["of"] === undefined || values.of.some((thing) => things.has(thing))) &&
    (input["feature"] === undefined || (feature !== null && features.includes(feature))) &&
    admits(presences, [values.present ?? "true"]);
  const reasonToLeaveOut = ({ id, values }: ObservationRecord): Said | null => {
    if (without.includes(id)) return leftOutFor.byName;
    if (!sight.counts(id)) return leftOutFor.notCounting;
    if (!admits(bases, [values.basis ?? ""])) return leftOutFor.basis;
    const said = graph.provenance(id);
    if (!admits(by, said.scholars)) return leftOutFor.somebodyElse;
    const supposed = graph.supposed?.records.has(id) === true;
    if (supposed) return ofSource ? leftOutFor.supposed : null;
    return admits(from, said.sources) ? null : leftOutFor.source;
  };

  const leftOut: LeftOut[] = [];
  const groups = new Map<string, Observed[]>();
  const near = seenOf(graph, {
    things: input["of"] === undefined ? null : things,
    features: input["feature"] === undefined ? null : features,
  });
  for (const { record } of near.filter(isMeant)) {
    const why = reasonToLeaveOut(record);
    if (why !== null) {
      leftOut.push({ id: record.id, why });
      continue;
    }
    const one = observedOf(record, graph);
    const key = keyOf(one);
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  const entered = [...groups.values()].map(enteredOf);
  return {
    observed: entered.flatMap((one) => one.observed),
    leftOut: [...leftOut, ...entered.flatMap((one) => one.leftOut)],
  };
}

/** A silence is a source's own; what is seen or missed is the thing's. What names no feature is like nothing else. */
function keyOf({ id, artefacts, feature, present, source }: Observed): string {
  const silence = present === "not-reported" ? [source ?? id] : [];
  return JSON.stringify([[...artefacts].sort(), feature === null ? id : folded(feature), ...silence]);
}

/** Of several observations of one feature of one thing the first that can tell; none where they contradict each other. */
function enteredOf(group: readonly Observed[]): ObservationSelection {
  const telling = group.filter((one) => one.present !== "unclear");
  const [first] = telling.length > 0 ? telling : group;
  if (first === undefined) return { observed: [], leftOut: [] };
  if (telling.some((one) => one.present !== first.present)) {
    const why = leftOutFor.contradicted;
    return { observed: [], leftOut: group.map(({ id }) => ({ id, why })) };
  }
  const others = group.filter((one) => one !== first);
  const alsoFrom = new Set(others.flatMap((one) => one.source ?? []));
  if (first.source !== null) alsoFrom.delete(first.source);
  return {
    observed: [{ ...first, alsoFrom: [...alsoFrom] }],
    leftOut: others.map(({ id }) => ({ id, why: leftOutFor.toldAlready })),
  };
}

/** Whether one of the words asked for is among these; where none is asked for, all are. */
function admits(asked: readonly string[] | undefined, those: readonly string[]): boolean {
  return asked === undefined || asked.length === 0 || those.some((one) => asked.includes(one));
}

/** An observation as a plug-in sees it. */
export function observedOf({ id, values }: ObservationRecord, graph: Graph): Observed {
  const { sources, scholars } = graph.provenance(id);
  return {
    id,
    artefacts: values.of,
    feature: values.feature === undefined ? null : graph.featureName(values.feature),
    present: values.present ?? "true",
    source: sources[0] ?? null,
    alsoFrom: [],
    by: scholars,
  };
}
