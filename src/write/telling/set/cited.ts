import type { Id } from "../../../base/finding.ts";
import type { Block, Inlines, Manuscript } from "../../../show/telling/blocks/block.ts";

/** The sources that a text cites. */
export function citedIn({ blocks }: Manuscript): ReadonlySet<Id> {
  return new Set(blocks.flatMap(linesOf).flatMap(citedBy));
}

/** Every line of a block. */
function linesOf(block: Block): readonly Inlines[] {
  switch (block.is) {
    case "heading":
    case "paragraph":
    case "quotation":
    case "caution":
      return [block.of];
    case "list":
      return block.items;
    case "table":
      return [block.caption, ...block.head, ...block.rows.flat()];
    case "plate":
      return [block.caption];
    case "terms":
      return block.rows.flat();
    case "contents":
    case "references":
    case "computations":
    case "room":
      return [];
  }
}

function citedBy(of: Inlines): readonly Id[] {
  return of.flatMap((one): readonly Id[] => {
    if (typeof one === "string" || "say" in one) return [];
    if (one.is === "citing") return one.cites.map(({ id }) => id);
    return "of" in one ? citedBy(one.of) : [];
  });
}
