import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect } from "vitest";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { filesOf, tabTo, through, visit } from "./through.ts";

function hasGit(): boolean {
  try {
    execFileSync("git", ["--version"]);
    return true;
  } catch {
    return false;
  }
}

const who = ["-c", "user.name=Ada Vane", "-c", "user.email=ada@example.org", "-c", "commit.gpgsign=false"];

function git(folder: string, ...args: readonly string[]): void {
  execFileSync("git", ["-C", folder, ...who, ...args], { stdio: "pipe" });
}

function committed(folder: string, subject: string): void {
  git(folder, "add", "-A");
  git(folder, "commit", "-q", "-m", subject);
}

const ring = `# The ring on Merrow Down.
claims:
  - id: roofed
    text: The ring carried a roof.
    about: [ring]   # and nothing else
observations:
  - { id: deep, of: ring, text: The post stood deep in the chalk. }
arguments:
  - { id: deep-so-roofed, because: deep, therefore: roofed }
`;

const corpus = {
  "corpus.yaml": "title: The ring\nwithhold: [trench-9]\n",
  "people.yaml":
    "scholars:\n  - { id: hale, name: Edwin Hale }\nartefacts:\n  - { id: ring, name: The ring }\n  - { id: trench-9, name: The garden }\n",
  "ring.yaml": ring,
};

/** Makes an edit as another program would. */
function edit(folder: string, file: string, from: string, to: string): void {
  const path = join(folder, file);
  const text = readFileSync(path, "utf8");
  expect(text).toContain(from);
  writeFileSync(path, text.replace(from, to));
}

const change = (page: Page, text: string) => page.locator(".record-changes > li", { hasText: text });

describe.runIf(hasGit())("beside a repository", () => {
  walk(
    "tells by record what an edit on disk changed since the commit, and nothing that is withheld",
    async (page) => {
      const fill = (folder: string): void => {
        filesOf(corpus)(folder);
        git(folder, "init", "-q");
        committed(folder, "Read the report of 1896");
      };
      await through(page, fill, async ({ folder }) => {
        await tabTo(page, /^\s*Changes/);
        await page.keyboard.press("Enter");
        await page.getByText("Against the commit “Read the report of 1896”").waitFor();
        await page.getByText("Nothing has changed.").waitFor();

        edit(folder, "ring.yaml", "carried a roof.", "carried a roof of turf.");
        edit(folder, "people.yaml", "name: The garden", "name: The walled garden");
        await change(page, "The ring carried a roof of turf").waitFor();
        await expect
          .poll(() => change(page, "roof of turf").textContent())
          .toContain("wasThe ring carried a roof.");
        expect(await page.locator("main").textContent()).not.toContain("garden");

        edit(folder, "ring.yaml", "  - { id: deep-so-roofed, because: deep, therefore: roofed }\n", "  []\n");
        await page.getByText("Standings that changed").waitFor();
        await expect.poll(() => change(page, "was stands, is unsupported").count()).toBe(1);
        await page.getByRole("heading", { name: "Taken out 1" }).waitFor();
        expect(await complaintsOf(page)).toEqual([]);

        // A commit alone changes no file that is followed: looking at the window again tells of it.
        committed(folder, "Think of turf");
        await page.evaluate(() => dispatchEvent(new Event("focus")));
        await page.getByText("Against the commit “Think of turf”").waitFor();
        await page.getByText("Nothing has changed.").waitFor();
      });
    },
  );

  walk("merges two versions that version control left in one file, by keys alone", async (page) => {
    const fill = (folder: string): void => {
      filesOf(corpus)(folder);
      git(folder, "init", "-q", "-b", "first");
      committed(folder, "Read the report of 1896");
      git(folder, "checkout", "-q", "-b", "second");
      edit(folder, "ring.yaml", "about: [ring]", "about: [ring, trench-9]");
      edit(folder, "ring.yaml", "deep in the chalk", "a metre deep in the chalk");
      edit(
        folder,
        "ring.yaml",
        "arguments:",
        "  # Not in the report.\n  - { id: dry, of: ring, text: The floor was dry. }\narguments:",
      );
      committed(folder, "Second reading");
      git(folder, "checkout", "-q", "first");
      edit(folder, "ring.yaml", "carried a roof.", "carried a roof of turf.");
      edit(folder, "ring.yaml", "deep in the chalk", "three feet deep in the chalk");
      committed(folder, "First reading");
      expect(() => git(folder, "merge", "second")).toThrow();
    };
    await through(page, fill, async ({ folder }) => {
      await visit(page, "/findings");
      await tabTo(page, /^\s*Merge the two versions$/);
      await page.keyboard.press("Enter");
      await page.getByRole("heading", { name: "Two versions to merge" }).waitFor();
      const deep = page.getByRole("group", { name: /observation.*text/ });
      await deep.waitFor();
      expect(await page.locator("main").textContent()).not.toContain("garden");
      expect(await complaintsOf(page)).toEqual([]);
      await page.setViewportSize({ width: 390, height: 800 });
      await expect.poll(() => overflow(page)).toBe(0);
      await page.setViewportSize({ width: 1280, height: 800 });

      const count = await page.locator(".versions > li").count();
      expect(count).toBe(3);
      const left = page.locator(".write-merged output");
      await expect.poll(() => left.textContent()).toContain("Three choices are left.");
      // Into each group by Tab; Space takes "this", an arrow down "that".
      await page.locator("h1").evaluate((one) => {
        one.setAttribute("tabindex", "-1");
        one.focus();
      });
      for (let met = 0; met < count;) {
        await page.keyboard.press("Tab");
        const inGroup = await page.evaluate(
          () => document.activeElement instanceof HTMLInputElement && document.activeElement.type === "radio",
        );
        if (!inGroup) continue;
        await page.keyboard.press("Space");
        await page.keyboard.press("ArrowDown");
        met += 1;
      }
      // It comes once every choice is made.
      await page.getByRole("button", { name: "Write the merged file" }).waitFor();
      await tabTo(page, /^\s*Write the merged file$/);
      await page.keyboard.press("Enter");
      await page.getByText("ring.yaml holds no conflict marks").waitFor();
      await page.getByText("Saved. Merge two versions of ring.yaml").waitFor();
      const written = readFileSync(join(folder, "ring.yaml"), "utf8");
      expect(written).not.toMatch(/^[<=>|]{7}/mu);
      expect(written).toContain("text: The post stood a metre deep in the chalk.");
      expect(written).toContain(
        "  # Not in the report.\n  - { id: dry, of: ring, text: The floor was dry. }\n",
      );
      expect(written).toContain("# The ring on Merrow Down.\n");

      await visit(page, "/changes?look=steps");
      await tabTo(page, /^\s*Merge two versions of ring.yaml$/);
      await page.keyboard.press("Enter");
      await page.locator(".step-told").waitFor();
      await page.getByText("The corpus as it is").waitFor();
      await page.keyboard.press("Control+z");
      await expect.poll(() => readFileSync(join(folder, "ring.yaml"), "utf8")).toContain("<<<<<<<");
    });
  });
});

