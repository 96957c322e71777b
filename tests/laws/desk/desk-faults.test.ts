import fc from "fast-check";
import { expect, test } from "vitest";
import { hashOf } from "../../../src/base/text/hash.ts";
import type { Desk } from "../../../src/host/desk/desk.ts";
import type { Disk } from "../../../src/host/desk/disk.ts";
import { CannotWrite } from "../../../src/host/desk/refusal.ts";
import { changed, deskOn, home } from "./desk-cases.ts";
import type { Texts } from "./desk-cases.ts";
import { memoryDisk } from "./desk-disk.ts";
import type { Left, MemoryDisk, Trouble } from "./desk-disk.ts";

const start: Texts = {
  "corpus.yaml": "format: 1\n",
  "a.yaml": "claims:\n  - id: a\n",
  "b.yaml": "claims:\n  - id: b\n",
};
const names = ["a.yaml", "b.yaml", "new/c.yaml"] as const;

/** What may go wrong at one call of a step: the disk, the current, another program, or another desk. */
type Fault =
  | { readonly at: number; readonly how: Trouble["how"] }
  | { readonly at: number; readonly how: "outside" | "other desk" | "other desk, seat taken away" };

/** One thing that is done, at which of two desks, at what time, and what goes wrong in it. */
interface Doing {
  readonly what: "edit" | "undo" | "redo" | "back" | "outside";
  readonly files: readonly (typeof names)[number][];
  readonly gone: boolean;
  readonly to: number;
  readonly desk: 0 | 1;
  readonly clock: number;
  readonly fault: Fault | null;
  /** From 0 to 255, a bit for each change of a name and share of a file that a loss of power leaves. */
  readonly left: number;
  readonly most: number;
}

const how = fc.constantFrom(
  ...(["half", "half", "half", "full", "EIO", "ENOSPC", "EACCES", "EPERM", "EROFS", "EXDEV"] as const),
  ...(["outside", "other desk", "other desk, seat taken away"] as const),
);
const doing: fc.Arbitrary<Doing> = fc.record({
  what: fc.constantFrom("edit", "edit", "edit", "undo", "redo", "back", "outside"),
  files: fc.uniqueArray(fc.constantFrom(...names), { minLength: 1, maxLength: 3 }),
  gone: fc.boolean(),
  to: fc.nat(8),
  desk: fc.constantFrom(0, 1),
  // Two days on, or back, or standing.
  clock: fc.constantFrom(0, 0, 1, 172_800_000, -172_800_000),
  fault: fc.option(fc.record({ at: fc.integer({ min: 1, max: 220 }), how }), { freq: 2 }),
  left: fc.nat(255),
  most: fc.constantFrom(Infinity, Infinity, 1, 7),
});

function leftBy(bits: number): Left {
  const bit = (n: number): boolean => ((bits >> (n % 8)) & 1) === 1;
  return { names: (n) => bit(n), bytes: (n) => (bit(n + 3) ? 1 : bit(n + 5) ? 0.5 : 0) };
}

/** A corpus at two desks, and what is known of it: what the files are, and every text that was acknowledged. */
interface World {
  disk: MemoryDisk;
  desks: readonly [Desk, Desk];
  now: Texts;
  clock: number;
  count: number;
  readonly acknowledged: Set<string>;
}

/** The file that is being written over or taken away: after the last look at it, nothing that happens to it can be seen. */
let inHand = "";

/** A disk that tells what is in hand. */
function watched(disk: MemoryDisk): Disk {
  const over = (path: string, act: () => void): void => {
    inHand = path;
    try {
      act();
    } finally {
      inHand = "";
    }
  };
  return {
    ...disk,
    rename: (from, to) => over(to, () => disk.rename(from, to)),
    remove: (path) => over(path, () => disk.remove(path)),
  };
}

const sitDown = (disk: MemoryDisk, clock: () => number): readonly [Desk, Desk] => [
  deskOn(watched(disk), { now: clock }),
  deskOn(watched(disk), { now: clock }),
];

const without = (texts: Texts, files: readonly string[]): Texts =>
  Object.fromEntries(Object.entries(texts).filter(([file]) => !files.includes(file)));

/** Does a thing and gives the files that it was to change, null where it was refused. */
function done(world: World, desk: Desk, { what, files, gone, to }: Doing): readonly string[] | null {
  try {
    if (what === "undo") desk.undo();
    else if (what === "redo") desk.redo();
    else if (what === "back") desk.back(to);
    else {
      world.count += 1;
      const last = files.length > 1 ? files.at(-1) : undefined;
      const changes = files.flatMap((file) => {
        const was = world.now[file] ?? null;
        const is = gone && file === last ? null : `${was ?? ""}# ${world.count}\n`;
        return was === is ? [] : [changed(file, was, is)];
      });
      desk.edit(`edit ${world.count}`, changes);
    }
    return names;
  } catch (error) {
    if (error instanceof CannotWrite) return null;
    throw error;
  }
}

/** What the files would be if nothing disturbed the step. */
function undisturbed(world: World, one: Doing): Texts {
  const disk = world.disk.after({ names: "all", bytes: "all" });
  const copy = { ...world, disk };
  done(copy, deskOn(disk), one);
  return disk.texts(home);
}

