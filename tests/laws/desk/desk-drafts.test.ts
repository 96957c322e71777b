import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openDesk } from "../../../src/host/desk/desk.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { changed, deskOn, home } from "./desk-cases.ts";
import { memoryDisk } from "./desk-disk.ts";
import type { MemoryDisk } from "./desk-disk.ts";

const corpus = (): MemoryDisk =>
  memoryDisk({ [`${home}/corpus.yaml`]: "format: 1\n", [`${home}/a.yaml`]: "a0" });

describe("drafts", () => {
  test("are kept, listed, replaced, and taken away; they survive a restart", () => {
    const disk = corpus();
    const { drafts } = deskOn(disk);
    drafts.put("new-claim", '{"text":"half a th"}');
    drafts.put("new-claim", '{"text":"half a thought"}');
    drafts.put("argument_2", "[]");
    const again = deskOn(disk).drafts;
    expect(again.list()).toEqual(["argument_2", "new-claim"]);
    expect(again.get("new-claim")).toBe('{"text":"half a thought"}');
    again.remove("new-claim");
    again.remove("new-claim");
    expect(again.list()).toEqual(["argument_2"]);
    expect(again.get("new-claim")).toBeNull();
    expect(Object.keys(disk.texts(home))).toEqual(["a.yaml", "corpus.yaml"]);
  });

  test("names that lead elsewhere, what is no JSON, too large or too many are refused", () => {
    const { drafts } = deskOn(corpus());
    for (const name of ["", "..", "../a", "a/b", ".hidden", "A", "con", "x".repeat(101), "a.json"])
      expect(() => drafts.put(name, "{}")).toThrow("Unexpected name of a draft");
    expect(() => drafts.put("a", "{")).toThrow("expected JSON");
    expect(() => drafts.put("a", JSON.stringify("x".repeat(1024 * 1024)))).toThrow("at most 1 MiB");
    for (let n = 1; n <= 200; n++) drafts.put(`draft-${n}`, "{}");
    expect(() => drafts.put("one-more", "{}")).toThrow("expected at most 200");
    drafts.put("draft-1", "[]");
  });

  test("stopped at every call in turn, a draft is old or new", () => {
    const ready = corpus();
    deskOn(ready).drafts.put("a", '"old"');
    const fresh = (): MemoryDisk => ready.after({ names: "all", bytes: "all" });
    const seen = new Set<string | null>();
    for (let at = 1; ; at++) {
      const disk = fresh();
      const { drafts } = deskOn(disk);
      disk.trouble({ at, how: "half" });
      try {
        drafts.put("a", '"new"');
      } catch {
        // Gone.
      }
      if (!disk.isLost()) break;
      for (const names of ["all", "synced"] as const)
        seen.add(deskOn(disk.after({ names, bytes: "synced" })).drafts.get("a"));
    }
    expect(seen).toEqual(new Set(['"old"', '"new"']));
  });
});

describe("on a real disk", () => {
  let place = "";
  beforeAll(() => {
    place = mkdtempSync(join(tmpdir(), "variorum-desk-"));
  });
  afterAll(() => rmSync(place, { recursive: true, force: true }));

  function folder(name: string): string {
    const path = join(place, name);
    mkdirSync(path);
    writeFileSync(join(path, "corpus.yaml"), "format: 1\n");
    writeFileSync(join(path, "a.yaml"), "\ufeffclaims: []\r\n");
    return path;
  }

  test("a file keeps its permissions, nothing is left beside it, and the desk keeps itself out of what is shared", () => {
    const path = folder("kept");
    chmodSync(join(path, "a.yaml"), 0o640);
    const desk = openDesk(path);
    const long = `claims: []\n# ${"long ".repeat(1000)}\n`;
    desk.edit("long", [
      changed("a.yaml", "\ufeffclaims: []\r\n", long),
      changed("deep/down/b.yaml", null, "claims: []\n"),
    ]);
    expect(statSync(join(path, "a.yaml")).mode & 0o777).toBe(0o640);
    expect(readdirSync(path).sort()).toEqual([".variorum", "a.yaml", "corpus.yaml", "deep"]);
    expect(readdirSync(join(path, "deep", "down"))).toEqual(["b.yaml"]);
    expect(readFileSync(join(path, ".variorum", ".gitignore"), "utf8")).toMatch(/^\*$/m);
    desk.undo();
    expect(readFileSync(join(path, "a.yaml"), "utf8")).toBe("\ufeffclaims: []\r\n");
    expect(readCorpusFolder(path).map((one) => one.path)).toEqual(["a.yaml", "corpus.yaml"]);
    const again = openDesk(path);
    expect(again.redo()).toBe("long");
    expect(readFileSync(join(path, "a.yaml"), "utf8")).toBe(long);
  });

  test("no parent that is a link is followed, and a file that is one is left alone", () => {
    const path = folder("links");
    mkdirSync(join(place, "elsewhere"));
    symlinkSync(join(place, "elsewhere"), join(path, "below"));
    symlinkSync(join(place, "elsewhere", "b.yaml"), join(path, "b.yaml"));
    const desk = openDesk(path);
    expect(() => desk.edit("out", [changed("below/b.yaml", null, "x")])).toThrow(
      "Unexpected link at `below`",
    );
    expect(() => desk.edit("out", [changed("b.yaml", null, "x")])).toThrow("Unexpected link at `b.yaml`");
    expect(readdirSync(join(place, "elsewhere"))).toEqual([]);
  });
});
