import { padded } from "./pasted.ts";
import type { Block } from "./pasted.ts";

const named: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
  nbsp: " ",
  plusmn: "±",
  deg: "°",
  ndash: "–",
  mdash: "—",
  times: "×",
  micro: "µ",
  frac12: "½",
  frac14: "¼",
  frac34: "¾",
  le: "≤",
  ge: "≥",
  prime: "′",
  Prime: "″",
};

/** A cell that reaches into rows below it. */
interface Reach {
  rows: number;
}

/**
 * The cells of the first table in HTML, as spreadsheets, word processors and web pages put it on the clipboard; null
 * where there is none. A cell over several columns or rows stands in the first of them, the others are empty.
 */
export function tableInHtml(html: string): Block | null {
  const bare = html.replace(/<!--[\s\S]*?-->|<(style|script|head|colgroup)\b[\s\S]*?<\/\1\s*>/giu, "");
  const table = /<table\b[^>]*>([\s\S]*?)<\/table\s*>/iu.exec(bare)?.[1];
  if (table === undefined) return null;
  const reaches = new Map<number, Reach>();
  const rows = table
    .split(/<tr\b[^>]*>/iu)
    .slice(1)
    .map((row) => cellsOf(row, reaches));
  return rows.length === 0 ? null : padded(rows);
}

function cellsOf(row: string, reaches: Map<number, Reach>): readonly string[] {
  const cells: string[] = [];
  const skip = (): void => {
    for (let reach = reaches.get(cells.length); reach && reach.rows > 0; reach = reaches.get(cells.length)) {
      reach.rows -= 1;
      cells.push("");
    }
  };
  for (const [, attributes = "", inside = ""] of row.matchAll(
    /<t[dh]\b([^>]*)>([\s\S]*?)(?=<\/?t[dhr]\b|<\/t(?:able|body|head|foot)\b|$)/giu,
  )) {
    skip();
    const [across, down] = [spanIn(attributes, "colspan"), spanIn(attributes, "rowspan")];
    for (let place = 0; place < across; place++) {
      if (down > 1) reaches.set(cells.length, { rows: down - 1 });
      cells.push(place === 0 ? textOf(inside) : "");
    }
  }
  skip();
  return cells;
}

function spanIn(attributes: string, name: string): number {
  const found = new RegExp(`\\b${name}\\s*=\\s*["']?(\\d{1,3})`, "iu").exec(attributes)?.[1];
  return Math.max(1, Number(found ?? "1"));
}

/** The text of a cell: white space as a browser shows it, line breaks where they are asked for. */
function textOf(html: string): string {
  return html
    .replace(/\s+/gu, " ")
    .replace(/(?<=[^\s>]) ?<(?:p|div|li)\b[^>]*>/giu, "\n")
    .replace(/<br\b[^>]*>|<\/(?:p|div|li)\s*>(?=[\s\S]*\S)/giu, "\n")
    .replace(/<[^>]*>/gu, "")
    .replace(
      /&(?:#x([\da-f]{1,6})|#(\d{1,7})|(\w+));/giu,
      (whole, hex?: string, ten?: string, name?: string) =>
        name === undefined ? signOf(hex, ten) : (named[name] ?? whole),
    )
    .split("\n")
    .map((line) => line.trim())
    .join("\n")
    .trim();
}

function signOf(hex: string | undefined, ten: string | undefined): string {
  const code = hex === undefined ? Number(ten) : Number.parseInt(hex, 16);
  return code > 0 && code <= 0x10ffff && !(code >= 0xd800 && code <= 0xdfff)
    ? String.fromCodePoint(code)
    : "";
}
