import { largestYaml } from "../../source-file.ts";
import type { Site } from "./site.ts";

/** How deep what an alias stands for may come with all that is in it; what is read goes no deeper. */
const deepest = 64;

/** Whether what the aliases of a file stand for goes round, or written out comes to more than a file may be: the reader leaves such values out. */
export function isEndless(root: Site): boolean {
  const known = new Map<Site, { readonly letters: number; readonly depth: number }>();
  const open = new Set<Site>();
  const extentOf = (site: Site): { readonly letters: number; readonly depth: number } => {
    const before = known.get(site);
    if (before) return before;
    if (open.has(site)) return { letters: Infinity, depth: 0 };
    open.add(site);
    let [letters, depth] = [site.text.length + 1, 0];
    for (const value of site.target ? [site.target] : site.parts.map((part) => part.value)) {
      const one = extentOf(value);
      letters += one.letters;
      depth = Math.max(depth, one.depth + (site.target ? 0 : 1));
    }
    open.delete(site);
    const extent = { letters, depth };
    known.set(site, extent);
    return extent;
  };
  const { letters, depth } = extentOf(root);
  // The file itself, and in it once more what aliases stand for.
  return letters > 2 * largestYaml || depth > 2 * deepest;
}
