import { describe, expect, test } from "vitest";
import { hashOf } from "../../../src/base/text/hash.ts";
import { CannotWrite } from "../../../src/host/desk/refusal.ts";
import { writeChanges } from "../../../src/host/edit-files.ts";
import { cases, changed, deskOn, home, start, untouched } from "./desk-cases.ts";
import type { MemoryDisk } from "./desk-disk.ts";

const fresh = (disk: MemoryDisk): MemoryDisk => disk.after({ names: "all", bytes: "all" });

/** Which files of the corpus an undisturbed step puts in place, and at which of its calls. */
function placedBy(disk: MemoryDisk, step: (on: MemoryDisk) => unknown): ReadonlyMap<number, string> {
  const places = new Map<number, string>();
  const noted = (call: string, path: string): void => {
    const file = path.slice(home.length + 1);
    if (!file.split("/").some((part) => part.startsWith(".")))
      places.set(disk.calls() + 1, `${call} ${file}`);
  };
  step({
    ...disk,
    rename: (from, to) => {
      noted("rename", to);
      disk.rename(from, to);
    },
    link: (from, to) => {
      noted("link", to);
      disk.link(from, to);
    },
    remove: (path) => {
      noted("remove", path);
      disk.remove(path);
    },
  });
  return places;
}

describe.each(Object.entries(cases))("%s", (_, { on, step, given }) => {
  const whole = fresh(on);
  const desk = deskOn(whole, given);
  const before = whole.texts(home);
  whole.trouble(null);
  step(desk);
  const after = whole.texts(home);
  const calls = whole.calls();

  test("another program that takes the desk for left in the middle, at every call in turn, brings it to the same", () => {
    for (let at = 1; at <= calls; at++) {
      const disk = fresh(on);
      const first = deskOn(disk, given);
      disk.trouble(null);
      disk.before(at, () => {
        disk.save(`${home}/.variorum/seat`, null);
        deskOn(disk, given);
      });
      let isDone = true;
      try {
        step(first);
      } catch (error) {
        expect(error, `at ${at}`).toBeInstanceOf(CannotWrite);
        isDone = false;
      }
      const again = deskOn(disk, given);
      expect(disk.texts(home), `at ${at}`).toEqual(isDone ? after : before);
      expect(again.steps().filter((one) => one.kind === "outside")).toEqual([]);
      expect(again.steps().length).toBe((isDone ? desk : deskOn(fresh(on))).steps().length);
    }
  });

  test("what another program saves, at every call in turn, is in its file or in the history", () => {
    const file = "claims.yaml";
    const theirs = "claims: [] # saved elsewhere\n";
    const look = fresh(on);
    const places = placedBy(look, (spied) => {
      const watched = deskOn(spied, given);
      look.trouble(null);
      step(watched);
    });
    const unseen: string[] = [];
    for (let at = 1; at <= calls; at++) {
      const disk = fresh(on);
      const first = deskOn(disk, given);
      disk.trouble(null);
      disk.before(at, () => disk.save(`${home}/${file}`, theirs));
      try {
        step(first);
      } catch (error) {
        expect(error, `at ${at}`).toBeInstanceOf(CannotWrite);
      }
      const again = deskOn(disk, given);
      const isKept = disk.texts(home)[file] === theirs || again.text(hashOf(theirs)) !== null;
      if (!isKept) unseen.push(places.get(at) ?? `call ${at}`);
      const own = disk.texts(home);
      const others = Object.keys({ ...before, ...after }).filter((name) => name !== file);
      const areOf = (texts: typeof own): boolean => others.every((name) => own[name] === texts[name]);
      expect(areOf(before) || areOf(after), `at ${at}`).toBe(true);
    }
    // Between the last look and the renaming nothing can be seen; everywhere else it is.
    expect(unseen.every((one) => one === `rename ${file}`)).toBe(true);
  });
});

test("another program that asks for the desk while one sits there is told so, and changes nothing", () => {
  const disk = untouched();
  const first = deskOn(disk);
  const seat = `${home}/.variorum/seat`;
  const refusals: string[] = [];
  for (let at = 1; at <= 120; at += 7) {
    const file = disk.texts(home)["new.yaml"] ?? null;
    disk.trouble(null);
    disk.before(at, () => {
      try {
        if (disk.see(seat)?.size) deskOn(disk).edit("late", [changed("late.yaml", null, "claims: []\n")]);
      } catch (error) {
        refusals.push((error as Error).message);
      }
    });
    first.edit(`${at}`, [changed("new.yaml", file, `claims: [] # ${at}\n`)]);
  }
  expect(refusals.length).toBeGreaterThan(5);
  expect(new Set(refusals)).toEqual(
    new Set([
      "Another program is just changing the corpus, expected it to come to an end: nothing was written",
    ]),
  );
  expect(disk.texts(home)).toEqual({ ...start, "new.yaml": "claims: [] # 120\n" });
  expect(disk.see(seat)).toBeNull();
});

test("where somebody makes a file of the same name meanwhile, at whatever call, theirs stays", () => {
  const look = untouched();
  const change = [changed("new.yaml", null, "mine\n")];
  look.trouble(null);
  writeChanges(home, change, look);
  const refusals = new Set<boolean>();
  for (let at = 1; at <= look.calls(); at++) {
    const disk = untouched();
    disk.trouble(null);
    disk.before(at, () => {
      if (disk.texts(home)["new.yaml"] === undefined) disk.save(`${home}/new.yaml`, "theirs\n");
    });
    try {
      writeChanges(home, change, disk);
      refusals.add(false);
      expect(disk.texts(home)["new.yaml"]).toBe("mine\n");
    } catch (error) {
      refusals.add(true);
      expect((error as Error).message).toBe(
        "Unexpected file at `new.yaml`, expected none: nothing was written",
      );
      expect(disk.texts(home)).toEqual({ ...start, "new.yaml": "theirs\n" });
    }
  }
  expect(refusals).toEqual(new Set([true, false]));
});
