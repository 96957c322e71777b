import type { Page } from "playwright-core";
import { expect } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { build } from "../../src/build.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../src/host/evaluate.ts";
import { listNames } from "../../src/read/grammar/kinds.ts";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { fill, toField } from "./forms-keys.ts";
import { copyOf, filesOf, through, visit } from "./through.ts";

const hostile =
  `</textarea><img src=x onerror="document.title='hit'"> ` +
  "ʃ".repeat(300) +
  " \u202eالحلقة الداخلية\u202c {{7*7}} `rm`";

const demo = copyOf("demo-corpus");

/** Things that one presses or types into, lower or narrower than 24 px. */
const small = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("main :is(button, input, select, textarea, a, summary)")]
      .filter((one) => one.checkVisibility())
      .filter((one) => {
        const { width, height } = one.getBoundingClientRect();
        return width < 24 || height < 24;
      })
      .map((one) => `${one.outerHTML.slice(0, 120)}`),
  );

walk(
  "every form passes axe, fits 390 px, and is made of targets one can hit, light and dark",
  async (page) => {
    await through(page, demo, async () => {
      for (const [scheme, width] of [
        ["light", 1280],
        ["dark", 390],
      ] as const) {
        await page.emulateMedia({ colorScheme: scheme });
        await page.setViewportSize({ width, height: 800 });
        for (const path of [
          ...listNames.map((list) => `/new/${list}`),
          "/edit/ring-a",
          "/edit/ring-a-roofed",
        ]) {
          await visit(page, path);
          await page.locator("form.form").waitFor();
          await expect.poll(() => overflow(page), { message: `${path} at ${width}` }).toBeLessThanOrEqual(0);
          await expect.poll(() => small(page), { message: path }).toEqual([]);
          // In the dark only colours differ, which are the same on all of them.
          if (scheme === "light" || path.startsWith("/edit"))
            expect(await complaintsOf(page), path).toEqual([]);
        }
      }
    });
  },
);

walk("shows troubles, what fits, and what asks back, without a complaint of axe", async (page) => {
  await through(page, demo, async () => {
    await visit(page, "/new/examinations");
    await toField(page, "outcomes");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Control+Enter");
    await page.getByText("Missing “method”, expected in every such record").waitFor();
    await toField(page, "of", "Shift+Tab");
    await page.keyboard.type("ring");
    await page.locator("[role=option]").first().waitFor();
    expect(await complaintsOf(page)).toEqual([]);
    await page.setViewportSize({ width: 390, height: 800 });
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
    await visit(page, "/edit/ring-a");
    await page.getByRole("button", { name: "Take out" }).click();
    await page.getByText("records refer to it:").waitFor();
    expect(await complaintsOf(page)).toEqual([]);
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
  });
});

walk("takes hostile and huge texts, in any direction, for what they are", async (page) => {
  const corpus = filesOf({
    "corpus.yaml": "title: Hostile\nlanguage: en\n",
    "a.yaml": { artefacts: [{ id: "thing", name: hostile }], claims: [{ id: "c", text: hostile }] },
  });
  await through(page, corpus, async ({ folder }) => {
    await visit(page, "/new/observations");
    await toField(page, "of");
    // Quicker than what fits is known, and on to the next: what does is taken as soon as it is.
    await page.keyboard.insertText("img");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Tab");
    const left = await page.evaluate(() => document.activeElement?.id);
    await page.getByRole("button", { name: /^Take away/ }).waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe(left);
    const report = `${hostile}\n${"A long report. ".repeat(4000)}`.trim();
    await fill(page, "text", report);
    await fill(page, "feature", hostile);
    await page.setViewportSize({ width: 390, height: 800 });
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
    await page.keyboard.press("Control+Enter");
    await page.waitForURL(/\/record\//);
    await page.locator("article.sheet").waitFor();
    expect(await page.title()).not.toBe("hit");
    expect(await page.locator("main img").count()).toBe(0);
    const { model } = build(readCorpusFolder(folder), plugins, emptyMemo());
    const [made] = model?.graph.list("observations") ?? [];
    expect(made?.values.text).toBe(report);
    expect(made?.values.feature).toBe(hostile.trim());
  });
});

walk("a corpus that cannot be written says so at its forms, and offers no saving", async (page) => {
  await page.route(/\/corpus\/files/, async (route) => {
    const answer = await route.fetch();
    const [head = "", ...files] = (await answer.text()).split("\n");
    const told = JSON.parse(head) as { readonly desk: object };
    const desk = { readOnly: "the folder cannot be written", undo: null, redo: null };
    await route.fulfill({
      response: answer,
      body: [JSON.stringify({ ...told, desk }), ...files].join("\n"),
    });
  });
  await through(page, demo, async () => {
    await visit(page, "/edit/ring-a-roofed");
    await page.getByText("Nothing can be saved in this corpus: the folder cannot be written").waitFor();
    expect(await page.getByRole("button", { name: "Save" }).count()).toBe(0);
    expect(await page.getByRole("button", { name: "Take out" }).count()).toBe(0);
  });
});

walk("moves entries of a list by keys, and hands the focus on when one goes", async (page) => {
  await through(page, demo, async () => {
    await visit(page, "/new/scholars");
    await toField(page, "known-as");
    for (const name of ["one", "two", "three"]) {
      await page.keyboard.press("Enter");
      await page.keyboard.insertText(name);
      await toField(page, "known-as");
    }
    const names = () =>
      page.locator(".entries input").evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));
    await expect.poll(() => names()).toEqual(["one", "two", "three"]);
    await page.locator("[id='at-known-as.2-text']").focus();
    await page.keyboard.press("Alt+ArrowUp");
    await expect.poll(() => names()).toEqual(["one", "three", "two"]);
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("at-known-as.1-text");
    await page.getByRole("button", { name: "Take away known as, 2" }).focus();
    await page.keyboard.press("Enter");
    await expect.poll(() => names()).toEqual(["one", "two"]);
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("at-known-as");
  });
});
