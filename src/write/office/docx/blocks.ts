import { utf8ToBytes } from "@noble/hashes/utils.js";
import { Bookmark, ImageRun, Paragraph, SimpleField, Tab, TableOfContents, TextRun } from "docx";
import type { FileChild, IParagraphOptions, ParagraphChild } from "docx";
import { inEnglish } from "../../../base/text/said/english.ts";
import { storable } from "../../../base/text/steering.ts";
import type { Drawn, DrawnPlates } from "../../telling/drawn.ts";
import { wayOfLine } from "../../telling/set/direction.ts";
import { plainWords } from "../../telling/set/set-text.ts";
import type { SetBlock, SetHeading, SetInlines, SetPlate, SetTable } from "../../telling/set/set-text.ts";
import { bookmarkOf } from "./language.ts";
import { lineRuns, wordRuns } from "./line.ts";
import type { Bookmarked } from "./line.ts";
import { tableOf } from "./table.ts";

/** What blocks are written with. */
export interface Writing {
  readonly drawn: DrawnPlates;
  readonly bookmarked: Bookmarked;
  /** A new run of numbers for every ordered list. */
  readonly nextList: () => number;
}

/** A paragraph of a line in a named style; it runs as most of its letters do, one with words of ours as they do. */
export function lineParagraph(
  of: SetInlines,
  { bookmarked }: Pick<Writing, "bookmarked">,
  more: IParagraphOptions,
): Paragraph {
  const fromRight = wayOfLine(of) === "rtl";
  const { children = lineRuns(of, bookmarked) } = more;
  return new Paragraph({ ...more, children, ...(fromRight ? { bidirectional: true } : {}) });
}

/** A block as paragraphs and tables. */
export function blockParts(block: SetBlock, writing: Writing): readonly FileChild[] {
  const { bookmarked } = writing;
  const line = (of: SetInlines, more: IParagraphOptions = {}): Paragraph => lineParagraph(of, writing, more);
  switch (block.is) {
    case "heading": {
      const children = [
        new Bookmark({ id: bookmarkOf(block.anchor), children: lineRuns(block.of, bookmarked) }),
      ];
      const apart = block.apart ? { pageBreakBefore: true } : {};
      return [line(block.of, { heading: `Heading${block.level}`, children, ...apart })];
    }
    case "paragraph":
      // What introduces a list stands with it.
      return [line(block.of, plainWords(block.of, inEnglish).endsWith(":") ? { keepNext: true } : {})];
    case "quotation":
      return [line(block.of, { style: "Quote" })];
    case "caution":
      return [
        line(
          [{ is: "strong", of: [{ is: "text", text: "Caution:" }] }, { is: "text", text: " " }, ...block.of],
          { style: "Caution" },
        ),
      ];
    case "list": {
      const numbering = block.ordered
        ? { reference: "numbers", level: 0, instance: writing.nextList() }
        : { reference: "bullets", level: 0 };
      const style = block.ordered ? "ListNumber" : "ListBullet";
      // What follows stands off the last of them as far as paragraphs do.
      const spacing = { after: 140 };
      return block.items.map((one, place) =>
        line(one, { style, numbering, ...(place === block.items.length - 1 ? { spacing } : {}) }),
      );
    }
    case "terms":
      return block.rows.map(([name, value]) => {
        const runs = [
          ...lineRuns(name, bookmarked, "TermName"),
          new TextRun({ children: [new Tab()] }),
          ...lineRuns(value, bookmarked),
        ];
        return line([...name, ...value], { style: "Terms", children: runs });
      });
    case "table":
      return [
        captionOf(block, "Table", "TableCaption", writing),
        tableOf(block, bookmarked),
        new Paragraph({ style: "AfterTable" }),
      ];
    case "plate":
      return plateParts(block, writing);
    case "contents":
      return contentsOf(block.entries);
    case "references":
      return block.entries.map(({ runs }) => line([{ is: "runs", runs }], { style: "Bibliography" }));
    case "computations":
      return block.entries.map(({ anchor, title, method, key }) => {
        const name = new Bookmark({ id: bookmarkOf(anchor), children: [...wordRuns(inEnglish(title))] });
        const children = [
          name,
          ...wordRuns(`, ${method}`),
          new TextRun({ text: storable(key), break: 1, style: "Key" }),
        ];
        return new Paragraph({ style: "Computation", children });
      });
    case "room":
      // All on one leaf: a line alone at the head of the next one is none to write on.
      return Array.from(
        { length: block.lines },
        (_, place) =>
          new Paragraph({ style: "Room", ...(place < block.lines - 1 ? { keepNext: true } : {}) }),
      );
  }
}

/**
 * The processor's own table of contents, filled in already but for the numbers of pages: only the processor knows those, and
 * puts them in when the table is updated.
 */
function contentsOf(entries: readonly SetHeading[]): readonly FileChild[] {
  const lowest = Math.max(1, ...entries.map(({ level }) => level));
  const filled = {
    hyperlink: true,
    headingStyleRange: `1-${lowest}`,
    beginDirty: false,
    tabLeader: "none",
  } as const;
  return [new TableOfContents("Contents", filled)];
}

/** A caption whose number the word processor goes on counting with. */
function captionOf(
  { number, anchor, caption }: SetTable | SetPlate,
  word: "Table" | "Figure",
  style: string,
  writing: Writing,
): Paragraph {
  const label = [...wordRuns(`${word} `), new SimpleField(`SEQ ${word} \\* ARABIC`, String(number))];
  const children: readonly ParagraphChild[] = [
    new Bookmark({ id: bookmarkOf(anchor), children: label }),
    ...wordRuns(". "),
    ...lineRuns(caption, writing.bookmarked),
  ];
  return lineParagraph(caption, writing, { style, children });
}

function plateParts(plate: SetPlate, writing: Writing): readonly Paragraph[] {
  const drawn = writing.drawn.get(plate.number);
  const picture = drawn ? pictureOf(plate, drawn) : null;
  const shown = picture
    ? new Paragraph({ style: "Figure", children: [picture] })
    : new Paragraph({ style: "Figure", children: [...wordRuns(inEnglish(plate.alt))] });
  return [shown, captionOf(plate, "Figure", "Caption", writing)];
}

/** The largest picture on a page of A4 with these margins and a caption under it, in millimetres. */
const [broadest, highest] = [160, 215];

function pictureOf({ number, alt }: SetPlate, { width, height, svg, raster }: Drawn): ImageRun | null {
  if (raster === null) return null;
  const scale = Math.min(1, broadest / width, highest / height);
  const pixels = (millimetres: number): number => Math.round((millimetres * scale * 96) / 25.4);
  const about = {
    transformation: { width: pixels(width), height: pixels(height) },
    altText: { name: `Figure ${number}`, description: storable(inEnglish(alt)) },
  };
  const type = raster.type === "jpeg" ? "jpg" : "png";
  const plain = { type, data: raster.bytes } as const;
  return svg === null
    ? new ImageRun({ ...plain, ...about })
    : new ImageRun({ type: "svg", data: utf8ToBytes(svg), fallback: plain, ...about });
}
