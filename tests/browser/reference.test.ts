import { expect } from "vitest";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { filesOf, through, visit } from "./through.ts";
import type { Fill } from "./through.ts";

const sources = [
  {
    id: "vane-1968",
    type: "article-journal",
    title: "A <i>pace</i> of the Down <script>alert(1)</script>",
    author: [{ family: "Vane", given: "Isolde" }],
    issued: { "date-parts": [[1968]] },
    "container-title": "Measure and Ground",
    DOI: "10.99999/vane.1",
  },
  {
    id: "vane-1968b",
    type: "book",
    title: "Rings",
    author: [{ family: "Vane", given: "Isolde" }],
    issued: { "date-parts": [[1968]] },
  },
];

const style = (inside: string): string =>
  '<style xmlns="http://purl.org/net/xbiblio/csl" class="in-text" version="1.0"><info><title>Own</title></info>' +
  `<citation><layout><text variable="title"/></layout></citation>${inside}</style>`;

const corpus = (settings: string, own = style("")): Fill =>
  filesOf({
    "corpus.yaml": `format: 1\ntitle: Cited\nbibliography: [sources.json]\n${settings}`,
    "sources.json": JSON.stringify(sources),
    "own.csl": own,
  });

const written = ".reference .sentence";

walk("shows a source's reference in the corpus's style, with its marks and where it leads", async (page) => {
  await through(page, corpus("citation-style: chicago-author-date\n"), async () => {
    await visit(page, "/record/vane-1968");
    await expect
      .poll(() => page.locator(written).textContent())
      .toBe(
        "Vane, Isolde. 1968a. “A Pace of the Down <script>alert(1)</Script>.” Measure and Ground. https://doi.org/10.99999/vane.1.",
      );
    await expect
      .poll(() => page.locator(`${written} em`).allTextContents())
      .toEqual(["Pace", "Measure and Ground"]);
    await expect
      .poll(() => page.locator(`${written} a`).getAttribute("href"))
      .toBe("https://doi.org/10.99999/vane.1");
    await expect.poll(() => page.locator(`${written}[dir=auto]`).count()).toBe(1);
    for (const width of [1280, 390]) {
      await page.setViewportSize({ width, height: 800 });
      await expect.poll(() => overflow(page), { message: `${width} px` }).toBeLessThanOrEqual(0);
    }
    expect(await complaintsOf(page)).toEqual([]);
  });
});

walk("uses a style of the corpus's own", async (page) => {
  await through(page, corpus("citation-style: own.csl\n"), async () => {
    await visit(page, "/record/vane-1968b");
    await expect.poll(() => page.locator(written).textContent()).toBe("Rings");
  });
});

walk("says when a style cannot write a reference", async (page) => {
  const nested = '<group display="block"><group display="block"><text variable="title"/></group></group>';
  const fails = style(`<bibliography second-field-align="flush"><layout>${nested}</layout></bibliography>`);
  await through(page, corpus("citation-style: own.csl\n", fails), async () => {
    await visit(page, "/record/vane-1968b");
    await expect
      .poll(() => page.locator(".reference").textContent())
      .toContain("The citation style cannot write it");
    await expect.poll(() => page.locator(written).count()).toBe(0);
  });
});
