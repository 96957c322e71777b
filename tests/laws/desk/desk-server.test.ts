import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { arabicSaid } from "../../../src/app/words/arabic/said/index.ts";
import { arabic } from "../../../src/base/text/said/arabic.ts";
import { inEnglish, inWords } from "../../../src/base/text/said/english.ts";
import type { Text } from "../../../src/base/text/said/said.ts";
import type { DeskState, Step } from "../../../src/host/desk/state.ts";
import { serve } from "../../../src/server/serve.ts";
import type { Served } from "../../../src/server/serve.ts";
import { changed } from "./desk-cases.ts";

const first = "claims:\n  - id: roofed\n    text: The ring had a roof\n";
const second = first.replace("a roof", "no roof");
let place = "";
let served: Served;

beforeEach(async () => {
  place = mkdtempSync(join(tmpdir(), "variorum-desk-server-"));
  writeFileSync(join(place, "corpus.yaml"), "format: 1\ntitle: Rings\n");
  writeFileSync(join(place, "a.yaml"), first);
  served = await serve(place);
});
afterEach(async () => {
  await served.close();
  rmSync(place, { recursive: true, force: true });
});

interface Answer {
  readonly status: number;
  readonly text: string;
  readonly json: {
    readonly desk: DeskState;
    readonly n: number;
    readonly step: string;
    readonly message: Text;
    readonly stale: readonly unknown[];
    readonly steps: readonly Step[];
    readonly drafts: readonly string[];
    readonly files: readonly { readonly path: string; readonly text: string }[];
  };
}

async function ask(
  method: string,
  path: string,
  body?: unknown,
  headers: Record<string, string> = {},
): Promise<Answer> {
  const { origin, hash } = new URL(served.url);
  const given = { "x-variorum-token": hash.replace("#token=", ""), ...headers };
  const sent = body === undefined ? {} : { body: typeof body === "string" ? body : JSON.stringify(body) };
  const answer = await fetch(`${origin}${path}`, { method, headers: given, ...sent });
  const text = await answer.text();
  const isJson = answer.headers.get("content-type")?.startsWith("application/json") ?? false;
  return { status: answer.status, text, json: isJson ? JSON.parse(text) : {} };
}

const edit = (step: string, was: string | null, is: string | null, file = "a.yaml"): Promise<Answer> =>
  ask("POST", "/corpus/edit", { step, changes: [changed(file, was, is)] });
const onDisk = (): string => readFileSync(join(place, "a.yaml"), "utf8");

test("an edit is made, undone and done again, and each answer says what can be done next", async () => {
  const none = { readOnly: null, undo: null, redo: null };
  expect((await ask("GET", "/corpus/files")).json.desk).toEqual(none);
  expect(await edit("say it", first, second)).toMatchObject({
    status: 200,
    json: { n: 1, desk: { ...none, undo: "say it" } },
  });
  expect(onDisk()).toBe(second);
  const { json } = await ask("GET", "/corpus/files");
  expect(json.desk.undo).toBe("say it");
  expect(json.files.find((one) => one.path === "a.yaml")?.text).toBe(second);
  expect((await ask("POST", "/corpus/undo")).json).toEqual({
    step: "say it",
    desk: { ...none, redo: "say it" },
  });
  expect(onDisk()).toBe(first);
  expect((await ask("POST", "/corpus/redo")).json).toEqual({
    step: "say it",
    desk: { ...none, undo: "say it" },
  });
  expect(onDisk()).toBe(second);
  expect(await ask("POST", "/corpus/redo")).toMatchObject({ status: 409, json: { stale: [] } });
});

test("a late edit is refused with what stands there, whether another window or another program was first", async () => {
  const [one, two] = await Promise.all([edit("one", first, second), edit("two", first, "claims: []\n")]);
  expect([one.status, two.status].toSorted()).toEqual([200, 409]);
  const late = one.status === 409 ? one : two;
  expect(late.json.stale).toEqual([{ file: "a.yaml", text: onDisk() }]);
  expect(inEnglish(late.json.message)).toBe(
    "`a.yaml` was changed while the corpus was read, expected it as it was: nothing was written.",
  );
  const told = inWords(late.json.message, arabic(arabicSaid, String));
  expect(told.match(/[A-Za-z][\w.]*/g)).toEqual(["a.yaml"]);
  expect(told).toMatch(/[\u0600-\u06ff]+\.$/);
  writeFileSync(join(place, "a.yaml"), "claims: [] # outside\n");
  expect(await edit("three", second, first)).toMatchObject({
    status: 409,
    json: { stale: [{ file: "a.yaml", text: "claims: [] # outside\n" }] },
  });
  expect(onDisk()).toBe("claims: [] # outside\n");
});

test("the history is told, its texts can be read, and it is stepped back in, also after a restart", async () => {
  await edit("say it", first, second);
  await edit("new file", null, "claims: []\n", "ring/b.yaml");
  await served.close();
  served = await serve(place);
  const { steps } = (await ask("GET", "/corpus/history")).json;
  expect(steps.map(({ n, step, kind }) => [n, step, kind])).toEqual([
    [1, "say it", "edit"],
    [2, "new file", "edit"],
  ]);
  expect((await ask("GET", `/corpus/text?hash=${steps[0]?.files[0]?.was}`)).text).toBe(first);
  expect((await ask("GET", `/corpus/text?hash=${"0".repeat(64)}`)).status).toBe(404);
  expect((await ask("GET", "/corpus/text?hash=../../corpus.yaml")).status).toBe(404);
  const back = await ask("POST", "/corpus/back", { n: 0 });
  expect([back.status, back.json.n]).toEqual([200, 3]);
  expect(onDisk()).toBe(first);
  expect((await ask("GET", "/corpus/files")).json.files.map((one) => one.path)).toEqual([
    "a.yaml",
    "corpus.yaml",
  ]);
  expect((await ask("POST", "/corpus/back", { n: 99 })).status).toBe(409);
});

