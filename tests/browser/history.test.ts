import type { Page } from "playwright-core";
import { expect } from "vitest";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { copyOf, focused, tabTo, through, visit } from "./through.ts";

const demo = copyOf("demo-corpus");

/** The years of the page, as they are read. */
const years = (page: Page): Promise<readonly string[]> => page.locator(".through .when").allTextContents();

/** The dated step of a year. */
const step = (page: Page, year: string) =>
  page.locator(".through > li").filter({ has: page.locator(".when", { hasText: year }) });

walk("goes by keys through the years to the map as it was, and back", async (page) => {
  await through(page, demo, async () => {
    await tabTo(page, "History");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "History", exact: true, level: 1 }).waitFor();
    // The years of the bibliography.
    await expect.poll(() => years(page)).toHaveLength(16);
    expect((await years(page)).slice(0, 4)).toEqual(["1896", "1911", "1937", "1951"]);
    // Earlier years need numbers of their own, which are computed while the page is looked at.
    await expect.poll(() => page.locator("main output", { hasText: "still to be computed" }).count()).toBe(0);
    const ferrant = step(page, "1937");
    await expect
      .poll(() => ferrant.locator(".brought").textContent())
      .toContain("Ferrant 1937 2 claims, 2 positions");
    await expect
      .poll(() => ferrant.locator("h2 .became").textContent())
      .toBe("1 claim opens, 2 are named for the first time");
    await expect
      .poll(() => ferrant.locator(".became-of > li").allTextContents())
      .toContain("openan open ringstood until then");
    await expect.poll(() => step(page, "1999").locator(".standing.falls").count()).toBe(6);
    expect(await complaintsOf(page)).toEqual([]);

    await tabTo(page, "Years that change a standing");
    await page.keyboard.press("Enter");
    await expect.poll(() => years(page)).not.toContain("1896");
    await expect.poll(() => years(page)).toContain("1937");
    await expect.poll(() => focused(page)).toContain("Years that change a standing");

    await tabTo(page, "Map as of 1951");
    await page.keyboard.press("Enter");
    await page.locator("main[data-shown='/map'] h1").waitFor();
    expect(new URL(page.url()).searchParams.get("as-of")).toBe("1951");
    await page.goBack();
    await page.getByRole("heading", { name: "History", exact: true, level: 1 }).waitFor();
    await expect.poll(() => years(page)).toContain("1999");
    await tabTo(page, "Questions as of 1951");
    await page.keyboard.press("Enter");
    await page.locator("main[data-shown='/'] h1").waitFor();
    expect(new URL(page.url()).searchParams.get("as-of")).toBe("1951");
  });
});

walk("ends with the year of the address, and is read on a narrow screen", async (page) => {
  await page.setViewportSize({ width: 390, height: 800 });
  await through(page, demo, async () => {
    await visit(page, "/history?as-of=1951");
    await expect.poll(() => years(page)).toEqual(["1896", "1911", "1937", "1951"]);
    expect(await page.locator("main").textContent()).not.toContain("Brandt");
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
    await expect
      .poll(() =>
        page
          .locator(".through a")
          .evaluateAll((links) => links.filter((link) => link.getBoundingClientRect().height < 24).length),
      )
      .toBe(0);
    expect(await complaintsOf(page)).toEqual([]);
    await visit(page, "/history?as-of=1800");
    await expect
      .poll(() => page.locator("main").textContent())
      .toContain("Nothing was in print by that year.");
  });
});
