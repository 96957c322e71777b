import { kindOf, listNames } from "../grammar/kinds.ts";
import type { ListName } from "../grammar/field.ts";
import type { SourceFile } from "../source-file.ts";
import { readYaml } from "./text.ts";
import { valueAt } from "./tree.ts";
import type { Entry, MapNode } from "./tree.ts";

/** The trees of a file's records, by their places among the maps in its lists. */
export type Trees = (place: number) => MapNode;

/** Trees that were made last, and of how many texts they are kept. */
const lately = new Map<Trees, readonly MapNode[]>();
const mostTexts = 64;

/**
 * The trees of the records of a text that reads without a finding. They take several times the room of all that the records
 * say, and few are asked for once a file is read: so they are made again, from the text, when the first is, and kept for a
 * while. A tree that is asked for later still may be another object that says the same.
 */
export function treesIn(file: SourceFile): Trees {
  const trees: Trees = (place) => {
    const made = lately.get(trees) ?? madeFrom(file);
    if (!lately.has(trees)) {
      lately.set(trees, made);
      for (const eldest of lately.keys()) {
        if (lately.size <= mostTexts) break;
        lately.delete(eldest);
      }
    }
    const tree = made[place];
    if (!tree) throw new Error("No record at this place of the text, expected one");
    return tree;
  };
  return trees;
}

function madeFrom({ path, text }: SourceFile): readonly MapNode[] {
  const { root } = readYaml(path, text);
  if (!root) return [];
  const source = root.entries.find(({ key }) => key === "source") ?? null;
  return root.entries.flatMap(({ key, value }) => {
    const list = listNamed(key);
    if (!list || value.is !== "list") return [];
    const hasFrom = "from" in kindOf(list).fields;
    return value.items.flatMap((item) => (item.is === "map" ? [withSource(item, source, hasFrom)] : []));
  });
}

/** The list that a key of a file names; undefined where it names none. */
export function listNamed(key: string): ListName | undefined {
  return listNames.find((name) => name === key);
}

/** A file's `source` is the `from` of its records that could have one and name none. */
export function withSource(node: MapNode, source: Entry | null, hasFrom: boolean): MapNode {
  if (!source || !hasFrom || valueAt(node, "from")) return node;
  return { ...node, entries: [...node.entries, { ...source, key: "from" }] };
}
