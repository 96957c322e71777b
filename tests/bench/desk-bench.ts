import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { modelsBeside } from "../../src/app/worker/models/models.ts";
import { filesTaken, hashesTaken } from "../../src/app/worker/models/taken.ts";
import type { FilesTold } from "../../src/app/worker/models/taken.ts";
import { median } from "../../src/base/numeric/sample.ts";
import { compute } from "../../src/build.ts";
import type { Memo, Run, SourceFile } from "../../src/build.ts";
import { prepared } from "../../src/link/edit/prepare.ts";
import type { Action } from "../../src/link/edit/action.ts";
import type { Graph, MeasurementRecord } from "../../src/link/graph.ts";
import { plugins } from "../../plugins/index.ts";
import { ownWritten } from "../../src/read/edit/head.ts";
import { serve } from "../../src/server/serve.ts";
import { contentsOf } from "../../src/show/pages/contents.ts";
import { sheetOf } from "../../src/show/pages/sheet.ts";
import { corpusOf } from "../make-corpus/corpus.ts";
import { inOneFile } from "./one-file.ts";
import type { Row } from "./search-bench.ts";

/** What passes between a number that was typed and the page that shows what follows, in ms. */
interface Phases {
  /** What the action comes to as edits of a file. */
  readonly prepared: number;
  /** Until the program has it on the disk and has answered. */
  readonly saved: number;
  /** The changed file read, tied to the others, and judged. */
  readonly judged: number;
  /** The sheet of the measurement and the frame about it, as they are handed to the window. */
  readonly shown: number;
  /** What claims rest on and what the rules find; meanwhile forms are answered. */
  readonly rest: number;
  /** The longest that a form would have waited during that. */
  readonly longest: number;
  /** All until it is shown, in ms of the processor: what else the machine does lengthens it less. */
  readonly processor: number;
}

const records = 10_000;
const rounds = 12;

/** Goal 6: one changed number of 10,000 records saved, re-judged and shown, from many files and from one. */
export default async function bench(): Promise<readonly Row[]> {
  const files = corpusOf({ records, seed: 7 });
  const memo: Memo = { read: new Map(), compute: new Map() };
  const many = await timesOf(files, memo);
  const one = await timesOf(inOneFile(files), memo);
  return [...rowsOf(`${files.length} files`, many), ...rowsOf("one file", one)];
}

function rowsOf(where: string, times: readonly Phases[]): readonly Row[] {
  const figure = { goal: "6", peer: null, ratio: null, goalRatio: null, unit: "ms" };
  const middle = (of: (one: Phases) => number): number => median(times.map(of));
  const what = `one number of ${records} records in ${where}`;
  return [
    {
      ...figure,
      what: `${what}: saved, judged again, shown`,
      ours: middle((one) => one.prepared + one.saved + one.judged + one.shown),
      goalFigure: 150,
    },
    { ...figure, what: "  the same, of the processor", ours: middle((one) => one.processor) },
    {
      ...figure,
      what: "  of that: what the change comes to in the file",
      ours: middle((one) => one.prepared),
    },
    { ...figure, what: "  on the disk, and the answer", ours: middle((one) => one.saved) },
    { ...figure, what: "  read, linked, derived, judged", ours: middle((one) => one.judged) },
    { ...figure, what: "  the page", ours: middle((one) => one.shown) },
    { ...figure, what: "  after it: what claims rest on, and findings", ours: middle((one) => one.rest) },
    { ...figure, what: "  the longest wait of a form meanwhile", ours: middle((one) => one.longest) },
  ];
}

