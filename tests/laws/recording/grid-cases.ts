import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import type { Model, SourceFile } from "../../../src/build.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { prepared } from "../../../src/link/edit/prepare.ts";
import type { GridDraft } from "../../../src/show/desk/grid/draft.ts";
import { stepFor } from "../../../src/show/desk/grid/saving.ts";
import type { GridStep } from "../../../src/show/desk/grid/saving.ts";
import { rowsWeighed } from "../../../src/show/desk/grid/weighed.ts";
import type { RowWeighed } from "../../../src/show/desk/grid/weighed.ts";

/** Three bowls in a store and what two reports say of them, invented; one bowl, one report and one number are withheld. */
export const bowls: readonly SourceFile[] = [
  {
    path: "corpus.yaml",
    text: `title: Bowls of the Sallow Row
language: en
bibliography: [sources.bib]
withhold: [hidden-bowl, sealed-1950, hidden-number]
dimensions:
  rim diameter: { kind: length, also: [Randdurchmesser] }
`,
  },
  {
    path: "sources.bib",
    text: `@book{hale-1990, author = {Hale, Ada}, title = {The Row}, year = 1990}
@book{reed-2001, author = {Reed, Mal}, title = {The Row Again}, year = 2001}
@book{sealed-1950, author = {Under, Seal}, title = {Umbrabook}, year = 1950}
`,
  },
  {
    path: "bowls.yaml",
    text: `artefacts:
  - { id: bowl-1, name: The red bowl, numbers: { inventory: SR-17, excavation: 88/4 } }
  - { id: bowl-2, name: The grey bowl, numbers: { inventory: SR-18 } }
  - { id: bowl-3, name: The grey bowl, numbers: { inventory: SR-19 } }
  - { id: hidden-bowl, name: Umbrabowl, numbers: { inventory: SR-99 } }
derivations:
  - { id: rims, plugin: unit-fit, text: The rims, inputs: { values: { of: [bowl-1, bowl-2, bowl-3], dimension: rim diameter } }, parameters: { unit: inch } }
  - { id: hidden-number, plugin: unit-fit, text: Umbranumber, inputs: { values: { of: [bowl-1, bowl-2], dimension: rim diameter } }, parameters: { unit: inch } }
`,
  },
  {
    path: "readings/hale-1990.yaml",
    text: `source: hale-1990

measurements:
  - { of: bowl-1, dimension: rim diameter, value: 18.2 cm }
  - { of: bowl-2, dimension: rim diameter, value: 21.0 cm, basis: drawing }
  - { of: hidden-bowl, dimension: rim diameter, value: 44 cm }
`,
  },
  {
    path: "readings/sealed-1950.yaml",
    text: "source: sealed-1950\n\nmeasurements:\n  - { of: bowl-1, dimension: rim diameter, value: 44.4 cm }\n",
  },
  {
    path: "readings/reed-2001.yaml",
    text: "source: reed-2001\n\npassages:\n  - { id: reed-p3, at: p. 3 }\n",
  },
];

/** A corpus as it is read from files. */
export function modelOf(files: readonly SourceFile[]): Model {
  const { model } = build(files, plugins, emptyMemo());
  if (!model) throw new Error("The corpus of the test cannot be read");
  return model;
}

/** What the rows of a grid come to in a corpus. */
export function weighedIn(files: readonly SourceFile[], draft: GridDraft): readonly RowWeighed[] {
  const { graph } = modelOf(files);
  return rowsWeighed({ graph, files, read: new Map(), compute: new Map(), plugins }, draft);
}

/** The files with the good rows of a grid in them, and the step that wrote them. */
export function savedIn(
  files: readonly SourceFile[],
  draft: GridDraft,
): { readonly files: readonly SourceFile[]; readonly step: GridStep } {
  const { graph } = modelOf(files);
  const step = stepFor(graph, draft, weighedIn(files, draft));
  if (!step) throw new Error("No row of the test can be saved");
  const texts = new Map(files.map((one) => [one.path, one.text]));
  const done = prepared({ graph, files: texts }, step.action);
  if (!("changes" in done)) throw new Error("The rows of the test cannot be written");
  for (const { file, edits } of done.changes) texts.set(file, edited(texts.get(file) ?? "", edits));
  return { files: [...texts].map(([path, text]) => ({ path, text })), step };
}
