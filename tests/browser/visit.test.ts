import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { visitBlocks } from "../../src/show/desk/visit/blocks/blocks.ts";
import { visitPage } from "../../src/write/visit/page.ts";
import { lookAsked, sheetOf, visitFiles } from "../laws/planning/visit-cases.ts";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { filesOf, through, visit } from "./through.ts";

const text = (page: Page, selector: string): Promise<string> =>
  page
    .locator(selector)
    .allTextContents()
    .then((all) => all.join(" "));

walk(
  "takes three readings by keys alone, shows earlier values after them, and saves one step",
  async (page) => {
    await page.setViewportSize({ width: 390, height: 800 });
    await through(page, filesOf(visitFiles), async ({ folder }) => {
      const things = (): string => readFileSync(join(folder, "things.yaml"), "utf8");
      const row = page.locator(".measure").nth(1);
      await visit(page, "/visit/look");
      await row.waitFor();
      expect(await text(page, ".visit-page")).not.toContain("42.7");
      await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
      await page.getByLabel("Who looks and measures").focus();
      await page.keyboard.type("Reed, M.");
      await page.keyboard.press("Enter");
      await page.keyboard.type("2026-05-04");
      await row.getByLabel("Reading 1").focus();
      for (const reading of ["41", "42", "43"]) {
        await page.keyboard.type(reading);
        await page.keyboard.press("Enter");
      }
      await expect.poll(() => row.locator(".sums").textContent()).toContain("mean 42.0 cm");
      await expect.poll(() => row.locator(".sums").textContent()).toContain("42.0 ± 1.0 cm");
      await expect.poll(() => row.locator(".earlier").textContent()).toContain("42.7 cm Hale 1990");
      expect(await text(page, ".visit-page")).not.toContain("61.3");
      await expect.poll(() => text(page, ".to-corpus output")).toBe("Kept at the desk.");
      // What is typed outlives a reload.
      await page.reload();
      await expect.poll(() => row.locator(".sums").textContent()).toContain("42.0 ± 1.0 cm");
      await page.locator(".after summary").focus();
      await page.keyboard.press("Enter");
      await page.getByLabel("The hole is charred.").focus();
      await page.keyboard.press("Space");
      expect(await complaintsOf(page)).toEqual([]);
      await page
        .getByRole("button", { name: "Save one measurement, one observation and two arguments" })
        .press("Enter");
      await page.locator(".done").waitFor();
      await expect.poll(() => text(page, ".decided")).toContain("The hole was bored");
      expect(things()).toContain("value: 42.0 ± 1.0 cm");
      await page.getByRole("heading", { name: "What it decided" }).click();
      await page.keyboard.press("Control+z");
      await expect.poll(things).toBe(visitFiles["things.yaml"]);
    });
  },
);

walk("a sheet that was taken along is filled in without the program, and comes back", async (page) => {
  await through(page, filesOf(visitFiles), async ({ folder }) => {
    const sheet = sheetOf(visitFiles);
    const file = join(folder, ".sheet.html");
    writeFileSync(
      file,
      visitPage(visitBlocks(sheet, { withValues: false }), { asked: lookAsked, corpus: sheet.corpus }),
    );
    const paper = await page.context().newPage();
    const complaints: string[] = [];
    paper.on("pageerror", (error) => complaints.push(error.message));
    paper.on("console", (message) => complaints.push(message.text()));
    await paper.goto(pathToFileURL(file).href);
    const row = paper.locator("section.row", { hasText: "length of the first peg" }).first();
    await paper.getByLabel("who looks and measures").fill("reed");
    await paper.getByLabel("day", { exact: true }).fill("2026-05-04");
    await row.getByLabel("reading 1").fill("427");
    await row.getByLabel("unit").selectOption("mm");
    expect(await row.textContent()).not.toContain("42.7");
    // A browser writes what a page keeps a moment after it was told to.
    const readAgain = async (): Promise<string> => {
      await paper.reload();
      return row.getByLabel("reading 1").inputValue();
    };
    await expect.poll(readAgain).toBe("427");
    await row.getByRole("button").click();
    await expect.poll(() => row.textContent()).toContain("Earlier: 42.7 cm (Hale 1990)");
    const [download] = await Promise.all([
      paper.waitForEvent("download"),
      paper.getByRole("button", { name: "Save as a file" }).click(),
    ]);
    const saved = await download.path();
    const returned = readFileSync(saved);
    expect(complaints).toEqual([]);
    await paper.close();

    await visit(page, "/visit");
    await page.setInputFiles("input[type=file]", {
      name: "visit.json",
      mimeType: "application/json",
      buffer: returned,
    });
    await page.getByRole("heading", { name: "Look at the hole under raking light" }).waitFor();
    await page.getByRole("button", { name: "Save one measurement" }).click();
    await page.locator(".done").waitFor();
    const made = readFileSync(join(folder, "things.yaml"), "utf8");
    expect(made).toContain("value: 427 mm");
    expect(made).toContain(
      "Visit of 2026-05-04. Earlier values were looked at before all readings were taken.",
    );
  });
});
