import { say } from "../../../../base/text/said/said.ts";
import { lexBibtex } from "../../bibtex/lexer.ts";
import { indentAt, lineEndIn } from "./field.ts";
import type { CannotWrite, Field, Fresh, Hand } from "./field.ts";

/** The hand of BibTeX and biblatex. */
export const bibHand: Hand = { fields, set, add };

interface Written extends Field {
  readonly nameStart: number;
  /** What stands between name and value: ` = `. */
  readonly sign: string;
  readonly said: string;
  readonly valueEnd: number;
}

function fields(text: string, start: number, end: number): readonly Written[] {
  // What the entry's abbreviations stand for is no matter here: only its places are.
  const [entry] = lexBibtex({ path: "", text: text.slice(start, end) }).entries;
  return (entry?.fields ?? []).flatMap(({ span }): readonly Written[] => {
    const from = start + span.start;
    const until = start + span.end;
    const head = /([^\s=,{}()"#%@]+)(\s*=(?:\s|%[^\n]*\n)*)$/.exec(
      text.slice(Math.max(start, from - 300), from),
    );
    if (!head) return [];
    const [both, said = "", sign = ""] = head;
    const nameStart = from - both.length;
    const inner = innerOf(text.slice(from, until));
    const lead = inner.is === "bare" ? 0 : 1;
    const place = { start: from + lead, end: until - lead };
    const whole = wholeOf(text, start, nameStart, until);
    return [{ name: said.toLowerCase(), said, sign, nameStart, ...inner, ...place, whole, valueEnd: until }];
  });
}

/** A value without its braces or quotes, where one pair holds all of it. */
function innerOf(raw: string): Pick<Field, "text" | "is"> {
  const inner = raw.slice(1, -1);
  if (raw.startsWith("{") && closes(inner, "}")) return { text: inner, is: "braces" };
  if (raw.startsWith('"') && raw.length > 1 && closes(inner, '"')) return { text: inner, is: "quotes" };
  return { text: raw, is: "bare" };
}

/** Whether braces in a text open and close in turn, and the closing mark stands nowhere outside of them. */
function closes(inner: string, mark: string): boolean {
  let depth = 0;
  for (const char of inner) {
    if (char === "{") depth++;
    else if (char === "}" && --depth < 0) return false;
    else if (char === mark && mark === '"' && depth === 0) return false;
  }
  return depth === 0;
}

/** A field with its line, or where it shares one, with the comma behind it. */
function wholeOf(text: string, entry: number, nameStart: number, end: number): Field["whole"] {
  const comma = /[ \t]*,?/y;
  comma.lastIndex = end;
  const after = comma.test(text) ? comma.lastIndex : end;
  const rest = /[ \t]*(?:\r?\n|$)/y;
  rest.lastIndex = after;
  const indent = indentAt(text, nameStart);
  if (indent !== null && nameStart - indent.length > entry && rest.test(text))
    return { start: nameStart - indent.length, end: rest.lastIndex };
  const spaces = /[ \t]*/y;
  spaces.lastIndex = after;
  return { start: nameStart, end: spaces.test(text) ? spaces.lastIndex : after };
}

function set(field: Field, text: string): string | CannotWrite {
  if (field.is === "braces") return closes(text, "}") ? text : unbalanced(field.name);
  if (field.is === "quotes") return closes(text, '"') ? text : unbalanced(field.name);
  if (isBare(text)) return text;
  return closes(text, "}") ? `{${text}}` : unbalanced(field.name);
}

/** What needs no braces: a number, an abbreviation, or such with texts joined by `#`. */
function isBare(text: string): boolean {
  return /^\s*(?:\d+|(?:[A-Za-z][^\s,{}()"#%=@]*|"[^"{}]*"|\{[^{}]*\})(?:\s*#\s*(?:\w[^\s,{}()"#%=@]*|"[^"{}]*"|\{[^{}]*\}))*)\s*$/.test(
    text,
  );
}

function unbalanced(name: string): CannotWrite {
  return {
    problem: say`Unexpected braces or quotes in \`${name}\`, expected as many closing as opening ones`,
  };
}

function add(
  text: string,
  { start, end }: { readonly start: number; readonly end: number },
  fresh: readonly Fresh[],
): ReturnType<Hand["add"]> {
  const there = fields(text, start, end);
  const wrong = fresh.find((one) => !one.bare && !closes(one.text, "}"));
  if (wrong) return unbalanced(wrong.name);
  const last = there.at(-1);
  const nl = lineEndIn(text);
  const typed = typedLike(there);
  if (!last) {
    const close = text.slice(start, end).search(/\s*[,\s]*[})]$/);
    const at = start + close;
    const lines = fresh.map((one) => `${nl}  ${typed(one)}`);
    return { start: at, end: end - 1, text: `,${lines.join(",")}${nl}` };
  }
  const indent = indentAt(text, last.nameStart);
  const lead = indent === null ? " " : `${nl}${indent}`;
  const comma = /\s*,/y;
  comma.lastIndex = last.valueEnd;
  const hasComma = comma.test(text) && comma.lastIndex < end;
  const at = hasComma ? comma.lastIndex : last.valueEnd;
  const lines = fresh.map((one) => `${lead}${typed(one)}`);
  return { start: at, end: at, text: hasComma ? `${lines.join(",")},` : `,${lines.join(",")}` };
}

/** How a field is typed beside others: names in their case, signs in their column, braces or quotes as most have. */
function typedLike(there: readonly Written[]): (fresh: Fresh) => string {
  const capitals = there.length > 0 && there.every(({ said }) => said === said.toUpperCase());
  const quotes = there.filter((one) => one.is === "quotes").length * 2 > there.length;
  const columns = new Set(there.map(({ said, sign }) => said.length + sign.indexOf("=")));
  const sign = there.at(-1)?.sign ?? " = ";
  const after = sign.slice(sign.indexOf("=")).replace(/[\r\n].*$/s, " ");
  const before = sign.startsWith("=") ? 0 : 1;
  const column = columns.size === 1 && there.length > 1 ? ([...columns][0] ?? 0) : 0;
  return ({ name, text, bare }) => {
    const said = capitals ? name.toUpperCase() : name;
    const gap = " ".repeat(Math.max(before, column - said.length));
    const value = bare ? text : quotes && closes(text, '"') ? `"${text}"` : `{${text}}`;
    return `${said}${gap}${after}${value}`;
  };
}
