import { rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expect } from "vitest";
import { bowlsFolder, pageOf, toldIn } from "../outputs/page-corpus.ts";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";

walk(
  "a written page is read from a file: by its ways, by year, by words, and nothing else runs or is fetched",
  async (page) => {
    const folder = bowlsFolder();
    try {
      const file = join(folder, "dispute.html");
      writeFileSync(file, await pageOf(await toldIn(folder)));
      const address = pathToFileURL(file).href;
      const trouble: string[] = [];
      page.on("console", (one) => trouble.push(one.text()));
      page.on("pageerror", (one) => trouble.push(one.message));
      page.on("dialog", (one) => void one.dismiss().then(() => trouble.push("a dialog")));
      page.on("request", (one) => {
        if (one.url() !== address && !one.url().startsWith("data:")) trouble.push(one.url());
      });
      await page.setViewportSize({ width: 390, height: 800 });
      await page.goto(address);
      const open = page.locator(".page.open");
      const mark = open.locator(".why .m b").first();
      await expect.poll(() => open.getAttribute("id")).toBe("dispute");
      await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);

      // By keys alone to a claim; the heading has the focus, and back leads back.
      await open.locator(`a[href="#r-one-set"]`).first().press("Enter");
      await expect.poll(() => open.getAttribute("id")).toBe("r-one-set");
      await expect
        .poll(() => page.evaluate(() => document.activeElement?.closest(".page")?.id))
        .toBe("r-one-set");
      await expect.poll(() => mark.textContent()).toBe("open");
      await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);

      // As of 1900 nothing is against it yet, and what is of later is gone.
      await page.getByLabel("Year", { exact: true }).selectOption("1900");
      await expect.poll(() => mark.textContent()).toBe("stands");
      await expect.poll(() => page.locator("#notice").textContent()).toContain("As of 1900.");
      await expect.poll(() => open.locator(`a[href="#r-by-foot"]:visible`).count()).toBe(0);
      await expect.poll(() => open.locator(`a[href="#r-by-wear"]:visible`).count()).toBeGreaterThan(0);
      await page.goBack();
      await expect.poll(() => open.getAttribute("id")).toBe("dispute");
      await expect.poll(() => open.locator(`a[href="#r-two-sets"]:visible`).count()).toBe(0);
      await open.locator(`a[href="#r-sets"]`).press("Enter");
      await expect.poll(() => open.getAttribute("id")).toBe("r-sets");
      const drawn = async (): Promise<string> =>
        (await open.locator(".map text:visible").allTextContents()).join(" ");
      await expect.poll(() => drawn()).not.toContain("δύο");
      await page.getByRole("button", { name: "Later year" }).press("Enter");
      await page.getByRole("button", { name: "Later year" }).press("Enter");
      await expect.poll(() => page.locator("#notice").textContent()).toContain("As of 1990.");
      await expect.poll(() => drawn()).toContain("δύο");
      await expect.poll(() => open.locator(`a[href="#r-two-sets"]:visible`).count()).toBeGreaterThan(0);

      // Words are found without their marks, and lead there.
      const search = page.getByLabel("Search");
      await search.fill("ην δυο");
      await expect.poll(() => page.locator("#count").textContent()).toMatch(/records?$/i);
      await page.locator(`#found a[href="#r-two-sets"]`).press("Enter");
      await expect.poll(() => open.getAttribute("id")).toBe("r-two-sets");
      await expect.poll(() => search.inputValue()).toBe("");

      await page.setViewportSize({ width: 1280, height: 800 });
      await page.goto(`${address}#r-sizes`);
      await expect.poll(() => open.getAttribute("id")).toBe("r-sizes");
      expect(await complaintsOf(page, "body")).toEqual([]);
      expect(await page.evaluate(() => Object.hasOwn(window, "hostile"))).toBe(false);
      expect(trouble).toEqual([]);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  },
);
