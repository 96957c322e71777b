import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { bowls } from "../laws/recording/grid-cases.ts";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { paste } from "./forms-keys.ts";
import { filesOf, pressUntil, tabTo, through, visit } from "./through.ts";

const fill = filesOf(Object.fromEntries(bowls.map(({ path, text }) => [path, text])));

const told = (page: Page): Promise<string> => page.locator(".row-told").innerText();

/** Presses Tab until a cell of the grid has the focus. */
const tabIntoGrid = (page: Page): Promise<void> =>
  pressUntil(
    page,
    "Tab",
    () => page.evaluate(() => document.activeElement?.closest("[role=grid]") instanceof Element),
    "the grid",
  );

walk("records measurements by keys alone, and twenty from a spreadsheet, as one step", async (page) => {
  await through(page, fill, async ({ folder }) => {
    const file = (): string => readFileSync(join(folder, "readings/reed-2001.yaml"), "utf8");
    const before = file();
    await visit(page, "/artefact/bowl-1");
    await tabTo(page, "Record measurements");
    await page.keyboard.press("Enter");
    await page.getByRole("grid", { name: "Measurements" }).waitFor();

    // What holds for every row: the source and the unit of bare figures.
    await tabIntoGrid(page);
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("End");
    for (let step = 0; step < 3; step++) await page.keyboard.press("ArrowLeft");
    await page.keyboard.type("reed-2001");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Home");
    await page.keyboard.press("ArrowRight");

    // A slip in the figure is offered right, and taken with one key; a conflict is told at once.
    await page.keyboard.type("rim diameter");
    await page.keyboard.press("Tab");
    await page.keyboard.type("19,4 cm");
    await expect.poll(() => told(page)).toContain("Write 19.4 cm");
    await page.keyboard.press("F8");
    await expect.poll(() => told(page)).toMatch(/Differs from 18\.2 cm \(Hale 1990\) by/);
    await expect.poll(() => told(page)).toMatch(/It would enter The rims/);
    expect(await complaintsOf(page)).toEqual([]);

    await page.keyboard.press("ArrowDown");
    const lines = Array.from(
      { length: 20 },
      (_, at) => `SR-${at % 2 === 0 ? 17 : 18}\t${at + 1},5\tno. ${at + 1}`,
    );
    await paste(page, ["Inv. no.\theight (cm)\tRemarks", ...lines, "SR-170\t7\t"].join("\n"));
    await page.getByText("Before it is put in").waitFor();
    await page.getByLabel("The comma is the decimal sign").press("Space");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator(".saves output").innerText()).toBe("21 rows were put in.");
    await expect.poll(() => page.locator(".entry-grid tr.bad").count()).toBe(1);
    await page.keyboard.press("Control+Enter");
    await expect
      .poll(() => page.locator(".saves output").innerText())
      .toContain("21 measurements were saved");
    const made = file();
    expect(made.startsWith(before)).toBe(true);
    expect(made.match(/^  - \{ of: bowl-[12], .* \}$/gmu)?.length).toBe(21);
    expect(made).toContain("  - { of: bowl-2, dimension: height, value: 20.5 cm, note: no. 20 }\n");
    expect(made).not.toContain("from:");

    // What could not be saved stays, over a reload too; the step is taken back whole.
    await expect.poll(() => page.locator(".entry-grid tr.bad").innerText()).toContain("SR-170");
    await page.locator("h1").click();
    await page.keyboard.press("Control+z");
    await expect.poll(file).toBe(before);
    await page.reload();
    await expect.poll(() => page.locator(".entry-grid tr.bad").innerText()).toContain("SR-170");
    await page.setViewportSize({ width: 390, height: 800 });
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
    expect(await page.locator("main").innerText()).not.toMatch(/umbra|seal/i);
  });
});
