import { chromium } from "playwright-core";
import type { Browser, Page } from "playwright-core";
import { inject, test } from "vitest";
import { findChromium } from "./find-chromium.ts";
import { flags } from "./flags.ts";

/** Starts a Chromium with a fresh profile of its own, which is removed when it is closed. */
export async function launch(path?: string): Promise<Browser> {
  const found = path === undefined ? findChromium() : { path };
  if ("missing" in found) throw new Error(found.missing);
  return chromium.launch({ executablePath: found.path, args: [...flags] });
}

/** A test in a page of its own browser; skipped, with the reason, where there is no Chromium. */
export function walk(title: string, body: (page: Page) => Promise<void>): void {
  test(title, async (context) => {
    const found = inject("chromium");
    if ("missing" in found) return context.skip(found.missing);
    const browser = await launch(found.path);
    try {
      await body(await browser.newPage({ viewport: { width: 1280, height: 800 } }));
    } finally {
      await browser.close();
    }
  });
}
