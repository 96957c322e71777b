import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import { talkFiles } from "../laws/telling/talk-cases.ts";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { filesOf, through, visit } from "./through.ts";

/** The talk is proposed, not found: the corpus has none, and no number to compute. */
const { "pegs.yaml": pegs = "", ...others } = talkFiles;
const files = {
  ...others,
  "images/plan.svg": `<svg xmlns="http://www.w3.org/2000/svg" width="40" height="20"><circle r="9"/></svg>`,
  "pegs.yaml": pegs.replace(/^derivations:[^]*?(?=^images:)/mu, "").replace(/^talks:[^]*$/mu, ""),
};

walk(
  "proposes a talk, keeps it, presents it by keys, and shows the notes in a second window",
  async (page) => {
    await page.setViewportSize({ width: 390, height: 800 });
    await through(page, filesOf(files), async ({ folder }) => {
      await visit(page, "/talks");
      await page.getByRole("button", { name: "Propose a talk on this question" }).press("Enter");
      await page.locator(".proposed li").first().waitFor();
      await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
      await page.getByRole("button", { name: "Keep this talk" }).press("Enter");
      await page.locator(".kept").waitFor();
      expect(readFileSync(join(folder, "pegs.yaml"), "utf8")).toContain("first-talk");
      await page.setViewportSize({ width: 1024, height: 700 });
      await page.locator(".kept a").press("Enter");
      await page.locator(".talk-page .leaves li").nth(4).waitFor();
      expect(await complaintsOf(page)).toEqual([]);

      const opening = page.context().waitForEvent("page");
      await page.getByRole("button", { name: "Open notes in a second window" }).press("Enter");
      const notes = await opening;
      const complaints: string[] = [];
      notes.on("pageerror", (error) => complaints.push(error.message));
      await notes.locator(".speaking h1").waitFor();

      const present = page.getByRole("button", { name: "Present", exact: true });
      await present.press("Enter");
      const said = page.locator(".presenting [aria-live]");
      await expect.poll(() => said.textContent()).toMatch(/^Slide 1 of \d+: How was the hole made\?$/u);
      await page.keyboard.press("PageDown");
      await page.keyboard.press("ArrowRight");
      await page.keyboard.press("Space");
      await expect.poll(() => said.textContent()).toMatch(/^Slide 4 of/u);
      await expect.poll(() => notes.locator(".where").textContent()).toMatch(/^4 of/u);
      await page.keyboard.press("PageUp");
      await expect.poll(() => notes.locator(".where").textContent()).toMatch(/^3 of/u);
      // The slide fills the window, and its letters with it.
      const slide = page.locator(".presenting .slide");
      await expect.poll(async () => (await slide.boundingBox())?.width).toBeGreaterThan(1000);

      await notes.bringToFront();
      await notes.keyboard.press("Home");
      await notes.keyboard.press("PageDown");
      await expect.poll(() => said.textContent()).toMatch(/^Slide 2 of/u);
      await notes.getByRole("button", { name: "Dark screen" }).click();
      await expect.poll(() => said.textContent()).toBe("The screen is dark.");
      await notes.keyboard.press("End");
      await expect.poll(() => said.textContent()).toMatch(/^Slide (\d+) of \1:/u);
      await expect.poll(() => notes.locator("time").textContent()).toMatch(/^\d+:\d\d$/u);
      expect(complaints).toEqual([]);
      await notes.close();

      await page.bringToFront();
      await page.keyboard.press("Escape");
      await page.locator(".presenting").waitFor({ state: "detached" });
      await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("Present");
      await page.keyboard.press("Control+z");
      await expect.poll(() => page.locator("h1").textContent()).toBe("There is no talk of this name");
    });
  },
);
