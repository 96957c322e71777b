import type { Page } from "playwright-core";
import { expect } from "vitest";
import { words } from "../../src/app/words/index.ts";
import { complaintsOf } from "./axe.ts";
import { walk } from "./chromium.ts";
import { copyOf, focused, heldBack, tabTo, through, visit } from "./through.ts";

/** Every page of the app, by an address of the demo. */
const pages = [
  "/",
  "/question/what-was-it",
  "/record/deep-enough",
  "/record/ring-a",
  "/record/oyelaran-2004",
  "/record/ring-unit",
  "/map",
  "/map?question=what-was-it",
  "/outline",
  "/records",
  "/artefacts",
  "/artefact/ring-a",
  "/artefact/ring-a/post-07",
  "/scholars",
  "/scholars?look=claims",
  "/scholar/oyelaran",
  "/numbers",
  "/number/ring-unit",
  "/search?q=ring",
  "/findings",
  "/record/there-is-none",
];

/** Interactive things narrower or lower than 24 px, links inside a line of text apart (WCAG 2.5.8). */
async function smallTargets(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("button, input, select, summary, [role=slider], nav a")]
      // A field for files that is kept out of sight is reached by the button before it.
      .filter((one) => one.checkVisibility() && !one.matches(".unseen[tabindex='-1']"))
      .map((one) => ({ one, box: one.getBoundingClientRect() }))
      .filter(({ box }) => box.width < 24 || box.height < 24)
      .map(({ one }) => one.outerHTML.slice(0, 120)),
  );
}

const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

walk("finds nothing against any page with axe, by day and in a dark room", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    const found: string[] = [];
    for (const path of pages) {
      await page.emulateMedia({ colorScheme: "light" });
      await visit(page, path);
      for (const one of await complaintsOf(page, "html")) found.push(`${path} ${one}`);
      // In the dark a page differs by its colours alone.
      await page.emulateMedia({ colorScheme: "dark" });
      for (const one of await complaintsOf(page, "html", ["color-contrast"]))
        found.push(`${path}, in the dark: ${one}`);
      if ((await page.locator("h1").textContent()) === words.notThere && !path.endsWith("there-is-none"))
        found.push(`${path} is not there`);
    }
    expect(found).toEqual([]);
  });
});

walk("fits 390 px and twice the size, with targets of 24 px", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    const found: string[] = [];
    // At 200 % zoom a window of 1280 px is 640 px wide.
    for (const width of [1280, 640, 390]) {
      await page.setViewportSize({ width, height: 800 });
      for (const path of pages) {
        await visit(page, path);
        const over = await overflow(page);
        if (over > 0) found.push(`${path} at ${width}: ${over} px too wide`);
        for (const one of await smallTargets(page)) found.push(`${path} at ${width}: ${one}`);
      }
    }
    expect(found).toEqual([]);
  });
});

walk("teaches on empty pages, and axe finds nothing against them", async (page) => {
  await through(page, copyOf("tests/corpora/empty"), async () => {
    const found: string[] = [];
    for (const path of [
      "/",
      "/map",
      "/artefacts",
      "/numbers",
      "/scholars",
      "/outline",
      "/records",
      "/findings",
    ]) {
      await visit(page, path);
      if (path !== "/findings" && (await page.locator("main pre").count()) === 0)
        found.push(`${path} teaches nothing`);
      for (const one of await complaintsOf(page, "html")) found.push(`${path} ${one}`);
    }
    expect(found).toEqual([]);
  });
});

walk("keeps what is looked at in the address: back, forward and reload lead to it", async (page) => {
  await through(page, copyOf("demo-corpus"), async ({ at }) => {
    await page.goto(at("/question/what-was-it?as-of=1970"));
    await expect.poll(() => page.locator("output.year").textContent()).toContain("1970");
    await page.locator("table.answers tbody th a").first().click();
    await page.locator(".kind", { hasText: "claim" }).waitFor();
    expect(page.url()).toContain("as-of=1970");
    const title = await page.locator("h1").textContent();
    await page.goBack();
    await page.locator("table.answers").waitFor();
    await expect.poll(() => page.locator("output.year").textContent()).toContain("1970");
    await page.goForward();
    await expect.poll(() => page.locator("h1").textContent()).toBe(title);
    await page.reload();
    await expect.poll(() => page.locator("h1").textContent()).toBe(title);
  });
});

/** Goes to a page, and presses a key the moment it stands there, before anything else is done; gives its title and what has the focus. */
const goAndPress = (page: Page, to: string, key: string): Promise<readonly string[]> =>
  page.evaluate(
    ([path, pressed]) =>
      new Promise<readonly string[]>((done) => {
        new MutationObserver((_, watch) => {
          const main = document.querySelector<HTMLElement>("main");
          const { activeElement } = document;
          if (main?.dataset["shown"] !== path || !main.querySelector("h1") || !activeElement) return;
          watch.disconnect();
          const event = new KeyboardEvent("keydown", { key: pressed, bubbles: true, cancelable: true });
          activeElement.dispatchEvent(event);
          done([document.title, activeElement.id]);
        }).observe(document, { attributes: true, childList: true, subtree: true });
        history.pushState(null, "", path);
      }),
    [to, key] as const,
  );

walk("has its title, its focus and its keys from the moment a page can be seen", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    // Once before, since the code of some pages is fetched when they are first gone to.
    for (const path of ["/search", "/edit/ring-a-roofed", "/"]) await visit(page, path);
    const [title, focus] = await goAndPress(page, "/search", "Tab");
    expect(title).toMatch(/^Search · /);
    expect(focus).toBe("search-field");
    await visit(page, "/");
    await goAndPress(page, "/record/ring-a-roofed", "c");
    await page.locator("main[data-shown='/edit/ring-a-roofed'] form.form").waitFor();
  });
});

walk(
  "leads back to the link that was followed, also where the page behind it had not come yet",
  async (page) => {
    const come = await heldBack(page, /\/map-page-[^/]*\.js$/);
    await through(page, copyOf("tests/corpora/walk"), async () => {
      await visit(page, "/question/what-for");
      await tabTo(page, "The ditch was dug for defence.");
      await page.keyboard.press("2");
      await expect.poll(() => page.locator("main").getAttribute("aria-busy")).toBe("true");
      await page.goBack();
      await expect.poll(() => focused(page)).toContain("The ditch was dug for defence.");
      come();
    });
  },
);

walk("prints without what only a screen can do", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    await visit(page, "/question/what-was-it");
    await page.locator("table.answers").waitFor();
    await expect.poll(() => page.locator("nav").isVisible()).toBe(false);
    await expect.poll(() => page.locator("table.answers").isVisible()).toBe(true);
    await expect
      .poll(() => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor))
      .toBe("rgb(255, 255, 255)");
  });
});
