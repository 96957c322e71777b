import type { Page } from "playwright-core";
import { expect } from "vitest";
import { pressUntil, tabTo } from "./through.ts";

/** Presses Tab until a field of the form has the focus. */
export async function toField(page: Page, field: string, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
  const isThere = async (): Promise<boolean> =>
    (await page.evaluate(() => document.activeElement?.id)) === `at-${field}`;
  if (!(await isThere())) await pressUntil(page, key, isThere, field);
}

/** Types into a field. */
export async function fill(page: Page, field: string, text: string): Promise<void> {
  await toField(page, field);
  await page.keyboard.insertText(text);
}

/** Chooses a record or source by searching for some words: the first that fits. */
export async function choose(page: Page, field: string, text: string): Promise<void> {
  await toField(page, field);
  await page.keyboard.type(text);
  await page.locator("[role=option][aria-selected=true]").waitFor();
  await page.keyboard.press("Enter");
  await expect.poll(() => page.locator("[role=option]").count()).toBe(0);
}

/** Chooses one of the words of a field by typing it. */
export async function pick(page: Page, field: string, word: string): Promise<void> {
  await toField(page, field);
  await pickByTyping(page, word);
}

/** Types what a choice begins with where a list of them has the focus: anew, a while after, where a pause parted the letters. */
export async function pickByTyping(page: Page, words: string): Promise<void> {
  const picked = async (): Promise<string> => {
    await page.keyboard.type(words);
    return page.evaluate(() => {
      const one = document.activeElement;
      return one instanceof HTMLSelectElement ? (one.selectedOptions[0]?.label ?? "") : "";
    });
  };
  await expect.poll(picked, { interval: 1500 }).toMatch(new RegExp(`^${words}`, "i"));
}

/** Opens the form of a new record from the page of records, by the list of what can be done. */
export async function newRecord(page: Page, singular: string): Promise<void> {
  await tabTo(page, /^\s*Records$/);
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "Records", level: 1 }).waitFor();
  await page.keyboard.press(".");
  await page.keyboard.type(`new ${singular}`);
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: `New ${singular}`, exact: true }).waitFor();
  await page.locator("form.form").waitFor();
}

/** Saves the form and waits for the sheet. */
export async function save(page: Page): Promise<void> {
  await page.keyboard.press("Control+Enter");
  await page.waitForURL(/\/record\//);
  await page.locator("article.sheet").waitFor();
  await expect.poll(() => page.locator(".desk-foot").textContent()).toMatch(/^Saved\./);
}

/** Puts something on the clipboard of the page, and from there into what has the focus. */
export const paste = (page: Page, text: string): Promise<void> =>
  page.evaluate((plain) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", plain);
    const event = new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true });
    document.activeElement?.dispatchEvent(event);
  }, text);

/** Opens the form of a record from its sheet, and gives it another name in the files. */
export async function rename(page: Page, to: string): Promise<void> {
  await page.keyboard.press("c");
  await page.locator("form.form").waitFor();
  await tabTo(page, /^\s*Rename$/);
  await page.keyboard.press("Enter");
  await page.getByLabel("New name in the files").waitFor();
  await page.keyboard.insertText(to);
  await page.keyboard.press("Enter");
}
