import { matchAt, readNumeral } from "../../base/quantity/numeral.ts";
import { plainText } from "../../base/quantity/plain-text.ts";
import { coded, say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";

/** One term as written, before it is known what its words name; offsets are those of the text. */
export interface WrittenTerm {
  readonly factor: number;
  /** The name of a dimension; null where it is that which the sum is of. */
  readonly name: string | null;
  readonly of: "itself" | "parts";
  readonly start: number;
  readonly end: number;
}

/** What stands in a sum that is no term, with its place. */
export interface Unread {
  readonly message: Text;
  readonly start: number;
  readonly end: number;
}

const between = /\s*\+\s*|\s+[-–]\s+/gu;
const pi = /π|pi(?![\p{L}\p{N}])/iuy;
const times = /\s*[×*·⋅]\s*|\s+x\s+|\s+/iuy;
const over = /\s*[/÷]\s*(?:(\d+(?:\.\d+)?)|(π|pi))\s*$/iu;
const ofParts = /^sum of (?:(.+) of )?(?:its )?parts$/iu;

/**
 * Reads a sum of terms joined by + and −, each a number, π or both, times a dimension: `π × diameter`, `2 radius`,
 * `diameter / 2`, `head + shaft`, `sum of parts`, `sum of length of parts`. What `isName` knows is never taken apart.
 */
export function readSum(written: string, isName: (text: string) => boolean): readonly WrittenTerm[] | Unread {
  const { text, at } = plainText(written);
  const terms: WrittenTerm[] = [];
  for (const { sign, from, to } of pieces(text, isName)) {
    const place = { start: at(from), end: at(to) };
    const read = readTerm(text.slice(from, to).trim(), isName);
    if ("message" in read) return { ...read, ...place };
    terms.push({ ...read, factor: sign * read.factor, ...place });
  }
  return terms;
}

/** The stretches between the signs, without the spaces around them; a name with a sign in it stays whole. */
function pieces(
  text: string,
  isName: (text: string) => boolean,
): readonly { readonly sign: 1 | -1; readonly from: number; readonly to: number }[] {
  const start = text.length - text.trimStart().length;
  const end = text.trimEnd().length;
  if (isName(text.trim())) return [{ sign: 1, from: start, to: end }];
  const found: { sign: 1 | -1; from: number; to: number }[] = [];
  let [sign, from]: [1 | -1, number] = [1, start];
  for (const match of text.matchAll(between)) {
    if (match.index < start || match.index + match[0].length > end) continue;
    found.push({ sign, from, to: match.index });
    [sign, from] = [match[0].includes("+") ? 1 : -1, match.index + match[0].length];
  }
  return [...found, { sign, from, to: end }];
}

type Read = Pick<WrittenTerm, "factor" | "name" | "of"> | { readonly message: Text };

function readTerm(term: string, isName: (text: string) => boolean): Read {
  if (term === "")
    return { message: say`Missing dimension, expected a sum such as ${coded("head + shaft")}` };
  if (isName(term)) return { factor: 1, name: term, of: "itself" };
  const counted = readFactor(term);
  if ("message" in counted) return counted;
  const divided = over.exec(counted.rest);
  const by = divided === null ? 1 : divided[1] === undefined ? Math.PI : Number(divided[1]);
  const factor = counted.factor / by;
  const rest = divided === null ? counted.rest : counted.rest.slice(0, divided.index);
  if (!(factor > 0 && Number.isFinite(factor)))
    return { message: say`Unexpected factor in \`${term}\`, expected a number above 0` };
  const parts = ofParts.exec(rest);
  if (parts !== null && !isName(rest)) return { factor, name: parts[1] ?? null, of: "parts" };
  if (!isName(rest) && /[×*·⋅/÷^()=]/u.test(rest)) {
    const message = say`Unexpected \`${term}\`, expected a sum of terms, each a number or π times one dimension`;
    return { message };
  }
  return { factor, name: rest, of: "itself" };
}

/** A number and π before a name, and the name; figures that go on in letters are part of it. */
function readFactor(
  term: string,
): { readonly factor: number; readonly rest: string } | { readonly message: Text } {
  const whole = { factor: 1, rest: term };
  const numeral = readNumeral(term, 0);
  if (numeral !== null && "unread" in numeral)
    return {
      message: say`Unreadable number \`${term.slice(0, numeral.end)}\`, expected one such as ${coded("3.14")}`,
    };
  let [factor, end] = numeral === null ? [1, 0] : [numeral.value, numeral.end];
  const gap = matchAt(times, term, end)?.[0].length ?? 0;
  const circle = matchAt(pi, term, numeral === null ? 0 : end) ?? matchAt(pi, term, end + gap);
  if (circle !== null) [factor, end] = [factor * Math.PI, circle.index + circle[0].length];
  if (end === 0) return whole;
  const sign = matchAt(times, term, end);
  return sign === null ? whole : { factor, rest: term.slice(end + sign[0].length) };
}
