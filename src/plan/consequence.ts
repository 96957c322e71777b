import type { Id } from "../base/finding.ts";
import { canonical } from "../base/json.ts";
import type { Json } from "../base/json.ts";
import { byText } from "../base/order.ts";
import { derive } from "../derive/derive.ts";
import type { Derived } from "../derive/derived/derived.ts";
import type { Run } from "../derive/run.ts";
import type { Argument } from "../judge/argument.ts";
import type { Standing } from "../judge/judge.ts";
import { reviser } from "../judge/revise.ts";
import type { Change } from "../judge/revise.ts";
import type { Graph } from "../link/graph.ts";
import { spokenBy } from "../link/names/spoken.ts";
import { supposing } from "../link/suppose/examination.ts";
import type { Examination, SupposedOutcome } from "../link/suppose/examination.ts";
import { withheldIn } from "../link/withheld.ts";
import { feedingIn } from "./feeding.ts";
import type { PlanBench, PlannedOutcome } from "./plan.ts";

/** What follows from an outcome, and the runs that its numbers still ask for. */
export interface Consequence extends Pick<PlannedOutcome, "changes" | "numbers" | "pending"> {
  readonly missing: readonly Run[];
}

/** Prepared once for a judged corpus: tells what would follow from any outcome, taken as found. */
export function consequencesOn(
  bench: PlanBench,
): (examination: Examination, outcome: SupposedOutcome) => Consequence {
  const { graph, derivations, judgement } = bench;
  const feeding = feedingIn(graph, bench.plugins);
  const revise = reviser(graph, derivations, judgement);
  const shown = shownIn(bench);
  return (examination, outcome) => {
    const fed = feeding(examination, outcome);
    // Most outcomes reach no number, and are judged without a graph of their own.
    const under = fed.size === 0 ? null : supposing(graph, examination, outcome);
    const { changed, pending, missing } = numbersUnder(bench, under, fed);
    const derived = [...changed.values()].map(([, then]) => then);
    const { standings } = revise({ added: addedBy(examination, outcome, under), derived });
    const changes = new Map<Id, readonly [Standing, Standing]>();
    for (const [id, [was, is]] of standings) if (was !== null) changes.set(id, [was, is]);
    return {
      changes: inOrder(changes, shown),
      numbers: inOrder(changed, shown),
      pending: pending.filter(shown).toSorted(byText),
      missing,
    };
  };
}

/** What an outcome adds to the arguments and the evidence, under the names that `supposing` gives. */
function addedBy(
  { id }: Examination,
  outcome: SupposedOutcome,
  under: Graph | null,
): NonNullable<Change["added"]> {
  const itself = spokenBy(id, outcome.id);
  const { strength } = outcome;
  const argument = (part: string, says: Pick<Argument, "therefore" | "against">): Argument => {
    const own = `${itself}#${part}`;
    return { id: own, because: [itself], strength, silent: false, from: own, ...says };
  };
  const pro = outcome.therefore.map((claim, at) =>
    argument(`therefore-${at + 1}`, { therefore: claim, against: [] }),
  );
  const contra = outcome.against.map((target, at) =>
    argument(`against-${at + 1}`, { therefore: null, against: [target] }),
  );
  const seen = [...(under?.supposed?.records ?? [])].filter((one) => {
    const list = under?.records.get(one)?.list;
    return list === "observations" || list === "measurements";
  });
  return { arguments: [...pro, ...contra], evidence: [...new Set([itself, ...seen])] };
}

/** What a plan may name: what is not withheld and, of claims, what is listed. */
export function shownIn({ graph, judgement }: Pick<PlanBench, "graph" | "judgement">): (id: Id) => boolean {
  const withheld = withheldIn(graph);
  return (id) => !withheld(id) && (graph.records.get(id)?.list !== "claims" || judgement.listed(id));
}

/** What may be shown, by id: the same whatever the order of the files. */
function inOrder<V>(map: ReadonlyMap<Id, V>, shown: (id: Id) => boolean): ReadonlyMap<Id, V> {
  return new Map([...map].filter(([id]) => shown(id)).sort(([a], [b]) => byText(a, b)));
}

interface NumbersUnder {
  /** Those that come out differently: now and then. */
  readonly changed: PlannedOutcome["numbers"];
  readonly pending: readonly Id[];
  readonly missing: readonly Run[];
}

/** The derivations that an outcome feeds, derived anew. */
function numbersUnder(bench: PlanBench, under: Graph | null, fed: ReadonlySet<Id>): NumbersUnder {
  if (under === null) return { changed: new Map(), pending: [], missing: [] };
  const { plugins, memo, lens, derivations } = bench;
  const anew = derive(under, plugins, memo, lens, (id) => fed.has(id));
  const changed = new Map<Id, readonly [Derived, Derived]>();
  const pending: Id[] = [];
  for (const id of fed) {
    const [now, then] = [derivations.byId.get(id), anew.byId.get(id)];
    if (!now || !then) continue;
    if (then.status === "pending") pending.push(id);
    else if (saidBy(now) !== saidBy(then)) changed.set(id, [now, then]);
  }
  return { changed, pending, missing: anew.missing };
}

/** All that a derivation hands on, as text; one that has no number leans on nothing. */
function saidBy({ status, reason, used, numbers, bearings }: Derived): string {
  const leans = status === "computed" ? used : [];
  return canonical({ status, reason, leans, numbers, bearings } as unknown as Json);
}
