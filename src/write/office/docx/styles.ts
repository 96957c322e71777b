import { dictionaryOf } from "./language.ts";

/** The breadth of the text on A4 with margins of 25 mm, in twentieths of a point. */
export const textWidth = 9071;
/** The name of the style of tables: hairlines between rows, ink above, below and under the head. */
export const tableStyleId = "RuledTable";

const [ink, soft, hair, line] = ["13181B", "4D585C", "C9D3D4", "7C898D"];
const serif = `<w:rFonts w:ascii="Cambria" w:hAnsi="Cambria" w:eastAsia="Cambria" w:cs="Times New Roman"/>`;
const sans = `<w:rFonts w:ascii="Calibri" w:hAnsi="Calibri" w:eastAsia="Calibri" w:cs="Arial"/>`;
const bold = "<w:b/><w:bCs/>";
const italic = "<w:i/><w:iCs/>";
const color = (of: string): string => `<w:color w:val="${of}"/>`;
/** A size in half points. */
const size = (halves: number): string => `<w:sz w:val="${halves}"/><w:szCs w:val="${halves}"/>`;
const small = `${sans}${size(18)}`;
const keep = "<w:keepNext/><w:keepLines/>";
/** Space before and after in twentieths of a point, lines in 240ths of their height. */
const spaced = (before: number, after: number, lines: number): string =>
  `<w:spacing w:before="${before}" w:after="${after}" w:line="${lines}" w:lineRule="auto"/>`;
const indented = (left: number, more = ""): string => `<w:ind w:left="${left}"${more}/>`;
const rule = (edge: string, eighths: number, of: string, space = 0): string =>
  `<w:${edge} w:val="single" w:sz="${eighths}" w:space="${space}" w:color="${of}"/>`;

/** What a style is beside its name: those it builds on and is followed by, and its properties as XML in the order of the schema. */
interface Style {
  readonly on?: string;
  readonly next?: string;
  /** A style that word processors know by this name; others are ours. */
  readonly known?: true;
  readonly paragraph?: string;
  readonly run?: string;
}

function styleXml(type: "paragraph" | "character", id: string, name: string, style: Style): string {
  const {
    on = type === "paragraph" ? "Normal" : "DefaultParagraphFont",
    next,
    known,
    paragraph = "",
    run = "",
  } = style;
  return [
    `<w:style w:type="${type}"${known ? "" : ' w:customStyle="1"'} w:styleId="${id}"><w:name w:val="${name}"/>`,
    `<w:basedOn w:val="${on}"/>${next === undefined ? "" : `<w:next w:val="${next}"/>`}<w:qFormat/>`,
    paragraph === "" ? "" : `<w:pPr>${paragraph}</w:pPr>`,
    run === "" ? "" : `<w:rPr>${run}</w:rPr>`,
    "</w:style>",
  ].join("");
}

const heading = (level: number, halves: number, before: number, after: number, more = ""): Style => ({
  known: true,
  next: "Normal",
  paragraph: `${keep}${spaced(before, after, 252)}<w:outlineLvl w:val="${level - 1}"/>`,
  run: `${more}${color(ink)}${size(halves)}`,
});

const paragraphs: readonly (readonly [id: string, name: string, style: Style])[] = [
  [
    "Title",
    "Title",
    { known: true, next: "Authors", paragraph: `${keep}${spaced(0, 160, 252)}`, run: size(40) },
  ],
  ["Authors", "Authors", { next: "Normal", paragraph: spaced(0, 360, 300), run: color(soft) }],
  ["Heading1", "heading 1", heading(1, 30, 480, 140)],
  ["Heading2", "heading 2", heading(2, 25, 320, 100)],
  ["Heading3", "heading 3", heading(3, 22, 240, 80, bold)],
  ["Quote", "Quote", { known: true, next: "Normal", paragraph: indented(567, ' w:right="567"') }],
  [
    "Caution",
    "Caution",
    {
      next: "Normal",
      paragraph: `<w:pBdr>${rule("left", 4, ink, 8)}</w:pBdr>${spaced(0, 140, 264)}${indented(284)}`,
      run: `${sans}${size(20)}`,
    },
  ],
  ["ListBullet", "List Bullet", { known: true, paragraph: spaced(0, 60, 300) }],
  ["ListNumber", "List Number", { known: true, paragraph: spaced(0, 60, 300) }],
  [
    "Terms",
    "Terms",
    { paragraph: `${spaced(0, 60, 264)}${indented(2552, ' w:hanging="2552"')}`, run: `${sans}${size(20)}` },
  ],
  [
    "Caption",
    "caption",
    { known: true, next: "Normal", paragraph: spaced(80, 280, 252), run: `${sans}${size(19)}` },
  ],
  ["TableCaption", "Table Caption", { on: "Caption", paragraph: `${keep}${spaced(280, 80, 252)}` }],
  ["Figure", "Figure", { next: "Caption", paragraph: `<w:keepNext/>${spaced(240, 0, 240)}` }],
  ["TableText", "Table Text", { paragraph: spaced(30, 30, 240), run: small }],
  ["TableFigures", "Table Figures", { on: "TableText", paragraph: `<w:jc w:val="right"/>` }],
  ["TableHead", "Table Head", { on: "TableText", paragraph: "<w:keepNext/>", run: bold }],
  ["TableHeadFigures", "Table Head Figures", { on: "TableHead", paragraph: `<w:jc w:val="right"/>` }],
  ["AfterTable", "After Table", { next: "Normal", paragraph: spaced(0, 120, 240), run: size(12) }],
  [
    "Bibliography",
    "Bibliography",
    { known: true, paragraph: `${spaced(0, 100, 276)}${indented(567, ' w:hanging="567"')}` },
  ],
  [
    "Computation",
    "Computation",
    { paragraph: `<w:keepLines/>${spaced(0, 100, 252)}`, run: `${sans}${size(19)}` },
  ],
  [
    "Room",
    "Room",
    {
      paragraph: `<w:pBdr>${rule("bottom", 4, line)}${rule("between", 4, line)}</w:pBdr><w:spacing w:before="0" w:after="0" w:line="480" w:lineRule="exact"/>`,
    },
  ],
  ["FootnoteText", "footnote text", { known: true, paragraph: spaced(0, 40, 240), run: size(18) }],
  ["Footer", "footer", { known: true, paragraph: `${spaced(0, 0, 240)}<w:jc w:val="center"/>`, run: small }],
  ...[0, 1, 2].map((depth): readonly [string, string, Style] => [
    `TOC${depth + 1}`,
    `toc ${depth + 1}`,
    {
      known: true,
      next: "Normal",
      paragraph: `${spaced(0, 40, 252)}${indented(284 * depth)}`,
      run: `${sans}${size(20)}`,
    },
  ]),
];

