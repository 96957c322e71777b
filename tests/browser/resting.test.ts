import { expect } from "vitest";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { copyOf, tabTo, through, visit } from "./through.ts";

const kiln = copyOf("tests/corpora/lost");

walk("tells on a claim's sheet which losses together end it, and leads to each of them", async (page) => {
  await through(page, kiln, async () => {
    await tabTo(page, "How often was the kiln fired?");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "How often was the kiln fired?", level: 1 }).waitFor();
    await tabTo(page, "The kiln was fired more than once");
    await page.keyboard.press("Enter");
    const losses = page.locator("section", {
      has: page.getByRole("heading", { name: "If something were lost" }),
    });
    await losses.getByText("No single loss ends it; two together do.").waitFor();
    await expect
      .poll(() => losses.getByRole("listitem").allTextContents())
      .toEqual([
        "one of the kiln floor, Ida Tarrant or Tarrant 1961, together with one of Kofi Osei, Osei 1984 or the waster heap",
      ]);
    const lines = page.locator("section", {
      has: page.getByRole("heading", { name: "Lines that lead to it" }),
    });
    await lines.getByText("Two lines lead to it that share nothing.").waitFor();
    await expect.poll(() => lines.locator("ol > li").count()).toBe(2);
    expect(await complaintsOf(page)).toEqual([]);

    await tabTo(page, "the waster heap");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "the waster heap", level: 1 }).waitFor();
    await page.goBack();
    await losses.getByText("No single loss ends it").waitFor();
  });
});

walk("says where the lines tell too much, names nothing withheld, and fits a narrow screen", async (page) => {
  await through(page, kiln, async () => {
    await visit(page, "/record/one-potter");
    await page.getByText("Three lines lead to it that share nothing.").waitFor();
    const told = await page.locator("main").textContent();
    expect(told).toContain("Yet the loss of the flue, Greta Lund or Lund 1998 alone ends it.");
    expect(told).toContain("One author on two lines, Greta Lund");
    await visit(page, "/record/ash-raked");
    await page.getByText("No single loss ends it; two together do.").waitFor();
    await expect
      .poll(() => page.locator("main").textContent())
      .toContain("or something withheld, together with");
    expect(await page.content()).not.toMatch(/orchard/i);
    await page.setViewportSize({ width: 390, height: 800 });
    await expect.poll(() => overflow(page)).toBe(0);
    await visit(page, "/record/fired-once");
    await page.getByRole("heading", { name: "The kiln was fired once", level: 1 }).waitFor();
    await expect.poll(() => page.getByRole("heading", { name: "If something were lost" }).count()).toBe(0);
  });
});
