import type { Id } from "../../../../base/finding.ts";
import { inEnglish } from "../../../../base/text/said/english.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import type { Reported } from "../../../report/report.ts";
import { withheldIn } from "../../../withhold.ts";
import { stepsOf } from "./steps.ts";
import type { Step } from "./steps.ts";

/** What the map knows a record as: a claim, a step of argument, a computed number, or a finds label. */
export type Kind = "claim" | "step" | "number" | "label";

/** The dispute as the map draws it: what leans on what by the record alone, whatever its standing; nothing withheld. */
export interface Net {
  readonly graph: Graph;
  /** Puts what is written on the map into the reader's language: its room is measured. */
  readonly told: (text: Text) => string;
  readonly kindOf: (id: Id) => Kind | null;
  readonly steps: ReadonlyMap<Id, Step>;
  /** Claims and numbers that nothing leads to from elsewhere are found here, in corpus order. */
  readonly claims: readonly Id[];
  /** Steps for a claim, the earliest in print first. */
  readonly pro: (claim: Id) => readonly Step[];
  /** Steps against a claim, a step, a number or a label. */
  readonly contra: (target: Id) => readonly Step[];
  /** Steps of which something is a premise. */
  readonly usedIn: (premise: Id) => readonly Step[];
  /** The measurements and numbers that a number was computed on. */
  readonly inputs: (number: Id) => readonly Id[];
  /** The numbers that were computed on a label or another number. */
  readonly feeds: (input: Id) => readonly Id[];
  /** The things that a label is of. */
  readonly things: (label: Id) => readonly Id[];
  /** Claims that cannot be right together with a claim. */
  readonly rivals: (claim: Id) => readonly Id[];
}

/** The last structure read from a model: one map after another is drawn from it. */
const known = new WeakMap<Reported, Net>();

/** Reads the dispute's structure from a model; a lens that hides records would hide structure, so it takes the whole. */
export function netOf(whole: Reported, told: Net["told"] = inEnglish): Net {
  const last = known.get(whole);
  if (last?.told === told) return last;
  const net = netIn(whole, told);
  known.set(whole, net);
  return net;
}

function netIn(whole: Reported, told: Net["told"]): Net {
  const { graph, derivations } = whole;
  const withheld = withheldIn(graph);
  const shown = (ids: readonly Id[]): readonly Id[] => ids.filter((id) => !withheld(id));
  const steps = new Map(stepsOf(graph).map((step) => [step.id, step]));
  const pro = new Map<Id, Step[]>();
  const contra = new Map<Id, Step[]>();
  const usedIn = new Map<Id, Step[]>();
  for (const step of steps.values()) {
    if (step.therefore !== null) append(pro, step.therefore, step);
    for (const target of step.against) append(contra, target, step);
    for (const premise of step.because) append(usedIn, premise, step);
  }
  const inputs = new Map<Id, readonly Id[]>();
  const feeds = new Map<Id, Id[]>();
  for (const { id } of graph.list("derivations")) {
    if (withheld(id)) continue;
    const used = shown([...new Set(derivations.byId.get(id)?.used ?? [])]);
    inputs.set(id, used);
    for (const input of used) append(feeds, input, id);
  }
  for (const found of [pro, contra]) for (const list of found.values()) list.sort(byYear);
  return {
    graph,
    told,
    kindOf: (id) => (withheld(id) ? null : steps.has(id) ? "step" : recordKind(graph, id)),
    steps,
    claims: shown(graph.list("claims").map((one) => one.id)),
    pro: (claim) => pro.get(claim) ?? [],
    contra: (target) => contra.get(target) ?? [],
    usedIn: (premise) => usedIn.get(premise) ?? [],
    inputs: (number) => inputs.get(number) ?? [],
    feeds: (input) => feeds.get(input) ?? [],
    things: (label) => shown(thingsOf(graph, label)),
    rivals: (claim) => shown(graph.rivalsOf(claim)),
  };
}

function append<T>(lists: Map<Id, T[]>, key: Id, one: T): void {
  const list = lists.get(key);
  if (list) list.push(one);
  else lists.set(key, [one]);
}

/** The sort keeps corpus order within a year; what is dated by nothing is the corpus's own and comes last. */
function byYear(a: Step, b: Step): number {
  const [x, y] = [a.year ?? Infinity, b.year ?? Infinity];
  return x === y ? 0 : x - y;
}

function recordKind(graph: Graph, id: Id): Kind | null {
  switch (graph.records.get(id)?.list) {
    case "claims":
      return "claim";
    case "derivations":
      return "number";
    case "observations":
    case "measurements":
    case "relations":
    case "positions":
      return "label";
    default:
      return null;
  }
}

/** The things a piece of evidence is of; of a relation those that it names. */
function thingsOf(graph: Graph, id: Id): readonly Id[] {
  const record = graph.records.get(id);
  switch (record?.list) {
    case "observations":
      return record.values.of;
    case "measurements":
      return [record.values.of];
    case "relations": {
      const { earlier, later, "same-time": sameTime = [] } = record.values;
      const named = [earlier, later, ...sameTime].filter((one) => one !== undefined);
      return [...new Set(named)].filter((one) => graph.records.get(one)?.list === "artefacts");
    }
    default:
      return [];
  }
}
