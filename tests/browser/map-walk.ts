import { appendFileSync, cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { serve } from "../../src/server/serve.ts";

const app = new URL("../../dist/app/", import.meta.url);
const root = fileURLToPath(new URL("../../", import.meta.url));

/** Serves a copy of a corpus while a walk lasts, with more at the end of some files; whatever the page or its policy complains of fails the walk. */
export async function through(
  corpus: string,
  page: Page,
  body: (place: { readonly at: (path: string) => string }) => Promise<void>,
  more: Readonly<Record<string, string>> = {},
): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "variorum-map-"));
  cpSync(join(root, corpus), folder, { recursive: true });
  for (const [file, text] of Object.entries(more)) appendFileSync(join(folder, file), text);
  const served = await serve(folder, { app });
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  try {
    await page.goto(served.url);
    await page.getByRole("heading", { name: "Questions" }).waitFor();
    await body({ at: (path) => new URL(path, served.url).href });
    expect(complaints).toEqual([]);
  } finally {
    await served.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The map, as one widget. */
export const widget = (page: Page) => page.getByRole("application");
/** What is said aloud of where one is. */
export const said = async (page: Page): Promise<string> =>
  (await widget(page).locator("output").textContent()) ?? "";
/** What stands behind the question mark of the address. */
export const shown = (page: Page) => new URL(page.url()).searchParams;

/** Every box with its place on the map. */
export const places = (page: Page): Promise<readonly string[]> =>
  page
    .locator("[data-box]")
    .evaluateAll((boxes) =>
      boxes.map((box) => `${box.getAttribute("data-box")} ${box.getAttribute("data-place")}`),
    );

/** The boxes of the map by their names, wherever they lie. */
export const boxes = async (page: Page): Promise<readonly string[]> =>
  (await places(page)).map((place) => place.replace(/( -?[\d.]+){4}$/, "")).toSorted();

/** Presses Tab until what has the focus reads as wanted. */
export async function tabTo(page: Page, wanted: string): Promise<void> {
  for (let step = 0; step < 80; step++) {
    await page.keyboard.press("Tab");
    const text = await page.evaluate(() => {
      const focused = document.activeElement;
      return `${focused?.getAttribute("role") ?? ""} ${focused?.getAttribute("aria-label") ?? ""} ${focused?.textContent ?? ""}`;
    });
    if (text.includes(wanted)) return;
  }
  throw new Error(`The keyboard does not reach “${wanted}”`);
}

/** Presses a key and waits until other words are said of where one is. */
export async function press(page: Page, key: string): Promise<string> {
  const before = await said(page);
  await page.keyboard.press(key);
  await expect.poll(() => said(page), { message: key }).not.toBe(before);
  return said(page);
}

/** Opens the map of a question and takes its first answer. */
export async function openMap(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await widget(page).waitFor();
  await widget(page).focus();
  expect(await press(page, "ArrowUp")).toMatch(/^Answer: /);
}