/** Has one thing happen, with what goes wrong in it, and checks what must hold then. */
function happen(world: World, one: Doing): void {
  world.clock += one.clock;
  const { disk, now: before } = world;
  if (one.what === "outside") {
    for (const file of one.files) disk.save(`${home}/${file}`, `# outside ${(world.count += 1)}\n`);
    world.now = disk.texts(home);
    return;
  }
  const after = undisturbed(world, one);
  const theirs = new Map<string, string>();
  const { fault } = one;
  disk.most(one.most);
  disk.trouble(null);
  if (fault?.how === "outside")
    disk.before(fault.at, () => {
      const [file = "a.yaml"] = one.files;
      if (inHand === `${home}/${file}`) return;
      theirs.set(file, `# outside in between ${world.count}\n`);
      disk.save(`${home}/${file}`, theirs.get(file) ?? "");
    });
  else if (fault?.how === "other desk" || fault?.how === "other desk, seat taken away")
    disk.before(fault.at, () => {
      if (fault.how !== "other desk") disk.save(`${home}/.variorum/seat`, null);
      const was = disk.texts(home)["other.yaml"] ?? null;
      const is = `${was ?? ""}# other ${world.count}\n`;
      try {
        world.desks[one.desk === 0 ? 1 : 0].edit("other", [changed("other.yaml", was, is)]);
        theirs.set("other.yaml", is);
      } catch (error) {
        if (!(error instanceof CannotWrite)) throw error;
      }
    });
  else if (fault) disk.trouble({ at: fault.at, how: fault.how });
  let isDone = false;
  try {
    isDone = done(world, world.desks[one.desk], one) !== null;
  } catch (error) {
    if (!disk.isLost()) throw error;
  }
  disk.trouble(null);
  disk.before(0, () => undefined);
  const wasLost = disk.isLost();
  if (wasLost) {
    world.disk = disk.after(leftBy(one.left));
    world.desks = sitDown(world.disk, () => world.clock);
  } else for (const desk of world.desks) desk.notice();
  checkAfter(world, { before, after, theirs, isDone, wasLost, what: one.what });
}

function checkAfter(
  world: World,
  {
    before,
    after,
    theirs,
    isDone,
    wasLost,
    what,
  }: {
    readonly before: Texts;
    readonly after: Texts;
    readonly theirs: ReadonlyMap<string, string>;
    readonly isDone: boolean;
    readonly wasLost: boolean;
    readonly what: Doing["what"];
  },
): void {
  const texts = world.disk.texts(home);
  const others = [...theirs.keys()];
  // All files of a step are old or all are new, but for those that somebody else wrote in it.
  const [own, old, fresh] = [texts, before, after].map((all) => without(all, others));
  // After another desk's step, what is undone is that step, and steps have other numbers.
  const isOther = what !== "edit" && theirs.size > 0;
  if (!isDone && !wasLost) expect(own).toEqual(old);
  else if (!isOther) expect(isDone ? [fresh] : [old, fresh]).toContainEqual(own);
  const [desk] = world.desks;
  const isKept = (text: string, file: string): boolean =>
    texts[file] === text || desk.text(hashOf(text)) !== null;
  for (const [file, text] of theirs) expect(isKept(text, file), `what was saved in ${file}`).toBe(true);
  // What a step was told to have written, or has written over, is in a file or in the history from then on.
  for (const [file, text] of [...Object.entries(before), ...Object.entries(after)])
    if (isDone && !isOther && before[file] !== after[file]) world.acknowledged.add(text);
  const all = new Set(Object.values(texts));
  const lost = [...world.acknowledged].filter((text) => !all.has(text) && desk.text(hashOf(text)) === null);
  expect(lost).toEqual([]);
  world.now = texts;
  const steps = desk.steps();
  expect(steps.map(({ n }) => n)).toEqual(steps.map((_, place) => place + 1));
  expect(desk.state().readOnly).toBeNull();
}

/** Undone and done again the files are the same, byte for byte, where nobody else has changed the same lines. */
function checkTurn({ disk, desks: [desk] }: World): void {
  const [before, state] = [disk.texts(home), desk.state()];
  try {
    expect(desk.undo()).toBe(state.undo);
  } catch (error) {
    expect(error).toBeInstanceOf(CannotWrite);
    expect(disk.texts(home)).toEqual(before);
    return;
  }
  expect(desk.redo()).toBe(state.undo);
  expect(disk.texts(home)).toEqual(before);
}

test("whatever goes wrong at whatever call, no file is half written and nothing acknowledged is lost", () => {
  fc.assert(
    fc.property(fc.array(doing, { minLength: 1, maxLength: 12 }), (doings) => {
      const disk = memoryDisk(
        Object.fromEntries(Object.entries(start).map(([file, text]) => [`${home}/${file}`, text])),
      );
      const world: World = {
        disk,
        desks: [deskOn(disk), deskOn(disk)],
        now: start,
        clock: Date.UTC(2026, 2, 1),
        count: 0,
        acknowledged: new Set(),
      };
      world.desks = sitDown(disk, () => world.clock);
      for (const one of doings) happen(world, one);
      checkTurn(world);
    }),
    { numRuns: 100 },
  );
});
