import { Lexer } from "yaml";

/** Nesting allowed in one file; deeper texts can abort the YAML composer. */
export const deepest = 64;

/** Values allowed in one file: a file as large as may be, of records as people write them, has somewhat fewer. */
export const mostValues = 400_000;

/** Whether a text may hold more values than are read of one file: each stands in a line, behind a comma or in brackets of its own. */
export function hasTooMany(text: string): boolean {
  if (text.length <= mostValues) return false;
  let values = 0;
  for (let at = 0; at < text.length; at++) {
    const sign = text.charCodeAt(at);
    if (sign === 10 || sign === 44 || sign === 91 || sign === 123) values++;
  }
  return values > mostValues;
}

/** Marks that the lexer puts between the pieces of the text. */
const documentStart = "\u0002";
const flowEnd = "\u0018";
const scalarStart = "\u001f";

/** Offset at which a YAML text nests deeper than allowed, or null. */
export function tooDeepAt(text: string): number | null {
  return mayNestDeeply(text) ? measured(text) : null;
}

/** A quick upper bound: brackets in all, colons in one line or, where there are brackets, in all, and columns at which a line's first value begins. */
function mayNestDeeply(text: string): boolean {
  let brackets = 0;
  let colons = 0;
  let column = 0;
  let atStart = true;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === 10) {
      column = 0;
      atStart = true;
      if (brackets === 0) colons = 0;
    } else if (atStart && (c === 32 || c === 45 || c === 63 || c === 9)) {
      if (++column >= deepest) return true;
    } else {
      atStart = false;
      if ((c === 91 || c === 123) && ++brackets >= deepest) return true;
      if (c === 58 && ++colons >= deepest) return true;
    }
  }
  return false;
}

/** How deep lines and brackets nest; and keys that follow one another, each of which the composer takes for a map in the one before. */
function measured(text: string): number | null {
  let offset = 0;
  let column = 0;
  let lineLead = true;
  const indents: number[] = [];
  // Outside of all brackets, and in each that is open.
  const keys = [0];
  const chained = (): number => keys.reduce((sum, some) => sum + Math.max(0, some - 1), 0);
  for (const lexeme of new Lexer().lex(text)) {
    if (lexeme === documentStart || lexeme === flowEnd) continue;
    const size = lexeme === scalarStart ? 0 : lexeme.length;
    const flow = keys.length - 1;
    if (lexeme === "[" || lexeme === "{") keys.push(0);
    else if (lexeme === "]" || lexeme === "}") keys.length = Math.max(1, flow);
    else if (lexeme === ":") keys[flow] = (keys[flow] ?? 0) + 1;
    else if (lexeme === "," && flow > 0) keys[flow] = 0;
    if (lexeme === "\n" || lexeme === "\r\n") {
      column = -size;
      lineLead = true;
      if (flow === 0) keys[0] = 0;
    } else if (keys.length === 1 && lineLead && lexeme.trim() !== "") {
      while (indents.length && (indents[indents.length - 1] ?? 0) >= column) indents.pop();
      indents.push(column);
      lineLead = lexeme === "-" || lexeme === "?";
    }
    if (keys.length - 1 + indents.length + chained() > deepest) return offset;
    column += size;
    offset += size;
  }
  return null;
}
