import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { chooseBy, row, toLabel } from "./row-walk.ts";
import { copyOf, tabTo, through, visit } from "./through.ts";

const text = (page: Page, selector: string): Promise<string> =>
  page
    .locator(selector)
    .allTextContents()
    .then((all) => all.join(" "));

walk(
  "makes a number, sees a standing change because of it, and takes it back, by keys alone",
  async (page) => {
    await through(page, row, async ({ folder }) => {
      const before = readFileSync(join(folder, "row.yaml"), "utf8");
      const files = readdirSync(folder).toSorted();
      await tabTo(page, "Numbers");
      await page.keyboard.press("Enter");
      await page.getByRole("heading", { name: "Numbers", level: 1 }).waitFor();
      await page.keyboard.press("m");
      await page.getByRole("heading", { name: "Make a number", level: 1 }).waitFor();
      await tabTo(page, "Spacing");
      await page.keyboard.press("Enter");
      await page.locator(".input").first().waitFor();

      await chooseBy(page, "Things", "The pit row");
      await page.keyboard.press("Enter");
      await chooseBy(page, "Dimension", "gap");
      await expect.poll(() => text(page, ".count-line")).toContain("10 are taken");
      await expect.poll(() => text(page, ".came")).toMatch(/n10.*mean1 m/);
      await expect.poll(() => text(page, ".looks")).toContain("First look at these data");
      await expect.poll(() => text(page, ".outcome")).toContain("It would change no standing.");

      await chooseBy(page, "Bear on a claim", "The pits were set");
      await tabTo(page, "Add");
      await page.keyboard.press("Enter");
      await expect.poll(() => text(page, ".entry .says-now")).toContain("inconclusive");
      await page.evaluate(() => document.querySelector("main")?.focus());
      await chooseBy(page, "Supports it when: Ask for a number", "p");
      await tabTo(page, "Add: Supports it when");
      await page.keyboard.press("Enter");
      await toLabel(page, "Supports it when: p, Limit", "input, textarea");
      await page.keyboard.type("0.01 apples");
      await expect.poll(() => text(page, ".limit output")).toContain("expected one such as");
      for (let back = 0; back < " apples".length; back++) await page.keyboard.press("Backspace");
      await page.keyboard.press("Enter");
      await expect.poll(() => text(page, ".entry .says-now")).toContain("It supports the claim.");
      await expect.poll(() => text(page, ".would-change")).toMatch(/even gaps.*stands.*was unsupported/);
      await expect.poll(() => text(page, ".looks")).toContain("Look 2 at these data");
      expect(readFileSync(join(folder, "row.yaml"), "utf8")).toBe(before);

      await page.reload();
      await page.locator(".count-line").first().waitFor();
      await expect.poll(() => text(page, ".would-change")).toContain("stands");
      await expect.poll(() => text(page, ".looks")).toContain("Look 2 at these data");

      await toLabel(page, "What it is for", "input, textarea");
      await page.keyboard.type("Ten gaps of the row");
      await tabTo(page, "Save this number");
      await page.keyboard.press("Enter");
      await page.getByRole("heading", { name: "Ten gaps of the row", level: 1 }).waitFor();
      const saved = readFileSync(join(folder, "row.yaml"), "utf8");
      expect(saved.startsWith(before.slice(0, 40))).toBe(true);
      expect(saved).toContain("row-gap-spacing");
      expect(saved).toMatch(/looks: 2/);
      await expect.poll(() => text(page, ".bearing")).toContain("stands");

      await visit(page, "/question/how");
      await expect.poll(() => text(page, ".answers tr:nth-child(1) .standing")).toContain("stands");
      await page.keyboard.press("Control+z");
      await expect.poll(() => text(page, ".answers tr:nth-child(1) .standing")).toContain("unsupported");
      expect(readFileSync(join(folder, "row.yaml"), "utf8")).toBe(before);
      expect(
        readdirSync(folder)
          .filter((name) => name !== ".variorum")
          .toSorted(),
      ).toEqual(files);
      await visit(page, "/numbers");
      await expect.poll(() => text(page, "main")).toContain("Nothing is computed yet.");
    });
  },
);

walk(
  "the settings of a recorded number are changed in its record; what was not touched stays as it is",
  async (page) => {
    await through(page, copyOf("demo-corpus"), async ({ folder }) => {
      const file = join(folder, "questions/paces.yaml");
      const before = readFileSync(file, "utf8");
      await visit(page, "/number/ring-unit");
      await page.keyboard.press("m");
      await page.getByRole("heading", { name: "Settings of", level: 1 }).waitFor();
      await expect.poll(() => text(page, ".came")).toContain("22");
      await expect.poll(() => text(page, ".looks")).toContain("Look 2 at these data");
      await expect.poll(() => text(page, ".would-change")).toContain("It would change no standing.");
      await toLabel(page, "unit", "input, textarea");
      await page.keyboard.press("Control+a");
      await page.keyboard.type("ring-foot");
      await expect.poll(() => text(page, ".setting output")).toContain("read as ring-foot");
      await expect.poll(() => text(page, ".came")).toContain("22");
      await page.keyboard.press("Enter");
      await expect.poll(() => text(page, ".came")).toContain("No number");
      await expect.poll(() => text(page, ".came")).toContain("was found in these data");
      await page.keyboard.press("Control+a");
      await page.keyboard.type("down-pace");
      await page.keyboard.press("Enter");
      await expect.poll(() => text(page, ".came")).toContain("22");
      const without = page.locator(".lines");
      await without.locator("summary").click();
      await without.locator("input[type=checkbox]").first().press("Space");
      await expect.poll(() => text(page, ".count-line")).toContain("21 are taken");
      await expect.poll(() => text(page, ".looks")).toContain("Look 3 at these data");
      await page.getByRole("button", { name: "Save these settings" }).press("Enter");
      await page.waitForURL(/\/number\/ring-unit/);
      const after = readFileSync(file, "utf8");
      const changed = after.split("\n").filter((line) => !before.includes(line));
      expect(changed.join("\n")).toMatch(/without:/);
      expect(changed.join("\n")).toMatch(/looks: 3/);
      expect(changed.length).toBeLessThanOrEqual(3);
    });
  },
);

walk(
  "has nothing for axe to complain of, by day and in a dark room, and nothing that hangs over",
  async (page) => {
    await through(page, copyOf("demo-corpus"), async () => {
      for (const path of ["/workbench", "/workbench?of=plan-scale", "/workbench?of=ring-unit"]) {
        await page.setViewportSize({ width: 1280, height: 800 });
        await visit(page, path);
        if (path !== "/workbench")
          await expect.poll(() => page.locator(".plate svg[role=img]").count()).toBeGreaterThan(0);
        for (const colorScheme of ["light", "dark"] as const) {
          await page.emulateMedia({ colorScheme });
          expect(await complaintsOf(page), colorScheme).toEqual([]);
        }
        await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
        await page.setViewportSize({ width: 390, height: 800 });
        await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
        await expect
          .poll(() =>
            page.evaluate(() =>
              [...document.querySelectorAll<HTMLElement>("main :is(button, input, select, summary)")]
                .filter((one) => one.checkVisibility())
                .filter((one) => Math.min(one.offsetWidth, one.offsetHeight) < 24)
                .map((one) => one.outerHTML.slice(0, 120)),
            ),
          )
          .toEqual([]);
      }
    });
  },
);
