import { mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect } from "vitest";
import { declaredBy, runGuest } from "../../src/host/guest/guest.ts";
import { engine, evaluatedWith, filesWith, guestOf, guestText } from "../laws/numbers/guest-corpus.ts";
import { complaintsOf, overflow } from "./axe.ts";
import { walk } from "./chromium.ts";
import { filesOf, tabTo, through, visit } from "./through.ts";
import type { Fill } from "./through.ts";

const before = process.env["XDG_CONFIG_HOME"];
let home = "";

beforeAll(() => {
  home = mkdtempSync(join(tmpdir(), "variorum-home-"));
  process.env["XDG_CONFIG_HOME"] = home;
});
afterAll(() => {
  if (before === undefined) delete process.env["XDG_CONFIG_HOME"];
  else process.env["XDG_CONFIG_HOME"] = before;
  rmSync(home, { recursive: true, force: true });
});

const corpus = (text: string): Fill =>
  filesOf(Object.fromEntries(filesWith(text).map((file) => [file.path, file.text])));

const lead = (page: Page): Promise<string | null> => page.locator(".number .lead").first().textContent();

walk(
  "reads a stranger's plug-in, allows it by keys alone, and its number stands where it bears",
  async (page) => {
    const text = guestText();
    await through(page, corpus(text), async ({ at }) => {
      await visit(page, "/numbers");
      await expect.poll(() => page.locator(".number-group").textContent()).toContain("not allowed to run");
      await visit(page, "/number/how-wide");
      await expect.poll(() => lead(page)).toContain("Not allowed to run");
      await expect.poll(() => page.locator(".allow .hash").textContent()).toBe(guestOf(text).hash);
      await expect.poll(() => page.locator(".allow textarea").inputValue()).toContain("export default {");
      for (const width of [1280, 390]) {
        await page.setViewportSize({ width, height: 800 });
        await expect.poll(() => overflow(page), { message: `${width} px` }).toBeLessThanOrEqual(0);
      }
      expect(await complaintsOf(page)).toEqual([]);

      const ask = (token: string | null, body: unknown): Promise<number> =>
        page.evaluate(
          async ([url, token, body]) => {
            const headers = {
              "content-type": "application/json",
              ...(token === null ? {} : { "x-variorum-token": token }),
            };
            return (await fetch(url, { method: "POST", headers, body })).status;
          },
          [at("/corpus/allow"), token, JSON.stringify(body)] as const,
        );
      const token = await page.evaluate(() => sessionStorage.getItem("token"));
      const { hash } = guestOf(text);
      void page.removeAllListeners("console");
      expect(await ask(null, { name: "widest", hash })).toBe(403);
      expect(await ask("0".repeat(32), { name: "widest", hash })).toBe(403);
      expect(await ask(token, { name: "widest", hash: "0".repeat(64) })).toBe(409);
      expect(await ask(token, { name: "../widest", hash })).toBe(409);
      expect(await ask(token, "widest")).toBe(409);
      expect(await lead(page)).toContain("Not allowed to run");

      await tabTo(page, "Allow this plug-in");
      await page.keyboard.press("Enter");
      await expect.poll(() => lead(page)).toBe("The widest is The barn with 7.5 m.");
      await expect.poll(() => page.locator(".plate svg[role=img]").count()).toBe(1);
      await expect.poll(() => page.locator(".bearing").textContent()).toContain("supports");
      await expect.poll(() => page.locator(".allow").count()).toBe(0);
      await expect.poll(() => page.locator(".method .hash").textContent()).toContain(hash);
      await visit(page, "/record/wide");
      await expect.poll(() => page.locator("main").textContent()).toContain("stands");
    });
  },
);

walk("gives the same result to the last digit as outside the browser", async (page) => {
  const text = guestText();
  const { model } = await evaluatedWith(filesWith(text), [guestOf(text)]);
  const run = model?.derivations.byId.get("how-wide")?.run;
  if (!run) throw new Error("there is no run");
  const guest = await declaredBy(engine, guestOf(text));
  const here = JSON.stringify(await runGuest(engine, guest, run));
  const assets = fileURLToPath(new URL("../../dist/app/assets", import.meta.url));
  const script = readdirSync(assets).find((name) => /^compute-worker.*\.js$/.test(name));
  await through(page, corpus(text), async ({ at }) => {
    const there = await page.evaluate(
      ([url, given]) =>
        new Promise<string>((resolve, reject) => {
          const worker = new Worker(url, { type: "module" });
          worker.onerror = (event) => reject(new Error(event.message));
          worker.onmessage = ({ data }: MessageEvent<{ readonly outcome?: unknown }>) => {
            if (data.outcome !== undefined) resolve(JSON.stringify(data.outcome));
          };
          worker.postMessage(given);
        }),
      [at(`/assets/${script ?? ""}`), { run, guest }] as const,
    );
    expect(there).toBe(here);
    expect(there).toContain('"drawn"');
  });
});

walk("a plug-in that never ends leaves the app at work, and is told of", async (page) => {
  const text = guestText({ compute: "for (;;);" });
  await through(page, corpus(text), async () => {
    await visit(page, "/number/how-wide");
    await page.getByRole("button", { name: "Allow this plug-in" }).click();
    await expect.poll(() => lead(page)).toContain("still being computed");
    // None of these pages waits for it.
    await visit(page, "/outline");
    await visit(page, "/findings");
    await visit(page, "/number/how-wide");
    expect(await lead(page)).toContain("still being computed");
    await expect.poll(() => lead(page)).toContain("it was stopped after 10 s");
    await visit(page, "/findings");
    await expect.poll(() => page.locator("main").textContent()).toContain("it was stopped after 10 s");
  });
});
