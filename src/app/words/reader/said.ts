import type { Text } from "../../../base/text/said/said.ts";
import { language } from "./language.ts";
import { inLanguage } from "./tongues.ts";

/** What the core says, in the reader's language; a text of the corpus as it is. */
export function inReadersWords(text: Text): string {
  return inLanguage[language](text);
}
