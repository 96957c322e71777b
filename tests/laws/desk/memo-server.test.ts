import { mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { memoStoreIn } from "../../../src/host/memo-store.ts";
import { serve } from "../../../src/server/serve.ts";
import type { Served } from "../../../src/server/serve.ts";

const key = (letter: string): string => letter.repeat(64);
const outcome = (p: number) => ({
  status: "computed",
  numbers: { p: { value: p, low: null, high: null } },
  leftOut: [],
  warnings: [],
  data: { curve: [p] },
});

let place = "";
let served: Served;
const begin = (): Promise<Served> => serve(place, { memo: memoStoreIn(join(place, ".memo.json")) });
beforeEach(async () => {
  place = mkdtempSync(join(tmpdir(), "variorum-memo-server-"));
  writeFileSync(join(place, "corpus.yaml"), "format: 1\ntitle: Rings\n");
  served = await begin();
});
afterEach(async () => {
  await served.close();
  rmSync(place, { recursive: true, force: true });
});

function ask(method: string, body?: unknown, token?: string): Promise<Response> {
  const { origin, hash } = new URL(served.url);
  const headers = { "x-variorum-token": token ?? hash.replace("#token=", "") };
  const sent = body === undefined ? {} : { body: typeof body === "string" ? body : JSON.stringify(body) };
  return fetch(`${origin}/corpus/memo`, { method, headers, ...sent });
}
const kept = async (): Promise<unknown> =>
  ((await (await ask("GET")).json()) as { compute: unknown }).compute;

test("what one opening computed is there at the next, with what was there before", async () => {
  expect(await kept()).toEqual({});
  await ask("POST", { version: 1, compute: { [key("a")]: outcome(0.1) } });
  await ask("POST", { version: 1, compute: { [key("b")]: outcome(0.2) } });
  await served.close();
  served = await begin();
  expect(await kept()).toEqual({ [key("a")]: outcome(0.1), [key("b")]: outcome(0.2) });
});

test.skipIf(process.platform === "win32")("what is kept is for its owner alone", async () => {
  await ask("POST", { version: 1, compute: { [key("a")]: outcome(0.1) } });
  expect(statSync(join(place, ".memo.json")).mode & 0o777).toBe(0o600);
});

test("what is no memo changes nothing, and nobody gets at it without the token", async () => {
  await ask("POST", { version: 1, compute: { [key("a")]: outcome(0.1) } });
  for (const body of [
    "",
    "{",
    '{"version":2}',
    { version: 1, compute: { "../x": outcome(1), [key("c")]: {} } },
  ])
    expect((await ask("POST", body)).status).toBe(204);
  expect(await kept()).toEqual({ [key("a")]: outcome(0.1) });
  expect((await ask("GET", undefined, "x")).status).toBe(403);
  expect((await ask("POST", { version: 1, compute: { [key("d")]: outcome(1) } }, "x")).status).toBe(403);
  expect(await kept()).toEqual({ [key("a")]: outcome(0.1) });
});
