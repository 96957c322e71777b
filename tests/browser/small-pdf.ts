/** One page of a PDF that a test makes. */
export interface SmallPage {
  /** Lines of text from the top down; none for a page as a scanner leaves it, with a drawing alone. */
  readonly lines: readonly string[];
  /** Degrees by which it is turned when it is shown. */
  readonly rotate?: 0 | 90 | 180 | 270;
}

interface Options {
  /** The number printed on the first page, as the file tells it; left out where it tells none. */
  readonly printed?: number;
  /** More entries of the whole file's dictionary, and of each page's (ISO 32000-1, 7.7.2 and 7.7.3.3). */
  readonly more?: { readonly whole: string; readonly page: string };
}

/**
 * A PDF (ISO 32000-1) of text pages of 420 by 595 points, small enough to be made by a test. Latin lines are set in one of
 * the standard fonts; other scripts in a font that is not in the file, whose signs are told by a table of their own.
 */
export function smallPdf(pages: readonly SmallPage[], { printed, more }: Options = {}): Uint8Array {
  const objects: string[] = [];
  const add = (body: string): number => objects.push(body);
  const fonts = [
    ...new Set(pages.flatMap(({ lines }) => [...lines.join("")].filter((sign) => !isLatin(sign)))),
  ];
  const latin = add("<< /Type /Font /Subtype /Type1 /BaseFont /Times-Roman /Encoding /WinAnsiEncoding >>");
  const table = add(stream(signTable(fonts)));
  const descendant = add(
    "<< /Type /Font /Subtype /CIDFontType2 /BaseFont /Times-Roman /DW 500 /CIDToGIDMap /Identity " +
      "/CIDSystemInfo << /Registry (Adobe) /Ordering (Identity) /Supplement 0 >> " +
      "/FontDescriptor << /Type /FontDescriptor /FontName /Times-Roman /Flags 4 /FontBBox [0 -200 1000 900] " +
      "/ItalicAngle 0 /Ascent 800 /Descent -200 /CapHeight 700 /StemV 80 >> >>",
  );
  const other = add(
    `<< /Type /Font /Subtype /Type0 /BaseFont /Times-Roman /Encoding /Identity-H /DescendantFonts [${descendant} 0 R] /ToUnicode ${table} 0 R >>`,
  );
  const tree = objects.length + 2 * pages.length + 1;
  const kids = pages.map(({ lines, rotate = 0 }) => {
    const content = add(stream(lines.length > 0 ? written(lines, fonts) : drawing));
    return add(
      `<< /Type /Page /Parent ${tree} 0 R /MediaBox [0 0 420 595] /Rotate ${rotate} /Contents ${content} 0 R ` +
        `/Resources << /Font << /F1 ${latin} 0 R /F2 ${other} 0 R >> >> ${more?.page ?? ""} >>`,
    );
  });
  add(`<< /Type /Pages /Count ${kids.length} /Kids [${kids.map((kid) => `${kid} 0 R`).join(" ")}] >>`);
  const labels = printed === undefined ? "" : `/PageLabels << /Nums [0 << /S /D /St ${printed} >>] >>`;
  const root = add(`<< /Type /Catalog /Pages ${tree} 0 R ${labels} ${more?.whole ?? ""} >>`);
  return whole(objects, root);
}

const isLatin = (sign: string): boolean => /^[ -~\u00a0-\u00ff]$/u.test(sign);

/** A frame and a few strokes, in the place of what was scanned. */
const drawing = "1.5 w 60 120 300 380 re S 120 200 m 200 420 l 300 240 l S";

function written(lines: readonly string[], signs: readonly string[]): string {
  const shown = lines.map((line) => {
    const isOther = [...line].some((sign) => !isLatin(sign));
    return isOther
      ? `/F2 12 Tf <${[...line].map((sign) => hex(codeOf(sign, signs))).join("")}> Tj T*`
      : `/F1 12 Tf (${line.replace(/[\\()]/g, "\\$&")}) Tj T*`;
  });
  return `BT 18 TL 48 530 Td ${shown.join("\n")} ET`;
}

const hex = (code: number): string => code.toString(16).padStart(4, "0");

/** Latin signs by their own number, others from 256 on. */
function codeOf(sign: string, signs: readonly string[]): number {
  return isLatin(sign) ? sign.charCodeAt(0) : 256 + signs.indexOf(sign);
}

function signTable(signs: readonly string[]): string {
  const latin = Array.from({ length: 0xff - 0x20 + 1 }, (_, n) => String.fromCharCode(0x20 + n)).filter(
    isLatin,
  );
  const rows = [...latin, ...signs].map((sign) => {
    const units = Array.from({ length: sign.length }, (_, n) => hex(sign.charCodeAt(n)));
    return `<${hex(codeOf(sign, signs))}> <${units.join("")}>`;
  });
  const blocks = Array.from({ length: Math.ceil(rows.length / 100) }, (_, n) =>
    rows.slice(100 * n, 100 * n + 100),
  );
  return [
    "/CIDInit /ProcSet findresource begin 12 dict begin begincmap /CMapName /Signs def /CMapType 2 def",
    "1 begincodespacerange <0000> <ffff> endcodespacerange",
    ...blocks.map((block) => `${block.length} beginbfchar\n${block.join("\n")}\nendbfchar`),
    "endcmap CMapName currentdict /CMap defineresource pop end end",
  ].join("\n");
}

function stream(content: string): string {
  return `<< /Length ${Buffer.byteLength(content, "latin1")} >>\nstream\n${content}\nendstream`;
}

function whole(objects: readonly string[], root: number): Uint8Array {
  let text = "%PDF-1.7\n";
  const places = objects.map((body, n) => {
    const at = text.length;
    text += `${n + 1} 0 obj\n${body}\nendobj\n`;
    return at;
  });
  const start = text.length;
  const rows = places.map((at) => `${String(at).padStart(10, "0")} 00000 n \n`).join("");
  text += `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${rows}`;
  text += `trailer << /Size ${objects.length + 1} /Root ${root} 0 R >>\nstartxref\n${start}\n%%EOF\n`;
  // Each sign of the text is one byte of the file.
  return Uint8Array.from(Buffer.from(text, "latin1"));
}
