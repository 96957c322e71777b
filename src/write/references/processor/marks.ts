import { joined } from "../runs.ts";
import type { Look, Run, Runs } from "../runs.ts";

/** Noncharacters of Unicode, which no text may hold: one opens a stretch with the letter of its look, one closes it. */
const opens = "\uFDD0";
const closes = "\uFDD1";
const marks = /[\uFDD0\uFDD1]/g;

const lookOf: Readonly<Record<string, (look: Look) => Look>> = {
  i: (look) => ({ ...look, italic: true }),
  n: (look) => without(look, "italic"),
  b: (look) => ({ ...look, bold: true }),
  w: (look) => without(look, "bold"),
  c: (look) => ({ ...look, smallCaps: true }),
  v: (look) => without(look, "smallCaps"),
  u: (look) => ({ ...look, underlined: true }),
  x: (look) => without(look, "underlined"),
  s: (look) => ({ ...look, raised: "above" }),
  d: (look) => ({ ...look, raised: "below" }),
  l: (look) => without(look, "raised"),
};

function without(look: Look, name: keyof Look): Look {
  return Object.fromEntries(Object.entries(look).filter(([one]) => one !== name)) as Look;
}

/** Puts the mark of a look round a text; a function, since a text may hold what a pattern of replacement means. */
const marked =
  (letter: string) =>
  (_: unknown, text: string): string =>
    `${opens}${letter}${text}${closes}`;

interface Terms {
  readonly getTerm: (name: string) => string;
}

const inQuotes =
  (opening: string, closing: string, apostrophe: string | null) =>
  (terms: Terms, text?: string): string =>
    text === undefined
      ? (apostrophe ?? terms.getTerm(opening))
      : `${terms.getTerm(opening)}${text}${terms.getTerm(closing)}`;

const asItIs = (_: unknown, text: string): string => text;
const onItsOwnLine = (_: unknown, text: string): string => `\n${text}\n`;

/** An output format of the processor of styles, whose text `runsOf` takes apart. */
export const markedFormat: Readonly<Record<string, unknown>> = {
  text_escape: (text: string | undefined) => (text ?? "").replace(marks, ""),
  bibstart: "",
  bibend: "",
  "@font-style/italic": marked("i"),
  "@font-style/oblique": marked("i"),
  "@font-style/normal": marked("n"),
  "@font-variant/small-caps": marked("c"),
  "@font-variant/normal": marked("v"),
  "@font-weight/bold": marked("b"),
  "@font-weight/normal": marked("w"),
  "@font-weight/light": marked("w"),
  "@text-decoration/underline": marked("u"),
  "@text-decoration/none": marked("x"),
  "@vertical-align/sup": marked("s"),
  "@vertical-align/sub": marked("d"),
  "@vertical-align/baseline": marked("l"),
  "@passthrough/true": asItIs,
  "@strip-periods/true": asItIs,
  "@strip-periods/false": asItIs,
  "@quotes/true": inQuotes("open-quote", "close-quote", null),
  "@quotes/inner": inQuotes("open-inner-quote", "close-inner-quote", "\u2019"),
  "@quotes/false": false,
  "@cite/entry": asItIs,
  "@bibliography/entry": asItIs,
  "@display/block": onItsOwnLine,
  "@display/indent": onItsOwnLine,
  "@display/left-margin": (_: unknown, text: string) => `${text} `,
  "@display/right-inline": asItIs,
  "@showid/true": asItIs,
  "@URL/true": asItIs,
  "@DOI/true": asItIs,
};

/** What the processor says where a style has nothing to print: no text of anybody's. */
const nothing = /\[NO_PRINTED_FORM\]|\[CSL STYLE ERROR: [^\]]*\]/;

/** The space of an empty part before the point at the end of an entry, with the end of a sentence before it. */
const spaceBeforeEnd = /([.!?][”’"]?\uFDD1*)?\s+\.(?=[\uFDD1\s]*$)/;

/** The runs of a text with marks; a mark without its other half is passed over. */
export function runsOf(marked: string): Runs {
  if (nothing.test(marked)) return [];
  const text = marked.replace(spaceBeforeEnd, (_, ended?: string) => ended ?? ".");
  const runs: Run[] = [];
  const looks: Look[] = [{}];
  for (const part of text.split(/(?=[\uFDD0\uFDD1])/)) {
    let rest = part;
    if (part.startsWith(opens)) {
      const inner = looks.at(-1) ?? {};
      looks.push(lookOf[part.charAt(1)]?.(inner) ?? inner);
      rest = part.slice(2);
    } else if (part.startsWith(closes)) {
      if (looks.length > 1) looks.pop();
      rest = part.slice(1);
    }
    runs.push({ ...looks.at(-1), text: rest });
  }
  return joined(runs.map((run) => ({ ...run, text: run.text.replace(/\s*\n\s*/g, "\n") })));
}
