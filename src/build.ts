import type { Finding, Id } from "./base/finding.ts";
import { atOnce } from "./judge/resting/at-once.ts";
import type { Slice } from "./judge/resting/at-once.ts";
import { derive } from "./derive/derive.ts";
import type { Derivations } from "./derive/derive.ts";
import type { Lens } from "./derive/lens.ts";
import type { Outcome, Run } from "./derive/run.ts";
import { findingIn, inPlace, settled } from "./judge/rules/findings.ts";
import { footings } from "./judge/footing.ts";
import type { Footing } from "./judge/footing.ts";
import { judge } from "./judge/judge.ts";
import type { Judgement } from "./judge/judge.ts";
import type { Judged } from "./judge/resting/judged.ts";
import { lossSets, manyNumbers } from "./judge/resting/loss-sets.ts";
import type { LossSets } from "./judge/resting/loss-sets.ts";
import { restingOn } from "./judge/resting/rests-on.ts";
import type { Resting } from "./judge/resting/rests-on.ts";
import type { Found } from "./judge/rules/rule.ts";
import type { Graph } from "./link/graph.ts";
import { link } from "./link/link.ts";
import type { Tied } from "./link/origin/replaced.ts";
import { underSupposition } from "./link/suppose/under.ts";
import type { Plan } from "./plan/plan.ts";
import { planOf } from "./plan/planning.ts";
import type { Plugin } from "./plugin.ts";
import { readCorpus } from "./read/read.ts";
import type { ReadMemo } from "./read/read.ts";
import { textsOf } from "./read/source-file.ts";
import type { SourceFile } from "./read/source-file.ts";
import { historyOf } from "./show/judged/history/history.ts";
import type { History } from "./show/judged/history/history.ts";

export { compute } from "./derive/run.ts";
export type { Outcome, Run } from "./derive/run.ts";
export type { Lens } from "./derive/lens.ts";
export type { SourceFile } from "./read/source-file.ts";

/** What was read and computed before: by file text, and by run. Deletable at any time. */
export interface Memo {
  readonly read: ReadMemo;
  readonly compute: Map<string, Outcome>;
}

/** The graph of some files under a supposition, with what reading and linking have to say. */
export interface Ground {
  readonly graph: Graph;
  /** What was read, with its graph as it is under no supposition. */
  readonly tied: Tied;
  readonly files: ReadonlyMap<string, string>;
  readonly said: readonly Finding[];
}

/** The dispute as it follows from the files under a lens: what stands. */
export interface Stood {
  readonly graph: Graph;
  readonly lens: Lens;
  readonly derivations: Derivations;
  readonly judgement: Judgement;
  readonly footings: ReadonlyMap<Id, Footing>;
  readonly files: ReadonlyMap<string, string>;
  /** What reading and linking have to say. */
  readonly said: readonly Finding[];
}

/** The same with what it rests on, and the runs that are still to be computed. */
export interface Model extends Stood {
  /** For claims of questions: the artefacts, sources and scholars each would not stand without. */
  readonly restsOn: ReadonlyMap<Id, readonly Id[]>;
  /** For claims of questions that stand: the sets of losses that end each; null where it was not asked for. */
  readonly lossSets: ReadonlyMap<Id, LossSets> | null;
  /** Year by year; null where it was not asked for. */
  readonly history: History | null;
  /** What to examine next; null where it was not asked for. */
  readonly plan: Plan | null;
  /** Runs that would give the numbers still missing; those the pages need first come first. */
  readonly missing: readonly Run[];
}

/** A model with what there is to say about it; without one, the corpus could not be read at all. */
export interface Checked<T> {
  readonly model: T | null;
  readonly findings: readonly Finding[];
}

/** Options of a build that cost more than the pages need. */
export interface Reach {
  /** Also tell what claims rest on that answer no question, and which losses together end those that answer one. */
  readonly allRestsOn?: boolean;
  /** Also tell the dispute publication by publication, with the numbers of every year. */
  readonly history?: boolean;
  /** Also tell what each examination would decide, with the numbers of every outcome. */
  readonly plan?: boolean;
}

/**
 * Files in, model out: pure, synchronous, and it never computes a number. Runs whose outcome the memo does not
 * have are listed in `missing`; the caller computes them, puts the outcomes into the memo, and builds again.
 */
