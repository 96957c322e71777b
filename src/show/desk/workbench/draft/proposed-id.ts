import type { Id } from "../../../../base/finding.ts";
import type { Graph } from "../../../../link/graph.ts";
import { isList } from "../../../../read/edit/written.ts";
import type { WrittenMap } from "../../../../read/edit/written.ts";
import { textsAt, writtenAt } from "./draft.ts";

const longest = 40;

/** An id for a new derivation, from what it selects and its plug-in, that nothing else has: `ring-a-gap-spacing`. */
export function proposedId(graph: Graph, values: WrittenMap): Id {
  const [plugin = "number"] = textsAt(values, ["plugin"]);
  const [first] = Object.keys(fieldsOf(values));
  const of = first === undefined ? [] : textsAt(values, ["inputs", first, "of"]);
  const traits = ["dimension", "feature"].flatMap((name) =>
    first === undefined ? [] : textsAt(values, ["inputs", first, name]),
  );
  const words = [...of.slice(0, 2), ...traits.slice(0, 1)].map(inId).filter((word) => word !== "");
  const kept = words.filter((_, at) => words.slice(0, at + 1).join("-").length <= longest);
  const base = [...kept, inId(plugin)].join("-");
  for (let count = 1; ; count++) {
    const id = count === 1 ? base : `${base}-${count}`;
    if (isFree(graph, id)) return id;
  }
}

/** Whether an id is not yet another record's or source's. */
export function isFree(graph: Graph, id: Id): boolean {
  return !graph.records.has(id) && !graph.sources.has(id);
}

function fieldsOf(values: WrittenMap): WrittenMap {
  const inputs = writtenAt(values, ["inputs"]);
  return inputs === undefined || typeof inputs === "string" || isList(inputs) ? {} : inputs;
}

function inId(words: string): string {
  return words
    .normalize("NFKD")
    .toLowerCase()
    .replace(/\p{M}/gu, "")
    .replace(/[^a-z0-9]+/gu, "-")
    .replace(/^-+|-+$/gu, "");
}
