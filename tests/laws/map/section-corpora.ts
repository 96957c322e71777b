import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import type { Lens, Memo, Model, SourceFile } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import type { Plugin } from "../../../src/plugin.ts";
import type { MapView, Section } from "../../../src/show/map/scene.ts";
import { sectionOf } from "../../../src/show/map/section/section.ts";

/** A model of some files in which no number is computed unless the memo has it: structure asks for none. */
export function modelOf(
  files: readonly SourceFile[],
  used: readonly Plugin[] = plugins,
  lens: Lens = {},
  memo: Memo = emptyMemo(),
): Model {
  const { model } = build(files, used, memo, lens);
  if (!model) throw new Error("the corpus cannot be read");
  return model;
}

/** The demo's files. */
export const demoFiles = readCorpusFolder(fileURLToPath(new URL("../../../demo-corpus", import.meta.url)));

const rules = fileURLToPath(new URL("../../corpora/rules", import.meta.url));

/** Every example of a rule that can be read, with its name. */
export function ruleCorpora(): readonly (readonly [name: string, model: Model])[] {
  return readdirSync(rules).flatMap((rule) =>
    ["fires", "near-twin"].flatMap((twin) => {
      const { model } = build(readCorpusFolder(`${rules}/${rule}/${twin}`), plugins, emptyMemo());
      return model ? [[`${rule}/${twin}`, model] as const] : [];
    }),
  );
}

/** A view of everything at once, changed as told. */
export function viewOf(changes: Partial<MapView> = {}): MapView {
  return { question: null, unfolded: [], focus: null, only: false, narrow: false, ...changes };
}

/** A section with everything unfolded, however often a fold opens on another. */
export function unfoldedWhole(model: Model, view: MapView): Section {
  let open: readonly string[] = view.unfolded;
  for (;;) {
    const section = sectionOf(model, { ...view, unfolded: open });
    const next = new Set([
      ...open,
      ...section.boxes.filter((box) => box.folded !== null).map((box) => box.id),
    ]);
    if (next.size === open.length) return section;
    open = [...next];
  }
}

/** What a section says of places and lines, without any words. */
export function shapeOf({ boxes, lines, attacks, rivals, conflicts }: Section): string {
  const shapes = boxes.map(({ id, records, band, row, width, height, ports }) => ({
    id,
    records,
    band,
    row,
    width,
    height,
    ports,
  }));
  return JSON.stringify([shapes, lines, attacks, rivals, conflicts]);
}
