import type { FileChange } from "../../../src/base/text/edit.ts";
import { hashOf } from "../../../src/base/text/hash.ts";
import { openDesk } from "../../../src/host/desk/desk.ts";
import type { Desk, Tools } from "../../../src/host/desk/desk.ts";
import type { Disk } from "../../../src/host/desk/disk.ts";
import type { Sitting } from "../../../src/host/desk/seat.ts";
import { memoryDisk } from "./desk-disk.ts";
import type { MemoryDisk } from "./desk-disk.ts";

/** The folder of the corpora in the laws of the desk. */
export const home = "/corpus";

let sittings = 0;

/** Programs that come one after the other: who left a mark on the seat of a desk has ended. */
export const oneByOne: Sitting = {
  mark: () => `here 1 ${String(++sittings).padStart(16, "0")}`,
  hasEnded: () => true,
  wait: () => undefined,
};

/** A desk on a disk, at a clock that stands. */
export function deskOn(disk: Disk, given: Partial<Tools> = {}): Desk {
  return openDesk(home, { disk, now: () => Date.UTC(2026, 2, 1), sitting: oneByOne, ...given });
}

/** A change that makes a whole text of another; null for no file. */
export function changed(file: string, was: string | null, is: string | null): FileChange {
  const madeFor = was === null ? null : hashOf(was);
  if (is === null) return { file, madeFor, edits: [], gone: true };
  return { file, madeFor, edits: [{ file, start: 0, end: was?.length ?? 0, text: is }] };
}

/** Texts by the path of their file in the corpus. */
export type Texts = Readonly<Record<string, string>>;

/** A small corpus: a file with other line ends, one with a byte-order mark, and one in a folder. */
export const start = {
  "corpus.yaml": "format: 1\r\ntitle: The post-rings of Merrow Down\r\n",
  "claims.yaml": "\ufeffclaims:\n  - id: roofed\n    text: The ring had a roof\n",
  "ring/posts.yaml": "artefacts:\n  - id: post-1\n    name: Post 1\n",
};
const more = `${start["claims.yaml"]}  # ${"a remark ".repeat(300)}\n`;

/** A disk with that corpus, on which nothing was done yet. */
export function untouched(): MemoryDisk {
  return memoryDisk(
    Object.fromEntries(Object.entries(start).map(([file, text]) => [`${home}/${file}`, text])),
  );
}

/** The same after three steps, the last of them taken back. */
export function worked(): MemoryDisk {
  const disk = untouched();
  const desk = deskOn(disk);
  desk.edit("a remark", [changed("claims.yaml", start["claims.yaml"], more)]);
  desk.edit("a table", [changed("posts.csv", null, "id,name\n")]);
  desk.edit("a post", [changed("ring/posts.yaml", start["ring/posts.yaml"], "artefacts: []\n")]);
  desk.undo();
  return disk;
}

/** A step on a disk as it is given, with how much of the history is kept. */
export interface Case {
  readonly on: MemoryDisk;
  readonly step: (desk: Desk) => unknown;
  readonly given?: Partial<Tools>;
}

/** Steps of every kind, by what they are. */
export const cases: Readonly<Record<string, Case>> = {
  "changes of two files, a new one in a new folder and one that goes": {
    on: worked(),
    step: (desk) =>
      desk.edit("all at once", [
        changed("claims.yaml", more, "claims: []\n"),
        changed("ring/posts.yaml", start["ring/posts.yaml"], "artefacts: [] # none\n"),
        changed("readings/1998/hale.yaml", null, "source: hale-1998\n"),
        changed("posts.csv", "id,name\n", null),
      ]),
  },
  "the first change of all": {
    on: untouched(),
    step: (desk) =>
      desk.edit("first", [
        changed("claims.yaml", start["claims.yaml"], "claims: []\n"),
        changed("ring/posts.yaml", start["ring/posts.yaml"], "artefacts: []\n"),
      ]),
  },
  "a change with which a new part of the history begins, and an old one goes": {
    on: worked(),
    given: { limits: { steps: 1, bytes: 1_000_000, part: 2 } },
    step: (desk) => desk.edit("next", [changed("claims.yaml", more, "claims: []\n")]),
  },
  undo: { on: worked(), step: (desk) => desk.undo() },
  redo: { on: worked(), step: (desk) => desk.redo() },
  "back to the beginning": { on: worked(), step: (desk) => desk.back(0) },
};
