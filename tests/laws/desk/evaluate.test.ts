import { expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { build, compute, groundOf, stand } from "../../../src/build.ts";
import type { Checked, Memo, Model, Run, SourceFile } from "../../../src/build.ts";
import { progressLine } from "../../../src/cli/evaluated.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";

const files = corpusOf({ records: 200, seed: 12 });

/** Everything built anew after every round of computing, whole runs alone. */
function builtAgain(from: readonly SourceFile[], memo: Memo): Checked<Model> {
  for (;;) {
    const checked = build(from, plugins, memo);
    const missing = checked.model?.missing ?? [];
    if (missing.length === 0) return checked;
    for (const { bare: _, ...run } of missing)
      memo.compute.set(
        run.key,
        compute(run, plugins, () => undefined),
      );
  }
}

function told({ model, findings }: Checked<Model>): unknown {
  return {
    findings,
    restsOn: [...(model?.restsOn ?? [])],
    standings: [...(model?.judgement.standings ?? [])],
    numbers: [...(model?.derivations.byId ?? [])],
  };
}

test("worked out part by part, a corpus says what it says when all is built anew after each computing", async () => {
  const inParts = await evaluate(files, plugins, emptyMemo(), computingHere(plugins));
  expect(inParts.model?.missing).toEqual([]);
  expect(told(inParts)).toEqual(told(builtAgain(files, emptyMemo())));
});

test("a run of which only numbers are asked gives the same numbers, and leaves out the same", () => {
  const ground = groundOf(files, new Map(), undefined);
  if (!("graph" in ground)) throw new Error("the made corpus cannot be read");
  const { missing } = stand(ground, plugins, new Map(), {}).derivations;
  expect(missing.length).toBeGreaterThan(2);
  for (const run of missing) {
    const whole = compute(run, plugins, () => undefined);
    const bare = compute({ ...run, bare: true }, plugins, () => undefined);
    if (whole.status !== "computed" || bare.status !== "computed") {
      expect(bare).toEqual(whole);
      continue;
    }
    expect([bare.numbers, bare.leftOut]).toEqual([whole.numbers, whole.leftOut]);
    expect(Object.values(bare.data ?? {}).filter((one) => typeof one === "object")).toEqual([]);
    expect(JSON.stringify(bare).length).toBeLessThan(JSON.stringify(whole).length / 4);
  }
});

test("numbers alone are not taken for a number that is shown: it is computed whole", async () => {
  const ground = groundOf(files, new Map(), undefined);
  if (!("graph" in ground)) throw new Error("the made corpus cannot be read");
  const { missing } = stand(ground, plugins, new Map(), {}).derivations;
  const bare = missing.map((run): Run => ({ ...run, bare: true }));
  const outcomes = await computingHere(plugins)(bare, () => undefined);
  const memo = new Map(outcomes);
  expect(stand(ground, plugins, memo, {}).derivations.missing.map(({ key }) => key)).toEqual(
    missing.filter(({ key }) => outcomes.get(key)?.status === "computed").map(({ key }) => key),
  );
});

test("a long run says how far it is: in reading, in computing, and in what rules look through", async () => {
  const some = corpusOf({ records: 1600, seed: 2 });
  const said: string[] = [];
  const lens = { asOf: 1700 };
  const progress = (text: string): void => void said.push(text);
  await evaluate(some, plugins, emptyMemo(), computingHere(plugins), { progress, lens });
  expect(said.slice(0, 2)).toEqual([
    `Reading 0 of ${some.length} files`,
    `Reading 200 of ${some.length} files`,
  ]);
  expect(said.at(-1)).toMatch(/^Looking through (\d+) of \1 rules$/);

  said.length = 0;
  await evaluate(files, plugins, emptyMemo(), computingHere(plugins), { progress });
  const computed = said.filter((one) => one.startsWith("Computing"));
  expect(computed[0]).toMatch(/^Computing 1 of \d+ numbers?$/);
  expect(computed.at(-1)).toMatch(/^Computing ([\d,]+) of \1 numbers$/);
});

test("on a screen progress is one line that is written over; elsewhere a line now and then, and none of a short run", () => {
  const clock = { now: 0 };
  const watched = (
    isTTY: boolean,
  ): { readonly written: string[]; readonly line: ReturnType<typeof progressLine> } => {
    clock.now = 0;
    const written: string[] = [];
    const write = (text: string): void => void written.push(text);
    return { written, line: progressLine({ isTTY, write, now: () => clock.now }) };
  };
  const at = (line: ReturnType<typeof progressLine>, ms: number): void => {
    clock.now = ms;
    line.tell(`at ${ms}`);
  };
  const screen = watched(true);
  for (const ms of [0, 499, 500, 520, 579, 580]) at(screen.line, ms);
  screen.line.end();
  expect(screen.written).toEqual(["\r\u001b[2Kat 500", "\r\u001b[2Kat 580", "\r\u001b[2K"]);

  const log = watched(false);
  for (const ms of [0, 29_999, 30_000, 32_000, 60_000]) at(log.line, ms);
  log.line.end();
  expect(log.written).toEqual(["at 30000\n", "at 60000\n"]);

  const short = watched(true);
  at(short.line, 400);
  short.line.end();
  expect(short.written).toEqual([]);
});
