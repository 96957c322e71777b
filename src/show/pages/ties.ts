import type { Id } from "../../base/finding.ts";
import type { Standing } from "../../judge/judge.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { labelText } from "../../link/names/label.ts";
import type { Graph } from "../../link/graph.ts";
import { speakerOf } from "../../link/names/spoken.ts";
import { takenFrom } from "../desk/papers/records/resting.ts";
import { withheldIn } from "../withhold.ts";
import type { Reported } from "../report/report.ts";

/** How one record bears on another, with the other's standing. */
export interface Tie {
  readonly how:
    | "for"
    | "against"
    | "premise"
    | "computed on"
    | "bears on"
    | "of"
    | "seen or measured"
    | "part"
    | "whole"
    | "said in"
    | "says"
    | "position";
  readonly id: Id;
  readonly text: Text;
  readonly standing: Standing | null;
}

/** What a record rests on (below), and what rests on it (above). */
export function tiesOf(
  model: Reported,
  id: Id,
): { readonly below: readonly Tie[]; readonly above: readonly Tie[] } {
  const { graph, judgement, derivations } = model;
  const { compiled, standings, counts } = judgement;
  const tie = (how: Tie["how"], other: Id): Tie => ({
    how,
    id: other,
    text: labelText(graph, other),
    standing: standings.get(other) ?? null,
  });
  const below: Tie[] = [];
  const above: Tie[] = [];
  const seat = (at: number): Id => speakerOf(compiled.arguments[at]?.from ?? id);
  for (const at of compiled.pro.get(id) ?? []) below.push(tie("for", seat(at)));
  for (const at of compiled.contra.get(id) ?? []) below.push(tie("against", seat(at)));
  for (const argument of compiled.arguments) {
    if (argument.from === id) {
      for (const premise of argument.because) if (premise !== id) below.push(tie("premise", premise));
      if (argument.therefore !== null) above.push(tie("for", argument.therefore));
      for (const target of argument.against) above.push(tie("against", target));
    } else if (argument.because.includes(id)) above.push(tie("premise", argument.from));
  }
  for (const used of derivations.byId.get(id)?.used ?? []) below.push(tie("computed on", used));
  for (const derived of derivations.byId.values())
    if (derived.used.includes(id)) above.push(tie("computed on", derived.id));

  const record = graph.records.get(id);
  if (record?.list === "observations") for (const thing of record.values.of) below.push(tie("of", thing));
  if (record?.list === "measurements") below.push(tie("of", record.values.of));
  if (record?.list === "artefacts") {
    const whole = graph.wholeOf.get(id);
    if (whole !== undefined) below.push(tie("whole", whole));
    for (const part of graph.withParts(id).slice(1))
      if (graph.wholeOf.get(part) === id) above.push(tie("part", part));
    for (const one of [...graph.list("observations"), ...graph.list("measurements")]) {
      const things = one.list === "observations" ? one.values.of : [one.values.of];
      if (counts(one.id) && things.includes(id)) above.push(tie("seen or measured", one.id));
    }
  }
  if (record?.list === "claims") {
    for (const one of graph.list("positions")) {
      if (counts(one.id) && one.values.claim === id) above.push(tie("position", one.id));
    }
  }
  if (record?.list === "passages")
    for (const one of takenFrom(graph, id)) if (counts(one.id)) above.push(tie("says", one.id));
  const origin = record?.list === "scholars" || graph.sources.has(id);
  if (origin) {
    for (const one of graph.records.values()) {
      const said = graph.provenance(one.id);
      if (counts(one.id) && one.id !== id && [...said.sources, ...said.via, ...said.scholars].includes(id)) {
        above.push(tie("says", one.id));
      }
    }
  }
  const withheld = withheldIn(graph);
  const shown = (ties: readonly Tie[]): readonly Tie[] =>
    toldApart(
      graph,
      distinctTies(ties).filter((one) => !withheld(one.id)),
    );
  return { below: shown(below), above: shown(above) };
}

/** Arguments that are called alike are told apart by their first premise. */
function toldApart(graph: Graph, ties: readonly Tie[]): readonly Tie[] {
  const withheld = withheldIn(graph);
  const called = ties.map((one) => inEnglish(one.text));
  return ties.map((one, place) => {
    const record = graph.records.get(one.id);
    if (record?.list !== "arguments") return one;
    if (ties.every((other, at) => other.id === one.id || called[at] !== called[place])) return one;
    const premise = record.values.because.find((id) => !withheld(id));
    return premise === undefined ? one : { ...one, text: say`${one.text}: ${labelText(graph, premise)}` };
  });
}

function distinctTies(ties: readonly Tie[]): readonly Tie[] {
  const seen = new Set<string>();
  return ties.filter((one) => {
    const key = `${one.how}\n${one.id}`;
    return !seen.has(key) && seen.add(key);
  });
}
