import { ended } from "../steering.ts";
import { counted } from "../counted.ts";
import type { Text } from "./said.ts";
import { toldIn } from "./tongue.ts";
import type { Tongue } from "./tongue.ts";

/** English: what is said is its own key. */
export const english: Tongue = {
  sentence: (say) => say,
  count: ({ count, inWords }) => (inWords ? counted(count) : String(count)),
  row: (texts, by) => {
    if (by === "comma" || texts.length <= 1) return texts.join(", ");
    return `${texts.slice(0, -1).join(", ")} ${by} ${texts.at(-1) ?? ""}`;
  },
  quoted: (text) => `“${text}”`,
  kept: ended,
  first: (text) => text.charAt(0).toUpperCase() + text.slice(1),
};

/** What is said, in English: what files, the command line and JSON say. */
export function inEnglish(text: Text): string {
  return typeof text === "string" ? ended(text) : toldIn(text, english, english);
}

/** What is said, in another language; in English where its catalogue lacks the sentence. */
export function inWords(text: Text, tongue: Tongue): string {
  return toldIn(text, tongue, english);
}
