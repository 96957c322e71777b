import { build, compute } from "../../src/build.ts";
import type { Model, SourceFile } from "../../src/build.ts";
import { emptyMemo } from "../../src/host/evaluate.ts";
import { casePlugins } from "./random-corpus.ts";

/** The model of files, every number computed. */
export function modelOf(files: readonly SourceFile[]): Model {
  const memo = emptyMemo();
  for (;;) {
    const { model } = build(files, casePlugins, memo);
    if (!model) throw new Error("no model");
    if (model.missing.length === 0) return model;
    for (const run of model.missing)
      memo.compute.set(
        run.key,
        compute(run, casePlugins, () => undefined),
      );
  }
}
