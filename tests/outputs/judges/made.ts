import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { plugins } from "../../../plugins/index.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { computingHere, evaluate } from "../../../src/host/evaluate.ts";
import { placeFiles, placedBelow } from "../../../src/host/telling/files/place.ts";
import type { Asked, Told } from "../../../src/host/telling/kind.ts";
import { kinds } from "../../../src/host/telling/kinds.ts";
import { demoFolder, demoMemo } from "../../demo-memo.ts";

/** Everything that was made of the demo corpus, in a folder: one below it for each kind. */
export interface AllMade {
  readonly folder: string;
  readonly told: Told;
  /** The paths of all files below the folder, in the order in which they were made. */
  readonly paths: readonly string[];
}

/** The examination that is applied for, and the one that is visited for. */
export const [examined, visited] = ["look-at-the-casts", "measure-the-1937-film"] as const;

/** What each kind is asked for, by the name of what is made; a kind that is not here is asked for as it is. */
const asked: Readonly<Record<string, Readonly<Record<string, Asked>>>> = {
  application: {
    application: { examination: examined },
    // In a style of notes.
    "application-noted": { examination: examined, style: "modern-humanities-research-association" },
  },
  visit: { visit: { examination: visited, "with-values": true } },
  slides: { slides: {}, "slides-4-3": { shape: "4:3" } },
  figures: {
    figures: {
      of: ["ring-unit", "ring-a/post-07+ring-a/post-08", "map:what-was-it", "plan-1998"],
      width: "170",
      dpi: "300",
    },
  },
};

/** Makes each kind in each of its formats of the demo corpus, once, into a new folder. */
export async function allMade(): Promise<AllMade> {
  const folder = mkdtempSync(join(tmpdir(), "judged-"));
  const told = await demoTold();
  const paths: string[] = [];
  for (const [kind, load] of Object.entries(kinds)) {
    const { formats, make } = await load();
    for (const [name, options] of Object.entries(asked[kind] ?? { [kind]: {} }))
      for (const format of formats) {
        const made = await make(told, format, name, options);
        if ("refused" in made) throw new Error(`${name}.${format}: ${inEnglish(made.refused)}`);
        const failed = placeFiles(placedBelow(join(folder, kind), made));
        if (failed !== null) throw new Error(failed);
        paths.push(...made.map(({ path }) => `${kind}/${path}`));
      }
  }
  return { folder, told, paths: [...new Set(paths)] };
}

async function demoTold(): Promise<Told> {
  const files = readCorpusFolder(demoFolder);
  const memo = await demoMemo();
  const under: Told["under"] = (lens, reach = {}) =>
    evaluate(files, plugins, memo, computingHere(plugins), { lens, reach });
  const { model, findings } = await under({}, { plan: true, history: true });
  if (!model) throw new Error("no model of the demo corpus");
  return { folder: demoFolder, files, model, findings, plugins, memo, under, today: "2026-11-26" };
}
