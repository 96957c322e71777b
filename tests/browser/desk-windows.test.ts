import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import { walk } from "./chromium.ts";
import { save, toField } from "./forms-keys.ts";
import { filesOf, frames, keptAtDesk, tabTo, through, visit } from "./through.ts";

const two = {
  "corpus.yaml": "title: Two rings\nlanguage: en\n",
  "rings.yaml": `artefacts:
  - { id: ring-a, name: The inner ring }
claims:
  - { id: roofed, text: The ring carried a roof. }
measurements:
  - { of: ring-a, dimension: width, value: 5 m, between: hole 1 to hole 2 }
`,
};
const rings = filesOf(two);
const textOf = (folder: string): string => readFileSync(join(folder, "rings.yaml"), "utf8");

walk("the way back beside what was done is there only while it takes back just that", async (page) => {
  await through(page, rings, async ({ folder }) => {
    await visit(page, "/edit/roofed");
    await toField(page, "text");
    await page.keyboard.press("Control+A");
    await page.keyboard.insertText("It was roofed.");
    await save(page);
    const foot = page.locator(".desk-foot");
    await foot.getByText("Saved.").waitFor();
    await expect.poll(() => foot.getByRole("button", { name: "Undo" }).count()).toBe(1);

    // Another window makes a step of its own.
    const was = textOf(folder);
    const answer = await page.evaluate(async (text) => {
      const hash = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
      const madeFor = [...new Uint8Array(hash)].map((one) => one.toString(16).padStart(2, "0")).join("");
      const edits = [{ file: "rings.yaml", start: 0, end: 0, text: "# Theirs.\n" }];
      const response = await fetch("/corpus/edit", {
        method: "POST",
        headers: { "x-variorum-token": sessionStorage.getItem("token") ?? "" },
        body: JSON.stringify({ step: "Theirs", changes: [{ file: "rings.yaml", madeFor, edits }] }),
      });
      return response.status;
    }, was);
    expect(answer).toBe(200);
    await expect.poll(() => foot.getByRole("button", { name: "Undo" }).count()).toBe(0);
    expect(textOf(folder)).toBe(`# Theirs.\n${was}`);
  });
});

walk("a record that somebody else changed meanwhile is not taken out unseen", async (page) => {
  await through(page, rings, async ({ folder }) => {
    await visit(page, "/edit/roofed");
    const theirs = textOf(folder).replace("carried a roof", "was half roofed");
    const again = page.waitForResponse(/\/corpus\/files/);
    writeFileSync(join(folder, "rings.yaml"), theirs);
    await again;
    await tabTo(page, /^\s*Take out$/);
    await page.keyboard.press("Enter");
    await page.getByText("Nothing refers to it.").waitFor();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await page.getByText("Somebody else changed it meanwhile").waitFor();
    expect(textOf(folder)).toBe(theirs);
  });
});

walk("a saved form of a record without an id leaves no draft behind", async (page) => {
  await through(page, rings, async ({ folder }) => {
    await visit(page, `/edit/${encodeURIComponent("ring-a:width")}`);
    await toField(page, "value");
    await page.keyboard.press("Control+A");
    await page.keyboard.insertText("6 m");
    await save(page);
    expect(textOf(folder)).toContain("value: 6 m");
    await expect.poll(() => keptAtDesk(folder)).toBe("");
    await visit(page, "/records");
    const asked = page.waitForResponse(/\/corpus\/drafts$/);
    await page.reload();
    await asked;
    await frames(page, 2);
    expect(await page.getByRole("heading", { name: "Drafts" }).count()).toBe(0);
  });
});

walk(
  "of a large file no more comes back than what changed, and the next edit is made for what it now is",
  async (page) => {
    const remarks = `# ${"Of a ring – ὁ κύκλος – and its posts. ".repeat(2000)}\n`;
    const large = filesOf({ ...two, "rings.yaml": `${two["rings.yaml"]}${remarks}` });
    const told: string[] = [];
    page.on("response", (response) => {
      // One that was made for a text which is another by now is refused, and made anew.
      if (response.url().includes("/corpus/edit") && response.status() === 200)
        void response.text().then((text) => told.push(text));
    });
    await through(page, large, async ({ folder }) => {
      let now = textOf(folder);
      for (const [round, text] of ["It was roofed.", "It bore a roof 😀.", "A roof lay on it."].entries()) {
        // Somebody else changes it in between, which is told by a stretch, too.
        if (round === 2) {
          now = `# Theirs.\n${now}`;
          const again = page.waitForResponse(/\/corpus\/files/);
          writeFileSync(join(folder, "rings.yaml"), now);
          await again;
        }
        await visit(page, "/edit/roofed");
        await toField(page, "text");
        await page.keyboard.press("Control+A");
        await page.keyboard.insertText(text);
        await save(page);
        now = now.replace(/(id: roofed, text: )[^}]*? \}/u, `$1${text} }`);
        expect(textOf(folder)).toBe(now);
        await page.locator("article.sheet").getByText(text).first().waitFor();
        await visit(page, "/records");
      }
      await expect.poll(() => told.length).toBe(3);
      for (const one of told) expect(one.length).toBeLessThan(2000);
    });
  },
);
