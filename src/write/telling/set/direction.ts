import { inEnglish } from "../../../base/text/said/english.ts";
import { plainWords } from "./set-text.ts";
import type { SetInline, SetInlines } from "./set-text.ts";

/** Languages written from right to left, by the subtags of BCP 47: those of the scripts Arabic, Hebrew, Syriac and Thaana. */
const fromRight: ReadonlySet<string> = new Set(
  "ar arc ckb dv fa he ks ku-arab ps sd syr ug ur yi".split(" "),
);

/** Which way a language runs. */
export function directionOf(language: string): "ltr" | "rtl" {
  const [base = "", ...rest] = language.toLowerCase().split("-");
  if (rest.some((one) => one === "latn" || one === "cyrl")) return "ltr";
  if (rest.some((one) => ["arab", "hebr", "syrc", "thaa"].includes(one))) return "rtl";
  return fromRight.has(base) ? "rtl" : "ltr";
}

const rightToLeft = /[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}]/gu;

/** Which way a line runs by most of its letters: a sentence that begins with a name in another script runs as its own words do. */
export function directionOfLine(text: string): "ltr" | "rtl" {
  const all = text.match(/\p{L}/gu)?.length ?? 0;
  const fromRight = text.match(rightToLeft)?.length ?? 0;
  return fromRight * 2 > all ? "rtl" : "ltr";
}

/** Which way a line is set: one with words of ours, which are English in files, as they run; another by most of its letters. */
export function wayOfLine(of: SetInlines): "ltr" | "rtl" {
  return of.some(hasOurs) ? "ltr" : directionOfLine(plainWords(of, inEnglish));
}

function hasOurs(one: SetInline): boolean {
  if (one.is === "text" || one.is === "printed")
    return typeof one.text !== "string" && /\p{Script=Latin}/u.test(inEnglish(one.text));
  return one.is === "standing" || ("of" in one && one.of.some(hasOurs));
}
