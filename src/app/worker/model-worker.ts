import type { Lens, Memo, Model, Outcome, Run, SourceFile, Stood } from "../../build.ts";
import type { Action, Prepared } from "../../link/edit/action.ts";
import { prepared } from "../../link/edit/prepare.ts";
import { labelOf } from "../../link/names/label.ts";
import { unsupposed } from "../../derive/lens.ts";
import { textsOf } from "../../read/source-file.ts";
import { supposedTold } from "../../show/judged/suppose/supposed.ts";
import { mergePage } from "../../show/desk/changes/merging/page.ts";
import { contentsOf } from "../../show/pages/contents.ts";
import { findingLines } from "../../show/pages/findings.ts";
import { incipitOf } from "../../show/pages/incipit/incipit.ts";
import { searchDocuments } from "../../show/search/documents.ts";
import type { Asked, Change, Told } from "./messages.ts";
import { pageOf } from "./pages.ts";
import { serveForms } from "./forms.ts";
import { serveArguing } from "../map/arguing/serving.ts";
import { serveGrid } from "../pages/desk/grid/serving.ts";
import { serveImport } from "../pages/desk/import/serving.ts";
import { plugins, takeGuests } from "./plugins.ts";
import type { CorpusRead, Desk } from "./desk.ts";
import { arriving } from "./models/arriving.ts";
import type { Arriving } from "./models/arriving.ts";
import { historiesBeside } from "./models/histories.ts";
import { modelsBeside } from "./models/models.ts";
import { allFiles, filesTaken, hashesTaken } from "./models/taken.ts";
import { numbersBeside } from "./models/numbers.ts";
import { plansBeside, turnsByMessage } from "./planning/plans.ts";
import type { Corpus } from "./search/messages.ts";
import { takeHanded } from "../pages/desk/changes/compared.ts";
import { putOnBench } from "./workbench.ts";

const memo: Memo = { read: new Map(), compute: new Map() };
const plans = plansBeside(memo.compute, turnsByMessage());
const models = modelsBeside(memo, () => plugins, turnsByMessage());
const histories = historiesBeside(memo.compute, () => plugins, turnsByMessage());
let files: readonly SourceFile[] = [];
let texts: ReadonlyMap<string, string> = new Map();
/** Of files of which a change was told: the SHA-256 of their texts. */
let hashes: ReadonlyMap<string, string> = new Map();
let asked: Extract<Asked, { readonly ask: "page" }> | null = null;
let searching: MessagePort | null = null;
/** The files that the worker that searches has. */
let lent: readonly SourceFile[] = [];

/** Files that are on their way. */
let arrival: Arriving | null = null;

const corpus = (): CorpusRead => ({ files, ...memo });

const tell = (told: Told): void => self.postMessage(told);
const numbers = numbersBeside(memo.compute, tell, () => {
  models.renumber();
  answer();
});

self.onmessage = (event: MessageEvent<Asked>) => {
  const message = event.data;
  if (message.ask === "files") take(message);
  else if (message.ask === "coming") arrival = arrivalOf(message);
  else if (message.ask === "lines") arrival?.take(message.bytes);
  else if (message.ask === "came") {
    const fresh = message.kept ? arrival?.files() : null;
    arrival = null;
    if (fresh) take({ ...allFiles(fresh), ask: "files", guests: message.guests });
  } else if (message.ask === "remember") numbers.remember(message.outcomes);
  else if (message.ask === "recalled") numbers.recalled(outcomesFrom(message.bytes));
  else if (message.ask === "search") {
    searching = message.port;
    lent = [];
    lendCorpus();
  } else if (message.ask === "import") {
    serveImport(message.port, () => {
      const stood = stoodUnder({});
      return stood && { graph: stood.graph, files };
    });
  } else if (message.ask === "arguing") {
    serveArguing(message.port, () => {
      const [{ model }, whole] = [models.now(asked?.lens ?? {}), stoodUnder({})];
      return model && whole && { files, read: memo.read, graph: whole.graph, model };
    });
  } else if (message.ask === "grid") {
    serveGrid(message.port, () => {
      const stood = stoodUnder({});
      return stood && { ...corpus(), graph: stood.graph };
    });
  } else if (message.ask === "forms") {
    serveForms(message.port, () => stoodUnder({})?.graph ?? null);
  } else if (message.ask === "prepare") {
    tell({ tell: "prepared", number: message.number, prepared: preparedFor(message.action) });
  } else if (message.ask === "compare") {
    takeHanded(message.handed);
    if (asked?.wanted.page === "changes") answer();
  } else if (message.ask === "bench") {
    putOnBench(message.on);
    if (asked?.wanted.page === "workbench") answer();
  } else {
    asked = message;
    answer();
  }
};

