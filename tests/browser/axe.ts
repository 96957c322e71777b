import axe from "axe-core";
import type { AxeResults, RunOptions } from "axe-core";
import type { Page } from "playwright-core";

/** How many px the page hangs over its window. */
export const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);

interface WithAxe {
  readonly axe?: { readonly run: (where: string, options: RunOptions) => Promise<AxeResults> };
}

/** What axe finds to complain of in a part of the page, in its main part where none is named; by all its rules, or by some. */
export async function complaintsOf(
  page: Page,
  part = "main",
  rules?: readonly string[],
): Promise<readonly string[]> {
  const isThere = await page.evaluate(() => (window as WithAxe).axe !== undefined);
  if (!isThere) await page.evaluate(axe.source);
  const results = await page.evaluate(
    async ([where, only]) => {
      const { axe: here } = window as WithAxe;
      if (!here) throw new Error("Missing axe, expected it in the page");
      return here.run(where, { resultTypes: ["violations"], ...(only ? { runOnly: [...only] } : {}) });
    },
    [part, rules] as const,
  );
  return results.violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.html).join(" ")}`);
}
