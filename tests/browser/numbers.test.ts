import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { computingHere, emptyMemo, evaluate } from "../../src/host/evaluate.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { svgDocument } from "../../src/host/print/svg-document.ts";
import { numberPage } from "../../src/show/numbers/number.ts";
import { draw } from "../../src/write/figure/draw.ts";
import { svgText } from "../../src/write/figure/svg-text.ts";
import { print } from "../../src/write/pen/palette.ts";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { filesOf, frames, tabTo, through, visit } from "./through.ts";
import type { Fill } from "./through.ts";
import { inEnglish } from "../../src/base/text/said/english.ts";
import { worded } from "../../src/base/text/said/worded.ts";

const bad = `<img src=x onerror="window.ran=1"><svg/onload=window.ran=1>`;
const rims = [16.3, 41.6, 33.2, 12.7, 29.2, 41.3, 45.6, 45.8];

/** Bowls whose rims two people measured; what one of them read turns what the number says. */
function bowls(name: string): object {
  const measured = (by: string, shift: (i: number) => number): readonly object[] =>
    rims.map((rim, i) => ({
      id: `${by}-${i}`,
      of: `bowl-${i}`,
      dimension: "rim",
      from: by,
      value: `${(rim + shift(i)).toFixed(1)} ± 0.1 cm`,
    }));
  return {
    artefacts: rims.map((_, i) => ({ id: `bowl-${i}`, name: `Bowl ${i} ${name}` })),
    claims: [{ id: "in-spans", text: "The rims are whole spans." }],
    measurements: [...measured("hale", () => 0), ...measured("vane", (i) => (i % 2 === 0 ? 2 : -1.2))],
    derivations: [
      {
        id: "rims",
        plugin: "unit-fit",
        text: `Eight rims against the span ${name}`,
        parameters: { unit: "span" },
        inputs: {
          values: {
            of: rims.map((_, i) => `bowl-${i}`),
            dimension: "rim",
            prefer: ["hale"],
          },
        },
        "bears-on": [
          {
            claim: "in-spans",
            supports: { p: "< 0.01" },
          },
        ],
      },
    ],
  };
}

const sources = `@book{hale, author = {Hale, Ada}, title = {Rims}, year = 1990}
@book{vane, author = {Vane, Bo}, title = {Rims again}, year = 1995}
`;

const corpus = (name: string): Fill =>
  filesOf({
    "corpus.yaml": {
      title: "Bowls",
      bibliography: "sources.bib",
      units: { span: { is: "4.15 ± 0.02 cm" } },
    },
    "bowls.yaml": bowls(name),
    "sources.bib": sources,
  });

const inSight = (page: Page, text: string): Promise<boolean> =>
  page.getByText(text).evaluate((element) => {
    const { top, bottom } = element.getBoundingClientRect();
    return top >= 0 && bottom <= window.innerHeight;
  });

walk(
  "reads a number, what would turn it, and its cautions, and saves its figure, by keys alone",
  async (page) => {
    await through(page, corpus(""), async ({ folder }) => {
      await tabTo(page, "Numbers");
      await page.keyboard.press("Enter");
      await page.getByRole("heading", { name: "The rims are whole spans." }).waitFor();
      await tabTo(page, "Eight rims against the span");
      await page.keyboard.press("Enter");
      await page.getByRole("heading", { name: "Eight rims against the span", level: 1 }).waitFor();
      await expect.poll(() => page.locator(".plate svg[role=img]").count()).toBe(2);
      await expect
        .poll(() => page.locator(".bearing").textContent())
        .toContain("Supports when p < 0.01; p is");
      await expect
        .poll(() => page.locator(".turns").textContent())
        .toContain("It hangs on which readings are taken.");
      await expect
        .poll(() => page.locator(".turns").textContent())
        .toContain("With the readings of Vane 1995 throughout, p is");

      const caution = "a peak is evidence of a module, not of a standard";
      for (let step = 0; step < 12 && !(await inSight(page, caution)); step++) {
        await page.keyboard.press("PageDown");
        await settled(page);
      }
      await expect.poll(() => inSight(page, caution)).toBe(true);

      const labels = await page
        .locator(".plate svg")
        .evaluateAll((drawings) =>
          drawings.map((one) =>
            (one.getAttribute("aria-labelledby") ?? "") === ""
              ? ""
              : (document.getElementById(one.getAttribute("aria-labelledby") ?? "")?.textContent ?? ""),
          ),
        );
      for (const label of labels) expect(label).toContain("Fit to the span");
      await page.evaluate(() => (document.querySelector("main") as HTMLElement).focus());
      await tabTo(page, "Save figure as SVG");
      const [saved] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
      expect(saved.suggestedFilename()).toBe("rims.svg");
      const text = readFileSync(await saved.path(), "utf8");
      expect(text).toMatch(/^<\?xml version="1\.0" encoding="UTF-8"\?>\n<svg xmlns=/);
      expect(withoutShifts(text)).toBe(withoutShifts(await drawnHere(folder, "rims")));
      await expect.poll(() => page.locator(".save output").textContent()).toBe("Saved.");
    });
  },
);

