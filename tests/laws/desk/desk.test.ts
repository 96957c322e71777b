import fc from "fast-check";
import { expect, test } from "vitest";
import { hashOf } from "../../../src/base/text/hash.ts";
import type { Desk } from "../../../src/host/desk/desk.ts";
import { CannotWrite, Stale } from "../../../src/host/desk/refusal.ts";
import { changed, deskOn, home } from "./desk-cases.ts";
import { memoryDisk } from "./desk-disk.ts";
import type { MemoryDisk } from "./desk-disk.ts";

type Texts = Readonly<Record<string, string>>;

const files = ["claims.yaml", "ring/posts.yaml", "posts.csv"] as const;
const start: Texts = {
  "corpus.yaml": "format: 1\n",
  "claims.yaml": "claims:\n  - id: a\n    text: A\n  - id: b\n    text: B\n  - id: c\n    text: C\n",
  "ring/posts.yaml": "\ufeffartefacts:\r\n  - id: post-1\r\n    name: Post 1\r\n",
};

function corpus(): MemoryDisk {
  return memoryDisk(
    Object.fromEntries(Object.entries(start).map(([file, text]) => [`${home}/${file}`, text])),
  );
}

/** One thing that happens to a corpus; `line` is counted round, and `text` null takes the file away. */
type Happening =
  | {
      readonly what: "edit" | "outside";
      readonly file: string;
      readonly line: number;
      readonly text: string | null;
    }
  | { readonly what: "undo" | "redo" | "restart" }
  | { readonly what: "back"; readonly to: number };

const file = fc.constantFrom(...files);
const text = fc.oneof(
  { weight: 6, arbitrary: fc.string({ unit: "grapheme", maxLength: 12 }) },
  { weight: 1, arbitrary: fc.constant(null) },
);
const change = (what: "edit" | "outside"): fc.Arbitrary<Happening> =>
  fc.record({ what: fc.constant(what), file, line: fc.nat(9), text });
const inside: fc.Arbitrary<Happening> = fc.oneof(
  { weight: 4, arbitrary: change("edit") },
  { weight: 3, arbitrary: fc.record({ what: fc.constantFrom("undo" as const, "redo" as const) }) },
  { weight: 1, arbitrary: fc.record({ what: fc.constant("restart" as const) }) },
  { weight: 1, arbitrary: fc.record({ what: fc.constant("back" as const), to: fc.nat(12) }) },
);
const anything = fc.oneof({ weight: 3, arbitrary: inside }, { weight: 1, arbitrary: change("outside") });

/** A text with one of its lines written anew. */
function rewritten(was: string | null, line: number, put: string | null): string | null {
  if (put === null) return null;
  const lines = (was ?? "").split("\n");
  lines[line % lines.length] = put;
  return lines.join("\n");
}

/** Has something happen; what is refused changes nothing. Gives the desk that goes on. */
function happen(disk: MemoryDisk, desk: Desk, it: Happening): Desk {
  const before = disk.texts(home);
  try {
    if (it.what === "restart") return deskOn(disk);
    if (it.what === "back") desk.back(it.to);
    else if (it.what === "undo") desk.undo();
    else if (it.what === "redo") desk.redo();
    else if ("file" in it) {
      const was = before[it.file] ?? null;
      const is = rewritten(was, it.line, it.text);
      if (it.what === "outside") disk.save(`${home}/${it.file}`, is);
      else if (was !== is) desk.edit("a change", [changed(it.file, was, is)]);
    }
  } catch (error) {
    expect(error).toBeInstanceOf(CannotWrite);
    expect(disk.texts(home)).toEqual(before);
  }
  return desk;
}

test("whatever is written over or taken away, inside or outside, the history still has it", () => {
  fc.assert(
    fc.property(fc.array(anything, { maxLength: 24 }), (happenings) => {
      const disk = corpus();
      let desk = deskOn(disk);
      for (const it of happenings) {
        const before = disk.texts(home);
        desk = happen(disk, desk, it);
        const after = disk.texts(home);
        if (it.what === "outside") continue;
        for (const [name, was] of Object.entries(before))
          if (after[name] !== was)
            expect(Buffer.from(desk.text(hashOf(was)) ?? []).toString("utf8")).toBe(was);
      }
    }),
    { numRuns: 150 },
  );
});

test("undone and done again, the files are the same, byte for byte, and so is what can be undone", () => {
  fc.assert(
    fc.property(fc.array(anything, { maxLength: 20 }), (happenings) => {
      const disk = corpus();
      const desk = happenings.reduce((now, it) => happen(disk, now, it), deskOn(disk));
      const [before, state] = [disk.texts(home), desk.state()];
      try {
        expect(desk.undo()).toBe(state.undo);
      } catch (error) {
        expect(error).toBeInstanceOf(CannotWrite);
        expect(disk.texts(home)).toEqual(before);
        return;
      }
      expect(desk.state().redo).toBe(state.undo);
      expect(desk.redo()).toBe(state.undo);
      expect(disk.texts(home)).toEqual(before);
      expect(desk.state()).toEqual(state);
    }),
    { numRuns: 150 },
  );
});

