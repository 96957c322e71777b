import { finding } from "../../../base/finding.ts";
import type { Edit, Finding, Fix, Id } from "../../../base/finding.ts";
import { count, row, say } from "../../../base/text/said/said.ts";
import type { AnyLinked, Graph } from "../../../link/graph.ts";
import type { Node } from "../../../read/yaml/tree.ts";
import type { Rule } from "../rule.ts";

/** References by a made name that several records share, one finding for each such name. */
export const unstableReference: Rule = {
  id: "unstable-reference",
  level: "note",
  title: say`A reference goes by a made name that several records share.`,
  doc: say`Measurements and positions without an id are named after what they say; where several are called alike, the reference may come to mean another when one is added. Give the record an id of its own and refer to that: the change is offered.`,
  ofTheRecord: true,
  find: ({ graph }) => {
    const shared = sharedNames(graph);
    if (shared.size === 0) return { findings: [] };
    const places = referencesIn(graph, new Set([...shared.values()].flat()));
    return { findings: [...shared].flatMap(([base, ids]) => told(graph, base, ids, places)) };
  },
};

/** A place where a made name is written. */
interface Reference {
  readonly to: Id;
  /** The record it stands in; null for the settings. */
  readonly by: Id | null;
  readonly file: string;
  readonly node: Node;
}

/** Made names with all the records that share each, `…#2` among them. */
function sharedNames(graph: Graph): ReadonlyMap<Id, readonly Id[]> {
  const groups = new Map<Id, Id[]>();
  for (const { id, named } of graph.records.values()) {
    if (named) continue;
    const base = id.replace(/#\d*$/u, "");
    groups.set(base, [...(groups.get(base) ?? []), id]);
  }
  return new Map([...groups].filter(([, ids]) => ids.length > 1));
}

function referencesIn(graph: Graph, names: ReadonlySet<Id>): readonly Reference[] {
  const found: Reference[] = [];
  const seen = new Set<Node>();
  const walk = (node: Node, file: string, by: Id | null): void => {
    if (seen.has(node)) return;
    seen.add(node);
    if (node.is === "text") {
      if (names.has(node.text)) found.push({ to: node.text, by, file, node });
    } else if (node.is === "list") for (const item of node.items) walk(item, file, by);
    else for (const { value } of node.entries) walk(value, file, by);
  };
  for (const { node, file, id } of [...graph.records.values(), ...graph.leftOut]) walk(node, file, id);
  walk(graph.settings.node, graph.settings.file, null);
  return found;
}

function told(graph: Graph, base: Id, ids: readonly Id[], places: readonly Reference[]): readonly Finding[] {
  const met = places.filter(({ to }) => ids.includes(to));
  const [first, ...others] = met;
  if (first === undefined) return [];
  const unstable = say`Unstable reference \`${base}\`, expected a record with an id of its own: several are called so`;
  const message = met.length === 1 ? unstable : say`${unstable}; it is met in ${count(met.length)} places`;
  const about = [...new Set([...met.flatMap(({ by }) => by ?? []), ...met.map(({ to }) => to)])];
  const fix = naming(graph, ids, met);
  const place = ({ file, node: { start, end } }: Reference) => ({ file, start, end });
  const one = finding("unstable-reference", message, place(first), { level: "note", about, fix });
  return [others.length === 0 ? one : { ...one, also: others.map(place) }];
}

/** Gives each record that is referred to an id of its own, and has every reference go by it; null where one stands in a table. */
function naming(graph: Graph, ids: readonly Id[], met: readonly Reference[]): Fix | null {
  const edits: Edit[] = [];
  const names: Id[] = [];
  for (const id of ids.filter((one) => met.some(({ to }) => to === one))) {
    const record = graph.records.get(id);
    const own = ownName(graph, id, names);
    const insertion = record && own !== null ? idEdit(record, own) : null;
    if (insertion === null || own === null) return null;
    names.push(own);
    edits.push(insertion);
    for (const { to, file, node } of met)
      if (to === id) edits.push({ file, start: node.start, end: node.end, text: own });
  }
  const all = row(names, "comma");
  return { label: names.length === 1 ? say`Give it the id ${all}` : say`Give them the ids ${all}`, edits };
}

function idEdit({ node, file }: AnyLinked, id: Id): Edit | null {
  const start = node.entries[0]?.keyStart;
  return start === undefined || node.parting === undefined
    ? null
    : { file, start, end: start, text: `id: ${id}${node.parting}` };
}

/** A made name as an id that nothing else has; null where nothing of it can stand in one. */
function ownName(graph: Graph, made: Id, taken: readonly Id[]): Id | null {
  const part = (text: string): string => text.replace(/[^a-z0-9]+/gu, "-").replace(/^-|-$/gu, "");
  const plain = made
    .replace(/#\d*$/u, "")
    .toLowerCase()
    .split("/")
    .map(part)
    .filter((one) => one !== "")
    .join("/");
  if (plain === "") return null;
  const isFree = (id: Id): boolean => !graph.records.has(id) && !graph.sources.has(id) && !taken.includes(id);
  for (let count = 1; ; count++) {
    const id = count === 1 ? plain : `${plain}-${count}`;
    if (isFree(id)) return id;
  }
}
