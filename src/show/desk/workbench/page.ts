import type { Finding, Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Standing } from "../../../judge/judge.ts";
import type { Run } from "../../../derive/run.ts";
import { labelText, withoutStop } from "../../../link/names/label.ts";
import { derivationOf } from "../../../link/inputs.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Plugin } from "../../../plugin.ts";
import { isList, writtenOf } from "../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../read/edit/written.ts";
import { numberPage } from "../../numbers/number.ts";
import type { NumberPage } from "../../numbers/number.ts";
import { claimText } from "../../pages/question.ts";
import type { Reported } from "../../report/report.ts";
import { listedUnder, withheldIn } from "../../withhold.ts";
import { bearingFields, limitTyped } from "./bearing.ts";
import type { BearingField } from "./bearing.ts";
import { draftOf, emptyDraft, textsAt } from "./draft/draft.ts";
import type { Draft } from "./draft/draft.ts";
import { settingsKey } from "./draft/looks.ts";
import { isFree, proposedId } from "./draft/proposed-id.ts";
import { inputFields, pairLines } from "./input.ts";
import type { InputField, PairLine } from "./input.ts";
import type { Choice } from "./offered/choice.ts";
import { claimsOffered } from "./offered/claims.ts";
import { formOf, methodsOffered } from "./offered/methods.ts";
import type { Form, Method } from "./offered/methods.ts";
import { numbersFor } from "./offered/numbers.ts";
import { settingFields, understood } from "./settings.ts";
import type { SettingField, Understood } from "./settings.ts";
import { runsFor } from "./trial.ts";
import type { Corpus, Trial } from "./trial.ts";
import type { Typing } from "./typing.ts";

/** A claim whose standing is another with the draft than without it. */
export interface StandingChange {
  readonly claim: Id;
  readonly text: string;
  readonly was: Standing | null;
  readonly is: Standing | null;
}

/** The page on which a derivation is made: the draft with everything that can be chosen and all that follows from it. */
export interface WorkbenchPage {
  readonly of: Id | null;
  /** Why the derivation that was asked for cannot be changed here; null where it can. */
  readonly closed: "unknown" | "withheld" | null;
  /** What the derivation that is changed is called; null for a new one. */
  readonly title: Text | null;
  readonly methods: readonly Method[];
  readonly notAllowed: readonly string[];
  readonly draft: Draft;
  readonly id: Id;
  readonly idProblem: "bad" | "taken" | null;
  readonly form: Form | null;
  readonly inputs: readonly InputField[];
  readonly pairs: readonly PairLine[] | null;
  readonly settings: readonly SettingField[];
  /** Names of the corpus's own units, and numbers of other derivations: what settings can be. */
  readonly units: readonly string[];
  readonly numbers: readonly Choice[];
  readonly claims: readonly Choice[];
  readonly bearings: readonly BearingField[];
  /** How the limit that is being typed is understood; null where none is. */
  readonly limit: Understood | null;
  readonly number: NumberPage | null;
  /** What is wrong with what the draft says, in the reader's words. */
  readonly problems: readonly Text[];
  /** The settings whose number is shown, as a key; null where there is none. */
  readonly seen: string | null;
  readonly looks: number;
  readonly changes: readonly StandingChange[];
  /** Numbers still to be computed before all changes are known. */
  readonly pending: number;
}

/** What a draft is made from: the corpus as it is, judged, and the way to try the draft in it. */
export interface Bench {
  readonly model: Reported;
  readonly findings: readonly Finding[];
  readonly corpus: Corpus;
  readonly trial: (corpus: Corpus, draft: Draft, id: Id) => Trial | null;
  readonly need: (runs: readonly Run[]) => void;
}

/** What is asked of the page: the derivation, the draft so far (null before it is begun), and what is being typed. */
export interface Asked {
  readonly of: Id | null;
  readonly draft: Draft | null;
  readonly typing: Typing | null;
}

/** The workbench with a draft on it. */
export function workbenchPage(bench: Bench, { of, draft: given, typing }: Asked): WorkbenchPage {
  const { model, corpus } = bench;
  const { plugins } = corpus;
  const closed = of === null ? null : closedTo(model.graph, of);
  const draft = closed === null ? (given ?? begun(model.graph, corpus, of)) : emptyDraft;
  const typedId = textsAt(draft.values, ["id"])[0];
  const id = draft.of ?? typedId ?? proposedId(model.graph, draft.values);
  const plugin = plugins.find((one) => one.id === textsAt(draft.values, ["plugin"])[0]);
  const idProblem =
    draft.of !== null || typedId === undefined
      ? null
      : !/^[a-z0-9][a-z0-9-]*(?:\/[a-z0-9][a-z0-9-]*)*$/u.test(id)
        ? ("bad" as const)
        : isFree(model.graph, id)
          ? null
          : ("taken" as const);
  const own = idProblem === null ? id : proposedId(model.graph, draft.values);
  const trial = plugin === undefined ? null : bench.trial(corpus, draft, own);
  if (trial !== null && !draft.stopped) bench.need(runsFor(corpus, trial));
  return {
    of,
    closed,
    title: of === null || closed !== null ? null : calledIn(model.graph, of),
    ...methodsOffered(model.graph, plugins),
    draft,
    id,
    idProblem,
    form: formOf(plugin),
    ...tried(bench, trial, { plugin, written: draft.values["inputs"] }, typing),
  };
}