test("where nothing came from outside, undoing everything gives the beginning, and doing it again the end", () => {
  fc.assert(
    fc.property(fc.array(inside, { maxLength: 20 }), (happenings) => {
      const disk = corpus();
      const desk = happenings.reduce((now, it) => happen(disk, now, it), deskOn(disk));
      while (desk.state().redo !== null) desk.redo();
      const end = disk.texts(home);
      let count = 0;
      for (; desk.state().undo !== null; count += 1) desk.undo();
      expect(disk.texts(home)).toEqual(start);
      for (; count > 0; count -= 1) desk.redo();
      expect(disk.texts(home)).toEqual(end);
      expect(desk.steps().filter((one) => one.kind === "outside")).toEqual([]);
    }),
    { numRuns: 150 },
  );
});

test("after a restart all is as it was: the state, the steps, and where one can go back to", () => {
  fc.assert(
    fc.property(fc.array(anything, { maxLength: 20 }), fc.nat(20), (happenings, to) => {
      const disk = corpus();
      const desk = happenings.reduce((now, it) => happen(disk, now, it), deskOn(disk));
      desk.notice();
      const again = deskOn(disk);
      expect(again.state()).toEqual(desk.state());
      expect(again.steps()).toEqual(desk.steps());
      const end = disk.texts(home);
      const last = desk.steps().length;
      if (last === 0) return;
      again.back(to % (last + 1));
      again.back(last);
      expect(disk.texts(home)).toEqual(end);
    }),
    { numRuns: 150 },
  );
});

test("each step is named, and can be stepped back to", () => {
  const disk = corpus();
  const desk = deskOn(disk);
  const texts = [disk.texts(home)];
  const claims = start["claims.yaml"] ?? "";
  const versions = ["claims: [] # one\n", "claims: [] # two\n", "claims: [] # three\n"];
  for (const [place, is] of versions.entries()) {
    expect(desk.edit(`step ${place + 1}`, [changed("claims.yaml", versions[place - 1] ?? claims, is)])).toBe(
      place + 1,
    );
    texts.push(disk.texts(home));
  }
  expect(desk.steps().map(({ n, step, kind, when }) => [n, step, kind, when])).toEqual(
    [1, 2, 3].map((n) => [n, `step ${n}`, "edit", "2026-03-01T00:00:00.000Z"]),
  );
  for (const n of [1, 0, 2, 3]) {
    desk.back(n, `back to ${n}`);
    expect(disk.texts(home)).toEqual(texts[n]);
    expect(desk.state().undo).toBe(`back to ${n}`);
  }
  expect(() => desk.back(99)).toThrow("Unknown step 99");
  desk.undo();
  expect(disk.texts(home)).toEqual(texts[2]);
});

test("undoing keeps what was changed outside in other lines, and is refused with both texts in the same", () => {
  const disk = corpus();
  const desk = deskOn(disk);
  const claims = start["claims.yaml"] ?? "";
  const mine = claims.replace("text: A", "text: A roof");
  desk.edit("say it of a", [changed("claims.yaml", claims, mine)]);
  disk.save(`${home}/claims.yaml`, mine.replace("text: C", "text: A hearth"));
  expect(desk.undo()).toBe("say it of a");
  expect(disk.texts(home)["claims.yaml"]).toBe(claims.replace("text: C", "text: A hearth"));
  expect(desk.steps().map((one) => one.kind)).toEqual(["edit", "outside", "undo"]);
  desk.redo();
  const theirs = mine.replace("text: A roof", "text: A porch").replace("text: C", "text: A hearth");
  disk.save(`${home}/claims.yaml`, theirs);
  expect(() => desk.undo()).toThrow(Stale);
  try {
    desk.undo();
  } catch (error) {
    const wanted = claims.replace("text: C", "text: A hearth");
    expect((error as Stale).files).toEqual([{ file: "claims.yaml", text: theirs, wanted }]);
  }
  expect(disk.texts(home)["claims.yaml"]).toBe(theirs);
});

test("a change made for another text is refused with the text that stands there, and no other is made", () => {
  const disk = corpus();
  const desk = deskOn(disk);
  const claims = start["claims.yaml"] ?? "";
  const asked = [
    changed("claims.yaml", claims, "claims: []\n"),
    changed("ring/posts.yaml", "something else", "artefacts: []\n"),
    changed("gone.yaml", "once", "twice"),
    changed("corpus.yaml", null, "format: 1\n"),
  ];
  try {
    desk.edit("too late", asked);
    expect.unreachable();
  } catch (error) {
    expect(error).toBeInstanceOf(Stale);
    expect((error as Stale).files).toEqual([
      { file: "ring/posts.yaml", text: start["ring/posts.yaml"] },
      { file: "gone.yaml", text: null },
      { file: "corpus.yaml", text: start["corpus.yaml"] },
    ]);
  }
  expect(disk.texts(home)).toEqual(start);
  expect(desk.steps()).toEqual([]);
});

test("two programs on one corpus see each other's steps, and neither writes over the other", () => {
  const disk = corpus();
  const [one, two] = [deskOn(disk), deskOn(disk)];
  const claims = start["claims.yaml"] ?? "";
  one.edit("first", [changed("claims.yaml", claims, "claims: [] # 1\n")]);
  expect(two.state().undo).toBe("first");
  expect(() => two.edit("late", [changed("claims.yaml", claims, "claims: [] # 2\n")])).toThrow(Stale);
  expect(two.edit("second", [changed("claims.yaml", "claims: [] # 1\n", "claims: [] # 2\n")])).toBe(2);
  expect(one.undo()).toBe("second");
  expect(two.undo()).toBe("first");
  expect(one.state()).toEqual({ readOnly: null, undo: null, redo: "first" });
  expect(disk.texts(home)).toEqual(start);
  expect(one.steps()).toEqual(two.steps());
});
