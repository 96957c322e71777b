import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build, compute } from "../../../src/build.ts";
import type { Checked, Lens, Memo, Model, SourceFile } from "../../../src/build.ts";
import type { Plugin } from "../../../src/plugin.ts";

/** A corpus that could be read, with what there is to say about it. */
export type Read = Checked<Model> & { readonly model: Model };

/** Files under a lens with the numbers of their derivations; what rules would try besides is not computed. */
export function readUnder(
  files: readonly SourceFile[],
  plugins: readonly Plugin[],
  memo: Memo,
  lens: Lens = {},
): Read {
  for (;;) {
    const { model, findings } = build(files, plugins, memo, lens);
    if (!model) throw new Error(findings.map((one) => inEnglish(one.message)).join("\n"));
    const { missing } = model.derivations;
    if (missing.length === 0) return { model, findings };
    for (const run of missing)
      memo.compute.set(
        run.key,
        compute(run, plugins, () => undefined),
      );
  }
}

/** One more file of a corpus, of these lists; JSON is YAML. */
export const moreOf = (lists: object): SourceFile => ({ path: "more.yaml", text: JSON.stringify(lists) });