test("drafts are kept by name", async () => {
  expect((await ask("PUT", "/corpus/drafts/new-claim", { text: "half a" })).status).toBe(204);
  expect((await ask("GET", "/corpus/drafts")).json.drafts).toEqual(["new-claim"]);
  expect((await ask("GET", "/corpus/drafts/new-claim")).text).toBe('{"text":"half a"}');
  expect((await ask("DELETE", "/corpus/drafts/new-claim")).status).toBe(204);
  expect((await ask("GET", "/corpus/drafts/new-claim")).status).toBe(404);
  expect((await ask("PUT", "/corpus/drafts/..%2fhistory", {})).status).toBe(409);
  expect((await ask("PUT", "/corpus/drafts/large", JSON.stringify("x".repeat(1024 * 1024)))).status).toBe(
    413,
  );
  expect((await ask("PUT", "/corpus/drafts/broken", "{")).status).toBe(409);
});

test("a draft that breaks off half-way leaves the one before, and is no fault of the program", async () => {
  await ask("PUT", "/corpus/drafts/new-claim", { text: "whole" });
  const told = vi.spyOn(console, "error").mockImplementation(() => undefined);
  const { hostname, port, host, hash } = new URL(served.url);
  const head = `PUT /corpus/drafts/new-claim HTTP/1.1\r\nHost: ${host}\r\nx-variorum-token: ${hash.replace("#token=", "")}\r\n`;
  for (const sent of ['Content-Length: 99\r\n\r\n{"text":', "Transfer-Encoding: chunked\r\n\r\n2\r\n{}\r\n"])
    await new Promise<void>((resolve) => {
      const line = connect(Number(port), hostname, () => line.write(head + sent));
      line.on("close", () => resolve());
      line.on("error", () => resolve());
      setTimeout(() => line.destroy(), 200);
    });
  await new Promise((resolve) => setTimeout(resolve, 200));
  const faults = told.mock.calls;
  vi.restoreAllMocks();
  expect(faults).toEqual([]);
  expect((await ask("GET", "/corpus/drafts/new-claim")).text).toBe('{"text":"whole"}');
});

test.each([
  {},
  { step: "x", changes: [] },
  { step: "", changes: [changed("a.yaml", first, second)] },
  { step: "x", changes: [{ ...changed("a.yaml", first, second), madeFor: "0" }] },
  { step: "x", changes: [changed("a.yaml", first, second), changed("a.yaml", first, second)] },
  {
    step: "x",
    changes: [{ file: "a.yaml", madeFor: null, edits: [{ file: "a.yaml", start: -1, end: 0, text: "" }] }],
  },
  "no json",
])("a body that is no edit is refused: %j", async (body) => {
  expect((await ask("POST", "/corpus/edit", body)).status).toBe(400);
  expect(onDisk()).toBe(first);
});

test("an edit beyond the end of its text, or out of the corpus, changes nothing", async () => {
  const change = changed("a.yaml", first, second);
  const far = { ...change, edits: change.edits.map((one) => ({ ...one, end: 10_000 })) };
  expect((await ask("POST", "/corpus/edit", { step: "x", changes: [far] })).status).toBe(409);
  expect((await edit("x", null, "claims: []\n", "../a.yaml")).status).toBe(409);
  expect((await edit("x", null, "alert(1)\n", "plugins/own.js")).status).toBe(409);
  expect(onDisk()).toBe(first);
  expect((await ask("GET", "/corpus/history")).json.steps).toEqual([]);
});

test("nobody changes anything without the token, or from another page", async () => {
  for (const [method, path] of [
    ["POST", "/corpus/edit"],
    ["POST", "/corpus/undo"],
    ["POST", "/corpus/redo"],
    ["POST", "/corpus/back"],
    ["GET", "/corpus/history"],
    ["GET", "/corpus/drafts"],
    ["PUT", "/corpus/drafts/a"],
    ["DELETE", "/corpus/drafts/a"],
  ] as const) {
    expect((await ask(method, path, undefined, { "x-variorum-token": "0".repeat(32) })).status, path).toBe(
      403,
    );
    expect((await ask(method, path, undefined, { origin: "http://example.org" })).status, path).toBe(403);
  }
});

test("every window is told at once", async () => {
  const { origin, hash } = new URL(served.url);
  const listen = async (): Promise<() => Promise<string>> => {
    const { body } = await fetch(`${origin}/corpus/changes?token=${hash.replace("#token=", "")}`);
    const reader = body?.pipeThrough(new TextDecoderStream()).getReader();
    return async () => (await reader?.read())?.value ?? "";
  };
  const windows = await Promise.all([listen(), listen()]);
  for (const next of windows) expect(await next()).toContain("event: ready");
  await edit("say it", first, second);
  for (const next of windows) expect(await next()).toContain("event: change");
});
