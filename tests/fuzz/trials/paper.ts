import type { OpenPaper, Refusal } from "../../../src/app/pages/papers/reader/paper.ts";
import { foundIn } from "../../../src/show/desk/papers/find.ts";
import type { Faults } from "./corpus.ts";

/** Opens a paper as the app does. */
export type Opening = (file: string, bytes: ArrayBuffer) => Promise<OpenPaper | Refusal>;

const selector = { type: "TextQuoteSelector", exact: "A post stood here", prefix: "", suffix: "" };
const mostPages = 3;

/** Reads the text of a paper's first pages and looks for words in it; a page that cannot be read is told, and the others are. */
export async function paperFaults(path: string, bytes: Uint8Array, opening: Opening): Promise<Faults> {
  const paper = await opening(path, Uint8Array.from(bytes).buffer);
  if (typeof paper === "string") return [];
  try {
    const pages: string[] = [];
    for (let page = 0; page < Math.min(paper.count, mostPages); page++) {
      try {
        await paper.shapeOf(page);
        pages.push(await paper.textOf(page));
      } catch (error) {
        // What the reader of PDFs cannot make of a page it says; anything else is a fault of ours.
        if (!(error instanceof Error)) throw error;
      }
    }
    foundIn(pages, selector);
  } finally {
    paper.close();
  }
  return [];
}
