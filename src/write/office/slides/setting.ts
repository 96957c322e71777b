import type Pptx from "pptxgenjs";
import type { LeafRun, Paragraph, Place } from "../../../show/telling/talk/layout/leaf.ts";
import { parted } from "../../telling/set/parted.ts";
import { print } from "../../pen/palette.ts";
import { standingColour } from "../../map/standing-line.ts";

/** Fonts that machines with a presentation program have (common practice); where they are missing, wider ones still fit. */
const faces = { serif: "Georgia", sans: "Arial" } as const;

/** Points to inches. */
export const inches = (points: number): number => Math.round((points / 72) * 10_000) / 10_000;

/** A place in inches. */
export function placed({ x, y, width, height }: Place) {
  return { x: inches(x), y: inches(y), w: inches(width), h: inches(height) };
}

/** A colour of the printing palette, as six digits. */
export function hex(colour: LeafRun["colour"]): string {
  const name = colour === "ink" || colour === "soft" ? colour : standingColour[colour];
  return print[name].slice(1);
}

/** Paragraphs as runs of native text; `language` is that of what has none of its own. */
export function textOf(lines: readonly Paragraph[], language: Languages): Pptx.TextProps[] {
  return lines.flatMap((line, place) =>
    (line.rtl ? line.runs : parted(line.runs)).map((run, at): Pptx.TextProps => {
      const lang = run.lang ?? (run.face === "serif" ? language.corpus : language.own);
      return {
        text: run.text,
        options: {
          fontFace: line.rtl ? faces.sans : faces[run.face],
          fontSize: line.size,
          bold: run.weight === 600,
          italic: run.italic === true,
          color: hex(run.colour),
          lang,
          align: alignOf(line, language.mirrored),
          rtlMode: line.rtl,
          lineSpacing: line.leading,
          paraSpaceBefore: place === 0 ? 0 : line.before,
          breakLine: at === line.runs.length - 1 && place < lines.length - 1,
        },
      };
    }),
  );
}

/** The languages of a talk: the corpus's, and ours; whether it runs from right to left. */
export interface Languages {
  readonly corpus: string;
  readonly own: string;
  readonly mirrored: boolean;
}

/** The side at which a paragraph begins, whatever its own direction. */
export function alignOf({ align, rtl }: Paragraph, mirrored: boolean): "left" | "right" | "center" {
  if (align === "middle") return "center";
  // Where a paragraph runs from right to left, these programs mean by left the side at which it begins.
  const atInner = align === "start";
  return atInner === (mirrored === rtl) ? "left" : "right";
}
