import { mkdtempSync, readFileSync, rmSync, unlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { filesTaken, hashesTaken } from "../../../src/app/worker/models/taken.ts";
import type { FilesTold } from "../../../src/app/worker/models/taken.ts";
import { hashOf } from "../../../src/base/text/hash.ts";
import type { SourceFile } from "../../../src/read/source-file.ts";
import { serve } from "../../../src/server/serve.ts";
import type { Served } from "../../../src/server/serve.ts";
import { changed } from "./desk-cases.ts";

const first = "claims:\n  - id: roofed\n    text: The ring had a roof\n";
const second = first.replace("a roof", "no roof");
const other = "artefacts:\n  - { id: ring, name: The ring }\n";
let place = "";
let served: Served;

beforeEach(async () => {
  place = mkdtempSync(join(tmpdir(), "variorum-desk-told-"));
  writeFileSync(join(place, "corpus.yaml"), "format: 1\ntitle: Rings\n");
  writeFileSync(join(place, "a.yaml"), first);
  writeFileSync(join(place, "b.yaml"), other);
  served = await serve(place);
});
afterEach(async () => {
  await served.close();
  rmSync(place, { recursive: true, force: true });
});

interface Told extends FilesTold {
  readonly version: string;
  readonly since: string | null;
}

async function ask<T>(path: string, body?: unknown): Promise<T> {
  const { origin, hash } = new URL(served.url);
  const headers = { "x-variorum-token": hash.replace("#token=", "") };
  const sent = body === undefined ? {} : { method: "POST", body: JSON.stringify(body) };
  const answer = await fetch(`${origin}/corpus/${path}`, { headers, ...sent });
  return (await answer.json()) as T;
}

const all = (): Promise<Told> => ask<Told>("files");
const edit = (have: string, was: string | null, is: string | null, file = "a.yaml") =>
  ask<{ readonly corpus?: Told }>(`edit?have=${have}`, { step: "say it", changes: [changed(file, was, is)] });
const paths = ({ files }: Told): readonly string[] => files.map(({ path }) => path);

/** The files that somebody has who had some, and is told what changed. */
function after(had: readonly SourceFile[], told: Told): readonly SourceFile[] {
  return filesTaken(had, told).toSorted((a, b) => (a.path < b.path ? -1 : 1));
}

test("the answer to a change tells the files that it changed, and no others", async () => {
  const start = await all();
  expect(start.whole).toBe(true);
  expect(paths(start)).toEqual(["a.yaml", "b.yaml", "corpus.yaml"]);
  const { corpus: edited } = await edit(start.version, first, second);
  expect(edited).toMatchObject({ whole: false, files: [{ path: "a.yaml", text: second }], gone: [] });
  expect(edited?.version).not.toBe(start.version);
  const { corpus: undone } = await ask<{ readonly corpus: Told }>(`undo?have=${edited?.version}`, {});
  expect(undone).toMatchObject({ whole: false, files: [{ path: "a.yaml", text: first }], gone: [] });
  expect((await edit(undone.version, first, null)).corpus).toMatchObject({ files: [], gone: ["a.yaml"] });
});

test("what another program changed meanwhile is told with what it was asked from, and nothing is told twice", async () => {
  const start = await all();
  writeFileSync(join(place, "b.yaml"), `${other}# theirs\n`);
  writeFileSync(join(place, "c.yaml"), "claims: []\n");
  const { corpus } = await edit(start.version, first, second);
  expect(corpus && paths(corpus)).toContain("a.yaml");
  const later = await ask<Told>(`files?have=${corpus?.version}`);
  expect(later.whole).toBe(false);
  const known = after(after(start.files, corpus ?? later), later);
  expect(known).toEqual((await all()).files);
  expect(await ask<Told>(`files?have=${later.version}`)).toMatchObject({
    version: later.version,
    files: [],
    gone: [],
  });
  unlinkSync(join(place, "c.yaml"));
  const gone = await ask<Told>(`files?have=${later.version}`);
  expect(gone).toMatchObject({ files: [], gone: ["c.yaml"] });
  expect(after(known, gone)).toEqual((await all()).files);
});

test("a version of another program, or none at all, is told everything", async () => {
  const { version } = await all();
  for (const have of ["", "0.0", `${version}0`, "x", `other.${version.split(".")[1]}`])
    expect(await ask<Told>(`files?have=${have}`), have).toMatchObject({ whole: true, gone: [] });
  // Nothing is told by half: who has another program's files reads them again.
  expect((await edit("other.1", first, second)).corpus).toBeUndefined();
});

test("of a large file no more is told than what changed, to who has what it was before, and all of it to others", async () => {
  const large = `claims:\n${"  - { id: ring, text: a ring 😀 of posts – ὁ κύκλος }\n".repeat(1600)}`;
  writeFileSync(join(place, "large.yaml"), large);
  const start = await all();
  let [was, version, files] = [large, start.version, start.files];
  let hashes: ReadonlyMap<string, string> = new Map();
  for (const [round, put] of ["no ", "😀", "\ud83d", "ὁ", ""].entries()) {
    const at = was.indexOf("ring 😀", (round * was.length) / 5);
    // Two go through the middle of a sign, the last changes nothing.
    const typed = { file: "large.yaml", start: at + 5, end: at + 5 + (round % 2), text: put };
    const changes = [
      { file: "large.yaml", madeFor: hashes.get("large.yaml") ?? hashOf(was), edits: [typed] },
    ];
    const { corpus } = await ask<{ readonly corpus?: Told }>(`edit?have=${version}`, {
      step: "say it",
      changes,
    });
    if (!corpus) throw new Error("nothing was told");
    was = readFileSync(join(place, "large.yaml"), "utf8");
    expect(corpus.files).toEqual([]);
    expect(corpus.since).toBe(version);
    expect(corpus.stretches.map(({ text }) => text.length < 10)).toEqual(round < 4 ? [true] : []);
    [version, files, hashes] = [corpus.version, after(files, corpus), hashesTaken(hashes, corpus)];
    expect(files.find(({ path }) => path === "large.yaml")?.text === was).toBe(true);
    expect(hashes.get("large.yaml") ?? hashOf(was)).toBe(hashOf(was));
  }
  const late = await ask<Told>(`files?have=${start.version}`);
  expect([paths(late), late.stretches]).toEqual([["large.yaml"], []]);
  expect(after(start.files, late)).toEqual(after([], await all()));
});
