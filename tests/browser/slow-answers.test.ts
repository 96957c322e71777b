import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { walk } from "./chromium.ts";
import { copyOf, through, visit } from "./through.ts";

/** Has what forms ask come to the model so many ms later, in order, as where it is busy with something else. */
async function slowly(page: Page, ms: number): Promise<void> {
  await page.evaluate((later) => {
    const post = MessagePort.prototype.postMessage as (
      this: MessagePort,
      ...given: readonly unknown[]
    ) => void;
    MessagePort.prototype.postMessage = function (this: MessagePort, ...given: readonly unknown[]) {
      setTimeout(() => post.apply(this, [...given]), later);
    } as typeof MessagePort.prototype.postMessage;
  }, ms);
}

const textsIn = (folder: string): readonly string[] =>
  (readdirSync(folder, { recursive: true }) as string[])
    .filter((path) => path.endsWith(".yaml"))
    .map((path) => readFileSync(join(folder, path), "utf8"));

walk("saves with a record what Enter asked for, though it is not there yet", async (page) => {
  await through(page, copyOf("demo-corpus"), async ({ folder }) => {
    await visit(page, "/new/claims");
    await page.locator("[id='at-text']").fill("The ring was used twice.");
    await slowly(page, 300);
    await page.locator("[id='at-from']").focus();
    await page.keyboard.type("vane");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Control+Enter");
    await page.waitForURL(/\/record\//);
    // A record from a source goes into the file of that source, whose head says it for all of them.
    const [file] = textsIn(folder).filter((text) => text.includes("The ring was used twice."));
    expect(file).toMatch(/^source: vane-1968$/mu);
  });
});

walk("keeps what was chosen when Enter is pressed once too often", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await visit(page, "/new/positions");
    const claim = page.locator("[id='at-claim']");
    await claim.waitFor();
    await slowly(page, 300);
    await claim.focus();
    await page.keyboard.type("roof");
    await page.keyboard.press("Enter");
    const chosen = page.locator("[id='at-claim.0']");
    await chosen.waitFor();
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("at-claim.0");
    await page.keyboard.press("Enter");
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Take away");
    expect(await chosen.count()).toBe(1);
  });
});

walk("leaves who went on to another field there when a choice comes", async (page) => {
  await through(page, copyOf("demo-corpus"), async () => {
    await visit(page, "/new/questions");
    await page.locator("form.form").waitFor();
    await page.locator("form.form details").evaluateAll((all) => {
      for (const one of all) (one as HTMLDetailsElement).open = true;
    });
    await page.locator("[id='at-prior']").click();
    const name = page.locator("[id='at-prior.0.name']");
    await name.waitFor();
    await slowly(page, 300);
    await name.focus();
    await page.keyboard.type("roof");
    await page.keyboard.press("Enter");
    const note = page.locator("[id='at-note']");
    await note.focus();
    await expect.poll(() => name.inputValue()).not.toBe("roof");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("at-note");
    await page.keyboard.type("A note");
    expect(await note.inputValue()).toBe("A note");
  });
});

walk("brings an examination that an address names into sight", async (page) => {
  await page.setViewportSize({ width: 1280, height: 600 });
  await through(page, copyOf("demo-corpus"), async () => {
    await visit(page, "/examinations");
    // The plan is made: the page and what is looked for on it come together.
    await page.locator("ol.looks-at > .look").nth(4).waitFor();
    await expect.poll(() => page.locator("output.working").textContent()).toBe("");
    await visit(page, "/question/what-was-it");
    await visit(page, "/examinations?at=gradiometer-again");
    const top = () =>
      page.evaluate(() => {
        const look = document.activeElement?.closest(".look");
        return look ? look.getBoundingClientRect().top : Infinity;
      });
    await expect.poll(top).toBeLessThan(600);
    expect(await top()).toBeGreaterThan(-50);
  });
});
