import { expect } from "vitest";
import { corpusOf } from "../make-corpus/corpus.ts";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { copyOf, filesOf, focused, pressUntil, tabTo, through, visit } from "./through.ts";

const withDemo = copyOf("demo-corpus");
const withMany = filesOf(
  Object.fromEntries(
    corpusOf({ records: 600, seed: 11, claims: 40, scholars: 15 }).map((file) => [file.path, file.text]),
  ),
);

walk("goes by keys from the list to the grid, through its cells, and to a scholar", async (page) => {
  await through(page, withDemo, async () => {
    await tabTo(page, "Scholars");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Scholars", level: 1 }).waitFor();
    await page.locator("table.scholars").waitFor();
    await expect.poll(() => page.locator("table.scholars tbody tr").count()).toBe(11);
    expect(await complaintsOf(page)).toEqual([]);

    await tabTo(page, "Claims by scholars");
    await page.keyboard.press("Enter");
    await page.getByRole("grid").waitFor();
    await expect.poll(() => page.locator("[data-at][tabindex='0']").count()).toBe(1);
    const inGrid = async (): Promise<boolean> => (await page.locator("[data-at]:focus").count()) > 0;
    await pressUntil(page, "Tab", inGrid, "a cell");
    // The third column is Ferrant's; down to the claim that the ring carried a roof.
    for (const key of ["Home", "ArrowRight", "ArrowRight", "ArrowRight"]) await page.keyboard.press(key);
    for (let step = 0; step < 40; step++) {
      if ((await page.locator(".reading").textContent())?.includes("carried a roof")) break;
      await page.keyboard.press("ArrowDown");
    }
    await expect
      .poll(() => page.locator(".reading").textContent())
      .toBe("Edith Ferrant rejects “The inner ring carried a roof”, since 1951; before: holds 1937");
    await expect.poll(() => focused(page)).toContain("rejects");
    expect(await complaintsOf(page)).toEqual([]);

    await page.keyboard.press("Control+Home");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => focused(page)).toContain("Edith Ferrant");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Edith Ferrant", level: 1 }).waitFor();
    await expect.poll(() => page.locator(".track").count()).toBeGreaterThan(3);
    await expect
      .poll(() => page.locator(".track").first().textContent())
      .toContain("asks for a roof as a cup");
    expect(await complaintsOf(page)).toEqual([]);
  });
});

walk("keeps to the year of the address", async (page) => {
  await through(page, withDemo, async () => {
    await visit(page, "/scholars?look=claims&as-of=1940");
    await page.getByRole("grid").waitFor();
    const heads = await page.locator("thead .who").allTextContents();
    expect(heads.map((one) => one.replace(/\d+$/, ""))).toEqual([
      "Josiah Hale",
      "Gideon Pell",
      "Edith Ferrant",
    ]);
    expect(await page.getByRole("grid").textContent()).not.toContain("1951");
    await visit(page, "/scholar/ferrant?as-of=1940");
    await page.locator(".track").first().waitFor();
    expect(await page.locator(".dated").textContent()).not.toContain("1951");
  });
});

walk("reads forty claims by fifteen scholars without a sideways overflow of the page", async (page) => {
  await through(page, withMany, async () => {
    await visit(page, "/scholars?look=claims");
    await page.getByRole("grid").waitFor();
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
    await expect
      .poll(() => page.locator(".matrix").evaluate((box) => box.scrollWidth - box.clientWidth))
      .toBeLessThanOrEqual(0);
    // Scrolled to the end, the names of the scholars and the claim are still in sight.
    await page.locator("[data-at][tabindex='0']").focus();
    await page.keyboard.press("Control+End");
    const box = await page.locator(".matrix").boundingBox();
    const head = await page.locator("thead .who").first().boundingBox();
    expect(Math.abs((head?.y ?? 0) - (box?.y ?? -99))).toBeLessThan(2);
    await expect
      .poll(() =>
        page
          .locator(".matrix a[data-at]")
          .evaluateAll((links) => links.filter((link) => link.getBoundingClientRect().height < 24).length),
      )
      .toBe(0);
  });
});

walk("is a list by claim or by scholar where there is no room for a grid", async (page) => {
  await page.setViewportSize({ width: 390, height: 800 });
  await through(page, withMany, async () => {
    await visit(page, "/scholars?look=claims");
    await page.locator(".makings").first().waitFor();
    await expect.poll(() => page.getByRole("grid").count()).toBe(0);
    const byClaim = await page.locator(".makings > li > ul > li").count();
    expect(byClaim).toBeGreaterThan(30);
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
    await tabTo(page, "By scholar");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("h2.who").count()).toBeGreaterThan(8);
    await expect.poll(() => page.locator(".makings.flat > li").count()).toBe(byClaim);
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
    expect(await complaintsOf(page)).toEqual([]);
    await page.locator("h2.who a").first().click();
    await page.locator(".scholar h1").waitFor();
    await page.locator(".dated, .quiet").first().waitFor();
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
  });
});
