import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { bowlsFolder, pageOf, toldIn } from "../outputs/page-corpus.ts";
import { overflow } from "./axe.ts";
import { walkInFirefox } from "./firefox.ts";
import { save, toField } from "./forms-keys.ts";
import { press, said, shown, widget } from "./map-walk.ts";
import { readPaper } from "./paper-walk.ts";
import { measurePicture } from "./picture-walk.ts";
import { copyOf, focused, frames, tabTo, through } from "./through.ts";

const question = "Was the inner ring a roofed house or an open ring?";

/** Where something on the page lies once it lies still; a screenshot, which would tell it too, has Firefox's page styled by Playwright. */
async function restingPlace(
  page: Page,
  selector: string,
): Promise<{ readonly x: number; readonly y: number }> {
  for (let last = ""; ;) {
    const box = await page.locator(selector).boundingBox();
    if (box && last === JSON.stringify(box)) return box;
    last = JSON.stringify(box);
    await frames(page, 12);
  }
}

walkInFirefox(
  "goes from the question over the years and the map to a value, changes it and takes it back, by keys alone",
  async (page) => {
    await through(page, copyOf("demo-corpus"), async ({ folder }) => {
      const heading = (name: string): Promise<void> =>
        page.getByRole("heading", { name, level: 1 }).waitFor();
      await tabTo(page, question);
      await page.keyboard.press("Enter");
      await heading(question);
      await tabTo(page, "slider");
      await page.keyboard.press("ArrowLeft");
      await expect.poll(() => shown(page).get("as-of")).not.toBeNull();
      await page.keyboard.press("ArrowRight");
      await expect.poll(() => shown(page).get("as-of")).toBeNull();

      await page.keyboard.press("2");
      await widget(page).waitFor();
      await page.keyboard.press("m");
      await expect.poll(() => focused(page)).toContain("application");
      expect(await press(page, "ArrowDown")).toMatch(/^Answer: /);
      // The section is painted: what is drawn on the canvas is not the bare film.
      const inks = await page.evaluate(() => {
        const one = document.querySelector("canvas");
        const data = one?.getContext("2d")?.getImageData(0, 0, one.width, one.height).data ?? [];
        return new Set(new Uint32Array(new Uint8ClampedArray(data).buffer)).size;
      });
      expect(inks).toBeGreaterThan(10);
      const panel = await restingPlace(page, ".map-panel");
      await page.keyboard.press("Escape");
      await page.mouse.dblclick(panel.x + 40, panel.y + 24);
      await expect.poll(() => new URL(page.url()).pathname).toMatch(/^\/record\//);
      await page.goBack();
      await expect.poll(() => focused(page)).toContain("application");
      if (!(await said(page)).startsWith("Answer: ")) await press(page, "ArrowDown");

      for (let step = 0; step < 12 && !(await said(page)).startsWith("Thing: "); step++)
        await press(page, "ArrowDown");
      await page.keyboard.press("Enter");
      await expect.poll(() => page.title()).toMatch(/^inner ring · Record sheet/);
      await page.goBack();
      await expect.poll(() => focused(page)).toContain("application");

      await page.keyboard.press("/");
      await page.keyboard.type("forty walkers");
      await page.keyboard.press("Enter");
      await page.locator('a.hit[href="/record/forty-paces"]').waitFor();
      await tabTo(page, /of forty walkers/);
      await page.keyboard.press("Enter");
      await page.locator("article.sheet").waitFor();

      const file = join(folder, "readings", "vane-1968.yaml");
      const before = readFileSync(file, "utf8");
      await page.keyboard.press("c");
      await page.locator("form.form").waitFor();
      await toField(page, "value");
      await page.keyboard.press("Control+A");
      await page.keyboard.type("0.62 to 0.90 m");
      await save(page);
      expect(readFileSync(file, "utf8")).toBe(before.replace("0.62–0.88 m", "0.62 to 0.90 m"));
      await page.keyboard.press("Control+z");
      await expect.poll(() => readFileSync(file, "utf8")).toBe(before);
      await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
    });
  },
);

walkInFirefox(
  "a written page is read from a file, by year and by words, and nothing else runs",
  async (page) => {
    const corpus = bowlsFolder();
    const folder = mkdtempSync(join(tmpdir(), "variorum-page-"));
    try {
      const trouble: string[] = [];
      page.on("console", (one) => trouble.push(one.text()));
      page.on("pageerror", (one) => trouble.push(one.message));
      writeFileSync(join(folder, "dispute.html"), await pageOf(await toldIn(corpus)));
      await page.setViewportSize({ width: 390, height: 800 });
      await page.goto(pathToFileURL(join(folder, "dispute.html")).href);
      const open = page.locator(".page.open");
      const mark = open.locator(".why .m b").first();
      await open.locator(`a[href="#r-one-set"]`).first().press("Enter");
      await expect.poll(() => open.getAttribute("id")).toBe("r-one-set");
      await expect.poll(() => mark.textContent()).toBe("open");
      await page.getByLabel("Year", { exact: true }).selectOption("1900");
      await expect.poll(() => mark.textContent()).toBe("stands");
      for (let step = 0; step < 2; step++)
        await page.getByRole("button", { name: "Later year" }).press("Enter");
      await expect.poll(() => page.locator("#notice").textContent()).toContain("As of 1990.");
      await page.getByLabel("Search").fill("ην δυο");
      await page.locator(`#found a[href="#r-two-sets"]`).waitFor();
      await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
      expect(await page.evaluate(() => Object.hasOwn(window, "hostile"))).toBe(false);
      expect(trouble).toEqual([]);
    } finally {
      for (const one of [corpus, folder]) rmSync(one, { recursive: true, force: true });
    }
  },
);

walkInFirefox(
  "a paper is brought in and read, words and a part of a page of it marked and found again",
  // Its keys have no Greek.
  (page) => readPaper(page, "WET WEEK"),
);

walkInFirefox("a picture is measured on, and another brought in", measurePicture);
