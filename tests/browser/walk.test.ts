import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { walk } from "./chromium.ts";
import { copyOf, tabTo, through, visit } from "./through.ts";

const corpus = copyOf("tests/corpora/walk");

const answers = (page: Page) => page.locator("table.answers tbody tr");

walk("reads the question, moves the year and follows a claim to its artefact by keys alone", async (page) => {
  await through(page, corpus, async () => {
    await page.getByRole("heading", { name: "Questions", level: 1 }).waitFor();
    await tabTo(page, "Was the ditch dug");
    await page.keyboard.press("Enter");
    await page
      .getByRole("heading", { name: "Was the ditch dug for defence or for drainage?", level: 1 })
      .waitFor();
    await expect.poll(() => answers(page).count()).toBe(2);
    await expect.poll(() => answers(page).nth(0).textContent()).toContain("open");

    await tabTo(page, "slider");
    await page.keyboard.press("ArrowLeft");
    await expect.poll(() => page.locator("output.year").textContent()).toBe("1896");
    await expect.poll(() => answers(page).count()).toBe(1);
    await expect.poll(() => answers(page).nth(0).textContent()).toContain("stands");
    expect(new URL(page.url()).searchParams.get("as-of")).toBe("1896");
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => answers(page).count()).toBe(2);

    await tabTo(page, "The ditch was dug for defence.");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "The ditch was dug for defence.", level: 1 }).waitFor();
    await tabTo(page, "Hale 1896's argument");
    await page.keyboard.press("Enter");
    await page.locator(".kind", { hasText: "argument" }).waitFor();
    await tabTo(page, /^\s*The sides are steep/);
    await page.keyboard.press("Enter");
    await page.locator(".kind", { hasText: "observation" }).waitFor();
    await tabTo(page, "The ditch at Merrow End");
    await page.keyboard.press("Enter");
    await page.locator(".kind", { hasText: "artefact" }).waitFor();
    await page.getByRole("heading", { name: "The ditch at Merrow End", level: 1 }).waitFor();
  });
});

walk("sees a standing change after a file was edited on disk, and says so", async (page) => {
  await through(page, corpus, async ({ folder }) => {
    await page.getByRole("heading", { name: "Questions", level: 1 }).waitFor();
    await visit(page, "/question/what-for");
    await expect.poll(() => answers(page).nth(0).textContent()).toContain("open");
    const file = join(folder, "ditch.yaml");
    const text = readFileSync(file, "utf8");
    writeFileSync(
      file,
      text.replace("    scheme: function\n    text: Steep", "    strength: strong\n    text: Steep"),
    );
    await expect.poll(() => answers(page).nth(0).textContent()).toContain("stands");
    await expect
      .poll(() => page.locator(".changed").textContent())
      .toContain("The ditch was dug for defence: was open, now stands");
    await expect.poll(() => page.locator(".changed").getAttribute("aria-live")).toBe("polite");
    await expect.poll(() => answers(page).nth(0).locator(".standing.stands svg path").count()).toBe(1);
  });
});

walk("unfolds the outline and opens a sheet by keys alone", async (page) => {
  await through(page, corpus, async () => {
    await page.getByRole("heading", { name: "Questions", level: 1 }).waitFor();
    await visit(page, "/outline");
    await page.getByRole("tree").waitFor();
    await tabTo(page, "treeitem");
    for (const key of ["ArrowDown", "ArrowRight", "ArrowRight", "ArrowRight", "ArrowRight"])
      await page.keyboard.press(key);
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent))
      .toContain("The sides are steep");
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("Home");
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent))
      .toContain("Was the ditch dug");
    await page.keyboard.press("Enter");
    await page.locator(".kind", { hasText: "question" }).waitFor();
  });
});

const script = `<img src=x onerror="window.ran=1"><script>window.ran=1</script>`;

walk("shows hostile text in any field as text", async (page) => {
  await through(page, corpus, async ({ folder }) => {
    await page.getByRole("heading", { name: "Questions", level: 1 }).waitFor();
    const hostile = {
      scholars: [{ id: "s", name: `Ada ${script}` }],
      artefacts: [{ id: "thing", name: `Thing ${script}`, kind: script, "held-at": script, note: script }],
      questions: [{ id: "what-for", text: `Why ${script}?`, answers: ["a", "b"] }],
      claims: [
        { id: "a", text: `Because ${script}` },
        { id: "b", text: `Not ${script}`, short: `Not ${script.slice(0, 20)}` },
      ],
      observations: [{ id: "o", of: "thing", text: `Seen ${script}`, feature: script, from: `k ${script}` }],
      measurements: [{ of: "thing", dimension: `width ${script}`, value: "3 m", condition: script }],
      passages: [{ id: "p", at: script, quote: script, lang: `"><b>`, from: "k" }],
      positions: [{ who: "s", claim: "a", stance: "holds", words: script, from: "k" }],
      arguments: [
        { id: "arg", because: ["o", "nowhere"], therefore: "a" },
        { id: "arg2", because: "o", therefore: "a", text: script, from: "k" },
      ],
      [script]: [],
    };
    writeFileSync(join(folder, "ditch.yaml"), JSON.stringify(hostile));
    writeFileSync(
      join(folder, "sources.bib"),
      `@book{k, author = {Ada ${script}}, title = {Title ${script}}, year = 1990}\n`,
    );
    writeFileSync(
      join(folder, "corpus.yaml"),
      JSON.stringify({ title: `Corpus ${script}`, bibliography: "sources.bib" }),
    );
    const pages = [
      "/",
      "/question/what-for",
      "/outline",
      "/records",
      "/findings",
      "/record/a",
      "/record/o",
      "/record/thing",
      "/record/p",
      "/record/k",
      "/record/s",
      "/record/arg2",
    ];
    for (const path of pages) {
      await visit(page, path);
      await page.locator("h1").waitFor();
      await expect.poll(() => page.locator("body").textContent()).toContain("<img src=x");
      expect(await page.evaluate(() => "ran" in window)).toBe(false);
    }
  });
});
