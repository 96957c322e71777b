import type { Page } from "playwright-core";
import { expect } from "vitest";
import { corpusOf } from "../make-corpus/corpus.ts";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { copyOf, filesOf, focused, tabTo, through, visit } from "./through.ts";
import type { Fill } from "./through.ts";

const demo = copyOf("demo-corpus");

/** The demo with many more examinations: of some nothing would follow, some have no cost, one is told in Arabic. */
const sixty = copyOf("demo-corpus", {
  "examinations.yaml": Array.from({ length: 55 }, (_, n) =>
    [
      `  - id: further-${n}`,
      `    of: [ring-a/post-${String((n % 9) + 1).padStart(2, "0")}]`,
      `    method: ${n === 3 ? "النظر بعدسة إلى الآثار في القاع" : `turn over stone number ${n + 1} with a gloved hand`}`,
      ...(n % 3 === 0 ? [] : [`    cost: ${(n % 7) + 1}`]),
      ...(n % 10 === 9 ? ["    destructive: true"] : []),
      "    outcomes:",
      `      - { id: this-way, text: It lies this way., against: [${n % 2 === 0 ? "iron-marks" : "mud-on-the-hurdle"}] }`,
      `      - { id: that-way, text: It lies that way.${n % 4 === 0 ? ", therefore: [roof-later]" : ""} }`,
      "",
    ].join("\n"),
  ).join(""),
});

const none = filesOf({
  "corpus.yaml": { title: "A bare corpus" },
  "records.yaml": { claims: [{ id: "c", text: "The ring was old." }] },
});

const looks = (page: Page) => page.locator("ol.looks-at > .look");
const answer = (page: Page, text: string) =>
  page.locator("table.answers tbody tr").filter({ hasText: text }).locator("td").first();

walk(
  "supposes the first outcome of the first examination by keys, sees what it changes, and comes back",
  async (page) => {
    await through(page, demo, async () => {
      await page.keyboard.press("e");
      await page.getByRole("heading", { name: "Examinations", exact: true, level: 1 }).waitFor();
      await expect.poll(() => looks(page).count()).toBe(5);
      await expect.poll(() => looks(page).first().textContent()).toContain("on the 1998 casts of two floors");
      await expect
        .poll(() => page.locator(".examinations h2").first().textContent())
        .toBe("What none of them can decide");
      await page.keyboard.press("n");
      await expect.poll(() => focused(page)).toContain("Raking light and a hand lens");
      await page.keyboard.press("n");
      await page.keyboard.press("N");
      await expect.poll(() => focused(page)).toContain("Raking light and a hand lens");
      await tabTo(page, "Suppose this: The marks on the casts are round-ended");
      await page.keyboard.press("Enter");

      await page.locator("main[data-shown='/question/what-was-it'] h1").waitFor();
      expect(new URL(page.url()).searchParams.get("suppose")).toBe("look-at-the-casts:round-ends");
      await expect.poll(() => page.locator(".supposed").textContent()).toContain("round-ended");
      // As it was written beside the demo before there was a plan: the roof stands, the open ring falls.
      await expect.poll(() => answer(page, "carried a roof").textContent()).toBe("stands");
      await expect.poll(() => answer(page, "stood open").textContent()).toBe("falls");

      await page.keyboard.press("b");
      await expect.poll(() => answer(page, "carried a roof").textContent()).toBe("open");
      expect(new URL(page.url()).searchParams.has("suppose")).toBe(false);
      await page.goBack();
      await page.goBack();
      await page.locator("main[data-shown='/examinations'] h1").waitFor();
      await expect
        .poll(() => focused(page))
        .toContain("Suppose this: The marks on the casts are round-ended");
      expect(await complaintsOf(page)).toEqual([]);
    });
  },
);

walk(
  "tells on a question and on the sheet of an examination what would decide, once the plan is made",
  async (page) => {
    await through(page, demo, async () => {
      await visit(page, "/question/what-was-it");
      await tabTo(page, "Work it out among the examinations");
      await page.keyboard.press("Enter");
      await expect.poll(() => looks(page).count()).toBe(5);
      // Numbers that arrive make the model anew; at the end the plan is there.
      await expect.poll(() => page.locator(".computing").count()).toBe(0);
      await expect.poll(() => page.locator(".working").textContent()).toBe("");
      await visit(page, "/question/what-was-it");
      await expect
        .poll(() => page.locator(".deciders li").first().textContent())
        .toContain(
          "Raking light and a hand lens on the 1998 casts of two floors can decide “a roof” and “an open ring”; 1\u00a0day, not destructive",
        );
      expect(await complaintsOf(page)).toEqual([]);
      await tabTo(page, "Raking light and a hand lens");
      await page.keyboard.press("Enter");
      await page.locator("main[data-shown='/examinations'] h1").waitFor();
      await expect.poll(() => focused(page)).toContain("Raking light and a hand lens");
      await visit(page, "/record/look-at-the-casts");
      const sheet = page.locator("section.examinations");
      await expect.poll(() => sheet.locator("tbody tr").count()).toBe(3);
      await expect.poll(() => sheet.textContent()).toContain("It can decide");
      const said = await page.locator("dl.facts").first().textContent();
      expect(said).toContain("1\u00a0day");
      expect(said).toContain("as antler leaves them; sees antler pick marks, seen; against");
      expect(await complaintsOf(page)).toEqual([]);
    });
  },
);

