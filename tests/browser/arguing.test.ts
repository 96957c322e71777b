import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { complaintsOf } from "./axe.ts";
import { walk } from "./chromium.ts";
import { openMap, widget } from "./map-walk.ts";
import { atRest, filesOf, focused, through, visit } from "./through.ts";

const lists = {
  artefacts: [{ id: "ring", name: "The ring" }],
  questions: [{ id: "q", text: "What was it?", answers: ["roofed", "open"] }],
  claims: [
    { id: "roofed", text: "It was roofed." },
    { id: "open", text: "It stood open." },
  ],
  observations: [
    { id: "daub", of: "ring", text: "Daub lay in the ring.", feature: "daub", basis: "autopsy" },
    { id: "grass", of: "ring", text: "Grass grew in the ring.", feature: "grass", basis: "autopsy" },
  ],
};
const own =
  "arguments:\n  - id: by-daub\n    because: daub\n    therefore: roofed\n    text: Daub is of walls.\n";
const corpus = filesOf({
  "corpus.yaml": "title: Arguing\n",
  "ring.yaml": lists,
  "arguments.yaml": own,
});

const inHand = (page: Page) => page.locator(".in-hand");
const state = (page: Page) => inHand(page).locator(".state").textContent();
const wouldChange = (page: Page) => inHand(page).locator(".turned").innerText();

/** Takes one of the two answers, wherever it lies. */
async function take(page: Page, text: string): Promise<{ readonly x: number; readonly y: number }> {
  const panel = page.locator(".map-panel");
  await page.keyboard.press("Home");
  await expect.poll(() => panel.count()).toBe(1);
  if (!(await panel.innerText()).includes(text)) await page.keyboard.press("ArrowRight");
  await expect.poll(() => panel.innerText()).toContain(text);
  await atRest(page);
  const corner = await panel.boundingBox();
  if (!corner) throw new Error("Missing panel, expected it over the answer");
  return corner;
}

/** Places within boxes on the screen: by their places in the section, and where the panel lies over the two answers. */
async function placesOn(page: Page) {
  const placeOf = async (title: string): Promise<readonly [number, number, number, number]> => {
    const place = await page.locator("[data-box]", { hasText: title }).first().getAttribute("data-place");
    const [x = 0, y = 0, width = 0, height = 0] = (place ?? "").split(" ").map(Number);
    return [x, y, width, height];
  };
  const [a, b] = [await take(page, "It was roofed."), await take(page, "It stood open.")];
  const [one, other] = [await placeOf("It was roofed"), await placeOf("It stood open")];
  const zoom = (b.x - a.x) / (other[0] - one[0]);
  return async (title: string, across: number, down: number) => {
    const [x, y, width, height] = await placeOf(title);
    return {
      x: a.x + 9 + (x - one[0] + width * across) * zoom,
      y: a.y + 9 + (y - one[1] + height * down) * zoom,
    };
  };
}

walk("argues on the map by keys and by hand, and keeps a question from the floor", async (page) => {
  await through(page, corpus, async ({ folder }) => {
    const file = (name: string): string => readFileSync(join(folder, name), "utf8");
    await openMap(page, "/map?question=q");

    // Against an answer, by keys alone; what would change is told, and shown on the map, before anything is saved.
    await take(page, "It was roofed.");
    await page.keyboard.press("x");
    await expect.poll(() => state(page)).toMatch(/^What it is against is chosen\. Now what it leans on/);
    await page.keyboard.press("w");
    await page.keyboard.type("Grass asks for light.");
    await inHand(page).getByRole("combobox", { name: "Search for a premise" }).fill("grass");
    await expect.poll(() => inHand(page).getByRole("listbox").getByRole("option").count()).toBe(1);
    await page.keyboard.press("Enter");
    await expect.poll(() => state(page)).toMatch(/^Premises: 1 chosen\. It can be saved/);
    await expect.poll(() => wouldChange(page)).toMatch(/It was roofed[^]*stands[^]*open/);
    await expect
      .poll(() => page.locator("[data-box]", { hasText: "It was roofed" }).textContent())
      .toMatch(/open$/);
    expect(file("arguments.yaml")).toBe(own);
    await page.keyboard.press("Control+Enter");
    await expect
      .poll(() => file("arguments.yaml"))
      .toContain("against: roofed\n    text: Grass asks for light.\n");
    await expect.poll(() => inHand(page).getByRole("heading").textContent()).toBe("Saved. What changed");
    expect(await complaintsOf(page)).toEqual([]);
    await widget(page).focus();
    await page.keyboard.press("Control+z");
    await expect.poll(() => file("arguments.yaml")).toBe(own);
    await inHand(page).getByRole("button", { name: "Close" }).click();

    // From a box's upper edge to a conclusion, and Escape leaves it: a draft.
    await widget(page).focus();
    const place = await placesOn(page);
    const [from, to] = [await place("daub", 0.4, 0.05), await place("It stood open", 0.5, 0.5)];
    await page.keyboard.press("Escape");
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 4 });
    await page.mouse.up();
    await expect.poll(() => state(page)).toMatch(/^Premises: 1 chosen\. Now the step in words/);
    await expect.poll(() => wouldChange(page)).toMatch(/It stood open[^]*unsupported[^]*open/);
    await widget(page).focus();
    await page.keyboard.press("Escape");
    await expect.poll(() => inHand(page).count()).toBe(0);

    // A question in three keys, about the answer that is taken; later a note on it.
    await take(page, "It was roofed.");
    await page.keyboard.press("q");
    await page.keyboard.type("Was it burnt?");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator(".floor output").textContent()).toMatch(/^Kept/);
    await visit(page, "/");
    await expect.poll(() => page.locator(".floor-list").allInnerTexts()).toHaveLength(2);
    await page.getByRole("button", { name: "Take in hand: 1 premise: It stood open" }).click();
    await expect.poll(() => focused(page)).toContain("Argument in hand");
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: "Work in as a note on it: Was it burnt?" }).click();
    await expect.poll(() => JSON.stringify(file("ring.yaml"))).toContain("Was it burnt?");
  });
});
