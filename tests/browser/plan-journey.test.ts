import type { Page } from "playwright-core";
import { expect } from "vitest";
import { walk } from "./chromium.ts";
import { copyOf, focused, pressUntil, tabTo, through } from "./through.ts";

const question = "Was the inner ring a roofed house or an open ring?";
const shown = (page: Page, path: string) => page.locator(`main[data-shown='${path}'] h1`).waitFor();
const standing = (page: Page, answer: string) =>
  page.locator("table.answers tbody tr").filter({ hasText: answer }).locator("td").first().textContent();
const reading = (page: Page) => page.locator(".reading").textContent();
const yearOf = (page: Page) => new URL(page.url()).searchParams.get("as-of");

/** To the claim that the ring carried a roof, and along its row to a scholar: what is read there. */
async function roofBy(page: Page, scholar: string): Promise<string | null> {
  for (const key of ["Control+Home", "ArrowDown", "ArrowRight"]) await page.keyboard.press(key);
  for (let step = 0; step < 40 && !(await reading(page))?.includes("carried a roof"); step++)
    await page.keyboard.press("ArrowDown");
  for (let step = 0; step < 15 && !(await reading(page))?.startsWith(scholar); step++)
    await page.keyboard.press("ArrowRight");
  return reading(page);
}

walk(
  "compares two scholars, replays the years, supposes what an examination may show, and comes back, by keys alone",
  async (page) => {
    await through(page, copyOf("demo-corpus"), async () => {
      await page.keyboard.press("7");
      await shown(page, "/scholars");
      await tabTo(page, "Claims by scholars");
      await page.keyboard.press("Enter");
      await page.getByRole("grid").waitFor();
      const inGrid = async (): Promise<boolean> => (await page.locator("[data-at]:focus").count()) > 0;
      await pressUntil(page, "Tab", inGrid, "a cell");
      expect(await roofBy(page, "Edith Ferrant")).toContain("Edith Ferrant rejects");
      expect(await roofBy(page, "Folasade Oyelaran")).toContain("Folasade Oyelaran holds");

      await page.keyboard.press("1");
      await shown(page, "/");
      await tabTo(page, question);
      await page.keyboard.press("Enter");
      await shown(page, "/question/what-was-it");
      await expect.poll(() => standing(page, "carried a roof")).toBe("open");
      const replayed: string[] = [];
      for (let step = 0; step < 25 && yearOf(page) !== "1951"; step++) {
        await page.keyboard.press("<");
        await expect.poll(() => yearOf(page)).not.toBe(replayed.at(-1) ?? null);
        replayed.push(yearOf(page) ?? "");
      }
      expect(replayed.at(-1)).toBe("1951");
      expect(replayed).toEqual([...replayed].sort().reverse());
      await expect.poll(() => standing(page, "stood open")).toBe("stands");
      await tabTo(page, /^slider/);
      await page.keyboard.press("End");
      await expect.poll(() => yearOf(page)).toBe(null);
      await expect.poll(() => standing(page, "stood open")).toBe("open");

      await page.keyboard.press("e");
      await shown(page, "/examinations");
      await expect.poll(() => page.locator("ol.looks-at > .look").count()).toBe(5);
      await tabTo(page, "Suppose this: The marks on the casts end straight");
      await page.keyboard.press("Enter");
      await shown(page, "/question/what-was-it");
      await expect.poll(() => standing(page, "stood open")).toBe("stands");
      await expect.poll(() => standing(page, "carried a roof")).toBe("falls");
      await expect.poll(() => page.title()).toContain("Supposed");

      await page.keyboard.press("b");
      await expect.poll(() => standing(page, "stood open")).toBe("open");
      await expect.poll(() => page.title()).not.toContain("Supposed");
      await page.goBack();
      await page.goBack();
      await shown(page, "/examinations");
      await expect.poll(() => focused(page)).toContain("Suppose this: The marks on the casts end straight");
    });
  },
);
