import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { unzipped } from "../../src/host/telling/files/zip.ts";
import { walk } from "./chromium.ts";
import { choose, fill, newRecord, save } from "./forms-keys.ts";
import { row, toLabel } from "./row-walk.ts";
import { focused, tabTo, through } from "./through.ts";

/** Presses a hand would make: counted from the first page on, whatever the walk does. */
async function handless(page: Page): Promise<() => Promise<number>> {
  await page.addInitScript(() => {
    const all = window as Window & { presses?: number };
    all.presses = 0;
    for (const kind of ["pointerdown", "mousedown", "touchstart", "wheel"])
      addEventListener(kind, () => (all.presses = (all.presses ?? 0) + 1), { capture: true });
  });
  return () => page.evaluate(() => (window as Window & { presses?: number }).presses ?? -1);
}

const go = async (page: Page, to: string | RegExp, heading: string): Promise<void> => {
  await tabTo(page, to);
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: heading, level: 1 }).waitFor();
};

/** Says in the argument in hand what it leans on and why, saves it, and closes it. */
async function argued(page: Page, premise: string, step: string): Promise<void> {
  const hand = page.locator(".in-hand");
  await hand.waitFor();
  await toLabel(page, "Search for a premise");
  await page.keyboard.type(premise);
  await expect.poll(() => hand.getByRole("listbox").getByRole("option").count()).toBe(1);
  await page.keyboard.press("Enter");
  await toLabel(page, "The step in words");
  await page.keyboard.type(step);
  await page.keyboard.press("Control+Enter");
  await expect.poll(() => hand.getByRole("heading").textContent()).toBe("Saved. What changed");
  await tabTo(page, /^\s*Close\s*$/);
  await page.keyboard.press("Enter");
  await expect.poll(() => hand.count()).toBe(0);
}

/** A number of the gaps, made at the workbench and saved. */
async function computed(page: Page): Promise<void> {
  await go(page, /^\s*Numbers$/, "Numbers");
  await page.keyboard.press("m");
  await page.getByRole("heading", { name: "Make a number", level: 1 }).waitFor();
  await tabTo(page, "Spacing");
  await page.keyboard.press("Enter");
  await page.locator(".input").first().waitFor();
  await toLabel(page, "Things");
  await page.keyboard.type("The pit row");
  await page.keyboard.press("Enter");
  await toLabel(page, "Dimension");
  await page.keyboard.type("gap");
  await expect.poll(() => page.locator(".came").innerText()).toMatch(/n\s*10/);
  await tabTo(page, "Save this number");
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/number\//);
}

/** The review as Markdown, from the page that writes. */
async function written(page: Page): Promise<string> {
  await go(page, /^\s*To write$/, "To write");
  await page.locator(".manuscript").waitFor();
  const coming = page.waitForEvent("download");
  await tabTo(page, "Markdown (.md)");
  await page.keyboard.press("Enter");
  const bytes = readFileSync(await (await coming).path());
  // With its pictures it comes as one file of several.
  const files =
    bytes.toString("latin1", 0, 2) === "PK" ? unzipped(bytes) : [{ path: "a.md", content: bytes }];
  return files
    .filter(({ path }) => path.endsWith(".md"))
    .map(({ content }) => Buffer.from(content).toString("utf8"))
    .join("\n");
}

const texts = (folder: string): string =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".yaml"))
    .map((name) => readFileSync(join(folder, name), "utf8"))
    .join("\n");

/** Argues by the outline, where no picture is, goes down the argument to the thing, takes it back, and writes. */
async function byOutline(page: Page, folder: string): Promise<void> {
  const before = texts(folder);
  /** Goes along the lines of the outline until one reads so. */
  const toLine = async (words: string): Promise<void> => {
    await go(page, /^\s*Outline$/, "Outline");
    await tabTo(page, "treeitem");
    await page.keyboard.press("Home");
    for (let step = 0; step < 80; step++) {
      if ((await focused(page)).includes(words)) return;
      const isFolded = await page.evaluate(() => document.activeElement?.getAttribute("aria-expanded"));
      await page.keyboard.press(isFolded === "false" ? "ArrowRight" : "ArrowDown");
    }
    throw new Error(`The outline has no “${words}”`);
  };
  await toLine("How was the row set out?");
  await page.keyboard.press("Enter");
  await page.locator(".kind", { hasText: "question" }).waitFor();
  await toLine("dug as they came");
  await expect.poll(() => focused(page)).toContain("unsupported");
  await expect.poll(() => page.locator(".arguing-ways").innerText()).toContain("Argue for it");
  await page.keyboard.press("t");
  await argued(page, "peg", "Nobody would line up what has a peg at one end only.");
  await toLine("dug as they came");
  // Against the other answer, which stood until then.
  await expect.poll(() => focused(page)).toContain("open");
  expect(texts(folder)).toContain("therefore: anyhow");

  // Down the argument to what was seen, and to the thing.
  await toLine("A peg stood at the end");
  await page.keyboard.press("Enter");
  await page.locator(".kind", { hasText: "observation" }).waitFor();
  await toLine("The pit row");
  await page.keyboard.press("Enter");
  await page.locator(".kind", { hasText: "artefact" }).waitFor();

  await toLine("dug as they came");
  await page.keyboard.press("Control+z");
  await expect.poll(() => texts(folder)).toBe(before);
  await expect.poll(() => page.getByRole("tree").innerText()).not.toContain("peg at one end");
  expect(await written(page)).toContain("The pits were dug as they came");
}

walk(
  "opens, records, argues, computes, takes back and writes without a hand on anything but keys, by pages and by the outline",
  async (page) => {
    const presses = await handless(page);
    await through(page, row, async ({ folder }) => {
      await go(page, "How was the row set out?", "How was the row set out?");
      await newRecord(page, "observation");
      await choose(page, "of", "pit row");
      await fill(page, "text", "Cord marks lay in the chalk.");
      await save(page);

      await go(page, /^\s*Questions$/, "Questions");
      await go(page, "How was the row set out?", "How was the row set out?");
      await go(page, "at even gaps.", "The pits were set out at even gaps.");
      await tabTo(page, "Argue for it");
      await page.keyboard.press("Enter");
      await argued(page, "cord", "A cord was stretched along the row.");
      await expect.poll(() => page.locator("main .verdict .standing").first().innerText()).toBe("stands");

      await computed(page);
      const before = texts(folder);
      expect(before).toContain("plugin: spacing");
      await page.keyboard.press("Control+z");
      await expect.poll(() => texts(folder)).not.toContain("plugin: spacing");
      await page.keyboard.press("Control+Shift+z");
      await expect.poll(() => texts(folder)).toBe(before);

      expect(await written(page)).toContain("A cord was stretched along the row.");
      await byOutline(page, folder);
      expect(await presses()).toBe(0);
    });
  },
);
