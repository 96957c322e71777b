import { describe, expect, test } from "vitest";
import { hashOf } from "../../../src/base/text/hash.ts";
import type { Disk } from "../../../src/host/desk/disk.ts";
import { writeChanges } from "../../../src/host/edit-files.ts";
import { changed, deskOn, home } from "./desk-cases.ts";
import { memoryDisk } from "./desk-disk.ts";
import { wholeInEnglish } from "../base/in-english.ts";
import type { MemoryDisk } from "./desk-disk.ts";

const corpus = (): MemoryDisk =>
  memoryDisk({ [`${home}/corpus.yaml`]: "format: 1\n", [`${home}/a.yaml`]: "a0" });

/** Steps from one to another text of `a.yaml`: `a1`, `a2` and so on. */
function worked(
  disk: MemoryDisk,
  count: number,
  given: Parameters<typeof deskOn>[1] = {},
): ReturnType<typeof deskOn> {
  const desk = deskOn(disk, given);
  for (let n = 1; n <= count; n++) desk.edit(`step ${n}`, [changed("a.yaml", `a${n - 1}`, `a${n}`)]);
  return desk;
}

const historyIn = (disk: MemoryDisk): readonly string[] =>
  disk.paths().filter((path) => path.startsWith(`${home}/.variorum/history/`));
const partsIn = (disk: MemoryDisk): readonly string[] =>
  historyIn(disk).filter((path) => path.endsWith(".jsonl"));

describe("places", () => {
  test.each([
    "../a.yaml",
    "below/../../a.yaml",
    "/etc/a.yaml",
    "below//a.yaml",
    "./a.yaml",
    ".a.yaml",
    ".variorum/a.yaml",
    "node_modules/a.yaml",
    "below\\a.yaml",
    "c:a.yaml",
    "a\u0000.yaml",
    "a.txt",
    "plugins/own.js",
    "a",
    "other/b.yaml",
    "sub/corpus.yaml",
    "link/b.yaml",
    "a.yaml/b.yaml",
  ])("no new file is made at %j", (file) => {
    const disk = corpus();
    disk.save(`${home}/other/corpus.yaml`, "format: 1\n");
    disk.linkTo(`${home}/link`);
    const before = disk.paths();
    expect(() => writeChanges(home, [changed(file, null, "claims: []\n")], disk)).toThrow(
      /nothing was written$/,
    );
    expect(disk.paths()).toEqual(before);
  });

  test("a new file, and its folders, are made; the settings stay", () => {
    const disk = corpus();
    const desk = deskOn(disk);
    for (const file of ["one.yaml", "two.yml", "t.csv", "b.bib", "r.ris", "c.json", "far/below/مقروء.yaml"])
      desk.edit("new", [changed(file, null, "x")]);
    expect(Object.keys(disk.texts(home))).toHaveLength(9);
    expect(() => desk.edit("all", [changed("corpus.yaml", "format: 1\n", null)])).toThrow(
      "expected it to stay",
    );
  });
});

describe("bounds", () => {
  const limits = { steps: 6, bytes: 1_000_000, part: 3 };

  test("the newest steps are kept under their numbers, with all texts that they need and no others", () => {
    const disk = corpus();
    const desk = worked(disk, 20, { limits });
    const numbers = desk.steps().map((one) => one.n);
    expect(numbers.length).toBeGreaterThanOrEqual(limits.steps);
    expect(numbers.length).toBeLessThanOrEqual(limits.steps + limits.part);
    expect(numbers).toEqual(numbers.map((_, place) => 21 - numbers.length + place));
    const needed = desk.steps().flatMap(({ files }) => files.flatMap(({ was, is }) => [was, is]));
    const kept = historyIn(disk).flatMap((path) => /[0-9a-f]{64}/.exec(path) ?? []);
    expect(new Set(kept)).toEqual(new Set(needed));
    const again = deskOn(disk, { limits });
    expect(again.steps()).toEqual(desk.steps());
    let undone = 0;
    for (; again.state().undo !== null; undone += 1) again.undo();
    expect(undone).toBeGreaterThanOrEqual(limits.steps - limits.part);
  });

  test("what a file was stays known when the step that changed it is no longer kept", () => {
    const disk = corpus();
    const desk = deskOn(disk, { limits });
    desk.edit("new", [changed("b.yaml", null, "b")]);
    worked(disk, 20, { limits });
    disk.save(`${home}/b.yaml`, "changed outside");
    const again = deskOn(disk, { limits });
    expect(again.steps().at(-1)).toMatchObject({
      kind: "outside",
      files: [{ file: "b.yaml", was: hashOf("b"), is: hashOf("changed outside") }],
    });
    again.back(20);
    expect(disk.texts(home)["b.yaml"]).toBe("b");
  });

  test("where the texts take too much room, fewer steps are kept", () => {
    const disk = corpus();
    const desk = worked(disk, 40, { limits: { steps: 1000, bytes: 30, part: 5 } });
    const sizes = historyIn(disk)
      .filter((path) => !path.endsWith(".jsonl"))
      .map((path) => disk.see(path)?.size ?? 0);
    expect(desk.steps().length).toBeLessThan(20);
    expect(desk.steps().at(-1)?.n).toBe(40);
    expect(sizes.reduce((sum, one) => sum + one, 0)).toBeLessThan(100);
  });
});

