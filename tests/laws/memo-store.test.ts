import { mkdtempSync, rmSync, writeFileSync, readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Outcome } from "../../src/derive/run.ts";
import { memoStoreFor } from "../../src/host/memo-store.ts";

const key = (letter: string): string => letter.repeat(64);
const outcome = (p: number): Outcome => ({
  status: "computed",
  numbers: { p: { value: p, low: null, high: null } },
  leftOut: [],
  warnings: [],
  data: { curve: [p, p] },
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

test("keeps outcomes whole, and those that only losses ask for apart, without what figures are drawn from", () => {
  const [all, losses] = [memoStoreFor("corpus"), memoStoreFor("corpus", "losses")];
  all.save(new Map([[key("a"), outcome(0.1)]]));
  losses.save(
    new Map<string, Outcome>([
      [key("b"), outcome(0.2)],
      [key("c"), refusal],
    ]),
  );
  expect([...all.load()]).toEqual([[key("a"), outcome(0.1)]]);
  expect([...losses.load()]).toEqual([
    [key("b"), { ...outcome(0.2), data: null }],
    [key("c"), refusal],
  ]);
  expect([...memoStoreFor("another").load()]).toEqual([]);
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
