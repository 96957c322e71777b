import { deflateSync } from "node:zlib";

/** A PDF of one page (ISO 32000-1) whose text, and most of whose objects, are packed as most programs write them. */
export function packedPaper(words: string): Uint8Array {
  const inside = [
    "<< /Type /Catalog /Pages 2 0 R >>",
    "<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
    "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 420 595] /Contents 6 0 R /Resources << /Font << /F1 4 0 R >> >> >>",
    "<< /Type /Font /Subtype /Type1 /BaseFont /Times-Roman /Encoding /WinAnsiEncoding >>",
  ];
  const starts = inside.map((_, n) => inside.slice(0, n).join("\n").length + (n > 0 ? 1 : 0));
  const heads = starts.map((start, n) => `${n + 1} ${start}`).join(" ");
  const head = "%PDF-1.5\n";
  const objects = packed(
    5,
    `/Type /ObjStm /N ${inside.length} /First ${heads.length + 1}`,
    `${heads}\n${inside.join("\n")}`,
  );
  const text = packed(6, "", `BT /F1 12 Tf 48 530 Td (${words}) Tj ET`);
  const table = head.length + objects.length + text.length;
  const rows = [
    [0, 0, 255],
    ...inside.map((_, n) => [2, 5, n]),
    [1, head.length, 0],
    [1, head.length + objects.length, 0],
    [1, table, 0],
  ].map(([kind = 0, at = 0, place = 0]) => String.fromCharCode(kind, at >> 8, at & 255, place));
  const places = packed(7, "/Type /XRef /Size 8 /W [1 2 1] /Root 1 0 R", rows.join(""));
  return Uint8Array.from(
    Buffer.from(`${head}${objects}${text}${places}startxref\n${table}\n%%EOF\n`, "latin1"),
  );
}

/** An object that is a stream; nothing in it is pressed together, so that it is the same with every version of the packer. */
function packed(number: number, more: string, content: string): string {
  const bytes = deflateSync(Buffer.from(content, "latin1"), { level: 0 }).toString("latin1");
  return `${number} 0 obj\n<< ${more} /Filter /FlateDecode /Length ${bytes.length} >>\nstream\n${bytes}\nendstream\nendobj\n`;
}
