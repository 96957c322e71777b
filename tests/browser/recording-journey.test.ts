import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { walk } from "./chromium.ts";
import { choose, fill, newRecord, paste, save } from "./forms-keys.ts";
import { smallPdf } from "./small-pdf.ts";
import { filesOf, frames, tabTo, through, visit } from "./through.ts";

const empty = filesOf({ "corpus.yaml": "format: 1\ntitle: The Sallow Row\nlanguage: en\n" });

const entries = `@book{hale-1990,
  author = {Hale, Ada},
  title  = {The Row},
  year   = {1990},
  langid = {english}
}

@article{reed-2001,
  author  = {Reed, Mal},
  title   = {The Row Again},
  journal = {Field Club},
  year    = {2001}
}
`;

const paper = smallPdf(
  [
    { lines: ["The row was set out in feet, as I hold.", "The chalk is soft."] },
    { lines: ["From end to end it is 31.2 m long."] },
  ],
  { printed: 57 },
);

/** Gaps of pits in whole feet, as somebody read them off a tape; last the length of the row, which Hale has otherwise. */
const feet = [3, 4, 5, 3, 6, 4, 5, 7, 3, 4, 6, 5, 4, 3, 5, 6, 4, 7, 5];
const slips = [0, 1, -1, 0.5, 0, -0.5, 1, 0, -1, 0.5, 0, 1, -0.5, 0, 0.5, -1, 0, 1, 0];
const spreadsheet = [
  "Object\tDimension\tFigure\tBetween",
  ...feet.map(
    (n, at) =>
      `The pit row\tgap\t${(n * 30.48 + (slips[at] ?? 0)).toFixed(1)} cm\tpit ${at + 1} to pit ${at + 2}`,
  ),
  "The pit row\tlength\t27.1 m\t",
].join("\n");

/** Says what an argument in hand leans on and why, and saves it. */
async function argued(page: Page, premise: string, step: string): Promise<void> {
  const hand = page.locator(".in-hand");
  await hand.getByRole("combobox", { name: "Search for a premise" }).fill(premise);
  await expect.poll(() => hand.getByRole("listbox").getByRole("option").count()).toBe(1);
  await page.keyboard.press("Enter");
  await hand.getByLabel("The step in words").fill(step);
  await page.keyboard.press("Control+Enter");
  await expect.poll(() => hand.getByRole("heading").textContent()).toBe("Saved. What changed");
  await hand.getByRole("button", { name: "Close" }).press("Enter");
}

const standings = (page: Page): Promise<readonly string[]> =>
  page.locator("main :is(.answers, .verdict) .standing").allInnerTexts();

/** All that a scholar wrote, file by file. */
function written(folder: string): Readonly<Record<string, string>> {
  const names = readdirSync(folder).filter((name) => /\.(?:yaml|bib)$/u.test(name));
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(folder, name), "utf8")]));
}

