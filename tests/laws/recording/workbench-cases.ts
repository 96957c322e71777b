import fc from "fast-check";
import { fileURLToPath } from "node:url";
import { plugins } from "../../../plugins/index.ts";
import type { Lens, Memo, SourceFile } from "../../../src/build.ts";
import { compute } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import type { Plugin } from "../../../src/plugin.ts";
import type { Written, WrittenMap } from "../../../src/read/edit/written.ts";
import { draftOf, emptyDraft } from "../../../src/show/desk/workbench/draft/draft.ts";
import type { Draft } from "../../../src/show/desk/workbench/draft/draft.ts";
import { workbenchPage } from "../../../src/show/desk/workbench/page.ts";
import type { Asked, WorkbenchPage } from "../../../src/show/desk/workbench/page.ts";
import { rememberedTrials } from "../../../src/show/desk/workbench/trial.ts";
import type { Corpus, Trial } from "../../../src/show/desk/workbench/trial.ts";
import { readUnder } from "../linking/supposed-model.ts";

/** The demo's files. */
export const demo: readonly SourceFile[] = readCorpusFolder(
  fileURLToPath(new URL("../../../demo-corpus", import.meta.url)),
);

/** A workbench over some files: pages of drafts, and what was tried for them. */
export function benchOver(
  files: readonly SourceFile[],
  given: readonly Plugin[] = plugins,
  lens: Lens = {},
  memo: Memo = emptyMemo(),
) {
  const { model, findings } = readUnder(files, given, memo, lens);
  const corpus: Corpus = { files, read: memo.read, compute: memo.compute, plugins: given, lens };
  const trial = rememberedTrials();
  const asked: Asked = { of: null, draft: null, typing: null };
  const tried: Trial[] = [];
  const needed: string[] = [];
  const page = (ask: Partial<Asked>): WorkbenchPage =>
    workbenchPage(
      {
        model,
        findings,
        corpus,
        trial: (...of) => {
          const one = trial(...of);
          if (one) tried.push(one);
          return one;
        },
        need: (runs) => {
          for (const run of runs) needed.push(run.key);
          for (const run of runs)
            if (computing.on)
              memo.compute.set(
                run.key,
                compute(run, given, () => undefined),
              );
        },
      },
      { ...asked, ...ask },
    );
  const computing = { on: true };
  /** The page once all it needs was computed. */
  const whole = (ask: Partial<Asked>): WorkbenchPage => {
    for (let before = -1; before !== needed.length;) {
      before = memo.compute.size;
      const one = page(ask);
      if (memo.compute.size === before) return one;
    }
    return page(ask);
  };
  return { model, page, whole, tried, needed, computing };
}

/** A draft of a new derivation with these fields. */
export const draftWith = (values: WrittenMap): Draft => ({ ...emptyDraft, values });

/** A draft of a change to a derivation that said this. */
export const changeOf = (id: string, recorded: WrittenMap): Draft => draftOf(id, recorded, null);

const some = <T>(all: readonly T[]): fc.Arbitrary<readonly T[]> => fc.subarray([...all]);
const oneOrSeveral = (all: readonly string[]): fc.Arbitrary<Written> =>
  some(all).map((chosen): Written => (chosen.length === 1 ? (chosen[0] ?? "") : chosen));

/** Selections of measurements of the demo, as they may be typed, with fields still empty among them. */
export const selections: fc.Arbitrary<WrittenMap> = fc
  .record(
    {
      of: oneOrSeveral(["ring-a", "ring-b", "coombe-row", "ring-a/post-07", "ring-b/post-02"]),
      dimension: fc.constantFrom("gap", "radius", "post-hole depth", "Pfostenabstand", "diameter", ""),
      parts: fc.constantFrom("false", "true", ""),
      basis: oneOrSeveral(["autopsy", "drawing", "report"]),
      state: oneOrSeveral(["complete", "preserved", "reconstructed"]),
      from: oneOrSeveral(["marrack-1999", "ferrant-1937", "costa-1974"]),
      by: oneOrSeveral(["oyelaran", "ferrant"]),
      prefer: some(["marrack-1999", "ferrant-1937", "brandt-1962"]),
      without: some(["gap-broken-west", "costa-depth-06"]),
    },
    { requiredKeys: [] },
  )
  .map((fields): WrittenMap => ({ ...fields }));
