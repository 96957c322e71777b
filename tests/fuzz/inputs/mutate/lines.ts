import type { Random } from "../../../../src/base/outcome/random.ts";
import { few, oneOf, times } from "../input.ts";
import { oddNames, oddNumbers, oddPaths, oddSigns } from "./signs.ts";

/** A change at random of a text; `beside` is another text of its kind, `signs` are what means something in it. */
export type Change = (text: string, random: Random, beside: string, signs: readonly string[]) => string;

/** The most that a text grows to by being repeated. */
const mostLetters = 60_000;

const linesIn = (text: string): string[] => text.split(/(?<=\n)/u);
const joined = (lines: readonly string[]): string => lines.join("");

/** A stretch of a text: somewhere, of any length up to a limit. */
function stretch(text: string, random: Random, most = 400): readonly [from: number, to: number] {
  const from = random.below(text.length + 1);
  return [from, Math.min(text.length, from + few(random, most))];
}

function put(text: string, random: Random, what: string): string {
  const at = random.below(text.length + 1);
  const take = random.below(3) === 0 ? few(random, 4) : 0;
  return text.slice(0, at) + what + text.slice(at + take);
}

/** The text with one of its words of a shape, chosen at random, in another's place or as something else. */
function reworded(
  text: string,
  random: Random,
  shape: RegExp,
  other: (word: string, words: readonly string[]) => string,
): string {
  const words = [...text.matchAll(shape)];
  if (words.length === 0) return text;
  const { 0: word, index } = oneOf(random, words);
  const all = words.map(([one]) => one);
  return text.slice(0, index) + other(word, all) + text.slice(index + word.length);
}

/** All changes by their names. */
export const changes: Readonly<Record<string, Change>> = {
  "a sign put in": (text, random, _, signs) => put(text, random, oneOf(random, signs)),
  "signs put in": (text, random, _, signs) =>
    times(2 + random.below(6), () => oneOf(random, signs)).reduce((so, one) => put(so, random, one), text),
  "an odd sign put in": (text, random) => put(text, random, oneOf(random, oddSigns)),
  "a stretch left out": (text, random) => {
    const [from, to] = stretch(text, random);
    return text.slice(0, from) + text.slice(to);
  },
  "a stretch twice": (text, random) => {
    const [from, to] = stretch(text, random);
    return text.slice(0, to) + text.slice(from);
  },
  "a stretch many times": (text, random) => {
    const [from, to] = stretch(text, random, 60);
    const most = Math.floor(mostLetters / (to - from + 1));
    return (
      text.slice(0, from) + text.slice(from, to).repeat(few(random, Math.min(most, 3000))) + text.slice(to)
    );
  },
  "a stretch in brackets": (text, random) => {
    const [from, to] = stretch(text, random);
    const [open = "", close = ""] = oneOf(random, "[] {} () <> \"\" ''".split(" "));
    const deep = few(random, 200);
    return (
      text.slice(0, from) + open.repeat(deep) + text.slice(from, to) + close.repeat(deep) + text.slice(to)
    );
  },
  "stretches exchanged": (text, random) => {
    const [a, b] = stretch(text, random, 120);
    const rest = text.slice(b);
    const [c, d] = stretch(rest, random, 120);
    return text.slice(0, a) + rest.slice(c, d) + rest.slice(0, c) + text.slice(a, b) + rest.slice(d);
  },
  "part of another text put in": (text, random, beside) => {
    const [from, to] = stretch(beside, random, 600);
    return put(text, random, beside.slice(from, to));
  },
  "begun as one text, ended as another": (text, random, beside) =>
    text.slice(0, random.below(text.length + 1)) + beside.slice(random.below(beside.length + 1)),
  "cut off": (text, random) => text.slice(0, random.below(text.length + 1)),
  "begun late": (text, random) => text.slice(random.below(text.length + 1)),
  "a line twice": (text, random) => {
    const lines = linesIn(text);
    const at = random.below(lines.length);
    return joined([...lines.slice(0, at + 1), ...lines.slice(at)]);
  },
  "lines in another order": (text, random) => {
    const lines = linesIn(text);
    const [line = ""] = lines.splice(random.below(lines.length), 1);
    lines.splice(random.below(lines.length + 1), 0, line);
    return joined(lines);
  },
  "a line left out": (text, random) => {
    const lines = linesIn(text);
    return joined(lines.toSpliced(random.below(lines.length), 1));
  },
  "lines indented": (text, random) => {
    const lines = linesIn(text);
    const at = random.below(lines.length);
    const by = oneOf(random, [" ", "  ", "\t", " ".repeat(70), "\u00a0"]);
    return joined(
      lines.map((line, place) => (place >= at && place < at + 1 + few(random, 6) ? by + line : line)),
    );
  },
  "a line of another text": (text, random, beside) => {
    const lines = linesIn(text);
    lines.splice(random.below(lines.length + 1), 0, oneOf(random, linesIn(beside)));
    return joined(lines);
  },
  "a value that stood elsewhere": (text, random) =>
    reworded(text, random, /(?<=[:=,] ?)[^\n:=,]+/gu, (_, all) => oneOf(random, all)),
  "a name that stood elsewhere": (text, random) =>
    reworded(text, random, /[a-z][a-z0-9/-]{2,}/gu, (_, all) => oneOf(random, all)),
  "an odd name": (text, random) =>
    reworded(text, random, /[\p{L}][\p{L}\d/-]*/gu, () => oneOf(random, oddNames)),
  "an odd number": (text, random) =>
    reworded(text, random, /\d+(?:[.,]\d+)*/gu, () => oneOf(random, oddNumbers)),
  "another number": (text, random) =>
    reworded(text, random, /\d+/gu, (word) => `${word}${"0".repeat(few(random, 30))}${random.below(99)}`),
  "an odd path": (text, random) =>
    reworded(text, random, /[\w/-]+\.(?:bib|ris|json|csv|csl|yaml|md|pdf|svg|png)|(?<=: )[a-z-]+/gu, () =>
      oneOf(random, oddPaths),
    ),
  "CR alone": (text) => text.replaceAll(/\r?\n/gu, "\r"),
  "CR and LF": (text) => text.replaceAll(/\r?\n/gu, "\r\n"),
  "line ends of all sorts": (text, random) =>
    text.replaceAll("\n", () => oneOf(random, ["\n", "\r\n", "\r", "\u2028", "\n\n"])),
  "byte-order mark": (text, random) => "\ufeff".repeat(1 + few(random, 3)) + text,
  "letters decomposed": (text) => text.normalize("NFD"),
  "capital letters": (text) => text.toUpperCase(),
  "all in one line": (text) => text.replaceAll("\n", " "),
};