/** Looks at the page at three widths for what hangs over, is too small, or is amiss. */
async function looksWell(page: Page, fill: Fill, count: number): Promise<void> {
  await through(page, fill, async () => {
    await visit(page, "/examinations");
    await expect.poll(() => looks(page).count()).toBe(count);
    if (count === 0)
      await expect.poll(() => page.locator(".empty pre").textContent()).toContain("examinations:");
    for (const width of [1280, 640, 390]) {
      await page.setViewportSize({ width, height: 800 });
      await expect.poll(() => overflow(page), { message: `at ${width}` }).toBeLessThanOrEqual(0);
      await expect
        .poll(
          () =>
            page
              .locator(".examinations :is(a, summary)")
              .evaluateAll((all) =>
                all
                  .filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 24)
                  .map((one) => one.textContent),
              ),
          { message: `at ${width}` },
        )
        .toEqual([]);
      if (width !== 640) expect(await complaintsOf(page), `at ${width}`).toEqual([]);
    }
  });
}

walk("is clean and never wider than the window with the five of the demo", (page) =>
  looksWell(page, demo, 5),
);

walk("is clean and never wider than the window with sixty", (page) => looksWell(page, sixty, 60));

walk("teaches how to record one where none is", (page) => looksWell(page, none, 0));

walk("opens what is folded at the examination that the address names", async (page) => {
  await through(page, sixty, async () => {
    await visit(page, "/examinations");
    await expect.poll(() => looks(page).count()).toBe(60);
    const folded = looks(page)
      .filter({ has: page.locator("details:not([open]) > summary[data-look]") })
      .last();
    const id = await folded.locator("[data-look]").getAttribute("data-look");
    await visit(page, `/records`);
    await visit(page, `/examinations?at=${encodeURIComponent(id ?? "")}`);
    await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute("data-look"))).toBe(id);
    await expect.poll(() => page.evaluate(() => document.activeElement?.closest("details")?.open)).toBe(true);
    await tabTo(page, "Suppose this");
    const left = await focused(page);
    await page.keyboard.press("Enter");
    await page.locator(".supposed").waitFor();
    await page.goBack();
    await page.locator("main[data-shown='/examinations'] h1").waitFor();
    await expect.poll(() => focused(page)).toBe(left);
    expect(new URL(page.url()).searchParams.get("at")).toBe(id);
  });
});

walk("tells how far a long plan has come while it is made", async (page) => {
  // Each thing that is told is drawn before the next is heard, however quick the plan is beside the page.
  await page.addInitScript(() => {
    const own = Object.getOwnPropertyDescriptor(Worker.prototype, "onmessage");
    const drawn = (): Promise<void> =>
      new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done))));
    let before = Promise.resolve();
    Object.defineProperty(Worker.prototype, "onmessage", {
      set(this: Worker, hear: (event: MessageEvent) => void) {
        own?.set?.call(this, (event: MessageEvent) => {
          before = before.then(drawn).then(() => hear.call(this, event));
        });
      },
    });
  });
  const files = corpusOf({ records: 3000, seed: 7 }).map(({ path, text }) => [path, text] as const);
  await through(page, filesOf(Object.fromEntries(files)), async () => {
    await page.evaluate(() => {
      const said: string[] = [];
      Object.assign(window, { said });
      new MutationObserver(() => {
        const text = document.querySelector(".working")?.textContent;
        if (text && said.at(-1) !== text) said.push(text);
      }).observe(document.body, { childList: true, subtree: true, characterData: true });
    });
    await visit(page, "/examinations");
    await expect.poll(() => looks(page).count()).toBeGreaterThan(10);
    const said = await page.evaluate(() => (window as unknown as { said: readonly string[] }).said);
    expect(said.some((one) => /^Thinking examinations through: [1-9]\d* of \d+$/.test(one))).toBe(true);
  });
});
