import { ExternalHyperlink, FootnoteReferenceRun, InternalHyperlink, TextRun } from "docx";
import type { IRunOptions, ParagraphChild } from "docx";
import { storable } from "../../../base/text/steering.ts";
import { stretchesOf } from "../../telling/set/stretches.ts";
import type { Stretch } from "../../telling/set/stretches.ts";
import type { SetInlines } from "../../telling/set/set-text.ts";
import { bookmarkOf, dictionaryOf, waysOf } from "./language.ts";

/** Tells which anchors there are a bookmark for. */
export type Bookmarked = (anchor: string) => boolean;

/** A line as runs and links; `style` is that of words that have none of their own. */
export function lineRuns(of: SetInlines, bookmarked: Bookmarked, style?: string): readonly ParagraphChild[] {
  return stretchesOf(of).map((one): ParagraphChild => {
    if (one.note > 0) return new FootnoteReferenceRun(one.note);
    const children = runsOf(one, style);
    if (one.to !== null && bookmarked(one.to))
      return new InternalHyperlink({ anchor: bookmarkOf(one.to), children });
    if (one.href !== null)
      return new ExternalHyperlink({ link: one.href, children: runsOf(one, style ?? "Hyperlink") });
    const [only] = children;
    return children.length === 1 && only ? only : new TextRun({ children });
  });
}

/** Words of ours as runs. */
export function wordRuns(text: string, style?: string): readonly TextRun[] {
  return waysOf(storable(text)).map(
    (part) => new TextRun({ ...wayOf(part), ...(style === undefined ? {} : { style }) }),
  );
}

function runsOf(one: Stretch, style: string | undefined): TextRun[] {
  const language = one.lang === null ? null : dictionaryOf(one.lang);
  const look = lookOf(one, style);
  return waysOf(storable(one.text)).map((part) => {
    const { fromRight } = part;
    const spoken =
      language === null ? {} : { language: fromRight ? { bidirectional: language } : { value: language } };
    return new TextRun({ ...wayOf(part), ...look, ...spoken });
  });
}

const wayOf = ({ text, fromRight }: { readonly text: string; readonly fromRight: boolean }): IRunOptions =>
  fromRight ? { text, rightToLeft: true } : { text };

/** The named style of a stretch; what two of them say at once, the second says by itself. */
function lookOf(one: Stretch, style: string | undefined): IRunOptions {
  const { bold, italic, smallCaps, underlined, raised } = one;
  if (bold && italic) return { style: "StrongEmphasis", ...more(one) };
  if (bold) return { style: "Strong", ...more(one) };
  if (italic) return { style: "Emphasis", ...more(one) };
  if (smallCaps) return { style: "SmallCapitals" };
  if (underlined) return { style: "Underlined" };
  if (raised !== undefined) return { style: raised === "above" ? "Raised" : "Lowered" };
  if (style !== undefined) return { style };
  if (one.as === "number") return { style: "ComputedNumber" };
  if (one.as === "words" && one.lang !== null) return { style: "QuotedWords" };
  return ["stands", "open", "falls", "unsupported"].includes(one.as) ? { style: "Standing" } : {};
}

function more({ smallCaps, raised }: Stretch): IRunOptions {
  if (smallCaps) return { smallCaps: true };
  if (raised === undefined) return {};
  return raised === "above" ? { superScript: true } : { subScript: true };
}
