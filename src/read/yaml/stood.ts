import { largestYaml } from "../source-file.ts";
import type { Node } from "./tree.ts";

/** How many letters a value comes to when it is written out, and how deep it goes. */
interface Extent {
  readonly letters: number;
  readonly depth: number;
}

/** The nesting to which what an alias stands for may come with all that is in it. */
const deepest = 64;

/**
 * Tells of each alias, in turn, whether what it stands for may stand there too: written out, a file must not come to
 * more than a file may be. An alias in what another stands for counts as often as it would be written.
 */
export function standing(): (target: Node) => boolean {
  const known = new Map<Node, Extent>();
  let left = largestYaml;
  const extentOf = (node: Node): Extent => {
    const before = known.get(node);
    if (before) return before;
    const extent = node.is === "text" ? { letters: node.text.length + 1, depth: 0 } : inside(node);
    known.set(node, extent);
    return extent;
  };
  const inside = (node: Exclude<Node, { readonly is: "text" }>): Extent => {
    let [letters, depth] = [1, 0];
    const values = node.is === "list" ? node.items : node.entries.map((entry) => entry.value);
    for (const value of values) {
      const one = extentOf(value);
      letters += one.letters;
      depth = Math.max(depth, one.depth);
    }
    if (node.is === "map") for (const entry of node.entries) letters += entry.key.length;
    return { letters, depth: depth + 1 };
  };
  return (target) => {
    const { letters, depth } = extentOf(target);
    if (letters > left || depth > deepest) return false;
    left -= letters;
    return true;
  };
}
