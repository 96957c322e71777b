import { say } from "../../../../base/text/said/said.ts";
import type { Said, Text } from "../../../../base/text/said/said.ts";
import type { Standing } from "../../../../judge/judge.ts";
import type { Remark, Statement, Worded } from "../slides.ts";
import type { LeafRun, Paragraph } from "./leaf.ts";
import { paragraph } from "./measured.ts";
import type { Setup } from "./measured.ts";
import { smallest } from "./room.ts";

/** The word of each standing. */
export const standingSaid: Readonly<Record<Standing, Said>> = {
  stands: say`stands`,
  open: say`open`,
  falls: say`falls`,
  unsupported: say`unsupported`,
};

/** Words of the corpus in the book serif, ours in the plain sans. */
export function wordsRun({ told }: Setup, { text, lang }: Worded): LeafRun {
  const face = typeof text === "string" ? "serif" : "sans";
  return { text: told(text), lang, face, weight: 400, colour: "ink" };
}

/** A stretch of our own. */
export function ownRun(
  { told }: Setup,
  text: Text,
  colour: LeafRun["colour"] = "soft",
  weight: LeafRun["weight"] = 400,
): LeafRun {
  return { text: told(text), lang: null, face: "sans", weight, colour };
}

/** What a record says and what there is to know of it, its standing by word first; letters of the first line in points. */
export function statementLines(setup: Setup, one: Statement, size: number): readonly Paragraph[] {
  const { standing, words, quoted, under } = one;
  const run = wordsRun(setup, words);
  const said = quoted ? { ...run, text: `“${run.text}”` } : run;
  const small = Math.max(smallest, size - 5);
  const word = standing === null ? [] : [ownRun(setup, standingSaid[standing], standing, 600)];
  const gap = word.length > 0 && under.length > 0 ? [ownRun(setup, " · ")] : [];
  const [first, ...others] = under;
  const lead = [...word, ...gap, ...(first === undefined ? [] : [ownRun(setup, first)])];
  return [
    paragraph([said], size),
    ...(lead.length === 0 ? [] : [paragraph(lead, small, { before: 3 })]),
    ...others.map((text) => paragraph([ownRun(setup, text)], small, { before: 2 })),
  ];
}

/** A remark as it stands on a slide; what to be careful about says so first. */
export function remarkLines(setup: Setup, { tells, text }: Remark, size: number): readonly Paragraph[] {
  const head = tells === "caution" ? [ownRun(setup, say`Caution: `, "ink", 600)] : [];
  const colour = tells === "caution" || tells === "plain" ? "ink" : "soft";
  return [paragraph([...head, ownRun(setup, text, colour)], size)];
}
