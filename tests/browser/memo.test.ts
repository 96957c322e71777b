import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect } from "vitest";
import type { Outcome } from "../../src/derive/run.ts";
import { memoStoreIn } from "../../src/host/memo-store.ts";
import { serve } from "../../src/server/serve.ts";
import { walk } from "./chromium.ts";
import { filesOf, visit } from "./through.ts";

const rims = [16.3, 41.6, 33.2, 12.7, 29.2, 41.3, 45.6, 45.8];
const bowls = filesOf({
  "corpus.yaml": { title: "Bowls", units: { span: { is: "4.2 ± 0.1 cm" } } },
  "bowls.yaml": {
    artefacts: rims.map((_, i) => ({ id: `bowl-${i}`, name: `Bowl ${i}` })),
    measurements: rims.map((rim, i) => ({ of: `bowl-${i}`, dimension: "rim", value: `${rim} cm` })),
    derivations: [
      {
        id: "rims",
        plugin: "unit-fit",
        inputs: { values: { of: rims.map((_, i) => `bowl-${i}`), dimension: "rim" } },
        parameters: { unit: "span" },
      },
    ],
  },
});

walk("a number computed at one opening is remembered at the next", async (page) => {
  const folder = mkdtempSync(join(tmpdir(), "variorum-memo-walk-"));
  bowls(folder);
  const memo = memoStoreIn(join(folder, ".memo.json"));
  const look = async (): Promise<string> => {
    const served = await serve(folder, { app: new URL("../../dist/app/", import.meta.url), memo });
    try {
      await page.goto(served.url);
      await page.locator("h1").waitFor();
      await visit(page, "/number/rims");
      await expect.poll(() => page.locator(".computing").count()).toBe(0);
      await expect.poll(() => memo.load().size).toBeGreaterThan(0);
      return await page.locator("main").innerText();
    } finally {
      await served.close();
    }
  };
  try {
    expect(await look()).not.toContain("p = 0.77");
    // Something that no computation gives shows whether it was computed again.
    const told = (one: Outcome): Outcome =>
      one.status === "computed"
        ? { ...one, numbers: { ...one.numbers, p: { value: 0.77, low: null, high: null } } }
        : one;
    memo.save(new Map([...memo.load()].map(([key, one]) => [key, told(one)])));
    expect(await look()).toContain("p = 0.77");
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
