import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { plugins } from "../../plugins/index.ts";
import { searchIndex } from "../../src/app/worker/search/index.ts";
import { build, compute, groundOf, stand, tellingOf } from "../../src/build.ts";
import type { Checked, Memo, Model, Outcome, SourceFile, Stood } from "../../src/build.ts";
import { textOf } from "../../src/host/corpus-folder.ts";
import { atOnce } from "../../src/judge/resting/at-once.ts";
import { link } from "../../src/link/link.ts";
import { readCorpus } from "../../src/read/read.ts";
import { layOut } from "../../src/show/map/layout/layout.ts";
import { sectionOf } from "../../src/show/map/section/section.ts";
import { searchDocuments } from "../../src/show/search/documents.ts";
import { corpusOf, sizeFor } from "../make-corpus/corpus.ts";
import { growthPlot } from "./growth-plot.ts";
import type { Curve } from "./growth-plot.ts";
import type { Row } from "./search-bench.ts";

/** Records, and how often each is measured: the least time counts. */
const sizes = [
  [1000, 4],
  [3000, 3],
  [10_000, 2],
  [30_000, 1],
  [100_000, 1],
] as const;

const parts = ["read", "link and judge", "what the rules say", "map", "search index"] as const;
type Part = (typeof parts)[number];

/** A curve that is still being measured. */
interface Growing extends Curve {
  readonly name: Part;
  readonly at: [number, number][];
}

/** How much worse than n log n the fitted exponent may be: the slack that all ratios have. */
const slack = 1.2;

/** Goal 12: how the parts grow from 1,000 to 100,000 records, drawn in docs/growth.svg; and the memory that the largest takes. */
export default async function bench(): Promise<readonly (Row & { readonly goalFigure?: number })[]> {
  // Before anything else is kept that an earlier corpus could have left behind.
  const held = memory();
  const curves = parts.map((name): Growing => ({ name, at: [] }));
  // What is compiled while it runs is measured once it is compiled.
  for (let round = 0; round < 3; round++) grown(filesOf(1000));
  for (const [records, rounds] of sizes) {
    const files = filesOf(records);
    const times = Array.from({ length: rounds }, () => grown(files));
    for (const { name, at } of curves)
      at.push([records, Math.min(...times.map((one) => one.get(name) ?? Infinity))]);
  }
  const plot = fileURLToPath(new URL("../../docs/growth.svg", import.meta.url));
  writeFileSync(plot, growthPlot(curves));
  const sorting = exponentOf(sizes.map(([n]) => [n, n * Math.log(n)]));
  return [
    ...curves.map(({ name, at }): Row => {
      const ours = exponentOf(at);
      const ms = at.at(-1)?.[1] ?? 0;
      const what = `${name}: exponent of its growth from 1,000 to 100,000 records, beside n log n (${(ms / 1000).toFixed(1)} s of the processor at 100,000)`;
      return { goal: "12", what, ours, peer: sorting, ratio: ours / sorting, goalRatio: slack, unit: "" };
    }),
    held,
  ];
}

function filesOf(records: number): readonly SourceFile[] {
  return corpusOf(sizeFor(records / 5, 1));
}

/** Milliseconds of the processor that each part takes. */
function grown(files: readonly SourceFile[]): ReadonlyMap<Part, number> {
  const took = new Map<Part, number>();
  const timed = <T>(part: Part, work: () => T): T => {
    const before = process.cpuUsage();
    const result = work();
    const { user, system } = process.cpuUsage(before);
    took.set(part, (took.get(part) ?? 0) + (user + system) / 1000);
    return result;
  };
  const reading = timed("read", () => readCorpus(files, new Map()));
  if (!("settings" in reading)) throw new Error("the made corpus cannot be read");
  timed("link and judge", () => link(reading));
  const { stood, memo } = standing(files, (work) => timed("link and judge", work));
  const { model } = timed("what the rules say", () => atOnce(tellingOf(stood, { plugins, memo })));
  if (!model) throw new Error("the made corpus cannot be read");
  const view = { question: null, unfolded: [], focus: null, only: false, narrow: false };
  timed("map", () => layOut(sectionOf(model, view)));
  timed("search index", () => {
    const index = searchIndex();
    index.take(searchDocuments(stood.graph, plugins, stood.files));
    while (index.step());
    index.find("ring kiln", 10);
  });
  return took;
}

/** What stands, with every number of its own; only judging is handed to `timed`. */
function standing(
  files: readonly SourceFile[],
  timed: <T>(work: () => T) => T,
): { readonly stood: Stood; readonly memo: Map<string, Outcome> } {
  const ground = groundOf(files, new Map(), undefined);
  if (!("graph" in ground)) throw new Error("the made corpus cannot be read");
  const memo = new Map<string, Outcome>();
  for (;;) {
    const { missing } = stand(ground, plugins, memo, {}).derivations;
    if (missing.length === 0) break;
    for (const run of missing)
      memo.set(
        run.key,
        compute(run, plugins, () => undefined),
      );
  }
  // Another ground of the same files: nothing is known of it yet.
  const anew = groundOf(files, new Map(), undefined);
  if (!("graph" in anew)) throw new Error("the made corpus cannot be read");
  return { stood: timed(() => stand(anew, plugins, memo, {})), memo };
}

/** The slope of a straight line through the logarithms, by least squares. */
function exponentOf(at: readonly (readonly [number, number])[]): number {
  const logs = at.map(([n, ms]) => [Math.log(n), Math.log(ms)] as const);
  const mean = (of: (one: readonly [number, number]) => number): number =>
    logs.reduce((sum, one) => sum + of(one), 0) / logs.length;
  const [x, y] = [mean(([n]) => n), mean(([, ms]) => ms)];
  const across = logs.reduce((sum, [n]) => sum + (n - x) ** 2, 0);
  return logs.reduce((sum, [n, ms]) => sum + (n - x) * (ms - y), 0) / across;
}

/** What the model of 100,000 records holds, its texts with it and the search index apart, against the bytes of the texts. */
function memory(): Row {
  setFlagsFromString("--expose-gc");
  const collect = runInNewContext("gc") as () => void;
  const heap = (): number => {
    collect();
    collect();
    // Arrays of numbers lie beside the heap.
    const { heapUsed, arrayBuffers } = process.memoryUsage();
    return (heapUsed + arrayBuffers) / 1e6;
  };
  modelOf(filesOf(1000));
  const before = heap();
  const files = foundFiles(100_000);
  const held = modelOf(files);
  const ours = heap() - before;
  const peer = files.reduce((sum, { text }) => sum + Buffer.byteLength(text), 0) / 1e6;
  const what = `memory of the model of ${held.model?.graph.records.size} records, its numbers not yet computed, against the bytes of its texts`;
  return { goal: "12", what, ours, peer, ratio: ours / peer, goalRatio: 6, unit: "MB" };
}

/** Files as they are found on a disk: they share nothing with what made them, which no call that still runs holds either. */
function foundFiles(records: number): readonly SourceFile[] {
  const encoder = new TextEncoder();
  return filesOf(records).map(({ path, text }) => textOf(path, encoder.encode(text)));
}

function modelOf(files: readonly SourceFile[]): Checked<Model> & { readonly memo: Memo } {
  const memo: Memo = { read: new Map(), compute: new Map() };
  return { ...build(files, plugins, memo), memo };
}
