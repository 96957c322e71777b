import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";
import { numberWords } from "../../src/app/words/shown/numbers.ts";
import { scholarWords } from "../../src/app/words/shown/scholars.ts";
import { walk } from "./chromium.ts";
import { places, press, said, shown, widget, yearsFollowed } from "./map-walk.ts";
import { atRest, copyOf, focused, frames, tabTo, through, visit } from "./through.ts";

const demo = copyOf("demo-corpus");
const question = "Was the inner ring a roofed house or an open ring?";
const corpus = "The post-rings of Merrow Down";

const titled = (page: Page, ...parts: readonly string[]): Promise<void> =>
  expect.poll(() => page.title()).toBe([...parts, corpus].join(" · "));
const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
const inSight = (one: Locator): Promise<boolean> =>
  one.evaluate((element) => {
    const { top, bottom } = element.getBoundingClientRect();
    return top >= 0 && bottom <= window.innerHeight;
  });

/** From heading to heading until the one that is wanted has the focus. */
async function toHeading(page: Page, wanted: string): Promise<void> {
  for (let step = 0; step < 20; step++) {
    await page.keyboard.press("h");
    if ((await focused(page)).trim() === wanted) return;
  }
  throw new Error(`No heading “${wanted}”`);
}

/** From the list of questions to one of them, and on to its map. */
async function toMap(page: Page): Promise<void> {
  await tabTo(page, question);
  await page.keyboard.press("Enter");
  await titled(page, question);
  await page.keyboard.press("2");
  await titled(page, question, "Map");
  await widget(page).waitFor();
}

walk("goes from the question over the map to a thing's drawing and back, by keys alone", async (page) => {
  await through(page, demo, async () => {
    await titled(page, "Questions");
    await toMap(page);
    await page.keyboard.press("m");
    await expect.poll(() => focused(page)).toContain(`application Section through: ${question}`);
    expect(await press(page, "ArrowDown")).toMatch(/^Answer: /);
    for (let step = 0; step < 12 && !(await said(page)).startsWith("Thing: "); step++)
      await press(page, "ArrowDown");
    const thing = await said(page);
    expect(thing).toMatch(/^Thing: inner ring\./);
    await page.keyboard.press("Enter");
    await titled(page, "inner ring", "Record sheet");
    await expect.poll(() => page.locator(".arrival").textContent()).toBe("inner ring · Record sheet");
    await tabTo(page, "Dimensions, history and drawing");
    await page.keyboard.press("Enter");
    await titled(page, "Ring A, the inner ring", "Artefacts");
    await toHeading(page, "Drawn to scale");
    const drawing = page.locator("figure.drawing > svg");
    await expect.poll(() => drawing.getAttribute("role")).toBe("img");
    await expect
      .poll(() => drawing.evaluate((one) => one.getBoundingClientRect().top < window.innerHeight))
      .toBe(true);

    // Each step back leads to where one was, not to the top of the page.
    await page.goBack();
    await titled(page, "inner ring", "Record sheet");
    await expect.poll(() => focused(page)).toContain("Dimensions, history and drawing");
    await page.goBack();
    await titled(page, question, "Map");
    await expect.poll(() => focused(page)).toContain("application");
    await expect.poll(() => said(page)).toBe(thing);
    expect(await press(page, "ArrowUp")).not.toContain("Thing: ");
    await page.goBack();
    await titled(page, question);
    await page.goBack();
    await titled(page, "Questions");
    await expect.poll(() => focused(page)).toContain(question);
    await page.goForward();
    await titled(page, question);
  });
});

