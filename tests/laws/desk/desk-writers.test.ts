import { describe, expect, test } from "vitest";
import { Stop } from "../../../src/cli/fault.ts";
import { startCorpus } from "../../../src/cli/start/new.ts";
import type { Outcome } from "../../../src/derive/run.ts";
import type { Disk } from "../../../src/host/desk/disk.ts";
import { CannotWrite } from "../../../src/host/desk/refusal.ts";
import { encloseNew } from "../../../src/host/enclosed.ts";
import { memoStoreIn } from "../../../src/host/memo-store.ts";
import { allow, permissionsIn } from "../../../src/host/permissions.ts";
import { placeFiles, placedBelow } from "../../../src/host/telling/files/place.ts";
import { deskOn, home, oneByOne, untouched } from "./desk-cases.ts";
import { memoryDisk } from "./desk-disk.ts";
import type { Left, MemoryDisk } from "./desk-disk.ts";

/** Something besides an edit that writes: on which disk, what, and to which files or folders. */
interface Writer {
  readonly on: () => MemoryDisk;
  /** Gives what it says where it does not throw: null where all went well. */
  readonly write: (disk: Disk) => unknown;
  readonly below: readonly string[];
}

const plugin = { name: "mean", hash: "a".repeat(64) };
const settings = "/own/variorum";

async function* paper(): AsyncGenerator<Uint8Array> {
  yield Buffer.from("%PDF-1.4 ");
  yield Buffer.from("some paper");
}

/** A corpus in which one plug-in was allowed. */
function allowedOnce(): MemoryDisk {
  const disk = untouched();
  allow(home, { name: "earlier", hash: "b".repeat(64) }, settings, { disk, sitting: oneByOne });
  return disk.after({ names: "all", bytes: "all" });
}

const outcome = (p: number): ReadonlyMap<string, Outcome> =>
  new Map([["c".repeat(64), { status: "refused", reason: `r${p}`, why: "w" }]]);

/** A memo that kept something before. */
function remembered(): MemoryDisk {
  const disk = memoryDisk();
  memoStoreIn("/cache/variorum/x.json", { disk }).save(outcome(1));
  return disk.after({ names: "all", bytes: "all" });
}

const made = [
  { path: "fig-1.svg", content: "<svg>new</svg>" },
  { path: "deep/fig-2.svg", content: new Uint8Array([1, 2, 3]) },
  { path: "captions.txt", content: "new captions" },
];

const writers: Readonly<Record<string, Writer>> = {
  "a draft over another": {
    on: () => {
      const disk = untouched();
      deskOn(disk).drafts.put("a", '"old"');
      return disk.after({ names: "all", bytes: "all" });
    },
    write: (disk) => deskOn(disk).drafts.put("a", '"new, and longer"'),
    below: [`${home}/.variorum/drafts/a.json`],
  },
  "the first permission, with a key": {
    on: untouched,
    write: (disk) => allow(home, plugin, settings, { disk, sitting: oneByOne }),
    below: [`${home}/.variorum/permissions.json`],
  },
  "one more permission": {
    on: allowedOnce,
    write: (disk) => allow(home, plugin, settings, { disk, sitting: oneByOne }),
    below: [`${home}/.variorum/permissions.json`, settings],
  },
  "a paper": {
    on: untouched,
    write: (disk) => encloseNew(home, "papers/vane.pdf", paper(), disk),
    below: [`${home}/papers`],
  },
  "a memo over another": {
    on: remembered,
    write: (disk) => memoStoreIn("/cache/variorum/x.json", { disk }).save(outcome(2)),
    below: ["/cache/variorum/x.json"],
  },
  "a folder of figures, one of them over another": {
    on: () => memoryDisk({ "/out/fig-1.svg": "<svg>old</svg>", "/out/captions.txt": "old captions" }),
    write: (disk) => placeFiles(placedBelow("/out", made), disk),
    below: ["/out"],
  },
  "a new corpus": {
    on: () => memoryDisk({ "/home/readme": "" }),
    write: (disk) => startCorpus("/home/merrow-down", disk),
    below: ["/home/merrow-down"],
  },
};

