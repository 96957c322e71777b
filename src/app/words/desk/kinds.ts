import { kindWords } from "../../../read/grammar/words.ts";
import { inReadersWords } from "../reader/said.ts";
import { told } from "../reader/told.ts";

const recorded = new Map(Object.values(kindWords).map((one) => [one.say, one]));

/** What stands in a file beside its records, and what is told of them in other words. */
const others: Readonly<Record<string, string>> = told(
  { part: "part", record: "record", settings: "settings", lines: "lines" } as Readonly<
    Record<string, string>
  >,
  { part: "جزء", record: "سجل", settings: "إعدادات", lines: "أسطر" },
);

/** What one record of a kind is called in the reader's language, by what it is called in English. */
export function kindName(singular: string): string {
  return others[singular] ?? inReadersWords(recorded.get(singular) ?? singular);
}
