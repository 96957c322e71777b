import { expect } from "vitest";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { copyOf, filesOf, tabTo, through, visit } from "./through.ts";

/** Four pairs of rivals, tied together by two claims that lean on all of them and cannot both be right. */
const tied = filesOf({
  "corpus.yaml": "title: Four pairs\n",
  "all.yaml": {
    artefacts: [{ id: "post", name: "A post" }],
    scholars: [{ id: "ada", name: "Ada North" }],
    observations: [{ id: "seen", of: "post", text: "It was seen." }],
    claims: [
      ...[1, 2, 3, 4].flatMap((n) => [
        { id: `left-${n}`, text: `Left ${n}.`, "incompatible-with": [`right-${n}`] },
        { id: `right-${n}`, text: `Right ${n}.` },
      ]),
      { id: "whole", text: "The whole.", "incompatible-with": ["piecemeal"] },
      { id: "piecemeal", text: "Piecemeal." },
    ],
    arguments: [
      ...[1, 2, 3, 4].flatMap((n) => [
        { id: `for-left-${n}`, because: "seen", therefore: `left-${n}` },
        { id: `for-right-${n}`, because: "seen", therefore: `right-${n}` },
      ]),
      { id: "for-whole", because: ["left-1", "left-2", "left-3", "left-4"], therefore: "whole" },
      { id: "for-piecemeal", because: "seen", therefore: "piecemeal" },
    ],
    positions: [{ who: "ada", claim: "right-4", stance: "holds", year: "1990" }],
  },
});

walk(
  "goes by keys to the standpoints, to what goes with an alternative, to a scholar it fits, and back",
  async (page) => {
    await through(page, copyOf("demo-corpus"), async () => {
      await tabTo(page, "Standpoints");
      await page.keyboard.press("Enter");
      await page.getByRole("heading", { name: "Coherent standpoints", level: 1 }).waitFor();
      await page.getByText("4 coherent standpoints: 2 × 2.").waitFor();
      const parts = page.locator("section.part[aria-labelledby]");
      await expect.poll(() => parts.count()).toBe(2);
      await expect
        .poll(() => parts.first().getByRole("heading", { level: 2 }).textContent())
        .toContain("antler pick");
      const heads = parts.first().locator("table").first().locator("thead th");
      await expect
        .poll(() => heads.allTextContents())
        .toEqual(["Claim", "Alternative 1standsa roof", "Alternative 2standsan open ring"]);
      const row = parts.first().getByRole("row", { name: /The inner ring carried a roof/ });
      await expect.poll(() => row.locator("td").allTextContents()).toEqual(["stands", "falls"]);
      expect(await complaintsOf(page)).toEqual([]);

      await tabTo(page, "26 more things that go with it");
      await page.keyboard.press("Enter");
      await parts.first().getByRole("columnheader", { name: "Evidence" }).waitFor();
      const iron = parts.first().getByRole("row", { name: /iron pick leaves them/ });
      await expect.poll(() => iron.locator("td").allTextContents()).toEqual(["falls", "stands"]);
      expect(await complaintsOf(page)).toEqual([]);

      await page.getByRole("heading", { name: "Coherent standpoints", level: 1 }).click();
      await tabTo(page, "Folasade Oyelaran");
      await page.keyboard.press("Enter");
      await page.getByRole("heading", { name: "Folasade Oyelaran", level: 1 }).waitFor();
      await page.goBack();
      await page.getByRole("heading", { name: "Coherent standpoints", level: 1 }).waitFor();
    });
  },
);

walk("tells the standpoints of an earlier year, when nothing was open", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await visit(page, "/standpoints?as-of=1955");
    await page.getByText("One coherent standpoint: nothing is open.").waitFor();
    await expect.poll(() => page.locator("section.part[aria-labelledby]").count()).toBe(0);
    expect(await page.locator("main").textContent()).not.toContain("Oyelaran");
  });
});

walk("lays out alternatives four abreast, and folds those beyond twelve", async (page) => {
  await through(page, tied, async () => {
    await visit(page, "/standpoints");
    await page.getByText("17 coherent standpoints.").waitFor();
    await expect
      .poll(() => page.locator("table.abreast-4 caption").allTextContents())
      .toEqual(["Alternatives 1 to 4", "Alternatives 5 to 8", "Alternatives 9 to 12"]);
    await tabTo(page, "5 more alternatives");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator(".more-ways > li:visible").count()).toBe(5);
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
    expect(await complaintsOf(page)).toEqual([]);
  });
});

walk("is a list for each alternative where there is no room for a table", async (page) => {
  await page.setViewportSize({ width: 390, height: 800 });
  await through(page, copyOf("demo-corpus"), async () => {
    await visit(page, "/standpoints");
    await page.locator("section.way").first().waitFor();
    await expect.poll(() => page.locator("section.way").count()).toBe(4);
    await expect.poll(() => page.locator("section.way").first().textContent()).toContain("Oyelaran");
    expect(await page.locator("main table").count()).toBe(0);
    await expect.poll(() => overflow(page)).toBeLessThanOrEqual(0);
    await expect
      .poll(() =>
        page
          .locator("main a, main summary")
          .evaluateAll((all) =>
            all
              .filter((one) => one.getClientRects().length === 1 && one.getBoundingClientRect().height < 24)
              .map((one) => one.textContent),
          ),
      )
      .toEqual([]);
    expect(await complaintsOf(page)).toEqual([]);
  });
});
