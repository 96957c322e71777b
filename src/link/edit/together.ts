import type { Id } from "../../base/finding.ts";
import type { ListName } from "../../read/grammar/field.ts";
import { kindOf } from "../../read/grammar/kinds.ts";
import { isList } from "../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../read/edit/written.ts";
import type { Graph } from "../graph.ts";
import type { RecordAction } from "./action.ts";
import { newId } from "./new-id.ts";

/** The sign by which `madeBefore` names a record that has no id yet; within a text, or of more than there are, it is a text. */
const named = /^\u{1}(\d+)\u{1}$/u;

/**
 * The actions of one step, each record that they add under the id that it will have, and every reference to one by that
 * id: first what changes or goes, then what is new, so that no place in a file moves before it is used.
 */
export function inOneStep(graph: Graph, actions: readonly RecordAction[]): readonly RecordAction[] {
  const referred = referredTo(actions);
  const ids: Id[] = [];
  const count = actions.reduce((sum, one) => sum + (one.do === "add" ? one.records.length : 0), 0);
  const resolve = (values: WrittenMap): WrittenMap => resolvedMap(values, { ids, count });
  const added = actions.flatMap((action): readonly RecordAction[] => {
    if (action.do !== "add") return [];
    const records = action.records.map((given) => {
      const record = identified(graph, action.list, resolve(given), ids, referred.has(ids.length));
      ids.push(typeof record["id"] === "string" ? record["id"] : "");
      return record;
    });
    return [{ ...action, records }];
  });
  const others = actions.flatMap((action): readonly RecordAction[] => {
    if (action.do === "change") return [{ ...action, values: resolve(action.values) }];
    return action.do === "take" ? action.ids.map((id) => ({ ...action, ids: [id] })) : [];
  });
  return [...others, ...added];
}

/** A new record with its id, where its kind has to have one or something in the step refers to it. */
function identified(
  graph: Graph,
  list: ListName,
  record: WrittenMap,
  taken: readonly Id[],
  referred: boolean,
): WrittenMap {
  const { id, ...others } = record;
  if (typeof id === "string" && id !== "") return record;
  if (!referred && kindOf(list).fields["id"]?.required !== true) return others;
  return { id: newId(graph, list, others, new Set(taken)), ...others };
}

function referredTo(actions: readonly RecordAction[]): ReadonlySet<number> {
  const found = new Set<number>();
  const look = (value: Written): void => {
    if (typeof value === "string") {
      const n = named.exec(value)?.[1];
      if (n !== undefined) found.add(Number(n));
    } else for (const one of isList(value) ? value : Object.values(value)) look(one);
  };
  for (const action of actions) {
    if (action.do === "add") action.records.forEach(look);
    if (action.do === "change") look(action.values);
  }
  return found;
}

/** The ids that records of a step have so far, and how many it adds in all. */
interface Made {
  readonly ids: readonly Id[];
  readonly count: number;
}

function resolvedMap(values: WrittenMap, made: Made): WrittenMap {
  return Object.fromEntries(Object.entries(values).map(([name, value]) => [name, resolved(value, made)]));
}

function resolved(value: Written, made: Made): Written {
  if (typeof value !== "string")
    return isList(value) ? value.map((one) => resolved(one, made)) : resolvedMap(value, made);
  const n = named.exec(value)?.[1];
  if (n === undefined || Number(n) >= made.count) return value;
  const id = made.ids[Number(n)];
  if (id === undefined || id === "") throw new Error(`A step refers to its record ${n} before it adds it`);
  return id;
}