/** Waits until the page has scrolled as far as the last key meant it to. */
async function settled(page: Page): Promise<void> {
  let before = -1;
  for (let at = await page.evaluate(() => window.scrollY); at !== before;) {
    before = at;
    await frames(page, 9);
    at = await page.evaluate(() => window.scrollY);
  }
}

/** Without the half pixels by which groups are set off where the screen is coarse. */
function withoutShifts(svg: string): string {
  return svg.replace(/(<g\b[^>]*?) transform="[^"]*"/g, "$1");
}

/** The same figure drawn without a browser. */
async function drawnHere(folder: string, id: string): Promise<string> {
  const memo = emptyMemo();
  const { model } = await evaluate(readCorpusFolder(folder), plugins, memo, computingHere(plugins));
  const shown = model === null ? null : numberPage(model, plugins, memo.compute, id)?.figure;
  if (!shown) throw new Error(`no figure of ${id}`);
  return svgText(
    draw(worded(shown.figure, inEnglish), {
      document: svgDocument(),
      width: 720,
      palette: print,
      id: "figure",
    }),
  );
}

walk("leaves nothing for a checker of accessibility to find", async (page) => {
  await through(page, corpus(""), async () => {
    for (const path of ["/numbers", "/number/rims"]) {
      await visit(page, path);
      await page.getByRole("link", { name: "Hale" }).or(page.locator(".number-group")).first().waitFor();
      if (path !== "/numbers") await page.locator(".plate svg circle").first().waitFor({ state: "attached" });
      await page.locator("details").evaluateAll((all) => all.forEach((one) => one.setAttribute("open", "")));
      expect((await complaintsOf(page)).map((one) => `${path} ${one}`)).toEqual([]);
    }
  });
});

walk("shows hostile words in a figure as words, in the dark and on a narrow sheet too", async (page) => {
  await page.emulateMedia({ colorScheme: "dark" });
  await page.setViewportSize({ width: 390, height: 800 });
  await through(page, corpus(bad), async () => {
    for (const path of ["/numbers", "/number/rims"]) {
      await visit(page, path);
      await page.locator("h1").waitFor();
      await expect.poll(() => page.locator("main").textContent()).toContain("<img src=x");
      if (path !== "/numbers") await page.locator(".plate svg circle").first().waitFor({ state: "attached" });
      expect(await page.evaluate(() => "ran" in window)).toBe(false);
      expect(await page.locator("main img, main [onload], main [onerror]").count()).toBe(0);
      await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
    }
    const titles = await page.locator(".plate svg circle title").allTextContents();
    expect(titles.some((title) => title.includes("<img src=x"))).toBe(true);
    const ink = (): Promise<string> =>
      page
        .locator(".plate svg circle")
        .first()
        .evaluate((circle) => getComputedStyle(circle.closest("g") ?? circle).fill);
    await expect.poll(ink).toBe("rgb(238, 243, 243)");
    expect(await page.locator(".plate svg style, .plate svg [style]").count()).toBe(0);
  });
});
