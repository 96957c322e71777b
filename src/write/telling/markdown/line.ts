import { stretchesOf } from "../set/stretches.ts";
import type { Stretch } from "../set/stretches.ts";
import type { SetInlines } from "../set/set-text.ts";
import { begun, ended, escaped } from "./escape.ts";

/** A line in Markdown; nothing in it begins a list, a heading or a table. */
export function lineOf(of: SetInlines): string {
  return begun(cellOf(of));
}

/** A line that stands after something else, as in a cell. */
export function cellOf(of: SetInlines): string {
  const all = joined(stretchesOf(of));
  let line = "";
  all.forEach((one, place) => {
    const next = all[place + 1];
    const piece = pieceOf(one, line.at(-1) ?? " ", next);
    // What follows a bracket would be read as its address, its label or its attributes.
    line += line.endsWith("]") && /^[(:]/.test(piece) ? `\\${piece}` : piece;
  });
  return ended(line.replace(/^ +/, ""));
}

/** Stretches that differ in nothing Markdown tells are one. */
function joined(all: readonly Stretch[]): readonly Stretch[] {
  const done: Stretch[] = [];
  for (const one of all) {
    const last = done.at(-1);
    if (last && one.note === 0 && last.note === 0 && lookOf(one) === lookOf(last))
      done[done.length - 1] = { ...last, text: last.text + one.text };
    else done.push(one);
  }
  return done;
}

const lookOf = ({ italic, bold, smallCaps, underlined, raised, href, to }: Stretch): string =>
  JSON.stringify([italic, bold, smallCaps, underlined, raised, href, to]);

function pieceOf(one: Stretch, before: string, next: Stretch | undefined): string {
  if (one.note > 0) return `[^${one.note}]`;
  const text = one.text.replace(/[ \t\r\n\f\v]+/g, " ");
  // Signs of emphasis take no space inside.
  const [, start = "", inner = "", end = ""] = /^( *)(.*?)( *)$/su.exec(text) ?? [];
  if (inner === "") return text;
  const html = one.to === null && one.href === inner && /^https?:\/\/[^\s<>]+$/.test(inner);
  let line = html ? `<${inner}>` : tagged(one, escaped(inner));
  const plainNext = next === undefined || (!isMarked(next) && next.note === 0);
  const after = end !== "" ? " " : plainNext ? (next?.text.charAt(0) ?? " ") : "";
  const flanks = start !== "" || before === "" || isSpace(before) ? [" ", after] : [before, after];
  line = emphasised(line, one, inner, flanks[0] ?? " ", after);
  if (one.to !== null) line = `[${line}](#${one.to})`;
  else if (one.href !== null && !html)
    line = `[${line}](<${one.href.replace(/[<>\n\\]/g, encodeURIComponent)}>)`;
  return start + line + end;
}

/** Emphasis by asterisks where they are read as such (CommonMark 0.31.2, 6.2: flanking), by elements elsewhere. */
function emphasised(line: string, one: Stretch, inner: string, before: string, after: string): string {
  const signs = `${one.bold ? "**" : ""}${one.italic ? "*" : ""}`;
  if (signs === "") return line;
  const linked = one.to !== null || one.href !== null;
  const [from, to] = linked ? [" ", " "] : [before, after];
  const first = [...inner][0] ?? "";
  const last = [...inner].at(-1) ?? "";
  const opens = !isMark(first) || isSpace(from) || isMark(from);
  const closes = to !== "" && (!isMark(last) || isSpace(to) || isMark(to));
  if (opens && closes && from !== "*") return `${signs}${line}${[...signs].reverse().join("")}`;
  const strong = one.bold ? `<strong>${line}</strong>` : line;
  return one.italic ? `<em>${strong}</em>` : strong;
}

function tagged({ raised, smallCaps, underlined }: Stretch, text: string): string {
  let line = text;
  if (raised !== undefined) line = raised === "above" ? `<sup>${line}</sup>` : `<sub>${line}</sub>`;
  if (smallCaps) line = `<span class="smallcaps">${line}</span>`;
  return underlined ? `<u>${line}</u>` : line;
}

const isMarked = ({ bold, italic, smallCaps, underlined, raised }: Stretch): boolean =>
  Boolean(bold) || Boolean(italic) || Boolean(smallCaps) || Boolean(underlined) || raised !== undefined;
const isSpace = (sign: string): boolean => /^\s$/u.test(sign);
const isMark = (sign: string): boolean => /^[\p{P}\p{S}]$/u.test(sign);
