import type { Browser, Page } from "playwright-core";
import { afterAll, expect, inject, test } from "vitest";
import { heldBack } from "./held-back.ts";
import { watched } from "./watched.ts";

/** How long a walk waits for anything, in ms: as long as a page may take on a busy machine, not as it takes on an idle one. */
export const patience = 60_000;

/** A test in a window of a browser, which shares nothing with another. */
export type Walk = (title: string, body: (page: Page) => Promise<void>) => void;

/**
 * Walks in one of the browsers, which the first of them in a file starts from where it was found; skipped, with the
 * reason, where there is none. A walk fails where a policy refused something, and where anything was asked of anybody else.
 */
export function walksIn(name: "chromium" | "firefox", launch: (path: string) => Promise<Browser>): Walk {
  let browser: Browser | null = null;
  const end = async (): Promise<void> => {
    await browser?.close();
    browser = null;
  };
  return (title, body) => {
    // By each walk, since this module is loaded once for many files.
    afterAll(end);
    test(title, async (context) => {
      const found = inject(name);
      if ("missing" in found) return context.skip(found.missing);
      browser ??= await launch(found.path);
      const window = await browser.newContext({ viewport: { width: 1280, height: 800 } });
      window.setDefaultTimeout(patience);
      try {
        const seen = await watched(window);
        if (name === "chromium") await heldBack(window);
        await body(await window.newPage());
        expect(seen()).toEqual([]);
      } finally {
        await window.close();
      }
    });
  };
}
