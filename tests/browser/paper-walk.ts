import { existsSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { complaintsOf, overflow } from "./axe.ts";
import { smallPdf } from "./small-pdf.ts";
import { filesOf, frames, through, visit } from "./through.ts";

const corpus = {
  "corpus.yaml": "title: The Sallow Row\nbibliography: [sources.bib]\nwithhold: [kept-1950]\n",
  "sources.bib": `@article{hale-1896, author = {Hale, Ada}, title = {The Row}, journal = {Field Club}, year = {1896}, langid = {english}}
@book{kept-1950, author = {Under, Seal}, title = {Kept under seal}, year = {1950}}
`,
};

const paper = smallPdf(
  [
    {
      lines: [
        "The stakes of the row were mea-",
        "sured from the turf: 0.97 m, he says.",
        "Ἀθήναις οὐκ ἔστιν.",
      ],
    },
    { lines: ["The pits stood open for a wet week,", "and the chalk is soft."] },
    { lines: [], rotate: 90 },
  ],
  { printed: 57 },
);

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly right: number;
}

/** The middle of a word of a page, in the window, once it lies still. */
async function placeOf(page: Page, sheet: number, line: number, word: string): Promise<Spot> {
  for (let last = ""; ;) {
    const place = await placeNow(page, sheet, line, word);
    if (last === JSON.stringify(place)) return place;
    last = JSON.stringify(place);
    await frames(page, 6);
  }
}

function placeNow(page: Page, sheet: number, line: number, word: string): Promise<Spot> {
  const span = page.locator(`[data-sheet="${sheet}"] .paper-text span`).nth(line);
  return span.evaluate((element, sought) => {
    const text = element.firstChild;
    const from = text?.textContent?.indexOf(sought) ?? -1;
    if (!text || from < 0) throw new Error(`no ${sought} in ${element.textContent}`);
    const range = document.createRange();
    range.setStart(text, from);
    range.setEnd(text, from + sought.length);
    const { left, right, top, height } = range.getBoundingClientRect();
    return { x: left + 1, y: top + height / 2, right: right - 0.5 };
  }, word);
}

/** Brings a paper in, takes words and a part of a page from it, finds both again, and something that is sought. */
export async function readPaper(page: Page, sought = "ΑΘΗΝΑΙΣ"): Promise<void> {
  await through(page, filesOf(corpus), async ({ folder, at }) => {
    const file = join(folder, "papers/hale-1896.pdf");
    const records = (): string =>
      readdirSync(folder, { recursive: true, encoding: "utf8" })
        .filter((one) => one.endsWith(".yaml"))
        .map((one) => readFileSync(join(folder, one), "utf8"))
        .join("\n");
    await visit(page, "/paper/kept-1950");
    expect(await page.locator("main").textContent()).not.toMatch(/seal/i);
    await visit(page, "/paper/hale-1896");
    await page.setInputFiles("input[type=file]", [
      { name: "notes.txt", mimeType: "text/plain", buffer: Buffer.from("no paper") },
      { name: "scan 12.pdf", mimeType: "application/pdf", buffer: Buffer.from(paper) },
    ]);
    const text = page.locator(".paper-text span");
    await expect.poll(() => text.count()).toBeGreaterThan(2);
    const said = page.locator(".paper-said");
    await expect.poll(() => said.textContent()).toContain("Brought in as papers/hale-1896.pdf.");
    expect(await said.textContent()).toContain(
      "notes.txt was not brought in. It is neither a PDF nor a picture",
    );
    expect(readFileSync(file).equals(Buffer.from(paper))).toBe(true);
    await expect.poll(() => page.getByLabel("Page", { exact: true }).inputValue()).toBe("57");

    // Words over the end of a line, by the pointer, and one key.
    const from = await placeOf(page, 0, 0, "stakes");
    const to = await placeOf(page, 0, 1, "turf");
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.right, to.y, { steps: 4 });
    await page.mouse.up();
    await page.getByRole("button", { name: "Take these words" }).waitFor();
    await page.keyboard.press("c");
    const sheet = page.locator(".capture");
    await sheet.waitFor();
    await expect.poll(() => sheet.getByLabel("Place").first().inputValue()).toBe("p. 57");
    await expect
      .poll(() => sheet.getByLabel("Quote").inputValue())
      .toBe("stakes of the row were measured from the turf");
    await page.keyboard.press("Enter");
    await page.locator(".paper-number").waitFor();
    expect(records()).toContain("quote: stakes of the row were measured from the turf");
    expect(records()).toContain("value: page=1");

    // A part of a page without text, by keys alone.
    await page.keyboard.press("g");
    await page.keyboard.type("59");
    await page.keyboard.press("Enter");
    await page.locator('[data-sheet="2"] canvas').waitFor();
    await page.locator(".paper-window").focus();
    await page.keyboard.press("r");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Shift+ArrowRight");
    await page.keyboard.press("c");
    await sheet.waitFor();
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator(".passages li .number").allTextContents()).toContain("2");
    // 25, 26, 51 and 20 % of a page that is 595 by 420 points when it is turned.
    expect(records()).toContain("page=3&viewrect=148.8,109.2,303.5,84");

    // Opened anew, the words are found, marked and gone to, with the paper searched beside.
    const [id = ""] = /hale-1896-[\w-]+/.exec(records()) ?? [];
    await page.goto(at(`/paper/hale-1896?passage=${id}`));
    const number = page.getByRole("link", { name: "Passage 1, p. 57" });
    await number.waitFor();
    await expect.poll(() => number.getAttribute("href")).toContain(id);
    const lines = page.locator(".paper-mark.passage.words span");
    await expect.poll(() => lines.count()).toBe(2);
    const again = await placeOf(page, 0, 0, "stakes");
    await expect
      .poll(async () => Math.abs(((await lines.first().boundingBox())?.x ?? 0) - again.x))
      .toBeLessThan(3);
    await page.keyboard.press("f");
    await page.keyboard.type(sought);
    await expect.poll(() => page.locator(".paper-search output").textContent()).toBe("1 of 1");
    await page.locator(".paper-mark.now span").waitFor();
    expect(await complaintsOf(page)).toEqual([]);

    await page.setViewportSize({ width: 390, height: 800 });
    await page.getByRole("button", { name: "Hide the paper" }).click();
    await expect.poll(() => page.locator(".paper-window").isVisible()).toBe(false);
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
    expect(existsSync(join(folder, "papers/hale-1896-2.pdf"))).toBe(false);
  });
}
