import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { median } from "../../src/base/numeric/sample.ts";
import { kinds } from "../../src/host/telling/kinds.ts";
import type { Row } from "./search-bench.ts";

/** A file of each kind, by what is asked for it. */
const wanted: Readonly<Record<string, readonly string[]>> = {
  review: ["review.docx"],
  application: ["application.docx", "--examination", "date-the-foot"],
  visit: ["visit.docx", "--examination", "look-at-the-casts"],
  tables: ["tables.xlsx"],
  figures: ["figures", "--format", "svg", "pdf", "png", "--width", "170"],
  slides: ["talk.pptx", "--talk", "fifteen-minutes"],
  data: ["data.zip"],
  page: ["dispute.html"],
};

/** What one output may take, in ms (goal 11). */
const most = 10_000;

/** Goal 11: each output of the demo by one command, its whole process, the demo's numbers known from before; kinds in turn. */
export default function tellingBench(): readonly Row[] {
  const program = fileURLToPath(new URL("../../dist/cli.js", import.meta.url));
  const demo = fileURLToPath(new URL("../../demo-corpus", import.meta.url));
  const folder = mkdtempSync(join(tmpdir(), "variorum-bench-telling-"));
  const run = (args: readonly string[]): number => {
    const begun = performance.now();
    const env = { ...process.env, XDG_CACHE_HOME: join(folder, "cache") };
    const { status, stderr } = spawnSync(process.execPath, [program, ...args], { env, encoding: "utf8" });
    if (status !== 0 && status !== 1) throw new Error(`${args.join(" ")}: ${stderr}`);
    return performance.now() - begun;
  };
  try {
    run(["check", demo, "--json"]);
    const taken = new Map<string, number[]>();
    for (const round of [1, 2, 3])
      for (const kind of Object.keys(kinds)) {
        const [name = "", ...options] = wanted[kind] ?? [];
        if (name === "") throw new Error(`Nothing is said of what to ask of ${kind}`);
        const to = join(folder, `${round}-${name}`);
        const times = taken.get(kind) ?? [];
        times.push(run(["write", kind, demo, "--to", to, ...options]));
        taken.set(kind, times);
      }
    return [...taken].map(([kind, times]) => ({
      goal: "11",
      what: `the demo as ${wanted[kind]?.[0]}`,
      ours: median(times),
      peer: null,
      ratio: null,
      goalRatio: null,
      goalFigure: most,
      unit: "ms",
    }));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
