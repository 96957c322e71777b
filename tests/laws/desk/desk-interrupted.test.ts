import { describe, expect, test } from "vitest";
import { hashOf } from "../../../src/base/text/hash.ts";
import { CannotWrite } from "../../../src/host/desk/refusal.ts";
import { writeChanges } from "../../../src/host/edit-files.ts";
import { cases, changed, deskOn, home, start, untouched } from "./desk-cases.ts";
import type { Case, Texts } from "./desk-cases.ts";
import type { Left, MemoryDisk } from "./desk-disk.ts";

const fresh = (disk: MemoryDisk): MemoryDisk => disk.after({ names: "all", bytes: "all" });

const lefts: readonly Left[] = (["all", "synced"] as const).flatMap((names) =>
  (["all", "synced"] as const).map((bytes) => ({ names, bytes })),
);

/** Whether each file is one of two texts, and whether all are the same of the two. */
function expectOneOf(now: Texts, [before, after]: readonly [Texts, Texts], what: string): void {
  const names = new Set([...Object.keys(now), ...Object.keys(before), ...Object.keys(after)]);
  const others = [...names].filter((file) => now[file] !== before[file] && now[file] !== after[file]);
  expect(others, what).toEqual([]);
}

function expectClear(disk: MemoryDisk, what: string): void {
  const beside = disk.paths().filter((path) => /\.(part|was)$/.test(path) && !path.includes(".variorum"));
  expect(beside, what).toEqual([]);
}

function expectWhole(disk: MemoryDisk, both: readonly [Texts, Texts], what: string): void {
  const now = disk.texts(home);
  expect(both, what).toContainEqual(now);
  const desk = deskOn(disk);
  const made = desk.steps();
  const named = made.flatMap(({ files }) => files.flatMap(({ was, is }) => [was, is]));
  const missing = [...new Set(named)].filter((hash) => hash !== null && desk.text(hash) === null);
  expect(missing, what).toEqual([]);
  const last = new Map(made.flatMap((one) => one.files.map(({ file, is }) => [file, is] as const)));
  const found = [...last.keys()].map((file) => (now[file] === undefined ? null : hashOf(now[file])));
  expect(found, what).toEqual([...last.values()]);
  expect(made.map((one) => one.n)).toEqual(made.map((_, place) => (made[0]?.n ?? 1) + place));
  expect(
    made.some((one) => one.kind === "outside"),
    what,
  ).toBe(false);
}

/** The texts before and after a step that nothing disturbs, and how many calls it takes. */
function undisturbed({ on, step, given }: Case): {
  readonly both: readonly [Texts, Texts];
  readonly calls: number;
} {
  const disk = fresh(on);
  const before = disk.texts(home);
  const desk = deskOn(disk, given);
  disk.trouble(null);
  step(desk);
  return { both: [before, disk.texts(home)], calls: disk.calls() };
}

describe.each(Object.entries(cases))("%s", (_, one) => {
  const { both, calls } = undisturbed(one);
  const { on, step, given } = one;

  test("stopped at every call in turn, a write half done, all files are old or all new", () => {
    expect(calls).toBeGreaterThan(40);
    const ends = new Set<string>();
    for (let at = 1; at <= calls; at++) {
      const disk = fresh(on);
      const desk = deskOn(disk, given);
      disk.trouble({ at, how: "half" });
      try {
        step(desk);
      } catch {
        // What a program that is gone would have said does not count.
      }
      expect(disk.isLost()).toBe(true);
      for (const left of lefts) {
        const what = `at ${at}, ${left.names} names, ${left.bytes} bytes`;
        const found = disk.after(left);
        expectOneOf(found.texts(home), both, what);
        deskOn(found);
        expectWhole(found, both, what);
        expectClear(found, what);
        ends.add(JSON.stringify(found.texts(home)));
      }
    }
    expect(ends.size).toBe(2);
  });

  test("stopped at every call of the recovery, too", () => {
    for (let at = 1; at <= calls; at += 7) {
      const disk = fresh(on);
      const desk = deskOn(disk, given);
      disk.trouble({ at, how: "half" });
      expect(() => {
        step(desk);
        if (disk.isLost()) throw new Error("lost");
      }).toThrow();
      const left = lefts[at % lefts.length] ?? { names: "all", bytes: "all" };
      for (let then = 1; ; then += 1) {
        const found = disk.after(left);
        found.trouble({ at: then, how: "half" });
        try {
          deskOn(found);
        } catch {
          // Gone again.
        }
        if (!found.isLost()) break;
        const again = found.after(lefts[then % lefts.length] ?? left);
        const what = `at ${at}, then at ${then} of the recovery`;
        expectOneOf(again.texts(home), both, what);
        deskOn(again);
        expectWhole(again, both, what);
        expectClear(again, what);
      }
    }
  });

  test.each(["EIO", "ENOSPC", "EACCES", "EXDEV"] as const)(
    "where one call fails with %s, it says truly what became of the files",
    (how) => {
      for (let at = 1; at <= calls; at++) {
        const disk = fresh(on);
        const desk = deskOn(disk, given);
        disk.trouble({ at, how });
        let isDone = true;
        try {
          step(desk);
        } catch (error) {
          expect(error, `${how} at ${at}`).toBeInstanceOf(CannotWrite);
          expect((error as Error).message).toMatch(/nothing was written$/);
          isDone = false;
        }
        expect(disk.texts(home), `${how} at ${at}`).toEqual(both[isDone ? 1 : 0]);
        disk.trouble(null);
        deskOn(disk);
        expect(disk.texts(home), `${how} at ${at}`).toEqual(both[isDone ? 1 : 0]);
        expectWhole(disk, both, `${how} at ${at}`);
      }
    },
  );
});

test("without a desk, too, every file is old or new, and whole", () => {
  const changes = [
    changed("claims.yaml", start["claims.yaml"], "claims: []\n"),
    changed("new.yaml", null, "claims: []\n"),
    changed("ring/posts.yaml", start["ring/posts.yaml"], null),
  ];
  const whole = untouched();
  whole.trouble(null);
  writeChanges(home, changes, whole);
  const both = [untouched().texts(home), whole.texts(home)] as const;
  for (let at = 1; at <= whole.calls(); at++) {
    const disk = untouched();
    disk.trouble({ at, how: "half" });
    try {
      writeChanges(home, changes, disk);
    } catch {
      // Gone.
    }
    for (const left of lefts) expectOneOf(disk.after(left).texts(home), both, `at ${at}`);
  }
});
