import { language } from "./language.ts";

/** Words of the same shape in any language: texts stay texts, functions keep what they are given. */
export type Worded<T> = T extends string
  ? string
  : T extends (...given: infer Given) => infer Result
    ? (...given: Given) => Worded<Result>
    : { readonly [Key in keyof T]: Worded<T[Key]> };

/** Words in English and the same in Arabic: those of the reader's language. */
export function told<const T>(english: T, arabic: Worded<T>): Worded<T> {
  return language === "ar" ? arabic : (english as Worded<T>);
}
