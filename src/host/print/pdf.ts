import { allPrintFonts, familyNames } from "./fonts.ts";
import { tellGlyphs } from "./glyphs.ts";
import { settled } from "./text/settled.ts";

/** A page that is the picture: its size in mm, and what it is called. */
export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly title?: string;
}

const points = 72 / 25.4;
/** The day that stands in every file, so that the same picture gives the same bytes. */
const always = new Date(0);

/** Draws an SVG as a PDF of one page of its size, fonts embedded, text as text. */
export async function pdfOf(svg: string, { width, height, title }: PdfPage): Promise<Uint8Array> {
  const [{ default: PDFDocument }, { default: drawSvg }] = await Promise.all([
    import("pdfkit"),
    import("svg-to-pdfkit"),
  ]);
  const size: [number, number] = [width * points, height * points];
  const document = new PDFDocument({
    size,
    margin: 0,
    info: { Title: title ?? titleIn(svg), Creator: "Variorum", Producer: "Variorum", CreationDate: always },
    displayTitle: true,
  });
  const parts: Uint8Array[] = [];
  const done = new Promise<void>((resolve, reject) => {
    document.on("data", (part: Uint8Array) => parts.push(part));
    document.on("end", () => resolve());
    document.on("error", reject);
  });
  for (const { name, file } of allPrintFonts()) document.registerFont(name, file);
  const told = new Set<string>();
  drawSvg(document as unknown as Parameters<typeof drawSvg>[0], settled(svg).svg, 0, 0, {
    width: size[0],
    height: size[1],
    preserveAspectRatio: "xMinYMin meet",
    warningCallback: () => undefined,
    fontCallback: (family, bold) => {
      const name = nameFor(family, bold);
      if (!told.has(name)) tellGlyphs(document.font(name));
      told.add(name);
      return name;
    },
  });
  document.end();
  await done;
  return Buffer.concat(parts);
}

/** The font for a family; a drawing of the corpus may name one that is not bundled. */
function nameFor(family: string, bold: boolean): string {
  const own = familyNames.find((one) => family.includes(one));
  const like = /serif/i.test(family) && !/sans/i.test(family) ? "Source Serif 4" : "Source Sans 3";
  return `${own ?? like} ${bold ? 600 : 400}`;
}

function titleIn(svg: string): string {
  return /<title[^>]*>([^<]*)<\/title>/.exec(svg)?.[1]?.replace(/&lt;/g, "<").replace(/&amp;/g, "&") ?? "";
}