export function build(
  files: readonly SourceFile[],
  plugins: readonly Plugin[],
  memo: Memo,
  lens: Lens = {},
  reach: Reach = {},
): Checked<Model> {
  const ground = groundOf(files, memo.read, lens.suppose);
  if (!("graph" in ground)) return { model: null, findings: ground.findings };
  const stood = stand(ground, plugins, memo.compute, lens);
  return atOnce(tellingOf(stood, { plugins, memo: memo.compute }, reach));
}

/**
 * The first part of a build: what the files say, tied together; findings alone where they cannot be read at all. What the
 * same corpus said before an edit makes it quicker, and no other.
 */
export function groundOf(
  files: readonly SourceFile[],
  memo: ReadMemo,
  suppose: Lens["suppose"],
  before?: Ground,
): Ground | { readonly findings: readonly Finding[] } {
  const reading = readCorpus(files, memo);
  if (!("settings" in reading)) return { findings: reading.findings };
  const plain = link(reading, before?.tied);
  const { graph, unknown } = underSupposition(plain, suppose);
  return {
    graph,
    tied: { reading, graph: plain },
    files: textsOf(files),
    said: [...reading.findings, ...unknown],
  };
}

/** The second part: what stands. It takes a fraction of the time that the third does. */
export function stand(
  { graph, files, said }: Ground,
  plugins: readonly Plugin[],
  memo: Memo["compute"],
  lens: Lens,
): Stood {
  const derivations = derive(graph, plugins, memo, lens);
  const judgement = judge(graph, derivations, lens);
  return { graph, lens, derivations, judgement, footings: footings(graph, judgement), files, said };
}

/** What numbers are recalled with. */
export interface Tools {
  readonly plugins: readonly Plugin[];
  readonly memo: Memo["compute"];
}

/** What was found of what stands already, for the same tale with more numbers. */
export interface Known {
  readonly resting?: Resting;
  readonly rules?: Map<string, Found>;
}

/** The first of the third part, in slices: what answers rest on, or claims; found again of those alone that waited for numbers. */
export function* restingIn(
  stood: Stood,
  { plugins, memo }: Tools,
  reach: Reach = {},
  before?: Resting,
): Generator<Slice, Resting> {
  const { graph } = stood;
  const claims = reach.allRestsOn ? graph.list("claims") : [];
  const asked = new Set(graph.list("questions").flatMap((one) => one.values.answers));
  for (const { id } of claims) asked.add(id);
  return yield* restingOn({ ...stood, plugins, memo }, [...asked], before);
}

/** The third part, in slices: what it all rests on, and all there is to say of it beside what reading said. */
export function* tellingOf(
  stood: Stood,
  tools: Tools,
  reach: Reach = {},
  known: Known = {},
): Generator<Slice | void, Checked<Model>> {
  const { graph, lens, judgement } = stood;
  const { plugins, memo } = tools;
  const resting = known.resting ?? (yield* restingIn(stood, tools, reach));
  const view = { ...stood, plugins, memo, restsOn: resting.restsOn };
  const together = reach.allRestsOn ? lossesTogether(view) : null;
  const ruled = yield* findingIn(view, known.rules);
  const through = reach.history ? historyOf({ graph, plugins, memo, lens }, judgement) : null;
  const planned = reach.plan ? planOf(view) : null;
  const missing = new Map<string, Run>();
  for (const run of [
    ...stood.derivations.missing,
    ...resting.missing,
    ...[...(together?.values() ?? [])].flatMap((one) => one.missing),
    ...ruled.missing,
    ...(through?.missing ?? []),
    ...(planned?.missing ?? []),
  ])
    if (!missing.has(run.key)) missing.set(run.key, run);
  return {
    model: {
      ...stood,
      restsOn: resting.restsOn,
      lossSets: together,
      history: through?.history ?? null,
      plan: planned?.plan ?? null,
      missing: [...missing.values()],
    },
    findings: findingsAt(graph, stood.said, ruled.findings),
  };
}

/** What reading, linking and the rules say, as it is told: in one order whatever the order of the files. */
export function findingsAt(
  graph: Graph,
  said: readonly Finding[],
  ruled: readonly Finding[],
): readonly Finding[] {
  return settled([...said, ...graph.findings, ...ruled], graph).toSorted(inPlace);
}

/** The sets of losses that end the claims of questions that stand. */
function lossesTogether(judged: Judged): ReadonlyMap<Id, LossSets> {
  const answers = new Set(judged.graph.list("questions").flatMap((one) => one.values.answers));
  return new Map(
    [...answers].flatMap((claim) => {
      const sets = lossSets(judged, claim, manyNumbers);
      return sets ? [[claim, sets] as const] : [];
    }),
  );
}