type Tried = Omit<
  WorkbenchPage,
  "of" | "closed" | "title" | "methods" | "notAllowed" | "draft" | "id" | "idProblem" | "form"
>;

function tried(
  { model, findings, corpus }: Bench,
  trial: Trial | null,
  { plugin, written }: { readonly plugin: Plugin | undefined; readonly written: Written | undefined },
  typing: Typing | null,
): Tried {
  const claims = claimsOffered(model.graph, model.judgement);
  if (trial === null || plugin === undefined) return { ...untried, claims };
  const { graph, derivations, judgement, record, derived, key } = trial;
  const at = { graph, lens: model.lens };
  const settings = settingFields(graph, derivations, plugin, record?.values.parameters);
  const page = { ...model, graph, derivations, judgement };
  // The two are compared when neither lacks a number: what arrives in between would look like the draft's doing.
  const pending = Math.max(derivations.missing.length, model.derivations.missing.length);
  const shown = numberPage(page, corpus.plugins, corpus.compute, trial.id);
  return {
    inputs: inputFields(at, trial, { plugin, written }, findings, typing),
    pairs: pairLines(at, trial, plugin),
    settings: settings.map((field) =>
      typing?.at === `parameters.${field.name}`
        ? { ...field, understood: typedAs(graph, plugin, field, typing.text) }
        : field,
    ),
    units: graph.settings.units.map(({ name }) => name),
    numbers: numbersFor(graph, derivations, trial.id),
    claims,
    bearings: bearingFields(trial, shown),
    limit: limitTyped(trial, plugin, typing),
    number: shown,
    problems: trial.findings.map(({ message }) => message),
    seen: derived?.status === "computed" ? key : null,
    looks: trial.looks,
    changes: pending === 0 ? changesBetween(model, trial) : [],
    pending,
  };
}

const untried: Tried = {
  inputs: [],
  pairs: null,
  settings: [],
  units: [],
  numbers: [],
  claims: [],
  bearings: [],
  limit: null,
  number: null,
  problems: [],
  seen: null,
  looks: 1,
  changes: [],
  pending: 0,
};

function typedAs(
  graph: Graph,
  plugin: Plugin,
  { name }: SettingField,
  text: string,
): SettingField["understood"] {
  const parameter = plugin.parameters.find((one) => one.name === name);
  return parameter === undefined ? { as: null, problem: null } : understood(graph, plugin, parameter, text);
}

/** The standings of claims that may be listed, where the draft makes them others. */
function changesBetween({ judgement }: Reported, trial: Trial): readonly StandingChange[] {
  const listed = listedUnder(trial);
  return trial.graph
    .list("claims")
    .filter(({ id }) => listed(id))
    .flatMap(({ id }) => {
      const [was, is] = [judgement.standings.get(id) ?? null, trial.judgement.standings.get(id) ?? null];
      return was === is ? [] : [{ claim: id, text: withoutStop(claimText(trial.graph, id)), was, is }];
    });
}

/** The draft that a derivation begins as, or an empty one. */
function begun(graph: Graph, { plugins, compute }: Corpus, of: Id | null): Draft {
  const record = of === null ? undefined : graph.records.get(of);
  if (of === null || record?.list !== "derivations") return emptyDraft;
  return draftOf(of, writtenOf(record.node) as WrittenMap, settingsKey(graph, plugins, compute, of));
}

/** A derivation that names something withheld is changed in its file: its fields would name it here. */
function closedTo(graph: Graph, of: Id): WorkbenchPage["closed"] {
  const withheld = withheldIn(graph);
  const record = graph.records.get(of);
  if (record?.list !== "derivations" || withheld(of)) return "unknown";
  const names = (value: Written): boolean =>
    typeof value === "string"
      ? [value.split(/\s/u)[0] ?? "", derivationOf(value)].some(withheld)
      : isList(value)
        ? value.some(names)
        : Object.values(value).some(names);
  return names(writtenOf(record.node)) ? "withheld" : null;
}

function calledIn(graph: Graph, id: Id): Text {
  const label = labelText(graph, id);
  return typeof label === "string" ? withoutStop(label) : label;
}