async function timesOf(files: readonly SourceFile[], memo: Memo): Promise<readonly Phases[]> {
  const folder = mkdtempSync(join(tmpdir(), "variorum-desk-bench-"));
  for (const file of files) {
    mkdirSync(dirname(join(folder, file.path)), { recursive: true });
    writeFileSync(join(folder, file.path), file.text);
  }
  const served = await serve(folder);
  try {
    const desk = await deskAt(served.url, memo);
    const times: Phases[] = [];
    for (let round = 0; round < rounds; round++) {
      times.push(await desk.change(round));
      // The program looks at the folder again once it has been quiet, beside the app and not before it.
      await new Promise((resolve) => setTimeout(resolve, 400));
    }
    // The first rounds run code that is not compiled yet.
    return times.slice(rounds / 3);
  } finally {
    await served.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

interface Told extends FilesTold {
  readonly version: string;
}

/** The app without its window: a real server, and the models as the app's worker has them. */
async function deskAt(url: string, memo: Memo) {
  const { origin, hash } = new URL(url);
  const headers = { "x-variorum-token": hash.replace("#token=", ""), "content-type": "application/json" };
  let turn: (() => void) | null = null;
  const later = (next: () => void): void => {
    turn = next;
  };
  const models = modelsBeside(memo, () => plugins, { now: () => performance.now(), later });
  /** Lets the models have every turn they ask for; the longest of them, in ms. */
  const completed = (): number => {
    let longest = 0;
    models.shown({}, () => undefined);
    for (let next = turn; next !== null; next = turn) {
      turn = null;
      const begun = performance.now();
      next();
      longest = Math.max(longest, performance.now() - begun);
    }
    return longest;
  };
  const missing = (): readonly Run[] => {
    completed();
    return models.now({}).model?.missing ?? [];
  };
  let told = (await (await fetch(`${origin}/corpus/files`, { headers })).json()) as Told;
  let files = told.files;
  let hashes: ReadonlyMap<string, string> = new Map();
  models.take(files);
  for (let runs = missing(); runs.length > 0; runs = missing()) {
    for (const run of runs)
      memo.compute.set(
        run.key,
        compute(run, plugins, () => undefined),
      );
    models.renumber();
  }

  const change = async (round: number): Promise<Phases> => {
    const stood = models.stood({});
    if (!("graph" in stood)) throw new Error("no corpus");
    const measurement = measurementIn(stood.graph, round);
    const before = process.cpuUsage();
    const begun = performance.now();
    const made = prepared({ graph: stood.graph, files: stood.files, hashes }, actionOn(measurement, round));
    if (!("changes" in made)) throw new Error(JSON.stringify(made));
    const asked = performance.now();
    const body = JSON.stringify({ step: "Change a measurement", changes: made.changes });
    const answer = await fetch(`${origin}/corpus/edit?have=${told.version}`, {
      method: "POST",
      headers,
      body,
    });
    if (answer.status !== 200) throw new Error(await answer.text());
    const { corpus } = (await answer.json()) as { readonly corpus: Told };
    const saved = performance.now();
    told = corpus;
    files = filesTaken(files, corpus);
    hashes = hashesTaken(hashes, corpus);
    models.take(files);
    models.stood({});
    const judged = performance.now();
    const { model, findings } = models.now({});
    if (!model) throw new Error("no model");
    structuredClone([
      contentsOf(model, findings, model.missing.length),
      sheetOf(model, findings, model.files, measurement.id),
    ]);
    const shown = performance.now();
    const { user, system } = process.cpuUsage(before);
    const longest = completed();
    const rest = performance.now() - shown;
    return {
      prepared: asked - begun,
      saved: saved - asked,
      judged: judged - saved,
      shown: shown - judged,
      rest,
      longest,
      processor: (user + system) / 1000,
    };
  };
  return { change };
}

/** A measurement of the corpus that takes its turn in a round. */
function measurementIn(graph: Graph, round: number): MeasurementRecord {
  const all = graph.list("measurements").filter(({ values }) => /^\d+ /.test(values.value.text));
  const one = all[Math.floor(((round + 0.5) * all.length) / rounds)];
  if (!one) throw new Error("no measurement");
  return one;
}

/** Its value is to be one more. */
function actionOn(measurement: MeasurementRecord, round: number): Action {
  const seen = ownWritten(measurement);
  const value = String(seen["value"]).replace(/^\d+/, (number) => String(Number(number) + 1 + round));
  return { do: "change", id: measurement.id, seen, values: { ...seen, value } };
}
