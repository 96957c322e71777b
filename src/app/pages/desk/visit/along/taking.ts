import { visitBlocks } from "../../../../../show/desk/visit/blocks/blocks.ts";
import type { VisitSheet } from "../../../../../show/desk/visit/sheet/sheet.ts";
import { visitMarkdown } from "../../../../../write/visit/markdown.ts";
import { visitPage } from "../../../../../write/visit/page.ts";

/** A sheet as a file to take along, as the command line writes it. */
export function sheetFile(sheet: VisitSheet, kind: "html" | "md"): string {
  const blocks = visitBlocks(sheet, { withValues: false });
  const { asked, corpus } = sheet;
  return kind === "md" ? visitMarkdown(blocks) : visitPage(blocks, { asked, corpus });
}
