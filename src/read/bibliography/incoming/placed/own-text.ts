import type { Id } from "../../../../base/finding.ts";
import type { BibEntry } from "../../bibtex/lexer.ts";
import { lineEndIn } from "../fields/field.ts";
import type { Format } from "../formats.ts";
import { naming } from "../relatives.ts";

/** An entry that is put into a bibliography: its text, where that began in the file it comes from, and its key there and here. */
export interface Put {
  readonly text: string;
  readonly start: number;
  readonly from: Id;
  readonly key: Id;
  /** Where the key stood in the file it comes from. */
  readonly keyAt: { readonly start: number; readonly end: number };
  readonly bib: BibEntry | null;
  /** Keys of its file that are others in the corpus. */
  readonly keys: ReadonlyMap<Id, Id>;
}

/** The entry's text with its key in the corpus; where that is its own, and so are those it names, to the byte as it came. */
export function ownText(format: Format, put: Put): string {
  if (format === "bib") return bibText(put);
  if (format === "ris") return closed(put.key === put.from ? put.text : risText(put));
  return put.key === put.from ? put.text : jsonText(put);
}

function bibText({ text, start, from, key, keyAt, bib, keys }: Put): string {
  const cuts: { readonly start: number; readonly end: number; readonly text: string }[] = [];
  if (key !== from)
    cuts.push({ start: keyAt.start - start, end: keyEnd(text, keyAt.start - start), text: key });
  for (const { name, span } of bib?.fields ?? []) {
    if (!naming.has(name)) continue;
    const raw = text.slice(span.start - start, span.end - start);
    const named = raw.replace(/[^\s,{}"]+/g, (one) => keys.get(one) ?? one);
    if (named !== raw) cuts.push({ start: span.start - start, end: span.end - start, text: named });
  }
  let at = 0;
  const parts: string[] = [];
  for (const cut of cuts.toSorted((a, b) => a.start - b.start)) {
    parts.push(text.slice(at, cut.start), cut.text);
    at = cut.end;
  }
  return [...parts, text.slice(at)].join("");
}

/** A key with spaces in it is read with hyphens: as it is written it reaches to the comma. */
function keyEnd(text: string, start: number): number {
  const key = /[^,{}=\r\n"]*/y;
  key.lastIndex = start;
  const said = key.exec(text)?.[0] ?? "";
  return start + said.trimEnd().length;
}

function risText({ text, key }: Put): string {
  const head = /^ID {1,2}-[^\r\n]*/m;
  if (head.test(text)) return text.replace(head, () => `ID  - ${key}`);
  return text.replace(/\r?\n/, (nl) => `${nl}ID  - ${key}${nl}`);
}

/** A record with the line that ends it, where that was forgotten. */
function closed(text: string): string {
  return /^ER {1,2}-/m.test(text) ? text : `${text.trimEnd()}${lineEndIn(text)}ER  - `;
}

function jsonText({ text, start, key, keyAt }: Put): string {
  return `${text.slice(0, keyAt.start - start)}${JSON.stringify(key)}${text.slice(keyAt.end - start)}`;
}