walk(
  "finds a scholar by a Greek word from the page of numbers, and goes back to what was found",
  async (page) => {
    await through(page, demo, async () => {
      await page.keyboard.press("6");
      await titled(page, "Numbers");
      await page.keyboard.press("/");
      await page.keyboard.insertText("ΜΑΥΡΟΓΙΑΝΝΗ");
      await page.keyboard.press("Enter");
      await titled(page, "ΜΑΥΡΟΓΙΑΝΝΗ", "Search");
      await expect.poll(() => page.locator("output.told").textContent()).toContain("Found in");
      const focusedHref = (): Promise<string | null> =>
        page.evaluate(() => document.activeElement?.getAttribute("href") ?? null);
      await page.locator('a.hit[href="/record/mavrogianni"]').waitFor();
      for (let step = 0; step < 40 && (await focusedHref()) !== "/record/mavrogianni"; step++)
        await page.keyboard.press("ArrowDown");
      await page.keyboard.press("Enter");
      await titled(page, "Ελένη Μαυρογιάννη", "Record sheet");
      await tabTo(page, scholarWords.page);
      await page.keyboard.press("Enter");
      await titled(page, "Ελένη Μαυρογιάννη", "Scholars");
      await page.goBack();
      await titled(page, "Ελένη Μαυρογιάννη", "Record sheet");
      await page.goBack();
      await titled(page, "ΜΑΥΡΟΓΙΑΝΝΗ", "Search");
      await expect.poll(focusedHref).toBe("/record/mavrogianni");
    });
  },
);

walk("reads a number's cautions past its tables, by keys alone", async (page) => {
  await through(page, demo, async () => {
    await page.keyboard.press("6");
    await titled(page, "Numbers");
    await tabTo(page, "Twenty-two gaps of both rings against the pace");
    await page.keyboard.press("Enter");
    await page.locator(".plate svg[role=img]").first().waitFor();
    await toHeading(page, numberWords.takeCare);
    const cautions = page.locator("section", { has: page.locator("h2:focus") }).locator("li");
    await expect.poll(() => cautions.count()).toBeGreaterThan(2);
    await expect.poll(() => inSight(cautions.first())).toBe(true);
    await page.keyboard.press("H");
    await expect.poll(async () => (await focused(page)).trim()).not.toBe(numberWords.takeCare);
  });
});

walk("replays the years on the map with nothing moving but what is told of it", async (page) => {
  await through(page, demo, async () => {
    await toMap(page);
    const still = async (): Promise<readonly unknown[]> => [
      await places(page),
      await widget(page).boundingBox(),
      await page.getByRole("slider").boundingBox(),
      await page.locator(".map-years .step.on").boundingBox(),
    ];
    await expect.poll(async () => (await places(page)).length).toBeGreaterThan(8);
    const before = await still();
    await tabTo(page, "replay");
    const years = await yearsFollowed(page);
    await page.keyboard.press("Enter");
    while ((await years()).length < 3) {
      expect(await still()).toEqual(before);
      await frames(page, 6);
    }
    expect((await years()).slice(0, 2)).toEqual(["1896", "1911"]);
    await expect.poll(() => focused(page)).toContain("stop");
    await page.keyboard.press("Enter");
    const stopped = shown(page).get("as-of");
    await expect.poll(() => focused(page)).toContain("replay");
    expect(shown(page).get("as-of")).toBe(stopped);
    await titled(page, question, "Map", `as known in ${stopped}`);
  });
});

walk("keeps the focus when a year's button goes out of use", async (page) => {
  await through(page, demo, async () => {
    await tabTo(page, question);
    await page.keyboard.press("Enter");
    await titled(page, question);
    await tabTo(page, "Earlier year");
    await page.keyboard.press("Enter");
    await expect.poll(() => shown(page).get("as-of")).not.toBeNull();
    await expect.poll(() => focused(page)).toContain("Earlier year");
    await tabTo(page, "Later year");
    await page.keyboard.press("Enter");
    await expect.poll(() => shown(page).get("as-of")).toBeNull();
    await expect.poll(() => focused(page)).toContain("slider");
    await page.keyboard.press("<");
    await tabTo(page, "Back to now");
    await page.keyboard.press("Enter");
    await expect.poll(() => shown(page).get("as-of")).toBeNull();
    await expect.poll(() => focused(page)).toContain("slider");
  });
});

