import { readFileSync } from "node:fs";
import { expect } from "vitest";
import { complaintsOf } from "./axe.ts";
import { walk } from "./chromium.ts";
import { boxes, openMap, places, press, said, shown, widget } from "./map-walk.ts";
import { atRest, copyOf, through, visit } from "./through.ts";

interface Corner {
  readonly x: number;
  readonly y: number;
}

function never(what: string): never {
  throw new Error(`Missing ${what}, expected it on the map`);
}

walk("unfolds a fold that is clicked, and goes back", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await openMap(page, "/map?question=what-was-it");
    // The whole map, with all its folds in sight.
    await page.keyboard.press("0");
    await atRest(page);
    const panel = page.locator(".map-panel");
    const corner = async (): Promise<Corner> => (await panel.boundingBox()) ?? never("a panel");
    const placeOf = async (title: string): Promise<readonly number[]> => {
      const place = await page.locator("[data-box]", { hasText: title }).first().getAttribute("data-place");
      return place?.split(" ").map(Number) ?? never(title);
    };
    const name = async (): Promise<string> => (await panel.getAttribute("aria-label")) ?? never("a name");
    // From two boxes, on the screen and on the map, where every other one is.
    const [high, up] = [await corner(), await placeOf(await name())];
    await press(page, "ArrowDown");
    await atRest(page);
    const [low, down] = [await corner(), await placeOf(await name())];
    const zoom = (low.y - high.y) / ((down[1] ?? 0) - (up[1] ?? 0));
    const [x = 0, y = 0, width = 0, height = 0] = await placeOf("more argument");
    await page.keyboard.press("Escape");
    const before = await boxes(page);
    await page.mouse.click(
      high.x + 9 + (x - (up[0] ?? 0) + width / 2) * zoom,
      high.y + 9 + (y - (up[1] ?? 0) + height / 2) * zoom,
    );
    await expect.poll(() => shown(page).get("open")).not.toBeNull();
    const folds = page.locator("[data-box]", { hasText: "more argument" });
    await expect.poll(() => folds.count()).toBe(0);
    await expect.poll(async () => (await boxes(page)).length).toBeGreaterThanOrEqual(before.length);
    await page.goBack();
    await expect.poll(() => boxes(page)).toEqual(before);
  });
});

walk(
  "takes a box by a click, opens its sheet by two, pans by wheel and drag, zooms by Ctrl and wheel",
  async (page) => {
    await through(page, copyOf("demo-corpus"), async () => {
      await openMap(page, "/map?question=what-was-it");
      // Nearer, so that there is room to move in, and with an answer in sight again.
      for (const key of ["+", "+", "+", "+"]) await page.keyboard.press(key);
      await press(page, "ArrowRight");
      const answer = await said(page);
      await atRest(page);
      const panel = page.locator(".map-panel");
      const spot = async (): Promise<{ readonly x: number; readonly y: number }> => {
        const box = await panel.boundingBox();
        if (!box) throw new Error("Missing the panel over the box");
        return { x: box.x + 40, y: box.y + 24 };
      };
      const first = await spot();
      await page.keyboard.press("Escape");
      await expect.poll(() => panel.count()).toBe(0);
      await page.mouse.click(first.x, first.y);
      await expect.poll(() => said(page)).toBe(answer);

      await page.mouse.move(first.x + 200, first.y + 300);
      await page.mouse.wheel(0, 60);
      await expect.poll(async () => (await spot()).y).toBeLessThan(first.y);
      const wheeled = await spot();
      await page.mouse.move(first.x + 300, first.y + 320);
      await page.mouse.down();
      await page.mouse.move(first.x + 240, first.y + 330, { steps: 4 });
      await page.mouse.up();
      await expect.poll(async () => (await spot()).x).toBeLessThan(wheeled.x - 30);
      const dragged = await spot();
      await page.keyboard.down("Control");
      await page.mouse.wheel(0, -100);
      await page.keyboard.up("Control");
      await expect.poll(async () => Math.abs((await spot()).x - dragged.x)).toBeGreaterThan(10);
      const held = await spot();
      await page.getByRole("button", { name: "Move the view to the left" }).click();
      await expect.poll(async () => (await spot()).x).toBeGreaterThan(held.x);

      await widget(page).focus();
      await page.keyboard.press("0");
      await expect
        .poll(() => panel.evaluate((element) => getComputedStyle(element).visibility))
        .toBe("visible");
      await atRest(page);
      const last = await spot();
      await page.keyboard.press("Escape");
      await page.mouse.dblclick(last.x - 20, last.y - 8);
      await expect.poll(() => new URL(page.url()).pathname).toMatch(/^\/record\//);
    });
  },
);

walk("has no fault that axe finds, by day and in a dark room", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await openMap(page, "/map?question=what-was-it&as-of=2004");
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await complaintsOf(page)).toEqual([]);
    }
  });
});

walk("saves the map as a file, and shows nothing that is withheld", async (page) => {
  const withheld = "withhold: [drainage, falls-to-brook, falls-so-drainage]\n";
  await through(page, copyOf("tests/corpora/walk", { "corpus.yaml": withheld }), async () => {
    await visit(page, "/map?question=what-for");
    await widget(page).waitFor();
    await expect.poll(async () => (await places(page)).length).toBeGreaterThan(2);
    const waiting = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save as SVG" }).click();
    const saved = await (await waiting).path();
    const file = readFileSync(saved, "utf8");
    expect(file).toMatch(/^(<\?xml[^>]*>\s*)?<svg [^>]*xmlns="http:\/\/www.w3.org\/2000\/svg"/);
    expect(file).toContain("The ditch was dug for defence.");
    const told = `${file} ${await page.locator("main").textContent()}`;
    for (const word of ["dug to drain", "even fall", "falls to a brook"]) expect(told).not.toContain(word);
  });
});