describe("a damaged history", () => {
  const damages: Readonly<Record<string, (text: string) => string>> = {
    "a line cut off": (text) => text.slice(0, -20),
    "rubbish in the middle": (text) =>
      `${text.slice(0, text.length >> 1)}\u0000\ufffd{"${text.slice(text.length >> 1)}`,
    "rubbish alone": () => "not a history",
    "a file outside the corpus": (text) => text.replaceAll('"a.yaml"', '"../../secret.yaml"'),
    "a number beyond all": () => '{"from":1e99,"known":[]}\n',
    "a line of something else": (text) => `${text}[1,2,3]\nnull\n"x"\n`,
  };

  test.each(Object.entries(damages))(
    "with %s the corpus opens, is changed, and goes on being kept",
    (_, damage) => {
      const disk = corpus();
      worked(disk, 3);
      disk.save("/secret.yaml", "nobody's business");
      const [part = ""] = partsIn(disk);
      disk.save(part, damage(Buffer.from(disk.read(part)).toString("utf8")));
      const desk = deskOn(disk);
      desk.edit("after it", [changed("a.yaml", "a3", "a4")]);
      expect(deskOn(disk).state().undo).toBe("after it");
      desk.undo();
      expect(disk.texts(home)["a.yaml"]).toBe("a3");
      expect(historyIn(disk).filter((path) => path.includes(hashOf("nobody's business")))).toEqual([]);
      expect(Buffer.from(disk.read("/secret.yaml")).toString("utf8")).toBe("nobody's business");
    },
  );

  test("it says how many lines were passed over", () => {
    const disk = corpus();
    worked(disk, 3);
    const [part = ""] = partsIn(disk);
    disk.save(part, `${Buffer.from(disk.read(part)).toString("utf8")}\nrubbish\nmore\n`);
    expect(wholeInEnglish(deskOn(disk).state())).toEqual({
      readOnly: null,
      undo: "step 3",
      redo: null,
      troubles: ["2 lines of the history cannot be read and are passed over"],
    });
  });

  test("a text that is gone or damaged is refused, and nothing is undone", () => {
    const disk = corpus();
    const desk = worked(disk, 2);
    const path = historyIn(disk).find((one) => one.includes(hashOf("a1"))) ?? "";
    disk.save(path, "a9");
    expect(desk.text(hashOf("a1"))).toBeNull();
    expect(() => desk.undo()).toThrow("Missing text of `a.yaml` in the history");
    expect(disk.texts(home)["a.yaml"]).toBe("a2");
  });
});

describe("a corpus that may only be read", () => {
  const closed = (disk: Disk, pattern: RegExp): Disk => ({
    ...disk,
    tryWriting: (path) => {
      if (pattern.test(path)) throw Object.assign(new Error("closed"), { code: "EROFS", syscall: "access" });
    },
  });

  test.each([
    [/^\/corpus$/, "The folder of the corpus may only be read"],
    [/history$/, "The folder `.variorum/history`, where edits are kept, may only be read"],
    [/yaml$/, "The files of the corpus may only be read"],
  ])("%s: it opens, says so, and writes nothing", (pattern, reason) => {
    const disk = corpus();
    worked(disk, 1);
    const before = disk.paths();
    disk.save(`${home}/a.yaml`, "changed outside");
    const desk = deskOn(closed(disk, pattern));
    expect(wholeInEnglish(desk.state())).toEqual({ readOnly: reason, undo: "step 1", redo: null });
    expect(() => desk.edit("no", [changed("a.yaml", "changed outside", "x")])).toThrow(reason);
    expect(() => desk.undo()).toThrow(reason);
    expect(() => desk.drafts.put("new-claim", "{}")).toThrow(reason);
    expect(disk.paths()).toEqual(before);
  });

  test("one file alone that may only be read is refused by its name", () => {
    const disk = corpus();
    const desk = deskOn(closed(disk, /a\.yaml$/));
    expect(desk.state().readOnly).toBeNull();
    expect(() => desk.edit("no", [changed("a.yaml", "a0", "a1")])).toThrow("`a.yaml` may not be written");
    expect(disk.texts(home)["a.yaml"]).toBe("a0");
  });

  test("opening a corpus that was never changed writes nothing, and a desk that is a link is left alone", () => {
    const disk = corpus();
    const before = disk.paths();
    deskOn(disk).notice();
    expect(disk.paths()).toEqual(before);
    disk.linkTo(`${home}/.variorum`);
    const desk = deskOn(disk);
    expect(wholeInEnglish(desk.state()).readOnly).toBe("Unexpected link at `.variorum`, expected a folder");
    expect(() => desk.edit("no", [changed("a.yaml", "a0", "a1")])).toThrow("Unexpected link");
  });
});
