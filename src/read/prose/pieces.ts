import { finding } from "../../base/finding.ts";
import type { Finding, Span } from "../../base/finding.ts";
import { coded, say } from "../../base/text/said/said.ts";
import { eitherOf } from "../decode/named.ts";
import type { CitationPiece, HeldTo, ProsePiece } from "./prose.ts";

const standings: readonly HeldTo[] = ["stands", "open", "falls", "unsupported"];

/** What a piece says that leads to the corpus, written whole as it stands at a place; a finding where it says nothing. */
export function pieceIn(written: string, at: Span): ProsePiece | Finding {
  // Between the signs of a quotation more is written over several lines than is meant: then a part is not where it is counted.
  const asMeant = at.end - at.start === written.length;
  const part: PartOf = (start, length) =>
    asMeant ? { ...at, start: at.start + start, end: at.start + start + length } : at;
  return written.startsWith("[") ? citationIn(written, at, part) : bracedIn(written, at, part);
}

/** The place of so many signs of a piece, from one of them on. */
type PartOf = (start: number, length: number) => Span;

function bracedIn(written: string, at: Span, part: PartOf): ProsePiece | Finding {
  const inner = written.slice(0, -2);
  const found = /^\{\{\s*(claim|number):(\S+)/u.exec(inner);
  const [head = "", kind, name = ""] = found ?? [];
  const held = inner.slice(head.length).trim().replace(/\s+/gu, " ");
  const start = head.length - name.length;
  if (kind === "claim") {
    const standing = standings.find((one) => one === held) ?? null;
    if (held === "" || standing !== null)
      return { is: "claim", id: name, standing, at, idAt: part(start, name.length) };
    const message = say`Unexpected standing ${coded(shortened(held))}, expected ${eitherOf(standings)}`;
    return finding("bad-value", message, at);
  }
  const dot = name.lastIndexOf(".");
  if (kind === "number" && dot > 0 && dot < name.length - 1)
    return {
      is: "number",
      id: name.slice(0, dot),
      name: name.slice(dot + 1),
      comparison: held === "" ? null : held,
      at,
      idAt: part(start, dot),
      nameAt: part(start + dot + 1, name.length - dot - 1),
    };
  const due = [coded("{{claim:ID}}"), coded("{{number:ID.NAME}}")];
  return finding("bad-value", say`Unexpected ${coded(shortened(written))}, expected ${eitherOf(due)}`, at);
}

function citationIn(written: string, at: Span, part: PartOf): CitationPiece | Finding {
  const cites: CitationPiece["cites"][number][] = [];
  let from = 1;
  for (const one of written.slice(1, -1).split(";")) {
    const [head = "", id] = /^\s*@([^\s,]+)/u.exec(one) ?? [];
    if (id === undefined) {
      const message = say`Unexpected ${coded(shortened(one.trim()))}, expected a citation such as ${coded("@key, p. 12")}`;
      return finding("bad-value", message, part(from, one.length));
    }
    const place = one.slice(head.length).replace(/^,/u, "").trim().replace(/\s+/gu, " ");
    const idAt = part(from + head.length - id.length, id.length);
    cites.push({ id, place: place === "" ? null : place, idAt });
    from += one.length + 1;
  }
  return { is: "citation", cites, at };
}

function shortened(text: string): string {
  const line = text.slice(0, 200).replace(/\s+/gu, " ");
  return line.length > 60 ? `${line.slice(0, 59)}…` : line;
}
