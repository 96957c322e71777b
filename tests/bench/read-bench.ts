import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "vite";
import { median } from "../../src/base/numeric/sample.ts";
import type { SourceFile } from "../../src/read/source-file.ts";
import { withoutNetwork } from "../../vite.config.ts";
import { corpusOf } from "../make-corpus/corpus.ts";
import type { Row } from "./search-bench.ts";

/** Goals 4 and 5: a corpus of 5,000 files read by a new process, and once more when nothing changed; times of the processor. */
export default async function bench(records = 36_700, rounds = 5): Promise<readonly Row[]> {
  const place = mkdtempSync(join(tmpdir(), "variorum-read-"));
  try {
    const script = await built(place);
    const files = corpusOf({ records, seed: 7 });
    const whole = put(join(place, "whole"), files);
    const bare = put(join(place, "bare"), withoutBibliography(files));
    const once = (way: string, folder: string): number => {
      const env = { ...process.env, XDG_CACHE_HOME: join(place, "cache") };
      const said = execFileSync(process.execPath, [script, way, folder], { env, encoding: "utf8" });
      return (JSON.parse(said) as { readonly ms: number }).ms;
    };
    for (const folder of [whole, bare]) once("keep", folder);
    const times = Array.from({ length: rounds }, () => ({
      cold: once("cold", bare),
      peer: once("peer", bare),
      kept: once("kept", bare),
      again: once("again", bare),
      coldWhole: once("cold", whole),
      keptWhole: once("kept", whole),
    }));
    const of = (way: keyof (typeof times)[number]): number => median(times.map((one) => one[way]));
    const row = (goal: string, what: string, ours: number, peer: number, goalRatio: number): Row => ({
      goal,
      what,
      ours,
      peer,
      ratio: ours / peer,
      goalRatio,
      unit: "ms",
    });
    const sources = files.filter(({ path }) => path.endsWith(".bib")).length;
    return [
      row("4", `cold read of ${files.length - sources} files, places and all`, of("cold"), of("peer"), 1.5),
      row("5", "the same unchanged, by the program that has it open", of("again"), of("cold"), 0.1),
      row("5", "the same unchanged, by a new process", of("kept"), of("cold"), 0.1),
      row("5", "the same with its bibliography, by a new process", of("keptWhole"), of("coldWhole"), 0.1),
    ];
  } finally {
    rmSync(place, { recursive: true, force: true });
  }
}

/** What a process runs once, as the product is built: in one file for Node. */
async function built(place: string): Promise<string> {
  const outDir = join(place, "built");
  await build({
    configFile: false,
    root: fileURLToPath(new URL("../..", import.meta.url)),
    logLevel: "silent",
    resolve: { alias: withoutNetwork },
    ssr: { noExternal: true },
    build: {
      ssr: fileURLToPath(new URL("read-once.ts", import.meta.url)),
      outDir,
      emptyOutDir: true,
      target: "node20",
      rolldownOptions: { output: { entryFileNames: "[name].mjs" } },
    },
  });
  return join(outDir, "read-once.mjs");
}

function put(folder: string, files: readonly SourceFile[]): string {
  for (const { path, text } of files) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

function withoutBibliography(files: readonly SourceFile[]): readonly SourceFile[] {
  return files
    .filter(({ path }) => !path.endsWith(".bib"))
    .map((file) =>
      file.path === "corpus.yaml" ? { ...file, text: file.text.replace(/^bibliography:.*\n/mu, "") } : file,
    );
}
