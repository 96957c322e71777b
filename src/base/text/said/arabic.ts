import type { Tongue } from "./tongue.ts";

/** The forms of a counted sentence by Unicode's plural rules for Arabic; 0 and 1 are mostly sentences of their own. */
export interface ArabicForms {
  readonly zero?: string;
  readonly one?: string;
  readonly two: string;
  /** 3 to 10, and whatever ends so beyond a hundred. */
  readonly few: string;
  /** 11 to 99, and whatever ends so beyond a hundred. */
  readonly many: string;
  readonly other: string;
}

/** Sentences by their English with its holes; one form, or those of the first count in it. */
export type ArabicCatalogue = Readonly<Record<string, string | ArabicForms>>;

/** The plural form that a count asks for in Arabic (Unicode CLDR, plural rules, cardinal). */
export function arabicForm(n: number): keyof ArabicForms {
  if (!Number.isInteger(n)) return "other";
  if (n === 0) return "zero";
  if (n === 1) return "one";
  if (n === 2) return "two";
  const rest = Math.abs(n) % 100;
  return rest >= 3 && rest <= 10 ? "few" : rest >= 11 ? "many" : "other";
}

/** The form of a counted sentence for a count. */
export function formFor(forms: ArabicForms, n: number): string {
  return forms[arabicForm(n)] ?? forms.other;
}

/** A text kept together whatever way its letters run (Unicode's first-strong isolate). */
function kept(text: string): string {
  return text === "" ? "" : `\u2068${text}\u2069`;
}

const joints = { and: " و", or: " أو ", comma: "، " } as const;

/** Arabic by a catalogue, its counts written by the reader's habit. */
export function arabic(catalogue: ArabicCatalogue, figure: (n: number) => string): Tongue {
  return {
    sentence: (say, count) => {
      const entry = Object.hasOwn(catalogue, say) ? catalogue[say] : undefined;
      // What has no letters of its own is a sentence in any language.
      if (entry === undefined) return /\p{L}/u.test(say) ? null : say;
      return typeof entry === "string" ? entry : formFor(entry, count ?? Number.NaN);
    },
    count: ({ count }) => figure(count),
    row: (texts, by) => texts.join(joints[by]),
    quoted: (text) => `«${text}»`,
    kept,
    first: (text) => text,
  };
}
