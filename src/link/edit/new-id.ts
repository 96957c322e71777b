import type { Id } from "../../base/finding.ts";
import type { ListName } from "../../read/grammar/field.ts";
import { kindOf } from "../../read/grammar/kinds.ts";
import type { WrittenMap } from "../../read/edit/written.ts";
import { isOfUse } from "../../read/settings/use.ts";
import type { Graph } from "../graph.ts";

/** An id for a new record, drawn from what it says, that nothing else has; `taken` are ids given meanwhile. */
export function newId(
  graph: Graph,
  list: ListName,
  record: WrittenMap,
  taken: ReadonlySet<Id> = new Set(),
): Id {
  const base = `${under(graph, record)}${drawn(list, record)}`;
  const there = takenIn(graph);
  const free = (id: Id): boolean => !there.has(id) && !taken.has(id);
  for (let count = 1; ; count++) {
    const id = count === 1 ? base : `${base}-${count}`;
    if (free(id)) return id;
  }
}

/** Ids that cannot be given to anything else. */
type Taken = Pick<ReadonlySet<Id>, "has">;

const known = new WeakMap<Graph, Taken>();

/** Every id and key that stands for something already, read or not, and what is called as if it were of a companion. */
export function takenIn(graph: Graph): Taken {
  const before = known.get(graph);
  if (before) return before;
  const lost = [...graph.leftOut, ...(graph.spoilt ?? [])].map((one) => one.id);
  const there = new Set([...graph.records.keys(), ...graph.sources.keys(), ...lost]);
  // `OF:DIMENSION` may be of a thing there, and is of this corpus.
  const all = { has: (id: Id) => there.has(id) || (isOfUse(graph.companions, id) && !id.includes(":")) };
  known.set(graph, all);
  return all;
}

/** A part is called after its whole, unless that is of another corpus: so begins no name of this one. */
function under(graph: Graph, record: WrittenMap): string {
  const whole = record["part-of"];
  return typeof whole === "string" && whole !== "" && !isOfUse(graph.companions, whole) ? `${whole}/` : "";
}

const longest = 40;

function drawn(list: ListName, record: WrittenMap): string {
  for (const name of ["short", "name", "title", "text", "method", "at", "where", "plugin"]) {
    const said = record[name];
    const plain = typeof said === "string" ? inId(said) : "";
    if (plain !== "") return name === "at" ? `${cited(record)}${plain}` : plain;
  }
  return kindOf(list).singular;
}

function cited(record: WrittenMap): string {
  const from = record["from"];
  const key = typeof from === "string" ? inId(from.split(/\s/u)[0] ?? "") : "";
  return key === "" ? "" : `${key}-`;
}

/** Words as an id: letters of the Latin alphabet without their accents, cut at a word. */
function inId(words: string): string {
  const plain = words
    .normalize("NFKD")
    .toLowerCase()
    .replace(/['’ʼ]|\p{M}/gu, "")
    .replace(/[^a-z0-9]+/gu, "-")
    .replace(/^-+|-+$/gu, "");
  if (plain.length <= longest) return plain;
  const cut = plain.slice(0, longest + 1).lastIndexOf("-");
  return plain.slice(0, cut > 0 ? cut : longest);
}
