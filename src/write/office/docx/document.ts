import { Document, Footer, Packer, PageNumber, Paragraph, TextRun } from "docx";
import { inEnglish } from "../../../base/text/said/english.ts";
import { storable } from "../../../base/text/steering.ts";
import type { DrawnPlates } from "../../telling/drawn.ts";
import type { SetBlock, SetText } from "../../telling/set/set-text.ts";
import { blockParts, lineParagraph } from "./blocks.ts";
import type { Writing } from "./blocks.ts";
import { wordRuns } from "./line.ts";
import { stylesXml } from "./styles.ts";

/**
 * A text for a word processor (Office Open XML, ECMA-376), to go on writing in: headings, captions, notes and lists are the
 * processor's own, and every look is a named style. What comes out has ids and dates of the moment: `settledParts` takes them out.
 */
export async function documentOf(set: SetText, drawn: DrawnPlates): Promise<Uint8Array> {
  const anchors = new Set(set.blocks.flatMap(anchorsIn));
  let lists = 0;
  const writing: Writing = { drawn, bookmarked: (anchor) => anchors.has(anchor), nextList: () => ++lists };
  const title = storable(inEnglish(set.title));
  const authors = storable(set.authors.join(", "));
  const document = new Document({
    title,
    creator: authors,
    lastModifiedBy: authors,
    revision: 1,
    externalStyles: stylesXml(set.language),
    numbering: { config: numberings },
    compatibility: { version: 15 },
    footnotes: Object.fromEntries(
      set.notes.map((note, place) => [
        String(place + 1),
        {
          children: [lineParagraph([{ is: "text", text: " " }, ...note], writing, { style: "FootnoteText" })],
        },
      ]),
    ),
    sections: [
      {
        properties: {
          page: {
            size: { width: "210mm", height: "297mm" },
            margin: { top: "25mm", bottom: "25mm", left: "25mm", right: "25mm" },
          },
        },
        footers: {
          default: new Footer({
            children: [
              new Paragraph({ style: "Footer", children: [new TextRun({ children: [PageNumber.CURRENT] })] }),
            ],
          }),
        },
        children: [
          new Paragraph({ heading: "Title", children: wordRuns(title) }),
          ...(authors === "" ? [] : [new Paragraph({ style: "Authors", children: wordRuns(authors) })]),
          ...set.blocks.flatMap((block) => blockParts(block, writing)),
        ],
      },
    ],
  });
  return Packer.pack(document, "uint8array");
}

/** Where links may lead to in this format. */
function anchorsIn(block: SetBlock): readonly string[] {
  if (block.is === "computations") return block.entries.map(({ anchor }) => anchor);
  return "anchor" in block ? [block.anchor] : [];
}

const item = { paragraph: { indent: { left: 425, hanging: 425 } } };
const numberings = [
  {
    reference: "bullets",
    levels: [{ level: 0, format: "bullet", text: "–", alignment: "left", style: item }],
  },
  {
    reference: "numbers",
    levels: [{ level: 0, format: "decimal", text: "%1.", alignment: "left", style: item }],
  },
] as const;