const characters: readonly (readonly [id: string, name: string, style: Style])[] = [
  ["Emphasis", "Emphasis", { known: true, run: italic }],
  ["Strong", "Strong", { known: true, run: bold }],
  ["StrongEmphasis", "Strong Emphasis", { run: `${bold}${italic}` }],
  ["SmallCapitals", "Small Capitals", { run: "<w:smallCaps/>" }],
  ["Underlined", "Underlined", { run: `<w:u w:val="single"/>` }],
  ["Raised", "Raised", { run: `<w:vertAlign w:val="superscript"/>` }],
  ["Lowered", "Lowered", { run: `<w:vertAlign w:val="subscript"/>` }],
  ["QuotedWords", "Quoted Words", {}],
  ["ComputedNumber", "Computed Number", {}],
  ["Standing", "Standing", { run: sans }],
  ["TermName", "Term Name", { run: color(soft) }],
  [
    "Key",
    "Key",
    {
      run: `<w:rFonts w:ascii="Courier New" w:hAnsi="Courier New" w:cs="Courier New"/><w:noProof/>${color(soft)}${size(14)}`,
    },
  ],
  ["Hyperlink", "Hyperlink", { known: true, run: `<w:u w:val="single" w:color="${line}"/>` }],
  ["FootnoteReference", "footnote reference", { known: true, run: `<w:vertAlign w:val="superscript"/>` }],
];

const table = [
  `<w:style w:type="table" w:default="1" w:styleId="TableNormal"><w:name w:val="Normal Table"/><w:uiPriority w:val="99"/><w:semiHidden/><w:unhideWhenUsed/>`,
  `<w:tblPr><w:tblInd w:w="0" w:type="dxa"/><w:tblCellMar><w:top w:w="0" w:type="dxa"/><w:left w:w="108" w:type="dxa"/><w:bottom w:w="0" w:type="dxa"/><w:right w:w="108" w:type="dxa"/></w:tblCellMar></w:tblPr></w:style>`,
  `<w:style w:type="table" w:customStyle="1" w:styleId="${tableStyleId}"><w:name w:val="Ruled Table"/><w:basedOn w:val="TableNormal"/><w:qFormat/>`,
  `<w:tblPr><w:tblBorders>${rule("top", 8, ink)}${rule("bottom", 8, ink)}${rule("insideH", 4, hair)}</w:tblBorders>`,
  `<w:tblCellMar><w:top w:w="20" w:type="dxa"/><w:left w:w="0" w:type="dxa"/><w:bottom w:w="20" w:type="dxa"/><w:right w:w="140" w:type="dxa"/></w:tblCellMar></w:tblPr>`,
  `<w:tblStylePr w:type="firstRow"><w:tblPr/><w:tcPr><w:tcBorders>${rule("bottom", 6, line)}</w:tcBorders></w:tcPr></w:tblStylePr></w:style>`,
].join("");

/** The look of everything in a text in one part (ECMA-376-1, 17.7): whoever goes on writing changes a look in one place. */
export function stylesXml(language: string): string {
  return [
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>`,
    `<w:styles xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main">`,
    `<w:docDefaults><w:rPrDefault><w:rPr>${serif}${color(ink)}${size(22)}<w:lang w:val="${dictionaryOf(language)}" w:bidi="ar-SA"/></w:rPr></w:rPrDefault>`,
    `<w:pPrDefault><w:pPr>${spaced(0, 140, 300)}</w:pPr></w:pPrDefault></w:docDefaults>`,
    `<w:style w:type="paragraph" w:default="1" w:styleId="Normal"><w:name w:val="Normal"/><w:qFormat/></w:style>`,
    `<w:style w:type="character" w:default="1" w:styleId="DefaultParagraphFont"><w:name w:val="Default Paragraph Font"/><w:uiPriority w:val="1"/><w:semiHidden/></w:style>`,
    table,
    ...paragraphs.map(([id, name, style]) => styleXml("paragraph", id, name, style)),
    ...characters.map(([id, name, style]) => styleXml("character", id, name, style)),
    "</w:styles>",
  ].join("");
}
