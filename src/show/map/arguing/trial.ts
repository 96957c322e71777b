import type { Id } from "../../../base/finding.ts";
import { judge } from "../../../judge/judge.ts";
import type { Judgement } from "../../../judge/judge.ts";
import type { RecordAction } from "../../../link/edit/action.ts";
import { inOneStep } from "../../../link/edit/together.ts";
import type { AnyLinked, Graph } from "../../../link/graph.ts";
import { link } from "../../../link/link.ts";
import { underSupposition } from "../../../link/suppose/under.ts";
import { headFrom } from "../../../read/edit/head.ts";
import type { WrittenMap } from "../../../read/edit/written.ts";
import { readCorpus } from "../../../read/read.ts";
import type { Reading, ReadMemo } from "../../../read/read.ts";
import { readRecords } from "../../../read/records.ts";
import type { SourceFile } from "../../../read/source-file.ts";
import type { Reported } from "../../report/report.ts";
import { actionOf } from "./action.ts";
import type { ArgumentDraft } from "./draft.ts";

/** What an argument is tried in: the corpus as it was read, its record under no lens, and the model that is looked at. */
export interface Ground {
  readonly files: readonly SourceFile[];
  readonly read: ReadMemo;
  /** The record as it stands in the files. */
  readonly graph: Graph;
  readonly model: Pick<Reported, "graph" | "derivations" | "judgement" | "lens">;
}

/** The dispute as it would be with an argument in hand. */
export interface Tried {
  readonly graph: Graph;
  readonly judgement: Judgement;
  /** The argument that was tried; null where only a claim is made. */
  readonly argument: Id | null;
}

/** A path that no file of a corpus can have: names that begin with a dot are passed over. */
const place = ".in-hand.yaml";

/** Tries arguments as if they stood in the corpus; the last is remembered, since words change no standing. */
export function rememberedTried(): (ground: Ground, draft: ArgumentDraft) => Tried | null {
  let last: { readonly of: readonly unknown[]; readonly tried: Tried | null } | null = null;
  return (ground, draft) => {
    const { files, graph, model } = ground;
    const bearing = JSON.stringify(withoutWords(draft));
    const of = [files, graph, model.judgement, bearing];
    if (last?.of.every((one, at) => one === of[at]) === true) return last.tried;
    const tried = triedIn(ground, withoutWords(draft));
    last = { of, tried };
    return tried;
  };
}

/** As much of an argument as its standing and those of others follow from; a new claim is told by its words. */
function withoutWords(draft: ArgumentDraft): ArgumentDraft {
  return { ...draft, text: "", why: "" };
}

function triedIn(ground: Ground, draft: ArgumentDraft): Tried | null {
  const action = actionOf(ground.graph, draft);
  if (!("do" in action) || action.do !== "together") return null;
  const reading = readCorpus(ground.files, ground.read);
  if (!("settings" in reading)) return null;
  const actions = inOneStep(ground.graph, action.actions);
  const { lens, derivations } = ground.model;
  const graph = underSupposition(linkedWith(reading, ground.graph, actions), lens.suppose).graph;
  return { graph, judgement: judge(graph, derivations, lens), argument: argumentIn(actions, draft) };
}

function argumentIn(actions: readonly RecordAction[], { of }: ArgumentDraft): Id | null {
  if (of !== null) return of;
  const made = actions.flatMap((one) =>
    one.do === "add" && one.list === "arguments" ? one.records.map(({ id }) => id) : [],
  )[0];
  return typeof made === "string" ? made : null;
}

/** The corpus tied together as it would be after some actions: changed records in their places, new ones at the end. */
function linkedWith(reading: Reading, before: Graph, actions: readonly RecordAction[]): Graph {
  const changed = actions.flatMap((one) => {
    const record = one.do === "change" ? before.records.get(one.id) : undefined;
    return one.do === "change" && record ? [{ record, values: withHead(record, one.values) }] : [];
  });
  const lists = new Map<string, WrittenMap[]>();
  const put = (list: string, values: WrittenMap): void =>
    void lists.set(list, [...(lists.get(list) ?? []), values]);
  for (const { record, values } of changed) put(record.list, values);
  for (const one of actions) if (one.do === "add") for (const values of one.records) put(one.list, values);
  const text = JSON.stringify(Object.fromEntries(lists));
  const own = readRecords({ path: place, text }, reading.settings.quantities);
  const ids = new Map(changed.map(({ record }) => [record.id, record.list]));
  const isChanged = ({ list, id }: { readonly list: string; readonly id?: Id | null }): boolean =>
    id !== undefined && id !== null && ids.get(id) === list;
  const now = new Map(own.records.filter(isChanged).map((one) => [one.id, one]));
  return link({
    ...reading,
    records: [
      ...reading.records.map((one) => (isChanged(one) ? (now.get(one.id) ?? one) : one)),
      ...own.records.filter((one) => !isChanged(one)),
    ],
    spoilt: [...reading.spoilt, ...own.spoilt],
  });
}

/** What a record says with the source that the head of its file gives it. */
function withHead(record: AnyLinked, values: WrittenMap): WrittenMap {
  const head = headFrom(record);
  return head === null || values["from"] !== undefined ? values : { ...values, from: head };
}
