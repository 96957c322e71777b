import type { Page } from "playwright-core";
import { expect } from "vitest";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { copyOf, filesOf, tabTo, through, visit } from "./through.ts";

const question = "Was the inner ring a roofed house or an open ring?";
const roundEnds = "suppose=look-at-the-casts%3Around-ends";
const band = (page: Page) => page.getByRole("region", { name: "What is supposed" });
const answer = (page: Page, text: RegExp) => page.locator("table.answers").getByRole("row", { name: text });

walk("supposes an outcome by its address, walks on under it, and comes back by a key", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await visit(page, `/outline?${roundEnds}`);
    await band(page).getByText("The marks on the casts are round-ended, as antler leaves them.").waitFor();
    await band(page).getByText("Nothing of this has been found.").waitFor();
    await expect.poll(() => page.title()).toBe("Supposed · Outline · The post-rings of Merrow Down");
    expect(await complaintsOf(page)).toEqual([]);

    await tabTo(page, /^\s*Questions$/);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Questions", level: 1 }).waitFor();
    await tabTo(page, /^\s*Was the inner ring/);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: question, level: 1 }).waitFor();
    expect(new URL(page.url()).searchParams.get("suppose")).toBe("look-at-the-casts:round-ends");
    await expect.poll(() => answer(page, /carried a roof/).textContent()).toContain("stands");
    await expect.poll(() => answer(page, /stood open/).textContent()).toContain("falls");
    await expect
      .poll(() => band(page).getByRole("listitem").first().textContent())
      .toContain("a roof open, then stands");
    expect(await complaintsOf(page)).toEqual([]);

    await page.keyboard.press("b");
    await expect.poll(() => band(page).count()).toBe(0);
    await expect.poll(() => answer(page, /carried a roof/).textContent()).toContain("open");
    expect(new URL(page.url()).searchParams.has("suppose")).toBe(false);
    await expect.poll(() => page.title()).toBe(`${question} · The post-rings of Merrow Down`);
    await page.goBack();
    await band(page).waitFor();
    await expect.poll(() => answer(page, /carried a roof/).textContent()).toContain("stands");
  });
});

walk("goes from the examinations to a question as an outcome would leave it", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await visit(page, "/examinations");
    const link = page.getByRole("link", { name: "Suppose this: The marks on the casts end straight" });
    await link.first().waitFor();
    await link.first().click();
    await band(page).getByText("The marks on the casts end straight, as iron leaves them.").waitFor();
    await page.getByRole("heading", { name: question, level: 1 }).waitFor();
    await expect.poll(() => answer(page, /stood open/).textContent()).toContain("stands");
    await expect.poll(() => answer(page, /carried a roof/).textContent()).toContain("falls");
  });
});

walk("marks what is only supposed on sheets, and comes back from one to the examination", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await visit(page, `/record/iron-marks?${roundEnds}`);
    await page.getByText("The supposed outcome argues against it").first().waitFor();
    await page.getByRole("link", { name: "as antler leaves them (supposed)" }).first().click();
    await page.locator(".kind", { hasText: "supposed observation" }).waitFor();
    await band(page).getByRole("button", { name: "Back to the record" }).click();
    await page.locator(".kind", { hasText: "examination" }).waitFor();
    await expect.poll(() => band(page).count()).toBe(0);
    expect(decodeURIComponent(new URL(page.url()).pathname)).toBe("/record/look-at-the-casts");
  });
});

walk("keeps the year beside the supposition, and says what the corpus does not have", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await visit(page, `/question/what-was-it?as-of=1999&${roundEnds}`);
    await band(page).waitFor();
    await page.locator(".side").getByRole("link", { name: "Outline" }).click();
    await page.getByRole("heading", { name: "Outline", level: 1 }).waitFor();
    expect(new URL(page.url()).search).toBe(`?as-of=1999&${roundEnds}`);

    await visit(page, "/question/what-was-it?suppose=look-at-the-casts%3Amolten-ends");
    await band(page).getByText("The record is shown as it is.").waitFor();
    await expect.poll(() => answer(page, /carried a roof/).textContent()).toContain("open");
    await expect.poll(() => page.title()).toBe(`${question} · The post-rings of Merrow Down`);
    await page.keyboard.press("b");
    await expect.poll(() => band(page).count()).toBe(0);
  });
});

walk("has the band on every page, on a small screen and on paper, without running over", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await page.setViewportSize({ width: 390, height: 800 });
    for (const path of [
      "/",
      "/map",
      "/artefacts",
      "/numbers",
      "/scholars",
      "/standpoints",
      "/history",
      "/findings",
    ]) {
      await visit(page, `${path}?${roundEnds}`);
      await band(page).getByText("It would change:").waitFor();
      await expect.poll(() => overflow(page), { message: path }).toBe(0);
    }
    expect(await complaintsOf(page)).toEqual([]);
    const staying = [
      [390, band(page).getByRole("button", { name: "Back to the record" })],
      [1280, band(page).getByText("Nothing of this has been found.")],
    ] as const;
    for (const [width, what] of staying) {
      await page.setViewportSize({ width, height: 800 });
      await page.evaluate(() => window.scrollTo(0, document.documentElement.scrollHeight));
      await expect.poll(() => page.evaluate(() => window.scrollY)).toBeGreaterThan(800);
      await expect
        .poll(async () => (await what.boundingBox())?.y ?? -1, { message: `at ${width}` })
        .toBeGreaterThanOrEqual(0);
    }
    await page.setViewportSize({ width: 390, height: 800 });
    await page.emulateMedia({ media: "print" });
    await expect.poll(() => band(page).getByText("Nothing of this has been found.").isVisible()).toBe(true);
    await expect.poll(() => band(page).getByRole("button").isVisible()).toBe(false);
  });
});

const hidden = filesOf({
  "corpus.yaml": "title: Land\nwithhold: [spring]\n",
  "all.yaml": {
    artefacts: [
      { id: "spring", name: "The Hidden Spring" },
      { id: "field", name: "The field" },
    ],
    claims: [{ id: "wet", text: "The land was wet." }],
    questions: [{ id: "which", text: "Was the land wet?", answers: ["wet"] }],
    examinations: [
      {
        id: "divine",
        of: "spring",
        method: "a hazel rod at the Hidden Spring",
        outcomes: [{ id: "bends", text: "The Hidden Spring bends it.", therefore: "wet" }],
      },
    ],
  },
});

walk("supposes nothing of what is withheld, and names none of it", async (page) => {
  await through(page, hidden, async () => {
    await visit(page, "/question/which?suppose=divine%3Abends");
    await band(page).getByText("The record is shown as it is.").waitFor();
    await expect.poll(() => answer(page, /land was wet/).textContent()).toContain("unsupported");
    expect(await page.locator("body").textContent()).not.toMatch(/Hidden|hazel/);
  });
});
