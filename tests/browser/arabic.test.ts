import type { Page } from "playwright-core";
import { expect } from "vitest";
import { complaintsOf } from "./axe.ts";
import { walk } from "./chromium.ts";
import { copyOf, through, visit } from "./through.ts";

/** Every room of the app, by an address of the demo. */
const pages = [
  "/",
  "/question/what-was-it",
  "/record/ring-a-windbreak",
  "/map?question=what-was-it",
  "/outline",
  "/records",
  "/artefacts",
  "/artefact/ring-a",
  "/scholars",
  "/scholars?look=claims",
  "/scholar/oyelaran",
  "/numbers",
  "/number/ring-unit",
  "/history",
  "/standpoints",
  "/examinations",
  "/search?q=ring",
  "/findings",
];

/** Where a reader begins who asks for Arabic. */
const arabic = "/?lang=ar";

/** Loads the app as a reader has it who asks for Arabic. */
async function inArabic(page: Page, at: (path: string) => string): Promise<void> {
  const address = new URL(page.url());
  address.pathname = new URL(at("/")).pathname;
  address.searchParams.set("lang", "ar");
  await page.goto(address.href);
  await page.locator("h1").waitFor();
}

const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** How far from left to right the middle of something lies, in px. */
const across = async (page: Page, selector: string): Promise<number> => {
  const box = await page.locator(selector).first().boundingBox();
  if (!box) throw new Error(`${selector} is not to be seen`);
  return box.x + box.width / 2;
};

/** The rooms in halves, so that a walk through one is short on a slow machine too. */
const halves = [pages.slice(0, 9), pages.slice(9)];

for (const width of [1280, 390])
  halves.forEach((half, nth) => {
    walk(`runs from right to left and fits, ${width} px wide, half ${nth + 1} of the rooms`, async (page) => {
      const look = async (): Promise<void> => {
        await expect.poll(() => page.locator("html").getAttribute("lang")).toBe("ar");
        await expect.poll(() => page.locator("html").getAttribute("dir")).toBe("rtl");
        await expect.poll(() => page.locator("nav a").first().innerText()).toBe("المسائل");
        expect(await across(page, "header.side")).toBeGreaterThan(await across(page, "main"));
        await page.setViewportSize({ width, height: 800 });
        const faults: string[] = [];
        for (const path of half) {
          await visit(page, path);
          if ((await overflow(page)) > 0) faults.push(`${path}: overflows`);
          faults.push(...(await complaintsOf(page)).map((one) => `${path}: ${one}`));
        }
        expect(faults).toEqual([]);
      };
      await through(page, copyOf("demo-corpus"), look, arabic);
    });
  });

walk("why something falls is told in Arabic, its names kept together", async (page) => {
  await through(
    page,
    copyOf("demo-corpus"),
    async () => {
      await visit(page, "/record/ring-a-windbreak");
      const why = page.locator("main .sentence").first();
      await expect
        .poll(() => why.innerText())
        .toMatch(/^تستند حجة \u2068Brandt 1962\u2069 إلى «\u2068two posts missing.*\u2069»، وهو ساقط\.$/);
      await page.getByRole("heading", { name: "الاعتراض القائم" }).waitFor();
      const explained = await page.locator("main .explained").innerText();
      expect(explained).toMatch(/حجة \u2068Marrack & Oyelaran 1999\u2069 على/);
      // Beside names, quotations and figures nothing of it is English.
      expect(explained.replace(/\u2068[^\u2069]*\u2069/gu, "")).not.toMatch(
        /\b(?:argues|against|from|falls)\b/,
      );
    },
    arabic,
  );
});

walk("figures keep their order, and years run from right to left under the arrow keys", async (page) => {
  await through(
    page,
    copyOf("demo-corpus"),
    async () => {
      await visit(page, "/artefact/ring-a");
      const figure = page.locator("td.figures bdi").filter({ hasText: "±" }).first();
      const [value, unit] = await figure.evaluate((one) => {
        const text = one.firstChild;
        const place = (offset: number): number => {
          const range = document.createRange();
          range.setStart(text ?? one, offset);
          range.setEnd(text ?? one, offset + 1);
          return range.getBoundingClientRect().x;
        };
        return [place(0), place((one.textContent?.length ?? 1) - 1)];
      });
      expect(value).toBeLessThan(unit ?? 0);

      await visit(page, "/question/what-was-it");
      const rod = page.getByRole("slider");
      const last = Number(await rod.getAttribute("aria-valuenow"));
      expect(await across(page, ".rod .last")).toBeLessThan(await across(page, ".rod .first"));
      await rod.focus();
      await page.keyboard.press("ArrowRight");
      await expect.poll(async () => Number(await rod.getAttribute("aria-valuenow"))).toBeLessThan(last);
      await page.keyboard.press("ArrowLeft");
      await expect.poll(async () => Number(await rod.getAttribute("aria-valuenow"))).toBe(last);
    },
    arabic,
  );
});

walk("the map is mirrored, its first answer to the right", async (page) => {
  await through(page, copyOf("demo-corpus"), async ({ at }) => {
    const answers = (): Promise<readonly (readonly [string, number])[]> =>
      page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>("[data-box]")]
          .map(
            (one) =>
              [one.dataset["box"] ?? "", ...(one.dataset["place"] ?? "").split(" ").map(Number)] as const,
          )
          .map(([id, x = 0, y = 0]) => [id, x, y] as const)
          .filter(([, , y], _, all) => y === Math.min(...all.map((other) => other[2])))
          .map(([id, x]) => [id, x] as const),
      );
    const inOrder = async (): Promise<readonly string[]> =>
      (await answers()).toSorted((one, other) => one[1] - other[1]).map(([id]) => id);
    await visit(page, "/map?question=what-was-it");
    await page.locator("[data-box]").first().waitFor({ state: "attached" });
    const english = await inOrder();
    expect(english.length).toBeGreaterThan(1);
    await inArabic(page, at);
    await visit(page, "/map?question=what-was-it");
    await page.locator("[data-box]").first().waitFor({ state: "attached" });
    expect(await inOrder()).toEqual(english.toReversed());
  });
});

walk("a language is chosen at its own name, and the place and the choice are kept", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await visit(page, "/scholars");
    await page.getByRole("button", { name: "العربية" }).click();
    await expect.poll(() => page.locator("html").getAttribute("dir")).toBe("rtl");
    await page.getByRole("heading", { level: 1, name: "الباحثون" }).waitFor();
    await page.reload();
    await page.getByRole("heading", { level: 1, name: "الباحثون" }).waitFor();
    await page.getByRole("button", { name: "English" }).click();
    await expect.poll(() => page.locator("html").getAttribute("lang")).toBe("en");
    await page.getByRole("heading", { level: 1, name: "Scholars" }).waitFor();
    expect(new URL(page.url()).pathname).toBe("/scholars");
    await expect.poll(() => page.locator("html").getAttribute("dir")).toBe("ltr");
  });
});
