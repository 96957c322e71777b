import type { CslItem } from "../../../read/bibliography/csl.ts";
import type { Known } from "./known.ts";

const classes: Readonly<Record<string, Known>> = {
  "article-journal": "fabio:JournalArticle",
  book: "fabio:Book",
  chapter: "fabio:BookChapter",
  dataset: "fabio:Dataset",
  figure: "fabio:Figure",
  "paper-conference": "fabio:ConferencePaper",
  personal_communication: "fabio:PersonalCommunication",
  report: "fabio:Report",
};

/** The FaBiO class of a bibliography's entry; null where its type in CSL does not say enough. */
export function sourceClass({ type, genre }: CslItem): Known | null {
  if (type === "thesis")
    return typeof genre === "string" && /ph\.?\s?d|doct/i.test(genre) ? "fabio:DoctoralThesis" : null;
  return Object.hasOwn(classes, type) ? (classes[type] ?? null) : null;
}
