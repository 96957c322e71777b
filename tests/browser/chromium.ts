import { chromium } from "playwright-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, expect, inject, test } from "vitest";
import { findChromium } from "./find-chromium.ts";
import { flags } from "./flags.ts";
import { watched } from "./watched.ts";

/** Starts a Chromium with a fresh profile of its own, which is removed when it is closed. */
export async function launch(path?: string): Promise<Browser> {
  const found = path === undefined ? findChromium() : { path };
  if ("missing" in found) throw new Error(found.missing);
  return chromium.launch({ executablePath: found.path, args: [...flags] });
}

/** The browser of one file's walks, started by the first of them. */
let browser: Browser | null = null;

async function end(): Promise<void> {
  await browser?.close();
  browser = null;
}

/**
 * A test in a window of its own, which shares nothing with another; skipped, with the reason, where there is no
 * Chromium. It fails where a policy refused something, and where anything was asked of anybody else.
 */
export function walk(title: string, body: (page: Page) => Promise<void>): void {
  // By each walk, since this module is loaded once for many files.
  afterAll(end);
  test(title, async (context) => {
    const found = inject("chromium");
    if ("missing" in found) return context.skip(found.missing);
    browser ??= await launch(found.path);
    const window = await browser.newContext({ viewport: { width: 1280, height: 800 } });
    try {
      const seen = await watched(window);
      await body(await window.newPage());
      expect(seen()).toEqual([]);
    } finally {
      await window.close();
    }
  });
}
