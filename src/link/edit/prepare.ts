import { changeTo, edited } from "../../base/text/edit.ts";
import type { Edit, Id } from "../../base/finding.ts";
import { byText } from "../../base/order.ts";
import { say } from "../../base/text/said/said.ts";
import { changing } from "../../base/text/texts.ts";
import type { Changing } from "../../base/text/texts.ts";
import { changeText } from "../../read/edit/text-edits.ts";
import { ownWritten } from "../../read/edit/head.ts";
import { saysSame } from "../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../read/edit/written.ts";
import { kindOf } from "../../read/grammar/kinds.ts";
import type { MapNode } from "../../read/yaml/tree.ts";
import type { Graph } from "../graph.ts";
import type { Action, Clash, Prepared } from "./action.ts";
import { differences, fieldIn } from "./differences.ts";
import { newId, takenIn } from "./new-id.ts";
import { placeOf } from "./place.ts";
import { renaming } from "./renamed.ts";
import { stepOf } from "./step.ts";
import { ownTexts, refusedAsTheirs } from "./theirs.ts";
import { inOneStep } from "./together.ts";

/** What a corpus is changed from: what its files say, and their texts. */
export interface Ground {
  readonly graph: Graph;
  readonly files: ReadonlyMap<string, string>;
  /** Of some of the files the SHA-256 of their texts, where it is known: it is not worked out again. */
  readonly hashes?: ReadonlyMap<string, string>;
}

/** The changes of files that an action comes to, as the files now are; no file is changed by it. */
export function prepared(given: Ground, action: Action): Prepared {
  const refused = refusedAsTheirs(given.graph, action);
  if (refused) return refused;
  const ground = { ...given, files: ownTexts(given.graph, given.files) };
  const texts = changing(ground.files);
  const done = doneIn(ground, texts, action);
  if (!("made" in done)) return done;
  const changes = texts
    .changed()
    .toSorted(([a], [b]) => byText(a, b))
    .map(([file, text]) => changeTo(file, ground.files.get(file) ?? null, text, ground.hashes?.get(file)));
  return { changes, step: stepOf(ground.graph, action), made: done.made };
}

type Refused = Exclude<Prepared, { readonly changes: unknown }>;
type Done = { readonly made: readonly Id[] } | Refused;

function doneIn(ground: Ground, texts: Changing, action: Action): Done {
  switch (action.do) {
    case "add":
      return added(ground, texts, action);
    case "change":
      return changed(ground, texts, action);
    case "take":
      return taken(ground, texts, action);
    case "rename":
      return renamed(ground, texts, action);
    case "together":
      return together(ground, texts, action);
    case "setting": {
      const { path, value } = action;
      return changeText(texts, ground.graph.settings.file, { is: "setting", path, value }) ?? { made: [] };
    }
  }
}

/** Several actions on the same texts: what is changed or goes from the end of a file, then what is new. */
function together(ground: Ground, texts: Changing, { actions }: Extract<Action, { do: "together" }>): Done {
  const startOf = (action: Action): number => {
    if (action.do === "add") return -1;
    const id = action.do === "change" ? action.id : action.do === "take" ? action.ids[0] : undefined;
    return id === undefined ? -1 : (writtenRecord(ground.graph, id)?.node.start ?? -1);
  };
  const made: Id[] = [];
  const sources = new Map<Id, Written>();
  const ordered = inOneStep(ground.graph, actions).toSorted((a, b) => startOf(b) - startOf(a));
  for (const action of ordered) {
    const done = action.do === "add" ? added(ground, texts, action, sources) : doneIn(ground, texts, action);
    if (!("made" in done)) return done;
    if (action.do === "add") made.push(...done.made);
    if (action.do === "add" && action.list === "passages")
      for (const { id, from } of action.records)
        if (typeof id === "string" && from !== undefined) sources.set(id, from);
  }
  return { made };
}

/** Adds records; `sources` are those of passages that the same step has made. */
function added(
  { graph, files }: Ground,
  texts: Changing,
  action: Extract<Action, { do: "add" }>,
  sources: ReadonlyMap<Id, Written> = new Map(),
): Done {
  const { list } = action;
  const needsId = kindOf(list).fields["id"]?.required === true;
  const made: Id[] = [];
  const byFile = new Map<string, { readonly head: string; readonly records: WrittenMap[] }>();
  for (const given of action.records) {
    const { id: said, ...others } = given;
    const isSaid = typeof said === "string" && said !== "";
    if (isSaid && (takenIn(graph).has(said) || made.includes(said)))
      return { problem: say`Duplicate id \`${said}\`, expected another name` };
    const unnamed = needsId ? { id: newId(graph, list, others, new Set(made)), ...others } : others;
    const own: WrittenMap = isSaid ? given : unnamed;
    const through = typeof own["from"] === "string" ? sources.get(own["from"]) : undefined;
    const place = placeOf(graph, files, list, through === undefined ? own : { ...own, from: through });
    const file = action.file ?? place.file;
    const goal = byFile.get(file) ?? { head: place.head, records: [] };
    byFile.set(file, goal);
    goal.records.push(file === place.file && through === undefined ? place.record : own);
    if (typeof own["id"] === "string") made.push(own["id"]);
  }
  // A file is written once, however many of the records go into it.
  for (const [file, { head, records }] of byFile) {
    const trouble = changeText(texts, file, { is: "add", list, records }, head);
    if (trouble) return trouble;
  }
  return { made };
}

