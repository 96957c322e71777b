import { plugins } from "../../../plugins/index.ts";
import type { Finding, Span } from "../../../src/base/finding.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build, compute } from "../../../src/build.ts";
import type { Checked, Memo, Model, Run, SourceFile } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { reportSchema } from "../../../src/show/report/schema.ts";

/** What is wrong with what the program makes of an input; none where nothing is. */
export type Faults = readonly string[];

/** Numbers that are computed of one input: the others stay missing, as while somebody waits for them. */
const mostRuns = 3;

/** Longest text that is done a second thing with. */
const short = 200_000;

/**
 * Reads, links, derives, judges and tells a corpus: every place and edit of a finding lies in its file, the report is one
 * of the shipped shape, the order of the files bears on nothing, and a fix leaves a corpus that can be read.
 */
export function corpusFaults(files: readonly SourceFile[], place: number): Faults {
  const faults: string[] = [];
  const memo = emptyMemo();
  const { report, checked } = told(files, memo);
  const texts = new Map(files.map(({ path, text }) => [path, text]));
  for (const one of checked.findings) faults.push(...outside(one, texts));
  const long = files.reduce((sum, { text }) => sum + text.length, 0);
  if (long > short) return faults;
  if (place % 4 === 0 && !reportSchema.safeParse(JSON.parse(report)).success)
    faults.push("the report is not of the shipped shape");
  const again = files.map((file) => ({ ...file })).reverse();
  if (told(again, place % 2 === 0 ? memo : { ...emptyMemo(), compute: memo.compute }).report !== report)
    faults.push("read once more, in another order, it comes to another report");
  const fixable = checked.findings.filter(({ fix }) => fix !== null);
  const fix = fixable[place % Math.max(1, fixable.length)]?.fix;
  if (fix && faults.length === 0 && place % 3 === 0) {
    const mended = files.map((file) => {
      const edits = fix.edits.filter((edit) => edit.file === file.path);
      return edits.length === 0 ? file : { ...file, text: edited(file.text, edits) };
    });
    told(mended, emptyMemo());
  }
  return faults;
}

/** The report of a corpus, with some of its numbers computed. */
function told(
  files: readonly SourceFile[],
  memo: Memo,
): { readonly report: string; readonly checked: Checked<Model> } {
  let checked = build(files, plugins, memo);
  const runs = checked.model?.missing.filter(isShort).slice(0, mostRuns) ?? [];
  for (const run of runs)
    memo.compute.set(
      run.key,
      compute(run, plugins, () => undefined),
    );
  if (runs.length > 0) checked = build(files, plugins, memo);
  const texts = new Map(files.map(({ path, text }) => [path, text]));
  return { report: JSON.stringify(reportOf(checked.model, checked.findings, texts)), checked };
}

/** A run that is done in a moment: few things, and few draws. */
function isShort({ inputs, settings }: Run): boolean {
  const draws = settings["draws"];
  const things = Object.values(inputs).reduce(
    (sum, list) => sum + (Array.isArray(list) ? list.length : 1),
    0,
  );
  return things < 60 && (draws === undefined || Number(JSON.stringify(draws).match(/\d+/u)?.[0]) < 200);
}

/** Places and edits of a finding that lie in no file, or outside it; edits that cannot be made; what is said as no sentence. */
function outside(found: Finding, texts: ReadonlyMap<string, string>): Faults {
  const faults: string[] = [];
  const lies = ({ file, start, end }: Span): boolean => {
    const text = texts.get(file);
    return text !== undefined && 0 <= start && start <= end && end <= text.length;
  };
  const spans = [...(found.at ? [found.at] : []), ...(found.also ?? [])];
  if (!spans.every(lies)) faults.push(`${found.rule}: a place that is not in its file`);
  if (found.fix && !found.fix.edits.every(lies))
    faults.push(`${found.rule}: an edit that is not in its file`);
  else if (found.fix) {
    const { edits } = found.fix;
    for (const file of new Set(edits.map((edit) => edit.file)))
      edited(
        texts.get(file) ?? "",
        edits.filter((edit) => edit.file === file),
      );
  }
  const said = inEnglish(found.message);
  const written = [...texts.values()].reduce((sum, text) => sum + text.length, 0);
  // What somebody wrote may be named more than once in a sentence, and no more than a few times.
  if (said.length > 2000 + 4 * written)
    faults.push(`${found.rule}: a sentence longer than all that was written`);
  if (
    /\[object |undefined|function /u.test(said) &&
    ![...texts.values()].some((text) => /object|undefined|function/u.test(text))
  )
    faults.push(`${found.rule}: no sentence, but ${said.slice(0, 80)}`);
  return faults;
}