walk("goes back in the steps that were made, to before what another program did", async (page) => {
  const marked = ring.replace(
    "    text: The ring carried a roof.\n",
    "<<<<<<< here\n    text: The ring carried a roof.\n=======\n    text: The ring stood open.\n>>>>>>> there\n",
  );
  await through(page, filesOf({ ...corpus, "ring.yaml": marked }), async ({ folder }) => {
    await visit(page, "/changes");
    await page.getByText("in no git repository").waitFor();
    await tabTo(page, /^\s*Steps made here$/);
    await page.keyboard.press("Enter");
    await page.getByText("Nothing was changed here yet.").waitFor();

    // From the first choice to the last: own words, which begin with those of this side.
    await visit(page, "/merge/ring.yaml?answers=m");
    await page.getByLabel(/^this/).focus();
    await page.keyboard.press("ArrowUp");
    await page.getByLabel("What is to stand there").waitFor();
    await page.keyboard.press("Tab");
    await page.keyboard.press("Control+a");
    await page.keyboard.type("The ring stood open.");
    await page.getByRole("button", { name: "Write the merged file" }).waitFor();
    await tabTo(page, /^\s*Write the merged file$/);
    await page.keyboard.press("Enter");
    await page.getByText("holds no conflict marks").waitFor();
    edit(folder, "ring.yaml", "deep in the chalk", "hardly in the chalk");

    await visit(page, "/changes?look=steps");
    await page.getByRole("button", { name: "Changed outside the program" }).waitFor();
    await tabTo(page, /^\s*Changed outside the program$/);
    await page.keyboard.press("Enter");
    await change(page, "hardly in the chalk").waitFor();
    expect(await complaintsOf(page)).toEqual([]);
    await tabTo(page, /^\s*Merge two versions of ring.yaml$/);
    await page.keyboard.press("Enter");
    await page.locator(".step-told").getByText("The ring stood open").first().waitFor();
    await tabTo(page, /^\s*Go back to here$/);
    await page.keyboard.press("Enter");
    await page.getByText("can be undone").waitFor();
    await tabTo(page, /^\s*Go back$/);
    await page.keyboard.press("Enter");
    const text = (): string => readFileSync(join(folder, "ring.yaml"), "utf8");
    await expect.poll(text).toContain("deep in the chalk");
    expect(text()).toContain("The ring stood open.");
    await page
      .getByRole("button", { name: /Back to/ })
      .first()
      .waitFor();
    await page.keyboard.press("Control+z");
    await expect.poll(text).toContain("hardly in the chalk");
    await expect.poll(() => overflow(page)).toBe(0);
  });
});

walk("merges the settings, too, without which no other page can be made", async (page) => {
  const settings =
    "<<<<<<< here\ntitle: The ring\n=======\ntitle: The rings of the Down\n>>>>>>> there\nwithhold: [trench-9]\n";
  await through(page, filesOf({ ...corpus, "corpus.yaml": settings }), async ({ folder }) => {
    await page.getByRole("heading", { name: "The corpus cannot be read." }).waitFor();
    await tabTo(page, /^\s*Merge the two versions$/);
    await page.keyboard.press("Enter");
    await page.getByRole("group", { name: /Settings.*title/i }).waitFor();
    await page.getByLabel(/^that/).check();
    await page.getByRole("button", { name: "Write the merged file" }).click();
    await page.getByText("The rings of the Down").first().waitFor();
    expect(readFileSync(join(folder, "corpus.yaml"), "utf8")).toBe(
      "title: The rings of the Down\nwithhold: [trench-9]\n",
    );
  });
});
