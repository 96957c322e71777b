import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { filesOf, tabTo, through, visit } from "./through.ts";

const settings = "title: The Sallow Row\nbibliography: [sources.bib]\nwithhold: [kept-1950]\n";
const sources = `@book{hale-1990,
  author = {Hale, Ada},
  title  = {The Row},
  year   = {1990}
}

@book{kept-1950, author = {Under, Seal}, title = {Kept under seal}, year = {1950}}
`;
const pasted = `@book{hale-1990, author = {Hale, Ada}, title = {The Row}, year = 1990, publisher = {Thorn}, edition = {2}}

@book{reed-1991,
  author = {Reed, Mal},
  title  = {حفر المرو},
  langid = {arabic},
  year   = {1991}
}
@book{sealed, author = {Under, Seal}, title = {Kept under seal}, year = 1950}
@book{broken, title = {open
`;

const text = (page: Page, selector: string): Promise<string> =>
  page
    .locator(selector)
    .allTextContents()
    .then((all) => all.join(" "));

walk("brings pasted entries in, merging one, by keys alone, and takes it back", async (page) => {
  const fill = filesOf({ "corpus.yaml": settings, "sources.bib": sources });
  await through(page, fill, async ({ folder }) => {
    const bibliography = (): string => readFileSync(join(folder, "sources.bib"), "utf8");
    await visit(page, "/records");
    await tabTo(page, "Bring in a bibliography or a table");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Bring in a bibliography or a table", level: 1 }).waitFor();
    await tabTo(page, "Or paste entries or a table as text");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Tab");
    await page.keyboard.insertText(pasted);
    await tabTo(page, "Read the text");
    await page.keyboard.press("Enter");
    await expect.poll(() => text(page, ".counts")).toBe("1 to be added, 2 left alone, 1 not read");
    expect(await text(page, ".import-page")).not.toMatch(/seal/i);
    await expect.poll(() => text(page, "pre")).toContain("@book{broken, title = {open");
    expect(await complaintsOf(page)).toEqual([]);
    expect(bibliography()).toBe(sources);

    await page.locator("fieldset.ways input").first().focus();
    await page.keyboard.press("ArrowDown");
    await expect.poll(() => text(page, ".counts")).toContain("1 to be merged");
    await tabTo(page, "Add one source, merge one entry");
    await page.keyboard.press("Enter");
    await page.locator(".done").waitFor();
    const made = bibliography();
    expect(made).toContain("  year   = {1990},\n  publisher = {Thorn},\n  edition = {2}\n}");
    expect(
      made.endsWith(`\n\n${pasted.slice(pasted.indexOf("@book{reed"), pasted.indexOf("@book{sealed"))}`),
    ).toBe(true);
    await page.getByRole("link", { name: "reed-1991" }).waitFor();
    await page.keyboard.press("Control+z");
    await expect.poll(bibliography).toBe(sources);
  });
});

walk("reads files of other formats, and refuses what is no text, on a narrow screen", async (page) => {
  await page.setViewportSize({ width: 390, height: 800 });
  await through(page, filesOf({ "corpus.yaml": settings, "sources.bib": sources }), async ({ folder }) => {
    await visit(page, "/import");
    const file = (name: string, content: string | Uint8Array) => ({
      name,
      mimeType: "application/octet-stream",
      buffer: Buffer.from(content),
    });
    await page.setInputFiles("input[type=file]", [
      file("latin.bib", new Uint8Array([0x4d, 0xfc])),
      file("notes.txt", "No bibliography at all."),
      file("more.ris", "TY  - BOOK\nAU  - Vane, I.\nTI  - Seven pits\nPY  - 1970\nER  - \n"),
    ]);
    await expect.poll(() => text(page, ".counts")).toBe("1 to be added");
    const files = await text(page, ".coming");
    expect(files).toContain("It is no UTF-8 text");
    expect(files).toContain("It is neither BibTeX, RIS, CSL-JSON nor a table.");
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
    await page.getByRole("button", { name: "Add one source" }).click();
    await page.locator(".done").waitFor();
    expect(existsSync(join(folder, "bibliography.ris"))).toBe(true);
    expect(readFileSync(join(folder, "corpus.yaml"), "utf8")).toBe(
      settings.replace("[sources.bib]", "[sources.bib, bibliography.ris]"),
    );
  });
});

