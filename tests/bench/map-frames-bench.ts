import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import type { Page } from "playwright-core";
import { build } from "vite";
import { layOut } from "../../src/show/map/layout/layout.ts";
import type { BoxState, PlacedBox, Scene, Setting } from "../../src/show/map/scene.ts";
import { findChromium } from "../browser/find-chromium.ts";
import { flags } from "../browser/flags.ts";
import { sectionOf } from "../oracle/random-section.ts";
import type { BenchRow } from "./layout-bench.ts";
import type { Measured } from "./map-frames-page.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const shape = { seed: 7, ranks: 6, attacks: 10, rivals: 5, circles: 0, long: 10, scatter: 0.005 };
const rounds = 5;
const sizes = [300, 2000];

/** A frame's time on a screen of 60 pictures a second, rounded up. */
const frameGoal = 17;

/** Frames of the map while it is panned and zoomed, against the graph library alone with plain rectangles, on one page. */
export default async function mapFramesBench(): Promise<readonly BenchRow[]> {
  const found = findChromium();
  if ("missing" in found) throw new Error(found.missing);
  const folder = mkdtempSync(join(tmpdir(), "variorum-frames-"));
  const browser = await chromium.launch({ executablePath: found.path, args: [...flags] });
  try {
    const served = await serve(await bundled(folder));
    try {
      const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
      await page.goto(served.url);
      await page.evaluate(() => document.fonts.ready);
      const rows: BenchRow[] = [];
      for (const size of sizes) rows.push(...(await compared(page, size)));
      return rows;
    } finally {
      served.close();
    }
  } finally {
    await browser.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Both in turn, several times; the first round warms both up and is not counted. */
async function compared(page: Page, size: number): Promise<readonly BenchRow[]> {
  const scene = told(layOut(sectionOf({ ...shape, boxes: size })));
  const states = statesOf(scene);
  const [own, other]: [Measured[], Measured[]] = [[], []];
  for (let round = 0; round <= rounds; round++) {
    const one = await page.evaluate(([drawn, how]) => window.ours(drawn, how), [scene, states] as const);
    const two = await page.evaluate((drawn) => window.peer(drawn), scene);
    if (round === 0) continue;
    own.push(one);
    other.push(two);
  }
  const what = `map of ${scene.boxes.length} boxes`;
  const row = (name: string, ours: number, peer: number, goalRatio: number): BenchRow => ({
    goal: "8",
    what: `${what}: ${name}`,
    ours,
    peer,
    ratio: ours / peer,
    goalRatio,
    unit: "ms",
  });
  const frames = (runs: readonly Measured[]): number => middle(runs.map((run) => mean(run.frames)));
  const first = (runs: readonly Measured[]): number => middle(runs.map((run) => run.first));
  const rows = [
    row("mean frame (cytoscape, plain)", frames(own), frames(other), 1.3),
    row("first picture (cytoscape, plain)", first(own), first(other), 2),
  ];
  const median = middle(own.flatMap((run) => run.frames));
  return size === sizes[0] ? [...rows, row("median frame (a screen's)", median, frameGoal, 1)] : rows;
}

/** A scene whose claims say as much as real ones do. */
function told(scene: Scene): Scene {
  const lines = [
    "The posts of the inner ring stood deep",
    "enough to bear the span of a roof of",
    "turf and reed.",
  ];
  const text = (box: PlacedBox): Setting => ({
    lines: lines.slice(0, Math.max(1, Math.floor((box.height - 25) / 21))),
    rtl: false,
    lang: "en",
  });
  const boxes = scene.boxes.map((box) =>
    box.look.as === "claim" || box.look.as === "answer"
      ? { ...box, look: { ...box.look, text: text(box) } }
      : box,
  );
  return { ...scene, boxes };
}

function statesOf({ boxes }: Scene): Readonly<Record<string, BoxState>> {
  const standings = ["stands", "open", "falls", "unsupported"] as const;
  return Object.fromEntries(
    boxes.map(({ id, look }, at): [string, BoxState] => {
      const standing = look.as === "thing" || look.as === "mark" ? null : (standings[at % 4] ?? null);
      return [id, { standing, said: `${standing} · Vane, Hale +3`, later: false, was: null, lit: true }];
    }),
  );
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const middle = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

/** The page as files in a folder. */
async function bundled(folder: string): Promise<string> {
  const style = `html, body, .full { margin: 0; } .full { position: absolute; inset: 0; width: 100%; height: 100%; }`;
  writeFileSync(join(folder, "page.css"), style);
  writeFileSync(
    join(folder, "page.js"),
    ["src/app/look/sheet/fonts.css", "src/app/look/sheet/sheet.css", "tests/bench/map-frames-page.ts"]
      .map((file) => `import ${JSON.stringify(join(root, file))};`)
      .join("\n") + `\nimport "./page.css";`,
  );
  const script = `<script type="module" src="./page.js"></script>`;
  writeFileSync(join(folder, "index.html"), `<!doctype html><title>Frames</title><body></body>${script}`);
  const outDir = join(folder, "out");
  await build({
    root: folder,
    configFile: false,
    logLevel: "silent",
    build: { outDir, assetsInlineLimit: 0, target: "es2023" },
  });
  return outDir;
}

const types: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".woff2": "font/woff2",
};

async function serve(folder: string): Promise<{ readonly url: string; readonly close: () => void }> {
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? "/", "http://localhost").pathname;
    const name = path === "/" ? "/index.html" : path;
    readFile(join(folder, name)).then(
      (body) => response.writeHead(200, { "Content-Type": types[extname(name)] ?? "" }).end(body),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return { url: `http://127.0.0.1:${port}/`, close: () => void server.close() };
}

declare global {
  interface Window {
    readonly ours: (scene: Scene, states: Readonly<Record<string, BoxState>>) => Promise<Measured>;
    readonly peer: (scene: Scene) => Promise<Measured>;
  }
}
