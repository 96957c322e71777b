import { mkdtempSync, rmSync, unlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import type { SourceFile } from "../../src/read/source-file.ts";
import { serve } from "../../src/server/serve.ts";
import type { Served } from "../../src/server/serve.ts";
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

interface Told {
  readonly version: string;
  readonly whole: boolean;
  readonly files: readonly SourceFile[];
  readonly gone: readonly string[];
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
  const byPath = new Map((told.whole ? [] : had).map((file) => [file.path, file]));
  for (const path of told.gone) byPath.delete(path);
  for (const file of told.files) byPath.set(file.path, file);
  return [...byPath.values()].toSorted((a, b) => (a.path < b.path ? -1 : 1));
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
