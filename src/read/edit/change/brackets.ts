import { closesLine, leadsLine, lineAfter, lineEnd, lineEndAt, lineStart } from "../hand/lines.ts";
import { endOf } from "../site/site.ts";
import type { Part, Site } from "../site/site.ts";
import type { Desk } from "./desk.ts";

/** Puts entries or items into brackets, behind one of their parts, or before the first. */
export function addInBrackets(desk: Desk, site: Site, after: Part | null, texts: readonly string[]): void {
  const { text, hand, put } = desk;
  const [first] = site.parts;
  if (!first) {
    const pad = site.style === "flow map" ? hand.insideMap : hand.insideList;
    const empty = /^\s*$/u.test(text.slice(site.start + 1, site.end - 1));
    return put(site.start + 1, empty ? site.end - 1 : site.start + 1, `${pad}${texts.join(", ")}${pad}`);
  }
  const own = site.parts.every(({ from }) => leadsLine(text, from));
  if (!after) {
    const parting = own ? `,${lineEndAt(text, first.from)}${padOf(text, first)}` : ", ";
    return put(first.from, first.from, texts.map((one) => one + parting).join(""));
  }
  const end = endOf(after);
  if (!own) return put(end, end, texts.map((one) => `, ${one}`).join(""));
  const parting = `${lineEndAt(text, after.from)}${padOf(text, after)}`;
  if (after.commaAfter === null) put(end, end, ",");
  const behind = after.commaAfter === null ? end : after.commaAfter + 1;
  const at = closesLine(text, behind) ? lineEnd(text, behind) : behind;
  const closing = after.commaAfter === null ? "" : ",";
  put(at, at, `${parting}${texts.join(`,${parting}`)}${closing}`);
}

/** Takes parts that stand side by side out of brackets; others of the site must remain. */
export function takeInBrackets(desk: Desk, site: Site, run: readonly Part[]): void {
  const { text, put } = desk;
  const [first] = run;
  const last = run.at(-1);
  if (!first || !last) return;
  const end = last.commaAfter === null ? endOf(last) : last.commaAfter + 1;
  const ownLines = run.every(
    (part) =>
      leadsLine(text, part.from) &&
      closesLine(text, part.commaAfter === null ? endOf(part) : part.commaAfter + 1),
  );
  if (ownLines) {
    for (const part of run) put(lineStart(text, part.from), lineAfter(text, endOf(part)), "");
    if (last.commaAfter === null && first.commaBefore !== null)
      put(first.commaBefore, first.commaBefore + 1, "");
    return;
  }
  if (first.commaBefore === null) {
    const next = site.parts[site.parts.indexOf(last) + 1];
    const upTo = next && !text.slice(end, next.from).includes("\n") ? next.from : end;
    return put(first.from, upTo, "");
  }
  const from = last.commaAfter === null ? first.commaBefore : first.commaBefore + 1;
  if (!text.slice(from, first.from).includes("\n")) return put(from, end, "");
  if (last.commaAfter === null) put(first.commaBefore, first.commaBefore + 1, "");
  put(first.from, end, "");
}

function padOf(text: string, part: Part): string {
  return text.slice(lineStart(text, part.from), part.from);
}