walk("runs an action from the command list, and opens and shuts the keyboard map", async (page) => {
  await through(page, demo, async () => {
    await toMap(page);
    const leaf = page.getByRole("dialog");
    await page.keyboard.press(".");
    await leaf.waitFor();
    await page.keyboard.type("first row");
    await expect.poll(() => leaf.locator("output").textContent()).toBe("One fits; Enter does it.");
    await page.keyboard.press("Enter");
    await expect.poll(() => leaf.count()).toBe(0);
    await expect.poll(() => said(page)).toMatch(/^Answer: /);
    await expect.poll(() => focused(page)).toContain("application");

    await page.keyboard.press("?");
    await leaf.getByRole("heading", { name: "Keys" }).waitFor();
    for (const name of ["To the map itself", "Last of the row", "Next heading of the page", "Findings"])
      await expect.poll(() => leaf.getByRole("definition").filter({ hasText: name }).count()).toBe(1);
    // Keys of the page do nothing under it.
    await page.keyboard.press("3");
    expect(new URL(page.url()).pathname).toBe("/map");
    await page.keyboard.press("Escape");
    await expect.poll(() => leaf.count()).toBe(0);
    await expect.poll(() => focused(page)).toContain("application");
  });
});

walk("shows where one is on the map, and moves on from its panel", async (page) => {
  await through(page, demo, async () => {
    await toMap(page);
    const box = (await widget(page).boundingBox()) ?? { x: 0, y: 0, height: 0 };
    const clip = { x: box.x, y: box.y + box.height / 2, width: 2, height: 40 };
    await atRest(page);
    const bare = await page.screenshot({ clip });
    await page.keyboard.press("m");
    await expect.poll(async () => (await page.screenshot({ clip })).equals(bare)).toBe(false);
    await press(page, "ArrowDown");
    await tabTo(page, "only this");
    const answer = await said(page);
    expect(await press(page, "ArrowDown")).not.toBe(answer);
    await expect.poll(() => focused(page)).toContain("application");
    await tabTo(page, "focus");
    await page.keyboard.press("Enter");
    await expect.poll(() => shown(page).get("focus")).not.toBeNull();
    await expect.poll(() => focused(page)).toContain("application");
  });
});

walk(
  "names every page in the window's title, and skips to it without a step in the history",
  async (page) => {
    await through(page, demo, async () => {
      const paths = {
        "/outline": ["Outline"],
        "/artefacts": ["Artefacts"],
        "/artefact/ring-a": ["Ring A, the inner ring", "Artefacts"],
        "/scholars": ["Scholars"],
        "/scholar/oyelaran?as-of=2004": ["Folasade Oyelaran", "Scholars", "as known in 2004"],
        "/numbers": ["Numbers"],
        "/findings": ["Findings"],
        "/records": ["Records"],
        "/search": ["Search"],
        "/map": ["Map"],
        "/record/there-is-none": ["There is no record of that name."],
      };
      for (const [path, parts] of Object.entries(paths)) {
        await visit(page, path);
        await titled(page, ...parts);
      }
      const steps = await page.evaluate(() => history.length);
      await page.reload();
      await titled(page, "There is no record of that name.");
      await tabTo(page, "Skip to the page");
      await page.keyboard.press("Enter");
      await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe("MAIN");
      await expect.poll(() => page.evaluate(() => history.length)).toBe(steps);
    });
  },
);

for (const width of [390, 640]) {
  walk(`goes the same way in a window of ${width} px, by keys alone`, async (page) => {
    await page.setViewportSize({ width, height: 800 });
    await through(page, demo, async () => {
      await tabTo(page, question);
      await page.keyboard.press("Enter");
      await titled(page, question);
      await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
      await page.keyboard.press("2");
      await titled(page, question, "Map");
      await tabTo(page, "The inner ring stood open");
      await page.keyboard.press("Enter");
      await widget(page).waitFor();
      await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe("MAIN");
      await page.keyboard.press("m");
      await expect.poll(() => focused(page)).toContain("application");
      expect(await press(page, "ArrowDown")).toMatch(/^Answer: The inner ring stood open/);
      for (let step = 0; step < 12 && !(await said(page)).startsWith("Thing: "); step++)
        await press(page, "ArrowDown");
      await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
      await page.keyboard.press("Enter");
      await page.getByRole("link", { name: "Dimensions, history and drawing" }).waitFor();
      await tabTo(page, "Dimensions, history and drawing");
      await page.keyboard.press("Enter");
      await expect.poll(() => page.title()).toContain(" · Artefacts · ");
      await toHeading(page, "Dimensions");
      await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
      await page.goBack();
      await expect.poll(() => focused(page)).toContain("Dimensions, history and drawing");
    });
  });
}
