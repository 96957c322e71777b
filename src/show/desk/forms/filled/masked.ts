import type { Id } from "../../../../base/finding.ts";
import { byText } from "../../../../base/order.ts";
import type { Graph } from "../../../../link/graph.ts";
import { isList } from "../../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../../read/edit/written.ts";
import { withheldIn } from "../../../withhold.ts";

/** A sign that stands in a form for the id of something withheld. */
const sign = /^⟨(\d+)⟩(?=\s|$)/u;

/** Whether a text of a form stands for something withheld. */
export function isMasked(text: string): boolean {
  return sign.test(text);
}

/** What a record says, with a sign in the place of each id that is withheld. */
export function masked(graph: Graph, written: WrittenMap): WrittenMap {
  const ids = hidden(graph);
  if (ids.length === 0) return written;
  return eachText(written, (text) => {
    const [first = ""] = text.split(/\s/u);
    const place = first === "" ? -1 : ids.indexOf(first);
    return place < 0 ? text : `⟨${place}⟩${text.slice(first.length)}`;
  });
}

/** What a form says, with the ids in it that its signs stand for. */
export function unmasked(graph: Graph, written: WrittenMap): WrittenMap {
  const ids = hidden(graph);
  if (ids.length === 0) return written;
  return eachText(written, (text) => {
    const found = sign.exec(text);
    const id = found ? ids[Number(found[1])] : undefined;
    return found && id !== undefined ? id + text.slice(found[0].length) : text;
  });
}

const known = new WeakMap<Graph, readonly Id[]>();

/** Everything that is withheld, in an order that only the settings and the records decide. */
function hidden(graph: Graph): readonly Id[] {
  const before = known.get(graph);
  if (before) return before;
  const withheld = withheldIn(graph);
  const all = new Set([...graph.settings.withhold, ...graph.records.keys(), ...graph.sources.keys()]);
  const ids = graph.settings.withhold.length === 0 ? [] : [...all].filter(withheld).toSorted(byText);
  known.set(graph, ids);
  return ids;
}

function eachText(map: WrittenMap, change: (text: string) => string): WrittenMap {
  const walk = (written: Written): Written => {
    if (typeof written === "string") return change(written);
    return isList(written) ? written.map(walk) : eachText(written, change);
  };
  const result = Object.create(null) as Record<string, Written>;
  for (const [key, value] of Object.entries(map)) result[change(key)] = walk(value);
  return result;
}
