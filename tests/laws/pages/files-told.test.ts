import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { Hono } from "hono";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { filesIn, headOf, inLines } from "../../../src/app/model/lines.ts";
import { memoStoreIn } from "../../../src/host/memo-store.ts";
import type { SourceFile } from "../../../src/read/source-file.ts";
import { filesRoutes } from "../../../src/server/files.ts";
import type { Head } from "../../../src/server/files.ts";
import { readingOf } from "../../../src/server/reading.ts";
import { serve } from "../../../src/server/serve.ts";
import type { Served } from "../../../src/server/serve.ts";
import { firstOf } from "../../../src/show/pages/incipit/first.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";

let place = "";
let served: Served;
const files = corpusOf({ records: 150, seed: 2 });

beforeEach(async () => {
  place = mkdtempSync(join(tmpdir(), "variorum-files-told-"));
  for (const { path, text } of files) {
    mkdirSync(dirname(join(place, "corpus", path)), { recursive: true });
    writeFileSync(join(place, "corpus", path), text);
  }
  const memo = memoStoreIn(join(place, "memo.json"));
  memo.save(new Map(["a", "b"].map((key) => [key.repeat(64), { status: "refused", reason: key, why: key }])));
  served = await serve(join(place, "corpus"), { memo });
});
afterEach(async () => {
  await served.close();
  rmSync(place, { recursive: true, force: true });
});

function ask(path: string, init: RequestInit = {}): Promise<Response> {
  const { origin, hash } = new URL(served.url);
  return fetch(`${origin}/corpus/${path}`, {
    ...init,
    headers: { "x-variorum-token": hash.replace("#token=", "") },
  });
}

async function inPieces(query: string): Promise<readonly [Head, readonly SourceFile[]]> {
  const answer = await ask(`files?in=lines${query}`);
  expect(answer.headers.get("content-type")).toBe(inLines);
  const [head, rest] = await headOf<Head>(answer);
  return [head, await filesIn(rest)];
}

const paths = (some: readonly SourceFile[]): readonly string[] => some.map(({ path }) => path);

test("files in lines are the files of the one document, those with the questions first", async () => {
  const [head, told] = await inPieces("");
  const whole = (await (await ask("files")).json()) as Head & { readonly files: readonly SourceFile[] };
  expect(told.toSorted((a, b) => (a.path < b.path ? -1 : 1))).toEqual(whole.files);
  expect(paths(told.slice(0, head.first))).toEqual(paths(firstOf(files).first));
  expect([head.version, head.whole, head.count]).toEqual([whole.version, true, files.length]);
  expect(head.size).toBe(files.reduce((sum, { text }) => sum + text.length, 0));
});

test("who has some files is told in lines what changed on the disk, and nothing else", async () => {
  const [{ version }] = await inPieces("");
  writeFileSync(join(place, "corpus", "searches.yaml"), "searches: []\n");
  const [head, told] = await inPieces(`&have=${version}`);
  expect([head.whole, head.count, paths(told)]).toEqual([false, 1, ["searches.yaml"]]);
});

test("what was changed before anybody asked is told behind the first answer at the latest", async () => {
  writeFileSync(join(place, "corpus", "searches.yaml"), "searches: []\n");
  const [{ version }, told] = await inPieces("");
  const known = told.find(({ path }) => path === "searches.yaml")?.text;
  await expect
    .poll(async () => {
      const [, later] = await inPieces(`&have=${version}`);
      return later.find(({ path }) => path === "searches.yaml")?.text ?? known;
    })
    .toBe("searches: []\n");
});

test("the folder is looked at again behind the first answer, not before every later change of it is seen", async () => {
  const folder = join(place, "corpus");
  const reading = readingOf(folder, "session");
  reading.again();
  let begin = (): void => undefined;
  const begun = new Promise<void>((resolve) => (begin = resolve));
  let changes = 0;
  const hono = new Hono();
  const beside = {
    desk: () => ({ readOnly: null, undo: null, redo: null }),
    guests: () => Promise.resolve([]),
  };
  filesRoutes(hono, reading, beside, { changed: () => (changes += 1), begun });
  vi.useFakeTimers({ toFake: ["setTimeout"] });
  try {
    await (await hono.request("/corpus/files?in=lines")).text();
    vi.advanceTimersByTime(60_000);
    writeFileSync(join(folder, "searches.yaml"), "searches: []\n");
    begin();
    await begun;
    expect(changes).toBe(1);
  } finally {
    vi.useRealTimers();
  }
});

test("of what was computed before, those outcomes are told that are asked for and kept", async () => {
  const keys = ["b", "c"].map((key) => key.repeat(64));
  const answer = await ask("memo/of", { method: "POST", body: JSON.stringify(keys) });
  const { compute } = (await answer.json()) as { readonly compute: Readonly<Record<string, unknown>> };
  expect(Object.entries(compute)).toEqual([["b".repeat(64), { status: "refused", reason: "b", why: "b" }]]);
  for (const body of ["no json", '{"a":1}', "[1,null]"])
    expect(await (await ask("memo/of", { method: "POST", body })).json()).toEqual({
      version: 1,
      compute: {},
    });
});
