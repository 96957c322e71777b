import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";
import { complaintsOf, overflow } from "./axe.ts";
import { filesOf, tabTo, through, visit } from "./through.ts";

/** A pot of 140 pixels over a bar of 100: drawn by hand, 400 pixels wide. */
const picture = `<svg xmlns="http://www.w3.org/2000/svg" width="400" height="300" viewBox="0 0 400 300">
  <path d="M200 50h80v140h-80z" fill="none" stroke="black"/>
  <path d="M50 250h100" stroke="black" stroke-width="3"/>
</svg>
`;

const corpus = {
  "corpus.yaml": "title: The pots of the lane\n",
  "pots.yaml": `artefacts:
  - id: pot
    name: Pot
images:
  - id: pot-drawn
    of: pot
    file: images/pot.svg
    kind: drawing
    when: 1950
measurements:
  - of: pot
    dimension: height
    value: 30.0 ± 0.2 cm
    year: 1940
`,
  "images/pot.svg": picture,
};

/** Presses a key several times. */
async function press(page: Page, key: string, times: number): Promise<void> {
  for (let n = 0; n < times; n++) await page.keyboard.press(key);
}

/** Types into a field as a hand would: what else fills one is not told to the page in every browser. */
async function type(page: Page, field: Locator, text: string): Promise<void> {
  await field.focus();
  await page.keyboard.type(text);
}

/** Goes from one place in the picture to another by tens and ones, and sets a point there. */
async function setAt(
  page: Page,
  [fromX, fromY]: readonly [number, number],
  [x, y]: readonly [number, number],
) {
  for (const [by, less, more] of [
    [x - fromX, "ArrowLeft", "ArrowRight"],
    [y - fromY, "ArrowUp", "ArrowDown"],
  ] as const) {
    await press(page, `Shift+${by < 0 ? less : more}`, Math.floor(Math.abs(by) / 10));
    await press(page, by < 0 ? less : more, Math.abs(by) % 10);
  }
  await page.keyboard.press("Enter");
}

const saidOf = (page: Page, selector: string): Promise<string> =>
  page
    .locator(selector)
    .allTextContents()
    .then((all) => all.join(" "));

/** Measures on a picture by keys and by hand, tells the conflict, records it, and brings a picture in. */
export async function measurePicture(page: Page): Promise<void> {
  await through(page, filesOf(corpus), async ({ folder }) => {
    const records = (): string => readFileSync(join(folder, "pots.yaml"), "utf8");
    await visit(page, "/image/pot-drawn?measure");
    await page.locator(".stage > img:not([hidden])").waitFor();
    await page.locator(".stage").focus();
    await press(page, "Shift+ArrowLeft", 45);
    await press(page, "Shift+ArrowUp", 35);
    await setAt(page, [0, 0], [50, 250]);
    await setAt(page, [50, 250], [150, 250]);
    await type(page, page.getByLabel("How long the bar is"), "20.0 cm");
    await page.getByLabel("what is measured", { exact: true }).check();
    await page.locator(".stage").focus();
    await setAt(page, [150, 250], [203, 190]);
    await setAt(page, [203, 190], [200, 50]);

    // A point is reached by Tab and moved by the arrows.
    await tabTo(page, "Point 1 of reading 1, what is measured, pixel 203, 190");
    await press(page, "ArrowLeft", 3);
    await page.getByRole("button", { name: "pixel 200, 190" }).waitFor();
    await expect.poll(() => saidOf(page, ".came .value")).toBe("0.280 ± 0.003 m");

    // By pointer a click begins another reading, whose point is dragged, and taken away again.
    const frame = await page.locator(".stage").boundingBox();
    if (!frame) throw new Error("no picture");
    const [x, y] = [frame.x + frame.width / 2, frame.y + frame.height / 2];
    await page.mouse.click(x, y);
    const other = page.getByRole("button", { name: "Point 1 of reading 2" });
    await expect
      .poll(() => other.getAttribute("aria-label"))
      .toMatch(/pixel (?:199\.[5-9]|200(?:\.[0-5])?), (?:149\.[5-9]|150(?:\.[0-5])?)$/);
    const named = await other.getAttribute("aria-label");
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 60, y);
    await page.mouse.up();
    await expect.poll(() => other.getAttribute("aria-label")).not.toBe(named);
    await other.focus();
    await page.keyboard.press("Delete");
    await page.getByRole("button", { name: "pixel 200, 190" }).waitFor();

    await type(page, page.getByLabel("Dimension"), "height");
    await expect.poll(() => saidOf(page, ".compared")).toContain("in conflict, differs by 0.02 m");
    expect(await complaintsOf(page)).toEqual([]);
    await page.reload();
    await expect.poll(() => saidOf(page, ".came .value")).toMatch(/^0\.280/);
    const before = records();
    await page.getByRole("button", { name: "Record the measurement" }).click();
    await page.locator(".saves a").waitFor();
    expect(records()).toContain("value: 28.00 ± 0.16 cm");
    expect(records()).toContain("shares-error: { with: scale of pot-drawn, of: 0.83 % }");
    expect(records()).toContain("basis: drawing");
    expect(records()).toContain("(200, 190) to (200, 50)");
    await page.locator("h1").click();
    await page.keyboard.press("Control+z");
    await expect.poll(records).toBe(before);

    await page.setViewportSize({ width: 390, height: 800 });
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
    await visit(page, "/artefact/pot");
    await page.getByText("What may be done with it is not recorded").waitFor();
    const given = { name: "Pot rim.SVG", mimeType: "image/svg+xml", buffer: Buffer.from(picture) };
    await page.getByLabel("Picture to bring in").setInputFiles(given);
    await page.locator(".form-page h1").waitFor();
    expect(existsSync(join(folder, "images/Pot-rim.svg"))).toBe(true);
    const filled = page.locator(".form-page input");
    await expect
      .poll(() => filled.evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value)))
      .toContain("images/Pot-rim.svg");
  });
}
