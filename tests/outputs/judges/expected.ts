import { inEnglish } from "../../../src/base/text/said/english.ts";
import { proseOf } from "../../../src/show/telling/prose/prose.ts";
import { sectionsOf } from "../../../src/show/telling/prose/sections.ts";
import { applicationOf } from "../../../src/show/telling/application/application.ts";
import type { Inline, Inlines, Manuscript } from "../../../src/show/telling/blocks/block.ts";
import { visitBlocks } from "../../../src/show/desk/visit/blocks/blocks.ts";
import { visitSheet } from "../../../src/show/desk/visit/sheet/sheet.ts";
import { reviewOf } from "../../../src/show/telling/review/review.ts";
import { visitText } from "../../../src/write/visit/text.ts";
import type { Told } from "../../../src/host/telling/kind.ts";
import { examined, visited } from "./made.ts";

/** Words that must stand in a place, one after the other; between them may stand what a style makes of citations. */
export type Pieces = readonly string[];

/** What a text has, whatever its format and its style. */
export interface Parts {
  readonly headings: readonly { readonly level: number; readonly words: Pieces }[];
  /** The rows of each table, its head first, each a list of cells. */
  readonly tables: readonly (readonly (readonly Pieces[])[])[];
  /** What each figure shows, for those who do not see it. */
  readonly alts: readonly string[];
  /** The notes in their order. */
  readonly notes: readonly Pieces[];
  /** The numbers that were computed, as they are printed. */
  readonly numbers: readonly string[];
}

/** The texts of the demo corpus before they have a format, by the names of their files. */
export function manuscriptsOf({
  model,
  findings,
  plugins,
  memo,
}: Told): Readonly<Record<string, Manuscript>> {
  const desk = { model, findings, plugins, memo: memo.compute };
  const review = { question: null, sections: sectionsOf(model.graph), prose: proseOf(model, plugins) };
  const application = applicationOf(desk, examined);
  const asked = { examination: visited, keeper: null, also: [] };
  const sheet = visitSheet(model, asked, model.plan ? { plan: model.plan, plugins } : null);
  if (!application || !sheet) throw new Error("the demo corpus has no such examination");
  const visit = visitText(visitBlocks(sheet, { withValues: true }));
  return { review: reviewOf(desk, review), application, "application-noted": application, visit };
}

/** Letters and digits alone: formats differ in quotation marks, spaces and breaks. */
export function bare(text: string): string {
  return text.normalize("NFKC").replace(/[^\p{L}\p{N}]/gu, "");
}

/** Whether pieces stand in a text in their order. */
function standIn(pieces: Pieces, text: string): boolean {
  let at = 0;
  const all = bare(text);
  return pieces.every((one) => {
    const found = all.indexOf(bare(one), at);
    at = found + bare(one).length;
    return found >= 0;
  });
}

/** Those of some words that do not stand in a text. */
export function lacking(all: readonly Pieces[], text: string): readonly string[] {
  return all.filter((one) => !standIn(one, text)).map((one) => one.join(""));
}

function piecesOf(of: Inlines): Pieces {
  return of.flatMap((one): Pieces => {
    if (typeof one === "string" || "say" in one) return [inEnglish(one)];
    switch (one.is) {
      case "words":
        return [one.text];
      case "printed":
        return [inEnglish(one.text)];
      case "standing":
        return [one.standing];
      case "citing":
      case "note":
        return [];
      default:
        return piecesOf(one.of);
    }
  });
}

/** All inlines of a text in the order in which they are read, those within others too. */
function inlinesIn({ blocks }: Manuscript): readonly Inline[] {
  const lines = blocks.flatMap((block): readonly Inlines[] => {
    switch (block.is) {
      case "list":
        return block.items;
      case "terms":
        return block.rows.flat();
      case "table":
        return [block.caption, ...block.head, ...block.rows.flat()];
      case "plate":
        return [block.caption];
      default:
        return "of" in block ? [block.of] : [];
    }
  });
  const within = (one: Inline): readonly Inline[] =>
    typeof one === "string" || !("of" in one) || one.is === "note" ? [one] : [one, ...one.of.flatMap(within)];
  return lines.flat().flatMap(within);
}

/** What a text has; in a style of notes (`noted`) each citation outside a note is a note. */
export function partsOf(manuscript: Manuscript, noted: boolean): Parts {
  const { blocks } = manuscript;
  const inlines = inlinesIn(manuscript);
  return {
    headings: blocks.flatMap((one) =>
      one.is === "heading" ? [{ level: one.level, words: piecesOf(one.of) }] : [],
    ),
    tables: blocks.flatMap((one) =>
      one.is === "table" ? [[one.head, ...one.rows].map((row) => row.map(piecesOf))] : [],
    ),
    alts: blocks.flatMap((one) => (one.is === "plate" ? [inEnglish(one.alt)] : [])),
    notes: inlines.flatMap((one): readonly Pieces[] => {
      if (typeof one === "string" || !("is" in one)) return [];
      if (one.is === "note") return [piecesOf(one.of)];
      return one.is === "citing" && noted ? [[]] : [];
    }),
    numbers: inlines.flatMap((one) =>
      typeof one !== "string" && "is" in one && one.is === "printed" ? [inEnglish(one.text)] : [],
    ),
  };
}