/** Files that come: what is told of them before they are all there. */
function arrivalOf({ large, ...coming }: Extract<Asked, { readonly ask: "coming" }>): Arriving {
  if (!large) return arriving(coming, memo.read, { first: () => undefined, progress: () => undefined });
  numbers.recallFirst();
  const isOpening = files.length === 0;
  return arriving(coming, memo.read, {
    first: (first) => {
      const incipit = isOpening ? incipitOf(first) : null;
      if (incipit) tell({ tell: "incipit", incipit });
    },
    progress: (done) => {
      const stage = done < coming.count ? ({ stage: "files", done, of: coming.count } as const) : judging;
      if (isOpening) tell({ tell: "opening", opening: stage });
    },
  });
}

const judging = { stage: "judging" } as const;

function outcomesFrom(bytes: ArrayBuffer | null): readonly (readonly [string, Outcome])[] {
  if (bytes === null) return [];
  const kept = JSON.parse(new TextDecoder().decode(bytes)) as {
    readonly compute: Readonly<Record<string, Outcome>>;
  };
  return Object.entries(kept.compute);
}

/** New files: everything is built again, and the standings that are now others are told. */
function take(told: Extract<Asked, { readonly ask: "files" }>): void {
  const { guests } = told;
  const next = filesTaken(files, told);
  const before = files.length > 0 ? stoodUnder({}) : null;
  const others = guests !== null && takeGuests(guests);
  if (next === files && !others) return;
  if (others) lent = [];
  files = next;
  hashes = hashesTaken(hashes, told);
  texts = textsOf(files);
  models.take(files);
  plans.forget();
  histories.forget();
  numbers.renew();
  const after = stoodUnder({});
  if (before && after) tell({ tell: "changed", changes: changesBetween(before, after) });
  answer();
}

/** How long nothing is asked before the worker that searches gets a changed corpus, in ms, unless somebody is searching. */
const quiet = 700;
let lending: ReturnType<typeof setTimeout> | undefined;

/** To say the whole corpus again takes long, and a form would wait for it. */
function lendSoon(): void {
  clearTimeout(lending);
  lending = setTimeout(lendCorpus, asked?.wanted.page === "search" ? 0 : quiet);
}

/** The whole corpus, under no lens, to the worker that searches it; once somebody wanted to search. */
function lendCorpus(): void {
  if (!searching || files.length === 0 || lent === files) return;
  lent = files;
  const stood = stoodUnder({});
  const corpus: Corpus = stood ? searchDocuments(stood.graph, plugins, texts) : [];
  searching.postMessage(corpus);
}

/** What an action comes to in the record as it is, whatever year or outcome is looked at. */
function preparedFor(action: Action): Prepared {
  const stood = stoodUnder({});
  return stood
    ? prepared({ graph: stood.graph, files: texts, hashes }, action)
    : { problem: "The corpus cannot be read" };
}

function stoodUnder(lens: Lens): Stood | null {
  const stood = models.stood(lens);
  return "graph" in stood ? stood : null;
}

function answer(): void {
  plans.stop();
  histories.stop();
  if (!asked || files.length === 0) return;
  const { number, lens, wanted } = asked;
  const shown = models.shown(lens, answer);
  if (shown === null) return;
  const { model, findings } = models.now(lens);
  if (!model) {
    const merge = wanted.page === "merge" ? mergePage(texts, null, wanted) : null;
    return tell({ tell: "unreadable", number, findings: findingLines(null, findings, texts), merge });
  }
  if (shown === "bare" && wanted.page === "findings")
    return tell({ tell: "opening", opening: { stage: "rules" } });
  const contents = contentsOf(model, findings, model.missing.length);
  const under = (other: Lens): Model => models.now(other).model ?? model;
  const needed: Run[] = [];
  const need = (runs: readonly Run[]): void => void needed.push(...runs);
  const planning: Desk["plans"] = {
    made: plans.made,
    make: (of) =>
      shown !== "whole"
        ? plans.before(of)
        : plans.make(of, { progress: (how) => tell({ tell: "planning", number, ...how }), done: answer }),
  };
  const through: Desk["through"] = (of, told) =>
    histories.through(of, { done: answer, ...(told === "growing" ? { grown: answer } : {}) });
  tell({
    tell: "page",
    number,
    contents: shown === "bare" ? { ...contents, findings: null } : contents,
    page: pageOf(
      { model, under, findings, texts, memo: memo.compute, need, corpus, plans: planning, through },
      wanted,
    ),
    supposed: supposedTold(model, under),
    whole: shown === "whole",
  });
  // What a supposition changes is told beside the record without it.
  if (lens.suppose !== undefined) need(under(unsupposed(lens)).derivations.missing);
  const isMore = model.derivations.missing.length + needed.length > 0;
  if (shown === "whole" || isMore) numbers.computeFor(model, needed);
  if (shown === "whole") lendSoon();
}

function changesBetween(before: Stood, after: Stood): readonly Change[] {
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