walk("goes from an empty folder to an argued dispute", async (page) => {
  await through(page, empty, async ({ folder }) => {
    // The literature.
    await visit(page, "/literature");
    await tabTo(page, "Bring in a bibliography");
    await page.keyboard.press("Enter");
    await page.locator('main[data-shown="/import"]:focus').waitFor();
    await tabTo(page, "Or paste entries or a table");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Tab");
    await page.keyboard.insertText(entries);
    await tabTo(page, "Read the text");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator(".counts").allInnerTexts()).toEqual(["2 to be added"]);
    await tabTo(page, /^\s*Add two sources/);
    await page.keyboard.press("Enter");
    await page.locator(".done").waitFor();
    await visit(page, "/literature");
    await page.getByRole("checkbox", { name: "Choose Hale 1990" }).focus();
    await page.keyboard.press("r");
    await expect.poll(() => page.getByLabel("What became of Hale 1990").inputValue()).toBe("read");

    await newRecord(page, "artefact");
    await fill(page, "name", "The pit row");
    await save(page);

    // Two passages of a paper, with what is taken from them.
    await visit(page, "/paper/hale-1990");
    await page.setInputFiles("input[type=file]", {
      name: "Hale.pdf",
      mimeType: "application/pdf",
      buffer: Buffer.from(paper),
    });
    const sheet = page.locator(".capture");
    const ready = page.getByRole("button", { name: "Take these words" });
    const takeLine = async (words: number): Promise<void> => {
      // Words can be selected once the paper has been read.
      await expect
        .poll(async () => {
          if ((await ready.count()) === 0) await page.keyboard.press("s");
          await frames(page, 4);
          return ready.count();
        })
        .toBe(1);
      for (let word = 1; word < words; word++) await page.keyboard.press("Shift+ArrowRight");
      await page.keyboard.press("c");
      await sheet.waitFor();
    };
    await page.locator(".paper-text span").first().waitFor();
    await takeLine(10);
    await sheet.getByRole("button", { name: "a claim" }).press("Enter");
    await page.keyboard.type("The row was set out in feet.");
    await sheet.getByRole("button", { name: "a position" }).press("Enter");
    await sheet.getByLabel("Stance").selectOption("holds");
    await page.keyboard.press("Control+Enter");
    await page.getByRole("link", { name: "Passage 1, p. 57" }).waitFor();
    await page.keyboard.press("g");
    await page.keyboard.type("58");
    await page.keyboard.press("Enter");
    await page.locator('[data-sheet="1"] .paper-text span').first().waitFor();
    await page.locator(".paper-window").focus();
    await takeLine(9);
    await sheet.getByRole("button", { name: "a measurement" }).press("Enter");
    await page.keyboard.type("pit row");
    await page.locator("[role=option][aria-selected=true]").waitFor();
    await page.keyboard.press("Enter");
    await sheet.getByRole("button", { name: "Take 31.2 m" }).press("Enter");
    await sheet.getByLabel("Dimension").fill("length");
    await page.keyboard.press("Control+Enter");
    await page.getByRole("link", { name: "Passage 2, p. 58" }).waitFor();

    // A question from the floor, the claim as its answer, and a rival to it.
    await page.keyboard.press("q");
    await page.keyboard.type("How was the row set out?");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator(".floor output").textContent()).toMatch(/^Kept/);
    await visit(page, "/");
    await page
      .getByRole("button", { name: "Work in as a question: How was the row set out?" })
      .press("Enter");
    await page.getByRole("heading", { name: "New question", level: 1 }).waitFor();
    await choose(page, "answers", "feet");
    await save(page);
    await visit(page, "/question/how-was-the-row-set-out");
    await page.getByRole("button", { name: "Argue for another answer" }).press("Enter");
    await page.keyboard.type("The row was paced.");
    await argued(page, "length", "A line so long is paced, not taped.");
    await expect.poll(() => standings(page)).toEqual(["unsupported", "stands"]);
    await page.getByRole("link", { name: "The row was set out in feet." }).press("Enter");
    await page.getByRole("button", { name: "Argue against it" }).press("Enter");
    await argued(page, "length", "31.2 m is no whole number of feet.");
    await expect.poll(() => standings(page)).toEqual(["falls"]);

    // Twenty figures from a spreadsheet; one of them is otherwise in Hale.
    await visit(page, "/grid?of=the-pit-row&from=reed-2001");
    await page.getByRole("grid", { name: "Measurements" }).waitFor();
    await page.locator("[role=grid] td[tabindex='0']").focus();
    await paste(page, spreadsheet);
    await page.getByText("Before it is put in").waitFor();
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator(".saves output").innerText()).toBe("20 rows were put in.");
    await page.keyboard.press("Control+Enter");
    await expect
      .poll(() => page.locator(".saves output").innerText())
      .toContain("20 measurements were saved");

    // The two lengths are at odds until an argument chooses.
    await visit(page, "/findings");
    await page
      .getByRole("link", { name: /31\.2 m/ })
      .first()
      .press("Enter");
    await page.getByRole("button", { name: "Argue against it" }).press("Enter");
    await argued(page, "27.1", "Reed laid a tape from end to end; Hale paced.");
    await expect.poll(() => standings(page)).toEqual(["falls"]);

    // A unit fitted to the gaps.
    await visit(page, "/workbench");
    await tabTo(page, "Unit fit");
    await page.keyboard.press("Enter");
    await page.locator(".input").first().waitFor();
    await page.getByRole("combobox", { name: "Things", exact: true }).selectOption({ label: "The pit row" });
    await page.getByRole("button", { name: "Add: Things" }).press("Enter");
    await page.getByRole("combobox", { name: "Dimension", exact: true }).selectOption("gap");
    await page.getByLabel("unit", { exact: true }).fill("foot");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator(".came").innerText()).toMatch(/n\s*19[^]*q\s*30\.50 cm/);
    await page.getByRole("button", { name: "Save this number" }).press("Enter");
    await page.waitForURL(/\/number\//);

    // What is left in the folder reads as if somebody had typed it.
    const files = written(folder);
    expect(Object.keys(files)).toEqual(
      "arguments artefacts bibliography.bib claims corpus derivations measurements passages positions questions readings scholars"
        .split(" ")
        .map((name) => (name.includes(".") ? name : `${name}.yaml`)),
    );
    expect(files["bibliography.bib"]).toBe(entries);
    expect(files["claims.yaml"]).toBe(`claims:
  - id: the-row-was-set-out-in-feet
    text: The row was set out in feet.
    from: hale-1990-p-57
  - id: the-row-was-paced
    text: The row was paced.
`);
    expect(files["questions.yaml"]).toBe(`questions:
  - id: how-was-the-row-set-out
    text: How was the row set out?
    answers: [the-row-was-set-out-in-feet, the-row-was-paced]
`);
    expect(files["measurements.yaml"]?.split("\n").slice(0, 3)).toEqual([
      "measurements:",
      "  - { of: the-pit-row, dimension: length, value: 31.2 m, from: hale-1990-p-58 }",
      "  - { of: the-pit-row, dimension: gap, value: 91.4 cm, between: pit 1 to pit 2, from: reed-2001 }",
    ]);
    expect(files["measurements.yaml"]?.split("\n")).toHaveLength(23);
    expect(files["derivations.yaml"]).toBe(`derivations:
  - id: the-pit-row-gap-unit-fit
    plugin: unit-fit
    inputs:
      values: { of: the-pit-row, dimension: gap }
    parameters: { unit: foot }
`);
    expect(files["arguments.yaml"]).toContain(`
  - id: reed-laid-a-tape-from-end-to-end-hale
    because: [the-pit-row:length@reed-2001]
    against: the-pit-row:length@hale-1990
    text: Reed laid a tape from end to end; Hale paced.
`);
    expect(files["passages.yaml"]).toContain(`
      refinedBy:
        type: TextQuoteSelector
        exact: The row was set out in feet, as I hold.
        suffix: " The chalk is soft."
`);
  });
});
