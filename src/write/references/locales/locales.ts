import { britishFrom } from "./british.ts";

/** The terms of languages as CSL has them (XML), by their tags; `en-US` is always among them. */
export type Locales = ReadonlyMap<string, string>;

const files: Readonly<Record<string, () => Promise<{ readonly default: string }>>> = {
  "de-DE": () => import("./locales-de-DE.xml?raw"),
  "en-US": () => import("./locales-en-US.xml?raw"),
  "es-ES": () => import("./locales-es-ES.xml?raw"),
  "fr-FR": () => import("./locales-fr-FR.xml?raw"),
  "nl-NL": () => import("./locales-nl-NL.xml?raw"),
};

/** The terms that a style may ask for in a corpus of a language: its own and the corpus's, as far as there are any, and English. */
export async function localesFor(style: string, language: string): Promise<Locales> {
  const own = /<style\b[^>]*?\sdefault-locale="([^"]+)"/.exec(style)?.[1] ?? language;
  const tags = Object.keys(files).filter((tag) => tag === "en-US" || baseOf(tag) === baseOf(own));
  const texts = await Promise.all(
    tags.map(async (tag): Promise<readonly (readonly [string, string])[]> => {
      const text = await files[tag]?.();
      return text === undefined ? [] : [[tag, text.default]];
    }),
  );
  return localesOf(texts.flat());
}

/** The terms from texts by their tags. */
export function localesOf(texts: Iterable<readonly [string, string]>): Locales {
  const all = new Map(texts);
  const american = all.get("en-US");
  if (american !== undefined) all.set("en-GB", britishFrom(american));
  return all;
}

/** The terms of a language: its own, else those of another country that speaks it, else English. */
export function localeIn(locales: Locales, language: string): string {
  const near = [...locales.keys()].find((tag) => baseOf(tag) === baseOf(language));
  return locales.get(language) ?? locales.get(near ?? "en-US") ?? locales.get("en-US") ?? "";
}

const baseOf = (tag: string): string => tag.split(/[-_]/)[0]?.toLowerCase() ?? "";
