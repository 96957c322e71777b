import fc from "fast-check";
import { expect, test } from "vitest";
import type { FileChange } from "../../../src/base/text/edit.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { hashOf } from "../../../src/base/text/hash.ts";
import { CannotWrite } from "../../../src/host/desk/refusal.ts";
import { deskOn, home } from "./desk-cases.ts";
import { memoryDisk } from "./desk-disk.ts";

const file = "large.yaml";
/** Larger than what is remembered, with signs that are two units of a text and four bytes. */
const large = `claims:\n${"  - { id: ring, text: a ring 😀 of posts – ὁ κύκλος }\n".repeat(1600)}`;

/** One edit of a text: where it begins in hundredths of it, how long it is, and what is put there. */
const typed = fc.record({
  who: fc.constantFrom("desk", "desk", "desk", "another program", "undo"),
  at: fc.integer({ min: 0, max: 99 }),
  by: fc.nat(5),
  long: fc.nat(3),
  put: fc.constantFrom("", "x", "–", "😀", "\ud83d", "\ude00", "abc\n"),
});

test("a large file that was seen before is told by its bytes: each edit comes to what it was made for", () => {
  fc.assert(
    fc.property(fc.array(typed, { minLength: 1, maxLength: 8 }), (all) => {
      const disk = memoryDisk({ [`${home}/corpus.yaml`]: "format: 1\n", [`${home}/${file}`]: large });
      const desk = deskOn(disk);
      for (const { who, at, by, long, put } of all) {
        const before = disk.texts(home)[file] ?? "";
        const start = Math.floor((at * before.length) / 100) + by;
        const edits = [{ file, start, end: start + long, text: put }];
        // Half a sign is no text in UTF-8: what stands there is the sign for what cannot be read.
        const then = Buffer.from(edited(before, edits), "utf8").toString("utf8");
        const change: FileChange = { file, madeFor: hashOf(before), edits };
        if (who === "undo") {
          if (desk.state().undo !== null) desk.undo();
        } else if (who === "another program") {
          disk.save(`${home}/${file}`, then);
          if (then !== before) expect(() => desk.edit("stale", [change])).toThrow(CannotWrite);
        } else {
          desk.edit("one", [change]);
          expect(disk.texts(home)[file] === then).toBe(true);
          expect(desk.text(hashOf(then)) === null && then !== before).toBe(false);
        }
      }
    }),
    { numRuns: 20 },
  );
});

test("half a sign that was put in a large file stays the sign for what cannot be read, whatever comes next to it", () => {
  const disk = memoryDisk({ [`${home}/corpus.yaml`]: "format: 1\n", [`${home}/${file}`]: large });
  const desk = deskOn(disk);
  for (const [place, half] of ["\ud83d", "\ude00"].entries()) {
    const madeFor = hashOf(disk.texts(home)[file] ?? "");
    desk.edit("one", [{ file, madeFor, edits: [{ file, start: 7 + place, end: 7 + place, text: half }] }]);
  }
  expect(disk.texts(home)[file] === `${large.slice(0, 7)}\ufffd\ufffd${large.slice(7)}`).toBe(true);
});

test("a text of the history that was taken away while the desk was open is kept again by the next step", () => {
  const disk = memoryDisk({ [`${home}/corpus.yaml`]: "format: 1\n", [`${home}/${file}`]: large });
  const desk = deskOn(disk);
  const step = (was: string, is: string): number =>
    desk.edit("one", [
      { file, madeFor: hashOf(was), edits: [{ file, start: 0, end: was.length, text: is }] },
    ]);
  step(large, `${large}# one\n`);
  for (const path of disk.paths().toReversed()) if (path.includes("/texts/")) disk.save(path, null);
  step(`${large}# one\n`, `${large}# two\n`);
  desk.undo();
  expect(disk.texts(home)[file] === `${large}# one\n`).toBe(true);
});
