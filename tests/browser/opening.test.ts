import { expect } from "vitest";
import { corpusOf } from "../make-corpus/corpus.ts";
import { walk } from "./chromium.ts";
import { filesOf, through } from "./through.ts";

const files = corpusOf({ records: 2000, seed: 5 });
const asked = files.find(({ text }) => /^questions:/m.test(text))?.text ?? "";
const id = /^ {2}- id: (\S+)/m.exec(asked)?.[1] ?? "";
const text = /^ {4}text: "?(.*?)"?$/m.exec(asked)?.[1] ?? "";
const fill = filesOf(Object.fromEntries(files.map((one) => [one.path, one.text])));

walk(
  "a question of a large corpus can be read before it is judged, and stands as it does after",
  async (page) => {
    await page.addInitScript(() => {
      const seen = (window.seenFirst = [] as string[]);
      new MutationObserver(() => {
        const heading = document.querySelector("main h1")?.textContent ?? "";
        const rows = document.querySelectorAll("table.answers tbody tr").length;
        const marks = document.querySelectorAll("table.answers tbody .standing").length;
        const state = `${heading} ${rows > 0 ? "answers" : ""} ${marks > 0 ? "standings" : ""}`.trim();
        if (rows > 0 && seen.at(-1) !== state) seen.push(state);
      }).observe(document, { childList: true, subtree: true, characterData: true });
    });
    await through(
      page,
      fill,
      async () => {
        await page.locator("main[data-shown]").waitFor();
        await expect.poll(() => page.locator("table.answers tbody .standing").count()).toBeGreaterThan(1);
        await expect
          .poll(() => page.evaluate(() => window.seenFirst))
          .toEqual([`${text} answers`, `${text} answers standings`]);
        await expect.poll(() => page.title()).toContain(text);
        await page.getByRole("link", { name: "Records" }).click();
        await page.locator("main[data-shown='/records']").waitFor();
        const measurements = page.locator("details", { hasText: "measurements" });
        await measurements.locator("summary").click();
        await expect.poll(() => measurements.locator("li").count()).toBe(200);
        await measurements.getByRole("button", { name: "Show 100 more" }).click();
        await expect.poll(() => measurements.locator("li").count()).toBe(300);
      },
      `/question/${id}`,
    );
  },
);

declare global {
  interface Window {
    seenFirst: string[];
  }
}
