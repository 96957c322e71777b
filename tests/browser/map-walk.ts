import type { Page } from "playwright-core";
import { expect } from "vitest";
import { visit } from "./through.ts";

/** The map, as one widget. */
export const widget = (page: Page) => page.getByRole("application");
/** What is said aloud of where one is. */
export const said = async (page: Page): Promise<string> =>
  (await widget(page).locator("output").textContent()) ?? "";
/** What stands behind the question mark of the address. */
export const shown = (page: Page) => new URL(page.url()).searchParams;

/** Follows the years that the address comes to, from now on, however soon one goes after the other. */
export async function yearsFollowed(page: Page): Promise<() => Promise<readonly string[]>> {
  await page.evaluate(() => {
    const years: string[] = [];
    Object.assign(window, { years });
    for (const change of ["pushState", "replaceState"])
      addEventListener(change, () => {
        const year = new URLSearchParams(location.search).get("as-of");
        if (year !== null && years.at(-1) !== year) years.push(year);
      });
  });
  return () => page.evaluate(() => (window as unknown as { years: readonly string[] }).years);
}

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

/** Presses a key and waits until other words are said of where one is. */
export async function press(page: Page, key: string): Promise<string> {
  const before = await said(page);
  await page.keyboard.press(key);
  await expect.poll(() => said(page), { message: key }).not.toBe(before);
  return said(page);
}

/** Goes to the map of a question and takes its first answer. */
export async function openMap(page: Page, path: string): Promise<void> {
  await visit(page, path);
  await widget(page).waitFor();
  await widget(page).focus();
  expect(await press(page, "ArrowUp")).toMatch(/^Answer: /);
}
