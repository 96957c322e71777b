import { plugins } from "../../plugins/index.ts";
import { median } from "../../src/base/numeric/sample.ts";
import { derive } from "../../src/derive/derive.ts";
import { compute } from "../../src/derive/run.ts";
import type { Outcome, Run } from "../../src/derive/run.ts";
import { judge } from "../../src/judge/judge.ts";
import { reviser } from "../../src/judge/revise.ts";
import type { Graph } from "../../src/link/graph.ts";
import { link } from "../../src/link/link.ts";
import { planning, planOf } from "../../src/plan/planning.ts";
import type { PlanBench } from "../../src/plan/plan.ts";
import { readCorpus } from "../../src/read/read.ts";
import type { SourceFile } from "../../src/read/source-file.ts";
import { corpusOf } from "../make-corpus/corpus.ts";

/** One line of a bench whose goal is a figure. */
interface Row {
  readonly goal: string;
  readonly what: string;
  readonly ours: number;
  readonly goalFigure: number | null;
  readonly unit: string;
}

/**
 * The planner over 200 examinations, recorded and proposed, in a corpus of 5,000 arguments; its findings were told
 * before, as they are whenever a corpus is built. In ms of the processor, which other work lengthens less.
 */
export default function bench(records = 25_000, rounds = 7): readonly Row[] {
  const made = benchOf(records);
  const plans = Array.from({ length: rounds }, () => sliced(made));
  const [first = sliced(made)] = plans;
  const what = `plan of ${first.planned} examinations at ${first.argued} arguments`;
  const row = { goal: "plan", goalFigure: null, unit: "ms" };
  return [
    { ...row, what, ours: median(plans.map((one) => one.whole)), goalFigure: 1000 },
    { ...row, what: `${what}, the first one`, ours: first.whole, goalFigure: 1000 },
    {
      ...row,
      what: `${what}: longest time between two tellings of progress`,
      ours: median(plans.map((one) => one.longest)),
      goalFigure: 50,
    },
  ];
}

/** A corpus judged, every number computed, those of the plan's outcomes too. */
function benchOf(records: number): PlanBench {
  const made = corpusOf({ records, seed: 5 });
  const graph = graphOf([...made, { path: "measuring.yaml", text: measuringIn(graphOf(made), 12) }]);
  const memo = new Map<string, Outcome>();
  const bench = (): PlanBench => {
    const derivations = derive(graph, plugins, memo, {});
    const judgement = judge(graph, derivations, {});
    return { graph, plugins, memo, lens: {}, derivations, judgement, restsOn: new Map() };
  };
  const fill = (runs: readonly Run[]): void => {
    for (const run of runs)
      memo.set(
        run.key,
        compute(run, plugins, () => undefined),
      );
  };
  fill(bench().derivations.missing);
  const computed = bench();
  reviser(graph, computed.derivations, computed.judgement);
  fill(planOf(computed).missing);
  return computed;
}

function graphOf(files: readonly SourceFile[]): Graph {
  const reading = readCorpus(files, new Map());
  if (!("settings" in reading)) throw new Error("The made corpus cannot be read");
  return link(reading);
}

/** Examinations that measure what numbers are computed from: those of a made corpus only see. */
function measuringIn(graph: Graph, count: number): string {
  const gaps = graph.list("measurements").filter((one) => one.values.dimension === "gap");
  const things = [...new Set(gaps.map((one) => one.values.of))];
  const examinations = Array.from({ length: count }, (_, n) => {
    const of = things[Math.floor((n * things.length) / count)] ?? "";
    const outcome = (id: string, value: string): object => ({
      id,
      text: `The gap is ${value}.`,
      measures: [{ of, dimension: "gap", value }],
    });
    return {
      id: `measured-${n}`,
      of: [of],
      method: "the gap measured again",
      cost: String(n),
      outcomes: [outcome("short", "1.12 ± 0.02 m"), outcome("long", "1.35 ± 0.02 m")],
    };
  });
  return JSON.stringify({ examinations });
}

/** A plan made to its end: its time, and the longest between two steps. */
function sliced(bench: PlanBench): {
  readonly whole: number;
  readonly longest: number;
  readonly argued: number;
  readonly planned: number;
} {
  const steps = planning(bench);
  let whole = 0;
  let longest = 0;
  for (;;) {
    const before = process.cpuUsage();
    const step = steps.next();
    const { user, system } = process.cpuUsage(before);
    const time = (user + system) / 1000;
    whole += time;
    longest = Math.max(longest, time);
    if (step.done !== true) continue;
    const { recorded, proposed } = step.value.plan;
    const argued = bench.graph.list("arguments").length;
    return { whole, longest, argued, planned: recorded.length + proposed.length };
  }
}
