/** Languages that a bibliography names in words, by their tags (BCP 47). */
const named: Readonly<Record<string, string>> = {
  english: "en",
  british: "en-GB",
  ukenglish: "en-GB",
  american: "en-US",
  usenglish: "en-US",
  german: "de",
  ngerman: "de",
  deutsch: "de",
  french: "fr",
  français: "fr",
  italian: "it",
  italiano: "it",
  spanish: "es",
  español: "es",
  greek: "el",
  latin: "la",
  dutch: "nl",
  danish: "da",
  swedish: "sv",
  norwegian: "no",
  polish: "pl",
  russian: "ru",
  turkish: "tr",
  arabic: "ar",
  hebrew: "he",
  portuguese: "pt",
};

/** The tag of a language as a bibliography has it; null where it is none. */
export function languageTag(written: string | undefined): string | null {
  const text = (written ?? "").trim();
  const known = Object.hasOwn(named, text.toLowerCase()) ? named[text.toLowerCase()] : undefined;
  if (known !== undefined) return known;
  const tag = text.replace(/_/gu, "-");
  return /^[a-z]{2,3}(?:-[a-z0-9]{2,8})*$/iu.test(tag) ? tag : null;
}

/** A script, by what its letters are and the languages that are mostly written in it; the first is guessed. */
const scripts: readonly (readonly [letters: RegExp, languages: readonly string[]])[] = [
  [/\p{sc=Arabic}/gu, ["ar", "fa", "ur", "ckb", "ps", "sd", "ug"]],
  [/\p{sc=Hebrew}/gu, ["he", "yi"]],
  [/\p{sc=Greek}/gu, ["el", "grc"]],
  [/\p{sc=Cyrillic}/gu, ["und-Cyrl", "ru", "uk", "bg", "sr", "mk", "be", "kk", "ky", "mn", "tg"]],
  [/[\p{sc=Hiragana}\p{sc=Katakana}]/gu, ["ja"]],
  [/\p{sc=Hangul}/gu, ["ko"]],
  [/\p{sc=Han}/gu, ["zh", "ja", "yue"]],
  [/\p{sc=Armenian}/gu, ["hy"]],
  [/\p{sc=Georgian}/gu, ["ka"]],
  [/\p{sc=Devanagari}/gu, ["hi", "mr", "ne", "sa"]],
  [/\p{sc=Thai}/gu, ["th"]],
  [/\p{sc=Coptic}/gu, ["cop"]],
  [/\p{sc=Syriac}/gu, ["syr"]],
  [/\p{sc=Ethiopic}/gu, ["und-Ethi", "am", "gez", "ti"]],
];

/** Breathings, iota subscript and the grave, which Greek has only where it is written as of old. */
const oldGreek = /[\u1F00-\u1FFF]/u;

/**
 * The language of some words as far as it can be guessed: the source's, where that is written in their script; else by the
 * script. Null for Latin letters of a source that says nothing of its language.
 */
export function languageOf(text: string, source: string | null): string | null {
  const counts = scripts.map(([letters, languages]) => ({
    languages,
    n: text.match(letters)?.length ?? 0,
  }));
  const latin = text.match(/\p{sc=Latin}/gu)?.length ?? 0;
  // A sentence of Japanese has more signs of Han than of its own.
  const kana = counts.find(({ languages, n }) => languages[0] === "ja" && n > 0);
  const [most] = counts.toSorted((a, b) => b.n - a.n);
  const found = most && most.n > latin ? (most.languages[0] === "zh" && kana ? kana : most) : null;
  const [own = ""] = (source ?? "").toLowerCase().split("-");
  if (found === null) return ofLatin(own) ? source : null;
  if (found.languages.includes(own)) return source;
  const [guess = null] = found.languages;
  return guess === "el" && oldGreek.test(text.normalize("NFC")) ? "grc" : guess;
}

function ofLatin(language: string): boolean {
  return language !== "" && !scripts.some(([, languages]) => languages.includes(language));
}