/** A record as it is written, loaded or not; null where there is none of that name. */
export function writtenRecord(
  graph: Graph,
  id: Id,
): { readonly file: string; readonly node: MapNode } | null {
  const loaded = graph.records.get(id) ?? graph.leftOut.find((one) => one.id === id);
  if (loaded) return loaded;
  return graph.spoilt?.find((one) => one.id === id)?.written ?? null;
}

/**
 * The record that a change was made for. One without an id of its own may have another name by now, where a namesake was
 * put before it or taken out: it is then the one among them that says what was seen.
 */
function recordSeen(graph: Graph, id: Id, seen: WrittenMap): ReturnType<typeof writtenRecord> {
  const record = writtenRecord(graph, id);
  const says = (one: { readonly node: MapNode }): boolean => saysSame(ownWritten(one), seen);
  if ((record && says(record)) || graph.records.get(id)?.named === true) return record;
  const shared = id.replace(/#[\d#]*$/u, "");
  const namesakes = [...graph.records.values()].filter(
    (one) => !one.named && one.id.replace(/#[\d#]*$/u, "") === shared,
  );
  return namesakes.find(says) ?? record;
}

function changed({ graph }: Ground, texts: Changing, action: Extract<Action, { do: "change" }>): Done {
  const { seen, values } = action;
  const record = recordSeen(graph, action.id, seen);
  if (!record) return { clashes: [], gone: true };
  const now = ownWritten(record);
  const wanted = differences(seen, values).filter(({ path: [field = ""] }) => {
    const name = String(field);
    return !saysSame(fieldIn(now, name), fieldIn(values, name));
  });
  // What has no id of its own may be another record by now, which is told by any of its fields.
  const told = graph.records.get(action.id)?.named === false ? fieldsOf(record, seen) : [];
  const fields = new Set([...wanted.map(({ path }) => String(path[0])), ...told]);
  const clashes = clashesIn(now, seen, values, fields);
  if (clashes.length > 0) return { clashes, gone: false };
  for (const { path, value } of wanted) {
    const change = { is: "field", record: record.node.start, path, value } as const;
    const trouble = changeText(texts, record.file, change);
    if (trouble) return trouble;
  }
  return { made: [action.id] };
}

/** Fields that say something else than was seen, among those that are to be changed. */
function clashesIn(
  now: WrittenMap,
  seen: WrittenMap,
  mine: WrittenMap,
  fields: ReadonlySet<string>,
): readonly Clash[] {
  return [...fields].flatMap((field) => {
    const clash = {
      field,
      seen: fieldIn(seen, field),
      theirs: fieldIn(now, field),
      mine: fieldIn(mine, field),
    };
    return saysSame(clash.theirs, clash.seen) ? [] : [clash];
  });
}

function taken({ graph }: Ground, texts: Changing, { ids, seen }: Extract<Action, { do: "take" }>): Done {
  const records = ids.flatMap((id) => (seen ? recordSeen(graph, id, seen) : writtenRecord(graph, id)) ?? []);
  if (records.length < ids.length) return { clashes: [], gone: true };
  const clashes = seen
    ? records.flatMap((one) => clashesIn(ownWritten(one), seen, {}, fieldsOf(one, seen)))
    : [];
  if (clashes.length > 0) return { clashes, gone: false };
  // From the end of a file, so that places before stay what they are.
  for (const { file, node } of records.toSorted((a, b) => b.node.start - a.node.start)) {
    const trouble = changeText(texts, file, { is: "take", record: node.start });
    if (trouble) return trouble;
  }
  return { made: [] };
}

function fieldsOf(record: { readonly node: MapNode }, seen: WrittenMap): ReadonlySet<string> {
  return new Set(Object.keys({ ...seen, ...ownWritten(record) }));
}

function renamed({ graph, files }: Ground, texts: Changing, action: Extract<Action, { do: "rename" }>): Done {
  const found = renaming(graph, files, action.id, action.to);
  if ("problem" in found) return found;
  const byFile = new Map<string, Edit[]>();
  for (const edit of found.edits) byFile.set(edit.file, [...(byFile.get(edit.file) ?? []), edit]);
  for (const [file, edits] of byFile) texts.set(file, edited(texts.get(file) ?? "", edits));
  return { made: [action.to] };
}
