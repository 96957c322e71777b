import type { Page } from "playwright-core";
import { pickByTyping } from "./forms-keys.ts";
import { filesOf, pressUntil } from "./through.ts";
import type { Fill } from "./through.ts";

const gaps = [1.02, 0.99, 1.01, 0.98, 1.0, 1.03, 0.97, 1.01, 1.0, 0.99];

/** A row of pits whose gaps one survey measured; nobody has argued yet. */
export const row: Fill = filesOf({
  "corpus.yaml": "title: The Sallow Row\nbibliography: [sources.bib]\n",
  "sources.bib": "@book{hale, author = {Hale, Ada}, title = {The row}, year = 1990}\n",
  "row.yaml": [
    "# The row as Hale drew it.",
    "artefacts:",
    "  - { id: row, name: The pit row }",
    ...gaps.map((_, at) => `  - { id: row/pit-${at}, name: Pit ${at} }`),
    "measurements:",
    ...gaps.map(
      (gap, at) =>
        `  - { id: g${at}, of: row/pit-${at}, dimension: gap, from: hale, value: ${gap.toFixed(2)} ± 0.02 m }`,
    ),
    "observations:",
    "  - { id: peg, of: row, text: A peg stood at the end., from: hale }",
    "questions:",
    "  - { id: how, text: How was the row set out?, answers: [evenly, anyhow] }",
    "claims:",
    "  - { id: evenly, text: The pits were set out at even gaps. }",
    "  - { id: anyhow, text: The pits were dug as they came. }",
    "",
  ].join("\n"),
});

/** Presses Tab until a field with these words in its label has the focus: any, or one of a kind of element. */
export async function toLabel(page: Page, words: string, kind = "input, textarea, select"): Promise<void> {
  const label = (): Promise<string> =>
    page.evaluate((wanted) => {
      const one = document.activeElement;
      if (!one?.matches(wanted)) return "";
      const by = document.getElementById(one.getAttribute("aria-labelledby") ?? "");
      const own = (one as HTMLInputElement).labels?.[0];
      return one.getAttribute("aria-label") ?? by?.textContent ?? own?.textContent ?? "";
    }, kind);
  await pressUntil(page, "Tab", async () => (await label()).includes(words), words);
}

/** Types what one of a list of choices begins with, as the keyboard picks it. */
export async function chooseBy(page: Page, label: string, words: string): Promise<void> {
  await toLabel(page, label, "select");
  await pickByTyping(page, words);
}
