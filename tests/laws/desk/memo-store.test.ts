import { chmodSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { compute, groundOf, stand } from "../../../src/build.ts";
import type { Outcome } from "../../../src/derive/run.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { memoStoreFor, memoStoreIn, memoStoreWithLosses, together } from "../../../src/host/memo-store.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";

const key = (letter: string): string => letter.repeat(64);
const outcome = (p: number): Outcome => ({
  status: "computed",
  numbers: { p: { value: p, low: null, high: null } },
  leftOut: [],
  warnings: [],
  data: { curve: [p, p] },
});
const bare = (p: number): Outcome => ({
  status: "computed",
  numbers: { p: { value: p, low: null, high: null } },
  leftOut: [],
  warnings: [],
  data: {},
  bare: true,
});
const refusal: Outcome = { status: "refused", reason: "too-few", why: "Two values, expected three." };

let cache = "";
beforeEach(() => {
  cache = mkdtempSync(join(tmpdir(), "variorum-cache-"));
  vi.stubEnv("XDG_CACHE_HOME", cache);
});
afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(cache, { recursive: true });
});

test("keeps outcomes whole, and the numbers alone that only losses ask for apart", () => {
  const [all, losses] = [memoStoreFor("corpus"), memoStoreWithLosses("corpus")];
  losses.save(
    new Map([
      [key("a"), outcome(0.1)],
      [key("b"), bare(0.2)],
      [key("c"), refusal],
    ]),
  );
  expect([...all.load()]).toEqual([[key("a"), outcome(0.1)]]);
  expect(memoStoreWithLosses("corpus").load()).toEqual(
    new Map([
      [key("a"), outcome(0.1)],
      [key("b"), bare(0.2)],
      [key("c"), refusal],
    ]),
  );
  expect([...memoStoreFor("another").load()]).toEqual([]);
});

test("numbers alone take the place of no outcome that is whole, on whichever shelf they are", () => {
  const all = memoStoreFor("corpus");
  memoStoreWithLosses("corpus").save(new Map([[key("a"), bare(0.1)]]));
  all.save(new Map([[key("a"), outcome(0.1)]]));
  expect([...memoStoreWithLosses("corpus").load()]).toEqual([[key("a"), outcome(0.1)]]);
  memoStoreWithLosses("corpus").save(new Map([[key("a"), bare(0.1)]]));
  expect([...all.load()]).toEqual([[key("a"), outcome(0.1)]]);
  all.save(new Map([[key("b"), bare(0.2)]]));
  memoStoreWithLosses("corpus").save(new Map([[key("b"), outcome(0.2)]]));
  expect([...all.load()]).toEqual([[key("b"), outcome(0.2)]]);
});

test("after a question about losses every number of the corpus is kept whole, where any other question finds it", async () => {
  const files = corpusOf({ records: 200, seed: 12 });
  const store = memoStoreWithLosses("corpus");
  const memo = emptyMemo(store.load());
  await evaluate(files, plugins, memo, computingHere(plugins), { reach: { allRestsOn: true } });
  store.save(memo.compute);
  const ground = groundOf(files, new Map(), undefined);
  if (!("graph" in ground)) throw new Error("the made corpus cannot be read");
  const kept = memoStoreFor("corpus").load();
  expect(kept.size).toBeGreaterThan(0);
  expect(kept.size).toBeLessThan(memo.compute.size);
  const asked = stand(ground, plugins, new Map(), {}).derivations.missing;
  const whole = asked.filter(({ key: one }) => memo.compute.get(one)?.status === "computed");
  expect(whole.length).toBeGreaterThan(0);
  for (const run of whole) expect(kept.get(run.key)).toEqual(compute(run, plugins, () => undefined));
});

test("what an earlier version let others read is its owner's alone once it was read", () => {
  const store = memoStoreFor("corpus");
  store.save(new Map([[key("a"), outcome(0.1)]]));
  const [file = ""] = readdirSync(join(cache, "variorum"));
  const path = join(cache, "variorum", file);
  chmodSync(path, 0o644);
  expect([...store.load()]).toEqual([[key("a"), outcome(0.1)]]);
  if (process.platform !== "win32") expect(statSync(path).mode & 0o777).toBe(0o600);
});

test("what is no memo of this version is as if there were none", () => {
  const store = memoStoreFor("corpus");
  store.save(new Map([[key("a"), outcome(0.1)]]));
  const folder = join(cache, "variorum");
  const [file = ""] = readdirSync(folder);
  for (const text of ["", "[]", '{"version":2,"compute":{}}', '{"version":1,"compute":{"x":{}}}']) {
    writeFileSync(join(folder, file), text);
    expect([...store.load()]).toEqual([]);
  }
});

test("where outcomes are more than can be kept, those kept longest go first", () => {
  const file = join(cache, "memo.json");
  const store = memoStoreIn(file, { most: 1000 });
  const keys = [..."0123456789abcdef"].map(key);
  const all = new Map(keys.map((one, at) => [one, outcome(at)]));
  store.save(all);
  const kept = [...store.load()];
  expect(kept).toEqual([...all].slice(-kept.length));
  expect(kept.length).toBeGreaterThan(0);
  expect(kept.length).toBeLessThan(keys.length);
  const table = JSON.stringify(Object.fromEntries(kept));
  expect(table.length).toBeLessThanOrEqual(1000);
  // One more would have been too many, and what is computed again is the latest.
  const [, next = key("0")] = [...keys].reverse().slice(kept.length - 1);
  expect(table.length + JSON.stringify([next, all.get(next)]).length).toBeGreaterThan(1000);
  store.save(together(store.load(), new Map([[key("0"), outcome(0)]])));
  expect([...store.load().keys()].at(-1)).toBe(key("0"));
});

test("an outcome that is too large by itself takes no other's room", () => {
  const store = memoStoreIn(join(cache, "memo.json"), { most: 1000 });
  const large: Outcome = { status: "refused", reason: "too-few", why: "Two values. ".repeat(100) };
  const small = new Map([
    [key("a"), outcome(0.1)],
    [key("b"), outcome(0.2)],
  ]);
  store.save(new Map([...small, [key("c"), large]]));
  expect(store.load()).toEqual(small);
});
