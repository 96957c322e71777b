import axe from "axe-core";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";

/** How many px the page hangs over its window. */
export const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);

/** What axe finds to complain of in a part of the page, in its main part where none is named. */
export async function complaintsOf(page: Page, part = "main"): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  const results = await page.evaluate(
    (where) => (window as unknown as { axe: { run: (where: string) => Promise<AxeResults> } }).axe.run(where),
    part,
  );
  return results.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.html).join(" ")}`);
}
