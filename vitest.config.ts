import { defineConfig } from "vitest/config";
import { withoutNetwork } from "./vite.config.ts";

/** The tests run from the sources; the walks in a browser come after the others. */
export default defineConfig({
  resolve: { alias: withoutNetwork },
  test: {
    allowOnly: false,
    maxWorkers: 2,
    // What files import is loaded once for all of them, a second for each otherwise; so a file leaves nothing behind.
    isolate: false,
    // On a machine that has much else to do the longest take several times as long as on an idle one.
    testTimeout: 300_000,
    hookTimeout: 300_000,
    // What a page does is waited for as long as it may take there, not for a second.
    expect: { poll: { timeout: 60_000 } },
    // Through the aliases too, as in the bundle.
    server: { deps: { inline: [/@citation-js/] } },
    projects: [
      {
        extends: true,
        test: {
          name: "plain",
          include: ["tests/**/*.test.{ts,tsx}"],
          exclude: ["tests/browser/**"],
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          globalSetup: ["tests/browser/setup.ts"],
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
