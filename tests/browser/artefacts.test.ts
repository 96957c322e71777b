import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { walk } from "./chromium.ts";
import { filesOf, tabTo, through, visit } from "./through.ts";

/** Two rings and a pit, invented: one ring measured twice, the pit broken at its foot. */
const records = {
  artefacts: [
    {
      id: "inner",
      name: "The inner ring",
      shape: { circle: ["diameter"] },
      access: { keeper: "the county store" },
      history: [{ when: "1964", what: "set in concrete", kind: "restoration" }],
    },
    { id: "outer", name: `The outer ring <b id="hostile">`, shape: { circle: ["diameter"] } },
    {
      id: "inner/pit",
      name: "A pit in the inner ring",
      shape: { profile: ["mouth", "foot", "depth"] },
    },
  ],
  measurements: [
    { of: "inner", dimension: "diameter", value: "7.60 ± 0.02 m", year: "1937" },
    { of: "inner", dimension: "diameter", value: "7.60 ± 0.02 m", year: "1998" },
    { of: "outer", dimension: "diameter", value: "15.2 ± 0.3 m", year: "1998" },
    { of: "outer", dimension: "diameter", value: "12.1 ± 0.1 m", year: "1999" },
    { of: "inner/pit", dimension: "mouth", value: "1.2 m" },
    { of: "inner/pit", dimension: "foot", value: "0.5 m" },
    { of: "inner/pit", dimension: "depth", value: "0.9 m", state: "preserved" },
  ],
};

const corpus = filesOf({
  "corpus.yaml": { title: "Two rings", units: { "long-pace": { is: "0.743 ± 0.006 m" } } },
  "rings.yaml": records,
});

const drawing = (page: Page) => page.locator("figure.drawing > svg");

walk("goes from the things to a drawing, saves it, and back, by keys alone", async (page) => {
  await through(page, corpus, async () => {
    await tabTo(page, "Artefacts");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Artefacts", level: 1 }).waitFor();
    await tabTo(page, "Draw The inner ring");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "The inner ring", exact: true, level: 1 }).waitFor();
    await drawing(page).waitFor();
    await expect.poll(() => drawing(page).getAttribute("role")).toBe("img");
    await expect.poll(() => drawing(page).locator("title").first().textContent()).toContain("The inner ring");
    await expect
      .poll(() => drawing(page).locator("desc").textContent())
      .toContain("depth 0.9 m, broken there");

    // 7.6 m at 1:50 are 152 mm on paper; a CSS inch is 96 px.
    const across = await drawing(page)
      .locator('[data-record="inner"] circle')
      .evaluateAll((all) => Math.max(...all.slice(-1).map((one) => one.getBoundingClientRect().width)));
    const stroke = 1.8;
    expect(Math.abs(across - (152 / 25.4) * 96)).toBeLessThan(stroke + 0.5);

    await tabTo(page, "Save as SVG");
    const coming = page.waitForEvent("download");
    await page.keyboard.press("Enter");
    const saved = readFileSync(await (await coming).path(), "utf8");
    expect(saved).toContain('xmlns="http://www.w3.org/2000/svg"');
    expect(saved).toContain(">1:50<");
    expect(saved).not.toMatch(/style=|<style/);

    await tabTo(page, "Record sheet");
    await page.keyboard.press("Enter");
    await page.locator(".kind", { hasText: "artefact" }).waitFor();
    await tabTo(page, "Dimensions, history and drawing");
    await page.keyboard.press("Enter");
    await drawing(page).waitFor();
  });
});

walk("marks two things and draws them at one scale, by keys alone", async (page) => {
  await through(page, corpus, async () => {
    await tabTo(page, "Artefacts");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Artefacts", level: 1 }).waitFor();
    await tabTo(page, "Draw The inner ring");
    await page.keyboard.press("Space");
    await tabTo(page, "Draw The outer ring");
    await page.keyboard.press("Space");
    await tabTo(page, "Draw side by side");
    await page.keyboard.press("Enter");
    await drawing(page).waitFor();
    expect(new URL(page.url()).searchParams.get("draw")).toBe("inner,outer");
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.textContent))
      .toBe("Side by side at one scale");
    const widths = await page.evaluate(() =>
      ["inner", "outer"].map((id) => {
        const circles = document.querySelectorAll(`[data-record="${id}"] circle[stroke-width="1.8"]`);
        return Number(circles[0]?.getAttribute("r"));
      }),
    );
    // The outer ring is drawn by the mean of its two readings: 15.2 ± 0.3 and 12.1 ± 0.1, weighted by 1/u².
    const mean = (15.2 / 0.09 + 12.1 / 0.01) / (1 / 0.09 + 1 / 0.01);
    expect((widths[1] ?? 0) / (widths[0] ?? 1)).toBeCloseTo(mean / 7.6, 2);
    expect(await page.locator("#hostile").count()).toBe(0);
  });
});

walk("shows readings in conflict, and nothing hangs over at 390 px", async (page) => {
  await through(page, corpus, async () => {
    await page.setViewportSize({ width: 390, height: 800 });
    await visit(page, "/artefact/outer");
    await page.locator("table.dimensions").waitFor();
    await expect.poll(() => page.locator("tr.clashing").count()).toBe(2);
    await expect.poll(() => page.locator(".clash").textContent()).toMatch(/differ by 3\.1 m, \d\.\d times/);
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth - innerWidth))
      .toBeLessThanOrEqual(0);
    await expect
      .poll(() =>
        drawing(page)
          .locator("text")
          .evaluateAll((all) => Math.min(...all.map((one) => one.getBoundingClientRect().height))),
      )
      .toBeGreaterThanOrEqual(11);
  });
});
