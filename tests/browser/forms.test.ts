import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { build } from "../../src/build.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../src/host/evaluate.ts";
import { listNames } from "../../src/read/grammar/kinds.ts";
import { walk } from "./chromium.ts";
import { empty, made } from "./forms-filled.ts";
import { fill, newRecord, rename, save, toField } from "./forms-keys.ts";
import { filesOf, keptAtDesk, tabTo, through, visit } from "./through.ts";

walk("makes one record of each kind in an empty corpus, by keys alone", async (page) => {
  await through(page, empty, async ({ folder }) => {
    for (const [singular, filled] of made) {
      await newRecord(page, singular);
      await filled(page);
      await save(page);
    }
    const { model, findings } = build(readCorpusFolder(folder), plugins, emptyMemo());
    for (const list of listNames) expect(model?.graph.list(list), list).toHaveLength(1);
    const errors = findings.filter((one) => one.level === "error" && one.rule !== "failed-derivation");
    expect(errors.map((one) => one.message)).toEqual([]);
    expect(model?.judgement.standings.get("the-inner-ring-carried-a-roof")).toBe("stands");
  });
});

const rings = filesOf({
  "corpus.yaml": "title: Two rings\nlanguage: en\nbibliography: [sources.bib]\n",
  "sources.bib": "@book{vane-1968, author = {Vane, Isolde}, title = {Posts of the Down}, year = 1968}\n",
  "rings.yaml": `# Rings of the Down.
artefacts:
  - { id: ring-a, name: The inner ring } # the small one
claims:
  - id: roofed
    text: The ring carried a roof.
    note: to be checked
questions:
  - { id: what, text: What was it?, answers: roofed }
`,
});
const textOf = (folder: string): string => readFileSync(join(folder, "rings.yaml"), "utf8");

walk("changes one value of a record, and one line of its file", async (page) => {
  await through(page, rings, async ({ folder }) => {
    const before = textOf(folder);
    await visit(page, "/record/roofed");
    await page.keyboard.press("c");
    await page.locator("form.form").waitFor();
    await toField(page, "text");
    await page.keyboard.press("Control+A");
    await page.keyboard.insertText("The ring was roofed: with thatch.");
    await save(page);
    await page.getByRole("heading", { name: "The ring was roofed: with thatch.", level: 1 }).waitFor();
    expect(textOf(folder)).toBe(
      before.replace("text: The ring carried a roof.", `text: "The ring was roofed: with thatch."`),
    );
    await page.keyboard.press("Control+z");
    await expect.poll(() => textOf(folder)).toBe(before);
  });
});

walk("refuses what is not right yet, takes the focus there, and mends it by one press", async (page) => {
  await through(page, rings, async ({ folder }) => {
    await visit(page, "/new/measurements?of=ring-a");
    await fill(page, "dimension", "depth");
    await page.keyboard.press("Control+Enter");
    await page.getByText("Missing “value”, expected in every such record").waitFor();
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("at-value");
    await page.keyboard.insertText("18,2 cm");
    await page.getByText("Unexpected number “18,2”").waitFor();
    await expect.poll(() => page.locator("#at-value").getAttribute("aria-invalid")).toBe("true");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("#at-value").inputValue()).toBe("18.2 cm");
    await page.getByText("read to the last digit").waitFor();
    expect(textOf(folder)).not.toContain("measurements");

    // Half filled, and still there after the page was loaded again and in another tab.
    await page.reload();
    await expect.poll(() => page.locator("#at-value").inputValue()).toBe("18.2 cm");
    await expect.poll(() => keptAtDesk(folder)).toContain("18.2 cm");
    await page.evaluate(() => sessionStorage.removeItem("variorum form /new/measurements?of=ring-a"));
    await page.reload();
    await expect.poll(() => page.locator("#at-value").inputValue()).toBe("18.2 cm");
    await visit(page, "/records");
    await page.getByRole("link", { name: "New measurement: depth" }).click();
    await toField(page, "value");
    await save(page);
    expect(textOf(folder)).toContain("value: 18.2 cm");
    await visit(page, "/records");
    await expect.poll(() => page.getByRole("heading", { name: "Drafts" }).count()).toBe(0);
  });
});

walk("meets somebody else's change, and writes nothing over it unseen", async (page) => {
  await through(page, rings, async ({ folder }) => {
    await visit(page, "/edit/roofed");
    await toField(page, "text");
    await page.keyboard.press("Control+A");
    await page.keyboard.insertText("Mine.");
    await toField(page, "note");
    await page.keyboard.press("Control+A");
    await page.keyboard.insertText("my note");
    const theirs = textOf(folder)
      .replace("The ring carried a roof.", "Theirs.")
      .replace("to be checked", "checked");
    const again = page.waitForResponse(/\/corpus\/files/);
    writeFileSync(join(folder, "rings.yaml"), theirs);
    await again;
    await page.keyboard.press("Control+Enter");
    await page.getByRole("heading", { name: "Somebody else changed it meanwhile" }).waitFor();
    expect(textOf(folder)).toBe(theirs);
    await expect
      .poll(() => page.locator(".differs").first().textContent())
      .toMatch(/The ring carried a roof\..*Theirs\..*Mine\./);
    await tabTo(page, "Write mine: text");
    await page.keyboard.press("Enter");
    await tabTo(page, "Keep theirs: note");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("Save");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Mine.", level: 1 }).waitFor();
    expect(textOf(folder)).toBe(theirs.replace("Theirs.", "Mine."));
  });
});

walk("makes a new answer, gives it another name, and takes it out again", async (page) => {
  await through(page, rings, async ({ folder }) => {
    const before = textOf(folder);
    await visit(page, "/question/what");
    await tabTo(page, "New answer");
    await page.keyboard.press("Enter");
    await fill(page, "text", "The ring carries a roof.");
    await page.getByText("Nearly the same is recorded already").waitFor();
    await page.getByRole("link", { name: "The ring carried a roof." }).waitFor();
    await save(page);
    await expect.poll(() => textOf(folder)).toMatch(/answers: \[roofed, the-ring-carries-a-roof\]/);

    await rename(page, "roofed");
    await page.getByText("Duplicate id “roofed”").waitFor();
    await page.keyboard.press("Control+A");
    await page.keyboard.insertText("roof-still");
    await page.keyboard.press("Enter");
    await page.waitForURL(/record\/roof-still/);
    await page.locator("article.sheet").waitFor();
    expect(textOf(folder)).toMatch(/answers: \[roofed, roof-still\]/);

    await page.keyboard.press("c");
    await page.locator("form.form").waitFor();
    await tabTo(page, /^\s*Take out$/);
    await page.keyboard.press("Enter");
    await page.getByText("One record refers to it:").waitFor();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.waitForURL(/\/records/);
    expect(textOf(folder)).not.toContain("The ring carries a roof.");
    for (let step = 0; step < 4; step++) {
      const now = textOf(folder);
      await page.keyboard.press("Control+z");
      await expect.poll(() => textOf(folder)).not.toBe(now);
    }
    expect(textOf(folder)).toBe(before);
  });
});
