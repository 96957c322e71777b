import { symlinkSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import type { Page } from "playwright-core";
import { walk } from "./chromium.ts";
import { filesOf, heldBack, keptAtDesk, tabTo, through, visit } from "./through.ts";
import type { Fill } from "./through.ts";

const rims = [16.3, 41.6, 33.2, 12.7, 29.2, 41.3, 45.6, 45.8];

/** Bowls whose rims are in want of a unit, and a number that searches for one in vain so far. */
const bowls = (more: Readonly<Record<string, string>> = {}): Fill =>
  filesOf({
    "corpus.yaml": { title: "Bowls", bibliography: "sources.bib" },
    "sources.bib": "@book{hale, author = {Hale, Ada}, title = {Rims}, year = 1990}\n",
    "bowls.yaml": {
      artefacts: rims.map((_, at) => ({ id: `bowl-${at}`, name: `Bowl ${at}` })),
      measurements: rims.map((rim, at) => ({
        id: `rim-${at}`,
        of: `bowl-${at}`,
        dimension: "rim",
        from: "hale",
        value: `${rim.toFixed(1)} ± 0.1 cm`,
      })),
      derivations: [
        {
          id: "searched",
          plugin: "unit-fit",
          text: "Any unit in the rims",
          inputs: { values: { of: rims.map((_, at) => `bowl-${at}`), dimension: "rim" } },
          parameters: { low: "3 cm", high: "6 cm", draws: "200" },
        },
      ],
    },
    ...more,
  });

const came = (page: Page): Promise<string | null> => page.locator(".came").textContent();

/** Puts another text into the field of a setting, and leaves it. */
async function settingTo(page: Page, name: string, text: string): Promise<void> {
  const field = page.getByRole("textbox", { name, exact: true });
  await field.fill(text);
  await field.press("Enter");
}

walk(
  "a long computation tells how far it is, is stopped, and stays so until it is asked for",
  async (page) => {
    await through(page, bowls(), async () => {
      await visit(page, "/workbench?of=searched");
      await expect.poll(() => came(page)).toContain("φ");
      await settingTo(page, "draws", "1000000");
      await page.locator(".came progress").waitFor();
      await expect
        .poll(() => page.locator(".came progress").evaluate((one) => (one as HTMLProgressElement).position))
        .toBeGreaterThan(0);
      await page.evaluate(() => document.querySelector<HTMLElement>(".outcome .label")?.focus());
      await tabTo(page, "Stop");
      await page.keyboard.press("Enter");
      await expect.poll(() => came(page)).toContain("Stopped");
      await expect.poll(() => page.locator(".came progress").count()).toBe(0);
      await expect.poll(() => page.locator(".computing").count()).toBe(0);
      await page.getByRole("button", { name: "Go on" }).press("Enter");
      await page.locator(".came progress").waitFor();
      await settingTo(page, "draws", "300");
      await expect.poll(() => came(page)).toContain("φ");
      await expect.poll(() => page.locator(".looks").textContent()).toContain("Look 2 at these data");
    });
  },
);

walk("a draft outlives its tab, and is gone when it is given up", async (page) => {
  await through(page, bowls(), async ({ folder }) => {
    await visit(page, "/workbench?of=searched");
    await settingTo(page, "draws", "300");
    await expect.poll(() => page.locator(".looks").textContent()).toContain("Look 2");
    await expect.poll(() => keptAtDesk(folder)).toContain('"300"');
    // As in another tab: nothing but the desk has kept it, which says so only when a number is shown already.
    const come = await heldBack(page, /\/corpus\/drafts$/);
    await page.evaluate(() => sessionStorage.removeItem("workbench"));
    await page.reload();
    await expect.poll(() => came(page)).toContain("φ");
    await expect.poll(() => page.locator(".looks").textContent()).toContain("First look");
    come();
    await expect.poll(() => page.locator(".looks").textContent()).toContain("Look 2");
    await expect
      .poll(() => page.getByRole("textbox", { name: "draws", exact: true }).inputValue())
      .toBe("300");
    await page.getByRole("button", { name: "Give this draft up" }).press("Enter");
    await page.getByRole("button", { name: "Give it up for good" }).press("Enter");
    await expect
      .poll(() => page.getByRole("textbox", { name: "draws", exact: true }).inputValue())
      .toBe("200");
    await page.reload();
    await expect
      .poll(() => page.getByRole("textbox", { name: "draws", exact: true }).inputValue())
      .toBe("200");
  });
});

walk(
  "a corpus that cannot be written to is worked on all the same, and says why nothing is saved",
  async (page) => {
    const fill: Fill = (folder) => {
      bowls()(folder);
      symlinkSync(folder, join(folder, ".variorum"));
    };
    await through(page, fill, async () => {
      await visit(page, "/workbench?of=searched");
      await settingTo(page, "draws", "300");
      await expect.poll(() => page.locator(".looks").textContent()).toContain("Look 2");
      await expect
        .poll(() => page.locator(".saving").textContent())
        .toContain("It cannot be saved: Unexpected link");
      expect(await page.getByRole("button", { name: /^Save these/ }).count()).toBe(0);
    });
  },
);
