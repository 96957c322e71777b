import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { plugins } from "../../plugins/index.ts";
import { build } from "../../src/build.ts";
import { readCorpusFolder } from "../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../src/host/evaluate.ts";
import { listNames } from "../../src/read/grammar/kinds.ts";
import { serve } from "../../src/server/serve.ts";
import { walk } from "./chromium.ts";
import { empty, made } from "./forms-filled.ts";
import { newRecord, rename, save, toField } from "./forms-keys.ts";
import { through, visit } from "./through.ts";

const app = new URL("../../dist/app/", import.meta.url);

/** The texts of the corpus by their paths, without the program's desk. */
function textsIn(folder: string): Readonly<Record<string, string>> {
  const files = readdirSync(folder).filter((name) => /\.ya?ml$/u.test(name));
  return Object.fromEntries(files.map((name) => [name, readFileSync(join(folder, name), "utf8")]));
}

/** Presses a key of the desk so many times, each once the step before is on disk, all of it; the texts after each. */
async function steps(page: Page, folder: string, key: string, n: number) {
  const seen = [textsIn(folder)];
  for (let step = 0; step < n; step++) {
    const answered = page.waitForResponse(/\/corpus\/(?:undo|redo)/);
    await page.keyboard.press(key);
    await answered;
    expect(textsIn(folder)).not.toEqual(seen.at(-1));
    seen.push(textsIn(folder));
  }
  return seen;
}

const roof = "the-inner-ring-carried-a-roof";

walk(
  "makes a corpus by keys alone, takes ten steps back and again, and loses nothing of anybody",
  async (page) => {
    await through(page, empty, async ({ folder }) => {
      for (const [singular, filled] of made) {
        await newRecord(page, singular);
        await filled(page);
        await save(page);
      }

      await visit(page, `/edit/${roof}`);
      await toField(page, "text");
      await page.keyboard.press("Control+A");
      await page.keyboard.insertText("The inner ring carried a roof of thatch.");
      await save(page);
      await page
        .getByRole("heading", { name: "The inner ring carried a roof of thatch.", level: 1 })
        .waitFor();

      await rename(page, "roofed");
      await page.waitForURL(/record\/roofed$/);
      await page.locator("article.sheet").waitFor();
      const whole = textsIn(folder);
      expect(JSON.stringify(whole)).not.toMatch(/the-inner-ring-carried-a-roof(?!-from)/u);

      await visit(page, "/outline");
      const back = await steps(page, folder, "Control+z", 10);
      const again = await steps(page, folder, "Control+Shift+z", 10);
      expect(again).toEqual(back.toReversed());
      expect(again.at(-1)).toEqual(whole);

      // The program ends and is started again: what was done can still be taken back.
      await page.goto("about:blank");
      const later = await serve(folder, { app });
      try {
        await page.goto(later.url);
        await page.locator("h1").waitFor();
        await visit(page, "/outline");
        expect(await steps(page, folder, "Control+z", 2)).toEqual(back.slice(0, 3));
        await steps(page, folder, "Control+Shift+z", 2);

        // Somebody adds a line elsewhere in the file with another program; taking back leaves it where it is.
        const said = `${textsIn(folder)["claims.yaml"] ?? ""}    note: Said once more in 1971.\n`;
        const read = page.waitForResponse(/\/corpus\/files/);
        writeFileSync(join(folder, "claims.yaml"), said);
        await read;
        await steps(page, folder, "Control+z", 2);
        expect(textsIn(folder)["claims.yaml"]).toBe(
          `claims:\n  - id: ${roof}\n    text: The inner ring carried a roof.\n    note: Said once more in 1971.\n`,
        );
        await steps(page, folder, "Control+Shift+z", 2);
        expect(textsIn(folder)).toEqual({ ...whole, "claims.yaml": said });
      } finally {
        await later.close();
      }

      const { model, findings } = build(readCorpusFolder(folder), plugins, emptyMemo());
      for (const list of listNames) expect(model?.graph.list(list), list).toHaveLength(1);
      const errors = findings.filter((one) => one.level === "error" && one.rule !== "failed-derivation");
      expect(errors.map((one) => one.message)).toEqual([]);
    });
  },
);
