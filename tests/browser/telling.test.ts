import { appendFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { filesOf, through, visit } from "./through.ts";

const corpus = filesOf({
  "corpus.yaml": "title: Two rings\nbibliography: [sources.bib]\n",
  "sources.bib": "@book{hale-1896, author = {Hale, Josiah}, title = {Rings}, year = 1896}\n",
  "records.yaml": `scholars:
  - { id: hale, name: Josiah Hale }
artefacts:
  - { id: ring, name: the ring }
questions:
  - { id: what, text: What was it?, answers: [roofed, open] }
claims:
  - { id: roofed, text: The ring carried a roof. }
  - { id: open, text: The ring stood open. }
observations:
  - { id: daub, of: ring, text: Burnt daub lay in the ring., from: hale-1896 }
arguments:
  - { id: walls, because: daub, therefore: roofed, from: hale-1896 }
`,
  "review/introduction.md":
    "It is said that {{claim:roofed stands}} [@hale-1896, p. 3].[^1]\n\n[^1]: By Hale alone.\n",
});

walk(
  "shows a review as it reads while files change, chooses its sections by keys, and makes it",
  async (page) => {
    await through(page, corpus, async ({ folder }) => {
      await visit(page, "/write");
      const text = page.locator(".manuscript");
      await expect
        .poll(() => text.textContent())
        .toContain("It is said that the ring carried a roof (Hale 1896, 3).1");
      await expect.poll(() => text.locator(".notes li").first().textContent()).toContain("By Hale alone.");

      const own = join(folder, "review", "introduction.md");
      appendFileSync(own, "\nA word more.\n");
      await expect.poll(() => text.textContent()).toContain("A word more.");

      await page.locator(".sections summary").press("Enter");
      const chapters = page.locator(".manuscript h3[id]");
      await expect
        .poll(async () => (await chapters.allTextContents()).slice(0, 2))
        .toEqual(["Introduction", "The question"]);
      await page.getByRole("checkbox", { name: "The question" }).press("Alt+ArrowUp");
      await expect.poll(() => chapters.first().textContent()).toBe("The question");
      await page.getByRole("checkbox", { name: "Who holds what" }).press("Space");
      const sections = (): readonly string[] =>
        new URL(page.url()).searchParams.get("sections")?.split(",") ?? ["positions"];
      await expect.poll(sections).not.toContain("positions");
      expect(sections().slice(0, 2)).toEqual(["question", "introduction"]);

      await page.getByLabel("Citation style").selectOption("chicago-fullnote-bibliography");
      await expect.poll(() => text.locator(".notes li").count()).toBeGreaterThan(1);

      const coming = page.waitForEvent("download");
      await page.getByRole("button", { name: "Markdown (.md)" }).press("Enter");
      const download = await coming;
      expect(download.suggestedFilename()).toBe("review.md");
      const made = readFileSync(await download.path(), "utf8");
      expect(made.indexOf("The question")).toBeLessThan(
        made.indexOf("It is said that the ring carried a roof"),
      );
      expect(made).not.toContain("Who holds what");
      await expect.poll(() => page.locator(".make output").textContent()).toBe("review.md is made.");
      expect(readFileSync(own, "utf8")).toContain("{{claim:roofed stands}}");

      writeFileSync(own, "Now {{claim:open stands}}.\n");
      await expect.poll(() => text.textContent()).toContain("Now the ring stood open.");
      await page.setViewportSize({ width: 390, height: 800 });
      await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
      expect(await complaintsOf(page)).toEqual([]);
      await visit(page, "/findings");
      await expect
        .poll(() => page.locator("main").textContent())
        .toContain("expected what follows now: “unsupported”");
    });
  },
);
