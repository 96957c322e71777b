import { inEnglish } from "../../../base/text/said/english.ts";
import { ended } from "../../../base/text/steering.ts";
import type { Look } from "../../references/runs.ts";
import { parted } from "./parted.ts";
import { wayOfLine } from "./direction.ts";
import type { SetInlines } from "./set-text.ts";

/** A stretch of a line that is set in one way, in English or in the words of the corpus: what formats make of inlines. */
export interface Stretch extends Look {
  /** Empty where a note is called. */
  readonly text: string;
  /** The language of words of the corpus, where it is known; null for the language of the whole text. */
  readonly lang: string | null;
  /** Where it leads: to the web, or to an anchor of the same text. */
  readonly href: string | null;
  readonly to: string | null;
  readonly as: "text" | "words" | "number" | "note" | "stands" | "open" | "falls" | "unsupported";
  /** Of a computed number, the key of its computation. */
  readonly run: string | null;
  /** Of the call of a note, its number; else 0. */
  readonly note: number;
}

const plain: Stretch = { text: "", lang: null, href: null, to: null, as: "text", run: null, note: 0 };

/** The stretches of a line, none of them empty, with what keeps their order where words run from right to left between others. */
export function stretchesOf(of: SetInlines): readonly Stretch[] {
  return wayOfLine(of) === "rtl" ? parts(of, plain) : parted(parts(of, plain));
}

function parts(of: SetInlines, around: Stretch): readonly Stretch[] {
  return of
    .flatMap((one): readonly Stretch[] => {
      switch (one.is) {
        case "text":
          return [{ ...around, text: inEnglish(one.text), lang: one.lang ?? around.lang }];
        case "words":
          return wordsOf(one, around);
        case "strong":
          return parts(one.of, { ...around, bold: true });
        case "emphasis":
          return parts(one.of, { ...around, italic: true });
        case "link":
          return parts(one.of, { ...around, to: one.to });
        case "runs":
          return one.runs.map(({ href, text, ...look }) => ({
            ...around,
            ...look,
            text: text.replaceAll("\n", " "),
            href: around.to === null ? (href ?? null) : null,
          }));
        case "printed":
          return [
            { ...around, text: inEnglish(one.text), as: "number", run: one.run, to: around.to ?? one.to },
          ];
        case "standing":
          return [{ ...around, text: one.standing, as: one.standing }];
        case "note":
          return [{ ...around, as: "note", note: one.number }];
      }
    })
    .filter((one) => one.text !== "" || one.as === "note")
    .map((one) => ({ ...one, text: ended(one.text) }));
}

/** Words of the corpus; quotation marks belong to the text that quotes, not to their language. */
function wordsOf(
  { text, lang, quoted }: { readonly text: string; readonly lang: string | null; readonly quoted: boolean },
  around: Stretch,
): readonly Stretch[] {
  const words: Stretch = { ...around, text, lang, as: "words" };
  return quoted ? [{ ...around, text: "“" }, words, { ...around, text: "”" }] : [words];
}
