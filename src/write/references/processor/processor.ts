import CSL from "citeproc";
import type { Engine } from "citeproc";
import { localeIn } from "../locales/locales.ts";
import type { Locales } from "../locales/locales.ts";
import { formatName, mendProcessor } from "./mended.ts";

/** How a corpus cites: the text of a style, the terms at hand, and the language where the style leaves it open (BCP 47). */
export interface Manner {
  readonly style: string;
  readonly locales: Locales;
  readonly language: string;
}

/** Why a style cannot be used; what the processor of styles said is in the message. */
export class StyleFails extends Error {}

/** Does something with the processor; what it throws on is the style's fault. */
export function withStyle<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    const said = error instanceof Error ? error.message : String(error);
    throw new StyleFails(said.replace(/^citeproc-js error: /, "").trim());
  }
}

/** What the processor would do beyond CSL: fields hidden in notes, dates and labels guessed from texts. */
const beyond = ["field_hack", "raw_date_parsing", "locator_label_parse", "locator_date_and_revision"];

/** A style at work on items that are asked for by their keys. */
export function newProcessor(manner: Manner, retrieveItem: (key: string) => unknown): Engine {
  mendProcessor();
  return withStyle(() => {
    const retrieveLocale = (language: string): string => localeIn(manner.locales, language);
    const engine = new CSL.Engine({ retrieveItem, retrieveLocale }, manner.style, manner.language);
    for (const name of beyond) engine.opt.development_extensions[name] = false;
    engine.setOutputFormat(formatName);
    return engine;
  });
}
