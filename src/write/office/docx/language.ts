import { hashOf } from "../../../base/text/hash.ts";

/** The usual country of a language, for word processors that know no language without one; British for English. */
const countries: Readonly<Record<string, string>> = {
  ar: "ar-SA",
  cs: "cs-CZ",
  da: "da-DK",
  de: "de-DE",
  el: "el-GR",
  en: "en-GB",
  es: "es-ES",
  fa: "fa-IR",
  fi: "fi-FI",
  fr: "fr-FR",
  ga: "ga-IE",
  he: "he-IL",
  hu: "hu-HU",
  it: "it-IT",
  ja: "ja-JP",
  la: "la-VA",
  nb: "nb-NO",
  nl: "nl-NL",
  no: "nb-NO",
  pl: "pl-PL",
  pt: "pt-PT",
  ro: "ro-RO",
  ru: "ru-RU",
  sv: "sv-SE",
  tr: "tr-TR",
  uk: "uk-UA",
  zh: "zh-CN",
};

/** A language as a word processor's dictionaries are named. */
export function dictionaryOf(language: string): string {
  return countries[language.toLowerCase()] ?? language;
}

const rightToLeft = String.raw`(?=\p{L})[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}]`;
/** From one letter that runs from right to left to the last of them, with what lies between but letters that run otherwise, and marks that part (`parted`). */
const stretch = new RegExp(
  `${rightToLeft}(?:[^\\p{L}\\u200E]|${rightToLeft})*(?:${rightToLeft}|(?<=${rightToLeft})\\p{M})\\p{M}*|${rightToLeft}\\p{M}*`,
  "gu",
);

/** A text in parts that run one way each: word processors order by it what they print. */
export function waysOf(text: string): readonly { readonly text: string; readonly fromRight: boolean }[] {
  const parts: { readonly text: string; readonly fromRight: boolean }[] = [];
  let at = 0;
  for (const found of text.matchAll(stretch)) {
    if (found.index > at) parts.push({ text: text.slice(at, found.index), fromRight: false });
    parts.push({ text: found[0], fromRight: true });
    at = found.index + found[0].length;
  }
  if (at < text.length) parts.push({ text: text.slice(at), fromRight: false });
  return parts;
}

/**
 * The name of a place in the text: letters, digits and low lines, at most forty (ECMA-376-1, 17.13.6). One that loses
 * something by it ends in a part of its hash, so that it is told apart from every other.
 */
export function bookmarkOf(anchor: string): string {
  const name = `_${anchor.replace(/-/g, "_")}`;
  if (/^\w{1,40}$/.test(name) && !anchor.includes("_")) return name;
  return `${name.replace(/\W/g, "_").slice(0, 27)}_${hashOf(anchor).slice(0, 12)}`;
}