const store = "Inv. no.;D (cm);±;weather\nK17;42,5;0,5;rain\nK-18;;;sun\nK-19;3,5;;\n";
const pits = `artefacts:
  - { id: pit-1, name: The deep pit, numbers: { inventory: K-17 } }
  - { id: pit-2, name: The wide pit, numbers: { inventory: K-18 } }
`;

walk(
  "brings a table in once its columns are what they are, and keeps choices over a reload",
  async (page) => {
    const fill = filesOf({ "corpus.yaml": settings, "sources.bib": sources, "pits.yaml": pits });
    await through(page, fill, async ({ folder }) => {
      const records = (): string => readFileSync(join(folder, "pits.yaml"), "utf8");
      await visit(page, "/import");
      await page.setInputFiles("input[type=file]", [
        { name: "store.csv", mimeType: "text/csv", buffer: Buffer.from(store) },
      ]);
      await expect.poll(() => text(page, ".counts")).toContain("0 to be added, 2 not brought in");
      await page.getByLabel("comma (18,2)").check();
      await page.getByLabel("What the column weather is").selectOption("note");
      await expect.poll(() => text(page, ".counts")).toContain("1 to be added, 1 not brought in");
      await expect
        .poll(() => text(page, ".brought"))
        .toContain("Unknown artefact “K-19”, expected “pit-1” or “pit-2”");
      expect(records()).toBe(pits);
      await page.reload();
      await expect.poll(() => text(page, ".counts")).toContain("1 to be added, 1 not brought in");
      await tabTo(page, "Add one measurement");
      await page.keyboard.press("Enter");
      await page.locator(".done").waitFor();
      expect(records()).toBe(
        `${pits}\nmeasurements:\n  - { of: pit-1, dimension: D, value: 42.5 ± 0.5 cm, note: rain }\n`,
      );
      await expect.poll(() => page.locator(".coming-table").count()).toBe(0);
      await page.keyboard.press("Control+z");
      await expect.poll(records).toBe(pits);
    });
  },
);

walk("changes an entry with its reference beside it, and shows none that is withheld", async (page) => {
  await through(page, filesOf({ "corpus.yaml": settings, "sources.bib": sources }), async ({ folder }) => {
    const bibliography = (): string => readFileSync(join(folder, "sources.bib"), "utf8");
    await visit(page, "/record/hale-1990");
    await page.keyboard.press("c");
    await page.getByRole("heading", { name: "Change: Hale 1990" }).waitFor();
    await page.getByLabel("Text of title").fill("The Row, Drawn Anew");
    await expect.poll(() => text(page, ".reference")).toContain("The Row, Drawn Anew");
    await page.getByLabel("Text of year").fill("{1990");
    await expect.poll(() => text(page, "[role=alert]")).toContain("braces");
    await page.getByLabel("Text of year").fill("1990");
    await page.getByRole("button", { name: "Add a field" }).click();
    await page.getByLabel("Name of the field").fill("publisher");
    await page.getByLabel("Text of publisher").fill("Thorn");
    expect(await complaintsOf(page)).toEqual([]);
    expect(bibliography()).toBe(sources);
    await page.getByRole("button", { name: "Save" }).click();
    await page.locator("h1", { hasText: "The Row, Drawn Anew" }).waitFor();
    expect(bibliography()).toBe(
      sources
        .replace("{The Row}", "{The Row, Drawn Anew}")
        .replace("{1990}\n}", "{1990},\n  publisher = {Thorn}\n}"),
    );
    await page.evaluate(() => history.pushState(null, "", "/entry/kept-1950"));
    await page.locator("h1", { hasText: "There is no" }).waitFor();
    expect(await text(page, "main")).not.toMatch(/seal/i);
  });
});