/** What stands at or below some paths, names that begin with a dot left out. */
function textsBelow(disk: MemoryDisk, below: readonly string[]): Readonly<Record<string, string>> {
  const paths = disk
    .paths()
    .filter((path) => below.some((one) => path === one || path.startsWith(`${one}/`)));
  const start = (path: string): number => below.find((one) => path.startsWith(one))?.length ?? 0;
  return Object.fromEntries(
    paths
      .filter(
        (path) =>
          !path
            .slice(start(path))
            .split("/")
            .some((part) => part.startsWith(".")),
      )
      .filter((path) => disk.see(path)?.kind === "file")
      .map((path) => [path, Buffer.from(disk.read(path)).toString("utf8")]),
  );
}

/** What a thing that is done throws; null for nothing. */
async function tried(one: () => unknown): Promise<unknown> {
  try {
    await one();
    return null;
  } catch (error) {
    return error;
  }
}

const lefts: readonly Left[] = [
  { names: "all", bytes: "all" },
  { names: "all", bytes: "synced" },
  { names: "synced", bytes: "synced" },
  { names: (n) => n % 2 === 0, bytes: () => 0.5 },
];

describe.each(Object.entries(writers))("%s", (name, { on, write, below }) => {
  // A key and the number of an own sitting are drawn by lot.
  const plain = (texts: Readonly<Record<string, string>>): unknown =>
    Object.fromEntries(
      Object.entries(texts).map(([path, text]) => [path, text.replaceAll(/[0-9a-f]{64}/g, "…")]),
    );

  const undisturbed = async (): Promise<{
    readonly both: readonly [unknown, unknown];
    readonly calls: number;
  }> => {
    const disk = on();
    const before = plain(textsBelow(disk, below));
    disk.trouble(null);
    await write(disk);
    const calls = disk.calls();
    return { both: [before, plain(textsBelow(disk, below))], calls };
  };

  test("stopped at every call in turn, every file is whole, and old or new", async () => {
    const { both, calls } = await undisturbed();
    expect(both[0]).not.toEqual(both[1]);
    const [old, fresh] = both as readonly [Record<string, string>, Record<string, string>];
    for (let at = 1; at <= calls; at++) {
      const disk = on();
      disk.trouble({ at, how: "half" });
      await tried(() => write(disk));
      expect(disk.isLost(), `at ${at}`).toBe(true);
      for (const left of lefts) {
        const found = disk.after(left);
        const texts = plain(textsBelow(found, below)) as Record<string, string>;
        const torn = Object.entries(texts).filter(
          ([path, text]) => text !== old[path] && text !== fresh[path],
        );
        expect(torn, `at ${at}`).toEqual([]);
        expect(
          Object.keys(old).filter((path) => !(path in texts)),
          `at ${at}`,
        ).toEqual([]);
        // What was begun is done by whoever asks for it again.
        if (name !== "a new corpus") {
          const why = await tried(() => write(found));
          if (why !== null) expect(why).toBeInstanceOf(CannotWrite);
          expect(plain(textsBelow(found, below)), `again, at ${at}`).toEqual(fresh);
        }
      }
    }
  });

  test.each(["ENOSPC", "EACCES", "EROFS", "EXDEV", "EIO", "full"] as const)(
    "with %s at every call in turn, all is as it was where it is refused",
    async (how) => {
      const { both, calls } = await undisturbed();
      for (let at = 1; at <= calls; at++) {
        const disk = on();
        disk.most(at % 2 === 0 ? 3 : Infinity);
        disk.trouble({ at, how });
        let told: unknown = null;
        try {
          told = (await write(disk)) ?? null;
        } catch (error) {
          told = (error as Error).message;
          expect(
            error instanceof CannotWrite || error instanceof Stop,
            `${how} at ${at}: ${String(told)}`,
          ).toBe(true);
        }
        disk.trouble(null);
        const isRefused = name === "a new corpus" ? typeof told === "string" : told !== null;
        const texts = plain(textsBelow(disk, below));
        // A memo that cannot be kept is passed over without a word; a draft is kept or was.
        if (name.startsWith("a memo") || name.startsWith("a draft")) expect(both).toContainEqual(texts);
        else expect(texts, `${how} at ${at}`).toEqual(both[isRefused ? 0 : 1]);
      }
    },
  );
});

test("who was allowed before is allowed after another was, and a permission is found again", () => {
  const disk = allowedOnce();
  allow(home, plugin, settings, { disk, sitting: oneByOne });
  const isAllowed = permissionsIn(home, settings, disk);
  expect([plugin, { name: "earlier", hash: "b".repeat(64) }].map(isAllowed)).toEqual([true, true]);
  expect(isAllowed({ ...plugin, hash: "d".repeat(64) })).toBe(false);
});
