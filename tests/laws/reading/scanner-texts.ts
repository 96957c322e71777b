import { isDeepStrictEqual } from "node:util";
import { randomFrom } from "../../../src/base/outcome/random.ts";
import type { Random } from "../../../src/base/outcome/random.ts";
import { plainTree } from "../../../src/read/yaml/plain/scan.ts";
import { readAnyYaml } from "../../../src/read/yaml/text.ts";

/** What a law of the two readers found in many texts. */
export interface Compared {
  readonly texts: number;
  /** How many of them were plain. */
  readonly plain: number;
  /** Texts of which the two readers say different things. */
  readonly unlike: readonly string[];
}

/** Reads each text in both ways where it is plain, and keeps those that differ in values, places or what there is to tell. */
export function compared(texts: Iterable<string>): Compared {
  const unlike: string[] = [];
  let [count, plain] = [0, 0];
  for (const text of texts) {
    count++;
    const root = plainTree(text);
    if (!root) continue;
    plain++;
    const any = readAnyYaml("a.yaml", text);
    if (!isDeepStrictEqual(any, { root, findings: [], split: [] })) unlike.push(text);
  }
  return { texts: count, plain, unlike };
}

/** Pieces of text that mean something to YAML, or look as if they did. */
const signs =
  "\n|\r\n| |  |    |- |-|: |:|#| # | #a| #1|# b |\"|'|''|\\\"|\\\\|\\n|[|]|{|}|, |,|&a |*a|>|>-|\t|!|!x |?|? |@|%|`|~|<<: |---\n|...|=|a|é|ن|7|\u00a0|\u2028|\u0085|\ufeff|\u0007|😀"
    .split("|")
    .concat("|", "|-\n", "|+", ">\n", "\n\n", "\n   ", "\n  # c\n", "id: ", "source: k\n");

/** Texts of scholars, changed at random: a sign here, a line there. */
export function* changedTexts(seeds: readonly string[], count: number, seed: number): Generator<string> {
  const random = randomFrom(seed);
  for (let made = 0; made < count; made++) {
    let text = random.below(4) === 0 ? inventedText(random) : excerptOf(pick(random, seeds), random);
    const changes = random.below(4);
    for (let n = 0; n < changes; n++)
      text = random.below(2) === 0 ? signChanged(text, random) : lineChanged(text, random);
    yield text;
  }
}

const pick = <T>(random: Random, from: readonly T[]): T => {
  const one = from[random.below(from.length)];
  if (one === undefined) throw new Error("Nothing to pick from, expected at least one");
  return one;
};

/** Some lines of a text under its first. */
function excerptOf(text: string, random: Random): string {
  const lines = text.split(/(?<=\n)/u);
  const most = 4 + random.below(30);
  if (lines.length <= most) return text;
  const from = random.below(lines.length - most);
  return [...lines.slice(0, 1 + random.below(3)), ...lines.slice(from, from + most)].join("");
}

function signChanged(text: string, random: Random): string {
  const at = random.below(text.length + 1);
  const take = random.below(3) === 0 ? 1 + random.below(3) : 0;
  return text.slice(0, at) + (random.below(6) === 0 ? "" : pick(random, signs)) + text.slice(at + take);
}

function lineChanged(text: string, random: Random): string {
  const lines = text.split(/(?<=\n)/u);
  const at = random.below(lines.length);
  const line = lines[at] ?? "";
  const lead = /^ */u.exec(line)?.[0].length ?? 0;
  const changed = [
    () => [line, line],
    () => [],
    () => [`${" ".repeat(random.below(9))}# of it${pick(random, ["", ".", " !x", "  "])}\n`, line],
    () => [pick(random, ["\n", "   \n", "\r\n"]), line],
    () => [" ".repeat(1 + random.below(3)) + line],
    () => [line.slice(Math.min(lead, 1 + random.below(3)))],
    () => [line.replace(/\n/u, pick(random, [" # said\n", "  \n", " #\n", ":\n", ",\n", "\r\n", "\r", ""]))],
    () => [line.replace(/: .*/u, `:\n${" ".repeat(lead + random.below(5))}more`)],
    () => [
      line.replace(/: .*/u, pick(random, [":", ": # c", ": |", ": >-", ": []", ": {}", ': ""', ": -1"])),
    ],
    () => [line, `${" ".repeat(random.below(9))}and on\n`],
  ];
  lines.splice(at, 1, ...pick(random, changed)());
  return lines.join("");
}

const words = [
  "ring",
  "post 12",
  "3.4 cm",
  "a, b",
  "x: y",
  "it's",
  'a "b"',
  "Ḫattuša",
  "- 5",
  "#4",
  "5 > 4",
  "~",
  "",
];
const keys = ["id", "text", "of", "from", "note", "x-own", "post-hole depth", "βάθος", "a.b", "claims"];

/** A text of invented structure: maps and lists in one another, in any style. */
function inventedText(random: Random): string {
  const lineEnd = random.below(5) === 0 ? "\r\n" : "\n";
  const scalar = (): string => {
    const word = pick(random, words);
    const style = random.below(5);
    if (style === 0) return `"${word.replace(/["\\]/gu, "\\$&")}"`;
    return style === 1 ? `'${word.replaceAll("'", "''")}'` : word;
  };
  const flow = (depth: number): string => {
    const kind = depth > 2 ? 0 : random.below(4);
    const many = Array.from({ length: kind === 0 || kind === 3 ? 0 : random.below(4) }, () =>
      flow(depth + 1),
    );
    if (kind === 1) return `[${many.join(pick(random, [", ", ",", " , "]))}]`;
    if (kind === 2) return `{ ${many.map((one, n) => `${keys[n]}: ${one}`).join(", ")} }`;
    return scalar();
  };
  const indented = (column: number, depth: number): string => {
    const lines: string[] = [];
    const chosen = new Set(Array.from({ length: 1 + random.below(3) }, () => pick(random, keys)));
    for (const key of chosen) {
      const way = depth > 3 ? 0 : random.below(6);
      const lead = " ".repeat(column);
      const deeper = column + 1 + random.below(3);
      if (way < 2) lines.push(`${lead}${key}: ${flow(0)}`);
      else if (way === 2) lines.push(`${lead}${key}:${lineEnd}${indented(deeper, depth + 1)}`);
      else if (way === 3) {
        const mark = pick(random, ["|", ">", "|-", ">-", "|+"]);
        const said = Array.from({ length: 1 + random.below(3) }, () =>
          pick(random, [`${" ".repeat(deeper)}said so`, ""]),
        );
        lines.push(`${lead}${key}: ${mark}`, `${" ".repeat(deeper)}at first`, ...said);
      } else {
        const dash = random.below(2) === 0 ? column : deeper;
        lines.push(`${lead}${key}:`);
        for (let n = 1 + random.below(2); n > 0; n--) {
          const inner = dash + 2;
          const item = random.below(2) === 0 ? flow(0) : indented(inner, depth + 1).trimStart();
          lines.push(`${" ".repeat(dash)}- ${item}`);
        }
      }
    }
    return lines.join(lineEnd);
  };
  return indented(0, 0) + pick(random, ["", lineEnd, lineEnd + lineEnd]);
}
