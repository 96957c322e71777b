import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { walk } from "./chromium.ts";
import { copyOf, through, visit } from "./through.ts";

const demo = copyOf("demo-corpus");

const focused = (page: Page): Promise<string> =>
  page.evaluate(() => `${document.activeElement?.tagName} ${document.activeElement?.textContent?.trim()}`);
const hits = (page: Page) => page.locator("a.hit");

/** From wherever one is: the key, the words, Enter. */
async function search(page: Page, text: string): Promise<void> {
  await page.keyboard.press("/");
  await page.keyboard.insertText(text);
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "Search", level: 1 }).waitFor();
  // All of the corpus is gone through: no better hit comes any more.
  await expect.poll(() => page.locator("output.told").textContent()).toMatch(/^Found in(?!.*Still reading)/);
}

walk("finds a scholar by a Greek word, in capitals and without accents, by keys alone", async (page) => {
  await through(page, demo, async () => {
    await search(page, "ΜΑΥΡΟΓΙΑΝΝΗ");
    await expect.poll(() => hits(page).first().textContent()).toContain("Μαυρογιάννη");
    await expect.poll(() => page.locator("a.hit mark").first().textContent()).toBe("Μαυρογιάννη");
    const scholars = page.locator("section", { has: page.getByRole("heading", { name: /^scholars/ }) });
    await expect.poll(() => scholars.locator("a.hit").count()).toBe(1);
    const place = await hits(page).evaluateAll((links) =>
      links.findIndex((link) => link.getAttribute("href") === "/record/mavrogianni"),
    );
    expect(place).toBeGreaterThanOrEqual(0);
    for (let step = 0; step <= place; step++) await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await page.locator(".kind", { hasText: "scholar" }).waitFor();
    await page.goBack();
    await expect.poll(() => page.locator("#search-field").inputValue()).toBe("ΜΑΥΡΟΓΙΑΝΝΗ");
  });
});

walk("finds a thing by its inventory number, whole and without its points", async (page) => {
  await through(page, demo, async () => {
    await search(page, "TH 1998.41.412");
    await expect.poll(() => hits(page).first().getAttribute("href")).toMatch(/^\/record\//);
    const thing = await hits(page).first().getAttribute("href");
    await page.keyboard.press("ControlOrMeta+a");
    await page.keyboard.insertText("th199841412");
    await expect.poll(() => hits(page).count()).toBe(1);
    await expect.poll(() => hits(page).first().getAttribute("href")).toBe(thing);
    await expect.poll(() => page.locator(".excerpt mark").textContent()).toBe("TH 1998.41.412");
    expect(new URL(page.url()).searchParams.get("q")).toBe("th199841412");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await page.locator(".kind", { hasText: "artefact" }).waitFor();
  });
});

walk("what is withheld is not found, what is not yet in print is marked, an edit is found", async (page) => {
  const told = () => page.locator("output.told").textContent();
  await through(page, demo, async ({ folder }) => {
    await visit(page, "/search?q=gradiometer&as-of=1951");
    await expect.poll(() => page.locator(".hits .where strong").count()).toBeGreaterThan(0);
    await expect
      .poll(() => page.locator(".hits .where strong").first().textContent())
      .toBe("not yet in print in 1951");
    await visit(page, "/search?q=trench-9");
    await expect.poll(told).toMatch(/^(?:Found|Nothing|No record)/);
    expect(await page.locator('a.hit[href^="/record/trench-9"]').count()).toBe(0);
    await visit(page, "/search?q=quernstone");
    await expect.poll(told).toContain("Nothing in the corpus");
    const file = join(folder, "artefacts", "centre.yaml");
    const text = readFileSync(file, "utf8");
    writeFileSync(file, `${text.trimEnd()}\n  - { id: quern-x, name: A quernstone of our own }\n`);
    await expect.poll(() => hits(page).count()).toBe(1);
  });
});

walk("lists the commands and the keys by keys, and returns the focus where it was", async (page) => {
  await through(page, demo, async () => {
    const link = page.locator("main ul.questions a").first();
    await link.focus();
    const before = await focused(page);
    await page.keyboard.press("?");
    const leaf = page.getByRole("dialog");
    await leaf.getByRole("heading", { name: "Keys" }).waitFor();
    await expect.poll(() => leaf.textContent()).toContain("Search");
    await page.keyboard.press("Escape");
    await expect.poll(() => leaf.count()).toBe(0);
    await expect.poll(() => focused(page)).toBe(before);

    await page.keyboard.press(".");
    await leaf.getByRole("heading", { name: "What can be done here" }).waitFor();
    await page.keyboard.press("Escape");
    await expect.poll(() => leaf.count()).toBe(0);
    await expect.poll(() => focused(page)).toBe(before);

    await page.keyboard.press(".");
    await page.keyboard.type("finding");
    await expect.poll(() => leaf.locator("li button").count()).toBe(1);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Findings", level: 1 }).waitFor();
    expect(new URL(page.url()).pathname).toBe("/findings");

    await page.keyboard.press("1");
    await page.getByRole("heading", { name: "Questions", level: 1 }).waitFor();
    await visit(page, "/question/what-was-it");
    await page.locator("output.year").waitFor();
    const year = await page.locator("output.year").textContent();
    await page.keyboard.press("<");
    await expect.poll(() => page.locator("output.year").textContent()).not.toBe(year);
  });
});

walk("single keys can be turned off, and do nothing in a field", async (page) => {
  await through(page, demo, async () => {
    await page.keyboard.press("/");
    await page.keyboard.type("a.?/");
    await expect.poll(() => page.locator("#search-field").inputValue()).toBe("a.?/");
    expect(await page.getByRole("dialog").count()).toBe(0);
    await page.keyboard.press("Escape");

    await page.keyboard.press("?");
    await page.getByRole("dialog").waitFor();
    await page.getByRole("checkbox", { name: "Single keys work" }).focus();
    await page.keyboard.press("Space");
    await page.keyboard.press("Escape");
    await page.keyboard.press("/");
    await page.keyboard.press(".");
    expect(await page.getByRole("dialog").count()).toBe(0);
    expect(await focused(page)).not.toContain("INPUT");
    await page.reload();
    await page.getByRole("heading", { name: "Questions", level: 1 }).waitFor();
    await page.keyboard.press("?");
    expect(await page.getByRole("dialog").count()).toBe(0);
    await page.getByRole("button", { name: "Keys" }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("dialog").waitFor();
    await expect.poll(() => page.getByRole("checkbox", { name: "Single keys work" }).isChecked()).toBe(false);
  });
});

walk("fits a narrow screen, with the commands open too", async (page) => {
  await page.setViewportSize({ width: 390, height: 800 });
  await through(page, demo, async () => {
    const over = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    await search(page, "post");
    await expect.poll(() => over()).toBeLessThanOrEqual(0);
    await page.getByRole("button", { name: "Commands" }).click();
    await page.getByRole("dialog").waitFor();
    await expect.poll(() => over()).toBeLessThanOrEqual(0);
    await expect
      .poll(() =>
        page
          .locator("dialog button, dialog input, a.hit, .more a, .commands button")
          .evaluateAll((all) =>
            all.filter((one) => one.getBoundingClientRect().height < 24).map((one) => one.textContent),
          ),
      )
      .toEqual([]);
  });
});
