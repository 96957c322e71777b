import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { expect, inject } from "vitest";
import { memoStoreIn } from "../../src/host/memo-store.ts";
import { serve } from "../../src/server/serve.ts";
import { patience } from "./walking.ts";

const app = new URL("../../dist/app/", import.meta.url);
const root = fileURLToPath(new URL("../../", import.meta.url));

/** Puts a corpus into an empty folder. */
export type Fill = (folder: string) => void;

/** Where a walk goes: the folder that is served, and addresses in it. */
export interface Served {
  readonly folder: string;
  readonly at: (path: string) => string;
}

/** A corpus of this project, by its path, with more at the end of some of its files. */
export function copyOf(corpus: string, more: Readonly<Record<string, string>> = {}): Fill {
  return (folder) => {
    cpSync(join(root, corpus), folder, { recursive: true });
    for (const [file, text] of Object.entries(more)) appendFileSync(join(folder, file), text);
  };
}

/** A corpus of the files given, by their paths; what is no text is written as JSON, which is YAML too. */
export function filesOf(files: Readonly<Record<string, unknown>>): Fill {
  return (folder) => {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), typeof text === "string" ? text : JSON.stringify(text));
    }
  };
}

/** What the desk of a corpus keeps of what is begun and not entered yet, all in one text. */
export function keptAtDesk(folder: string): string {
  const drafts = join(folder, ".variorum", "drafts");
  const names = existsSync(drafts) ? readdirSync(drafts) : [];
  return names.map((name) => readFileSync(join(drafts, name), "utf8")).join("\n");
}

/** Serves a corpus while a walk lasts, which begins at the path `first`, the demo's numbers known from an earlier time; whatever the page, its policy or its console complains of fails the walk. */
export async function through(
  page: Page,
  fill: Fill,
  body: (served: Served) => Promise<void>,
  first = "/",
): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "variorum-walk-"));
  fill(folder);
  const memo = { ...memoStoreIn(inject("memo")), save: () => undefined };
  const served = await serve(folder, { app, memo });
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("dialog", (dialog) => {
    complaints.push(`a dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  try {
    await page.goto(new URL(first + new URL(served.url).hash, served.url).href);
    await page.locator("h1").waitFor();
    await body({ folder, at: (path) => new URL(path, served.url).href });
    expect(complaints).toEqual([]);
  } finally {
    await served.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Goes to a page as a link in the app does, without loading the program again, and waits until it is shown. */
export async function visit(page: Page, path: string): Promise<void> {
  await page.evaluate((to) => history.pushState(null, "", to), path);
  await page.waitForFunction((to) => {
    const main = document.querySelector<HTMLElement>("main");
    // A page whose code is fetched only now has its heading later.
    return main !== null && main.dataset["shown"] === to && main.querySelector("h1") !== null;
  }, path.split("?")[0]);
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
}

/** Holds back what is asked for at some addresses until what is given back is called. */
export async function heldBack(page: Page, addresses: RegExp): Promise<() => void> {
  let come = (): void => undefined;
  const coming = new Promise<void>((resolve) => (come = resolve));
  await page.route(addresses, async (route) => {
    await coming;
    await route.continue();
  });
  return () => come();
}

/** What has the focus, in words: its role, its label and its text; nothing where that is the page itself, which has every text in it. */
export function focused(page: Page): Promise<string> {
  return page.evaluate(() => {
    const one = document.activeElement;
    if (one === null || one.matches("html, body, main")) return "";
    return [one.getAttribute("role"), one.getAttribute("aria-label"), one.textContent]
      .map((part) => part ?? "")
      .join(" ");
  });
}

/** Presses a key until something is so: what comes late to a page is waited for as anywhere else. */
export async function pressUntil(
  page: Page,
  key: string,
  isThere: () => Promise<boolean>,
  what: string,
): Promise<void> {
  for (const end = Date.now() + patience; Date.now() < end;) {
    await page.keyboard.press(key);
    if (await isThere()) return;
  }
  throw new Error(`The keyboard does not reach “${what}”`);
}

/** Presses Tab until what has the focus reads as wanted. */
export async function tabTo(page: Page, wanted: string | RegExp): Promise<void> {
  const isThere = async (): Promise<boolean> => {
    const at = await focused(page);
    return typeof wanted === "string" ? at.includes(wanted) : wanted.test(at);
  };
  await pressUntil(page, "Tab", isThere, String(wanted));
}

/** Lets the page draw some frames. */
export const frames = (page: Page, n: number): Promise<void> =>
  page.evaluate(
    (left) =>
      new Promise<void>((done) => {
        const step = (): void => void (left-- > 0 ? requestAnimationFrame(step) : done());
        step();
      }),
    n,
  );

/** Waits until the window looks the same three times on end. */
export async function atRest(page: Page): Promise<void> {
  for (let same = 0, last = await page.screenshot(); same < 2;) {
    await frames(page, 6);
    const now = await page.screenshot();
    same = now.equals(last) ? same + 1 : 0;
    last = now;
  }
}
