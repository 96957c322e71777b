import { spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import type { Browser, Page } from "playwright-core";
import { median } from "../../src/base/numeric/sample.ts";
import { findChromium } from "../browser/find-chromium.ts";
import { flags } from "../browser/flags.ts";
import { corpusOf } from "../make-corpus/corpus.ts";
import type { Row } from "./search-bench.ts";

const size = { records: 100_000, files: 5_000, seed: 1 };
const rounds = 3;
/** How long is waited for a page before the bench gives up, in ms. */
const patience = 240_000;

/** What passes in a window from its address until something can be read in it, in ms. */
interface Opened {
  readonly questions: number;
  readonly question: number;
  readonly standings: number;
  readonly map: number;
  /** The longest that a key would have waited meanwhile. */
  readonly longest: number;
}

/** The app opened on a whole field's dispute, in a new window each time, the program being up already. */
export default async function bench(): Promise<readonly (Row & { readonly goalFigure?: number })[]> {
  const found = findChromium();
  if ("missing" in found) throw new Error(found.missing);
  const folder = mkdtempSync(join(tmpdir(), "variorum-open-bench-"));
  const files = corpusOf(size);
  for (const file of files) {
    mkdirSync(dirname(join(folder, file.path)), { recursive: true });
    writeFileSync(join(folder, file.path), file.text);
  }
  const asked = /^ {2}- id: (\S+)/m.exec(
    files.find(({ text }) => /^questions:/m.test(text))?.text ?? "",
  )?.[1];
  if (asked === undefined) throw new Error("no question");
  const served = await programOn(folder);
  const browser = await chromium.launch({ executablePath: found.path, args: [...flags] });
  try {
    const times: Opened[] = [];
    for (let round = 0; round < rounds; round++) times.push(await opened(browser, served.url, asked));
    return rowsOf(`${files.length} files`, times);
  } finally {
    await browser.close();
    served.end();
    rmSync(folder, { recursive: true, force: true });
  }
}

function rowsOf(
  where: string,
  times: readonly Opened[],
): readonly (Row & { readonly goalFigure?: number })[] {
  const figure = { goal: "opening", peer: null, ratio: null, goalRatio: null, unit: "ms" };
  const middle = (of: (one: Opened) => number): number => median(times.map(of));
  const what = `${size.records} records in ${where} opened in the app`;
  return [
    { ...figure, what: `${what}: the questions`, ours: middle((one) => one.questions), goalFigure: 3000 },
    {
      ...figure,
      what: "  a question with its answers",
      ours: middle((one) => one.question),
      goalFigure: 3000,
    },
    { ...figure, what: "  its answers with their standings", ours: middle((one) => one.standings) },
    { ...figure, what: "  from there to the map, folded", ours: middle((one) => one.map) },
    { ...figure, what: "  the longest that a key waits", ours: Math.max(...times.map((one) => one.longest)) },
  ];
}

/** The built program on a folder, as a user starts it; built first where a source is newer. */
async function programOn(folder: string): Promise<{ readonly url: string; readonly end: () => void }> {
  const launch = fileURLToPath(new URL("../../src/cli/launch.mjs", import.meta.url));
  const child = spawn(process.execPath, [launch, "open", folder, "--no-browser"], {
    stdio: ["ignore", "pipe", "inherit"],
  });
  const url = await new Promise<string>((resolve, reject) => {
    let said = "";
    child.stdout.on("data", (part: Buffer) => {
      said += part.toString();
      const address = /http:\/\/\S+/.exec(said)?.[0];
      if (address !== undefined) resolve(address);
    });
    child.once("exit", () => reject(new Error(`The program ended: ${said}`)));
  });
  return { url, end: () => void child.kill() };
}

async function opened(browser: Browser, url: string, asked: string): Promise<Opened> {
  const questions = await inWindow(browser, (page) => until(page, url, "ul.questions a", 1));
  return inWindow(browser, async (page) => {
    const address = new URL(url);
    address.pathname = `/question/${asked}`;
    const question = await until(page, address.href, "table.answers tbody th", 2);
    const standings = await seen(page, "table.answers tbody .standing", 2);
    const before = await page.evaluate(() => performance.now());
    await page.locator('nav a[href^="/map"]').click();
    const map = await seen(page, "main[data-shown='/map'] canvas", 1);
    const longest = await page.evaluate(() => Math.max(0, ...window.longTasks));
    return { questions, question, standings, map: map - before, longest };
  });
}

async function inWindow<T>(browser: Browser, body: (page: Page) => Promise<T>): Promise<T> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const page = await context.newPage();
  await page.addInitScript(() => {
    window.longTasks = [];
    new PerformanceObserver((list) => {
      for (const one of list.getEntries()) window.longTasks.push(one.duration);
    }).observe({ type: "longtask", buffered: true });
  });
  try {
    return await body(page);
  } finally {
    await context.close();
  }
}

async function until(page: Page, url: string, selector: string, least: number): Promise<number> {
  await page.goto(url, { waitUntil: "commit" });
  return seen(page, selector, least);
}

/** When so many of something are in the window, in ms since its address was opened. */
async function seen(page: Page, selector: string, least: number): Promise<number> {
  const at = await page.waitForFunction(
    ([wanted, count]) => document.querySelectorAll(wanted).length >= count && performance.now(),
    [selector, least] as const,
    { timeout: patience, polling: 20 },
  );
  return Number(await at.jsonValue());
}

declare global {
  interface Window {
    longTasks: number[];
  }
}
