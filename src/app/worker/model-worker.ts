import { plugins } from "../../../plugins/index.ts";
import { build } from "../../build.ts";
import type { Checked, Lens, Memo, Model, Outcome, Run, SourceFile } from "../../build.ts";
import { labelOf } from "../../link/label.ts";
import { contentsOf } from "../../show/pages/contents.ts";
import { findingLines } from "../../show/pages/findings.ts";
import { searchDocuments } from "../../show/search/documents.ts";
import type { Asked, Change, Told } from "./messages.ts";
import { pageOf } from "./pages.ts";
import type { Corpus } from "./search/messages.ts";

const memo: Memo = { read: new Map(), compute: new Map() };
let files: readonly SourceFile[] = [];
let texts: ReadonlyMap<string, string> = new Map();
let built = new Map<string, Checked<Model>>();
let asked: Extract<Asked, { readonly ask: "page" }> | null = null;
let searching: MessagePort | null = null;

const tell = (told: Told): void => self.postMessage(told);

self.onmessage = (event: MessageEvent<Asked>) => {
  const message = event.data;
  if (message.ask === "files") take(message.files);
  else if (message.ask === "search") {
    searching = message.port;
    lendCorpus();
  } else {
    asked = message;
    answer();
  }
};

/** New files: everything is built again, and the standings that are now others are told. */
function take(next: readonly SourceFile[]): void {
  const before = files.length > 0 ? modelUnder({}) : null;
  files = next;
  texts = new Map(files.map((file) => [file.path, file.text]));
  built = new Map();
  patience = 1;
  const after = modelUnder({});
  if (before?.model && after.model)
    tell({ tell: "changed", changes: changesBetween(before.model, after.model) });
  answer();
  lendCorpus();
}

/** The whole corpus, under no lens, to the worker that searches it; once somebody wanted to search. */
function lendCorpus(): void {
  if (!searching || files.length === 0) return;
  const { model } = modelUnder({});
  const corpus: Corpus = model ? searchDocuments(model.graph, plugins, texts) : [];
  searching.postMessage(corpus);
}

function modelUnder(lens: Lens): Checked<Model> {
  const key = JSON.stringify(lens);
  const known = built.get(key);
  if (known) return known;
  const fresh = build(files, plugins, memo, lens);
  built.set(key, fresh);
  return fresh;
}

function answer(): void {
  if (!asked || files.length === 0) return;
  const { number, lens, wanted } = asked;
  const { model, findings } = modelUnder(lens);
  if (!model) return tell({ tell: "unreadable", number, findings: findingLines(null, findings, texts) });
  const contents = contentsOf(model, findings, model.missing.length);
  const under = (other: Lens): Model => modelUnder(other).model ?? model;
  const needed: Run[] = [];
  const need = (runs: readonly Run[]): void => void needed.push(...runs);
  tell({
    tell: "page",
    number,
    contents,
    page: pageOf({ model, under, findings, texts, memo: memo.compute, need }, wanted),
  });
  computeFor(model, needed);
}

function changesBetween(before: Model, after: Model): readonly Change[] {
  const claims = new Set(
    [...before.graph.list("claims"), ...after.graph.list("claims")].map((one) => one.id),
  );
  return [...claims].flatMap((id) => {
    const was = before.judgement.standings.get(id) ?? null;
    const is = after.judgement.standings.get(id) ?? null;
    const graph = after.graph.records.has(id) ? after.graph : before.graph;
    return was === is ? [] : [{ text: labelOf(graph, id), was, is }];
  });
}

/** The one thread that computes, and the run it is at; it is ended when that is no longer wanted. */
let thread: Worker | null = null;
let running: string | null = null;
/** Runs still to be computed for the model last built, those it needs itself first. */
let queue: readonly Run[] = [];
/** Outcomes taken since the last build, and how many there may be before the next. */
let taken = 0;
let patience = 1;

/** The model's own numbers first, then those of the page that is looked at, then what the rules ask. */
function computeFor(model: Model, needed: readonly Run[]): void {
  const runs = [...model.derivations.missing, ...needed, ...model.missing];
  queue = [...new Map(runs.map((run) => [run.key, run])).values()];
  taken = 0;
  if (running !== null && !queue.some((run) => run.key === running)) endThread();
  computeNext();
}

function endThread(): void {
  thread?.terminate();
  thread = null;
  running = null;
}

function computeNext(): void {
  const [run] = queue;
  if (!run || running !== null) return;
  thread ??= newThread();
  running = run.key;
  thread.postMessage(run);
}

function newThread(): Worker {
  const worker = new Worker(new URL("./compute-worker.ts", import.meta.url), { type: "module" });
  worker.onmessage = (event: MessageEvent<{ readonly key: string; readonly outcome: Outcome }>) => {
    keep(event.data.key, event.data.outcome);
  };
  worker.onerror = (event) => {
    event.preventDefault();
    const key = running;
    endThread();
    if (key !== null) keep(key, { status: "failed", why: "The computation ended before its time" });
  };
  return worker;
}

function keep(key: string, outcome: Outcome): void {
  running = null;
  memo.compute.set(key, outcome);
  queue = queue.filter((one) => one.key !== key);
  taken += 1;
  if (queue.length > 0 && taken < patience) return computeNext();
  // Building again for every one of hundreds would cost more than computing them.
  patience *= 2;
  built = new Map();
  answer();
}
