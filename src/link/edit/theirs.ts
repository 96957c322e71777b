import type { Id } from "../../base/finding.ts";
import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import { someTexts } from "../../base/text/texts.ts";
import type { Companion } from "../../read/settings/companions/corpus.ts";
import { ownerOfFile } from "../../read/settings/companions/files.ts";
import type { Graph } from "../graph.ts";
import { companionFor } from "../origin/companions.ts";
import type { Action } from "./action.ts";

/** Why what is taken from another corpus is not changed here. */
export function notHere({ folder }: Pick<Companion, "folder">): Text {
  return say`This belongs to the corpus in \`${folder}\`, expected a record of this one: open that folder to change it`;
}

/** Why an action is refused that would change what is taken from another corpus; null where it would not. */
export function refusedAsTheirs(graph: Graph, action: Action): { readonly problem: Text } | null {
  if (graph.companions.length === 0) return null;
  const [first] = idsChanged(action).flatMap((id) => theirs(graph, id) ?? []);
  return first ? { problem: notHere(first) } : null;
}

/** The corpus that a record belongs to, read or not. */
function theirs(graph: Graph, id: Id): Companion | null {
  const unread = [
    ...graph.leftOut,
    ...(graph.spoilt ?? []).flatMap(({ id, written }) => (written ? [{ id, ...written }] : [])),
  ];
  const file = unread.find((one) => one.id === id)?.file;
  return companionFor(graph, id) ?? (file === undefined ? null : ownerOfFile(graph.companions, file));
}

function idsChanged(action: Action): readonly Id[] {
  switch (action.do) {
    case "change":
    case "rename":
      return [action.id];
    case "take":
      return action.ids;
    case "together":
      return action.actions.flatMap(idsChanged);
    default:
      return [];
  }
}

const known = new WeakMap<
  ReadonlyMap<string, string>,
  { readonly companions: Graph["companions"]; readonly own: ReadonlyMap<string, string> }
>();

/** The texts of a corpus without those of the companion corpora: no edit has a place in them. */
export function ownTexts(graph: Graph, texts: ReadonlyMap<string, string>): ReadonlyMap<string, string> {
  if (graph.companions.length === 0) return texts;
  const before = known.get(texts);
  if (before?.companions === graph.companions) return before.own;
  const own = someTexts(texts, (file) => ownerOfFile(graph.companions, file) === null);
  known.set(texts, { companions: graph.companions, own });
  return own;
}
