import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import type { Said, Text } from "../../../src/base/text/said/said.ts";
import type { Outcome } from "../../../src/derive/run.ts";
import { memoStoreIn } from "../../../src/host/memo-store.ts";
import { allow, permissionsIn } from "../../../src/host/permissions.ts";
import { changed, deskOn, home, oneByOne, start, untouched } from "./desk-cases.ts";
import type { MemoryDisk } from "./desk-disk.ts";

const desk = `${home}/.variorum`;
const part = `${desk}/history/000000001.jsonl`;
const edited = "claims: [] # one\n";

/** A corpus that was changed once, with one draft. */
function changedOnce(): MemoryDisk {
  const disk = untouched();
  const one = deskOn(disk);
  one.edit("one", [changed("claims.yaml", start["claims.yaml"], edited)]);
  one.drafts.put("new-claim", '{"text":"half a th"}');
  return disk.after({ names: "all", bytes: "all" });
}

const bytesOf = (disk: MemoryDisk, path: string): string => Buffer.from(disk.read(path)).toString("utf8");

/** Puts something else in the place of a folder and all that is in it. */
function insteadOf(disk: MemoryDisk, path: string, text: string | null): void {
  for (const one of disk.paths().toReversed()) if (one.startsWith(`${path}/`)) disk.save(one, null);
  disk.save(path, null);
  if (text === null) disk.linkTo(path);
  else disk.save(path, text);
}

/** What is done to a desk, what is said of it, and where what was there is afterwards; null where it stays. */
interface Damage {
  readonly to: (disk: MemoryDisk) => void;
  readonly said: readonly string[];
  readonly aside: string | null;
}

const damages: Readonly<Record<string, Damage>> = {
  "a file in the place of the desk": {
    to: (disk) => insteadOf(disk, desk, "?"),
    said: ["Unexpected file at `.variorum`, expected a folder: set aside as `.variorum.set-aside`"],
    aside: `${home}/.variorum.set-aside`,
  },
  "a file in the place of the history": {
    to: (disk) => insteadOf(disk, `${desk}/history`, "?"),
    said: [
      "Unexpected file at `.variorum/history`, expected a folder: set aside as `.variorum/history.set-aside`",
    ],
    aside: `${desk}/history.set-aside`,
  },
  "a link in the place of the texts": {
    to: (disk) => insteadOf(disk, `${desk}/history/texts`, null),
    said: [
      "Unexpected link at `.variorum/history/texts`, expected a folder: set aside as `.variorum/history/texts.set-aside`",
    ],
    aside: `${desk}/history/texts.set-aside`,
  },
  "a file in the place of the drafts": {
    to: (disk) => insteadOf(disk, `${desk}/drafts`, "?"),
    said: [
      "Unexpected file at `.variorum/drafts`, expected a folder: set aside as `.variorum/drafts.set-aside`",
    ],
    aside: `${desk}/drafts.set-aside`,
  },
  "a folder in the place of a part": {
    to: (disk) => insteadOf(disk, part, null),
    said: [
      "Unexpected content of `000000001.jsonl` in the history, expected its steps: set aside as `000000001.jsonl.set-aside`",
    ],
    aside: `${part}.set-aside`,
  },
  "a part that is no history": {
    to: (disk) => disk.save(part, Buffer.from([0, 255, 254, 10, 13, 0])),
    said: [
      "Unexpected content of `000000001.jsonl` in the history, expected its steps: set aside as `000000001.jsonl.set-aside`",
    ],
    aside: `${part}.set-aside`,
  },
  "a part whose last line was torn off": {
    to: (disk) => disk.save(part, bytesOf(disk, part).slice(0, -30)),
    said: ["One line of the history cannot be read and is passed over"],
    aside: null,
  },
  "a draft that was cut off": {
    to: (disk) => disk.save(`${desk}/drafts/new-claim.json`, '{"text":"half'),
    said: [
      "Unexpected content of the draft `new-claim`, expected JSON: set aside as `new-claim.json.set-aside`",
    ],
    aside: `${desk}/drafts/new-claim.json.set-aside`,
  },
  "a mark that was left on the seat": {
    to: (disk) => disk.save(`${desk}/seat`, "rubbish\u0000"),
    said: [],
    aside: null,
  },
  "texts that are gone": {
    to: (disk) => {
      for (const path of disk.paths().toReversed())
        if (path.startsWith(`${desk}/history/texts`)) disk.save(path, null);
    },
    said: [],
    aside: null,
  },
};

describe("a damaged desk", () => {
  test.each(Object.entries(damages))(
    "%s: it is said and set aside, the corpus is as it was, and work goes on",
    (_, { to, said, aside }) => {
      const disk = changedOnce();
      to(disk);
      const before = disk.texts(home);
      const one = deskOn(disk);
      one.drafts.get("new-claim");
      expect(disk.texts(home)).toEqual(before);
      one.edit("two", [changed("claims.yaml", edited, "claims: [] # two\n")]);
      one.drafts.put("new-claim", "{}");
      const { troubles = [], ...state } = one.state();
      expect(troubles.map(inEnglish)).toEqual(said);
      expect(state).toMatchObject({ readOnly: null, undo: "two" });
      if (aside !== null) expect(disk.see(aside)).not.toBeNull();
      expect(one.undo()).toBe("two");
      expect(disk.texts(home)).toEqual({ ...start, "claims.yaml": edited });
      const again = deskOn(disk);
      expect(again.redo()).toBe("two");
      expect(again.drafts.get("new-claim")).toBe("{}");
    },
  );

  test("where the texts are gone, what needs them is refused, and said", () => {
    const disk = changedOnce();
    damages["texts that are gone"]?.to(disk);
    expect(() => deskOn(disk).undo()).toThrow(
      "Missing text of `claims.yaml` in the history, expected it as it was: nothing was written",
    );
    expect(disk.texts(home)).toEqual({ ...start, "claims.yaml": edited });
  });

  test("what was set aside before is not written over", () => {
    const disk = changedOnce();
    for (const text of ["first", "second"]) {
      insteadOf(disk, `${desk}/drafts`, text);
      deskOn(disk).drafts.put("a", "{}");
    }
    expect([".set-aside", ".set-aside-2"].map((end) => bytesOf(disk, `${desk}/drafts${end}`))).toEqual([
      "first",
      "second",
    ]);
  });
});

const settings = "/own/variorum";
const kept = `${desk}/permissions.json`;
const plugin = { name: "mean", hash: "a".repeat(64) };
const earlier = { name: "earlier", hash: "b".repeat(64) };
const lines = (all: readonly Text[]): readonly string[] => all.map(inEnglish);

/** Allows a plug-in and gives what is said. */
function allowing(disk: MemoryDisk, file: typeof plugin): readonly string[] {
  const told: Said[] = [];
  allow(home, file, settings, { disk, sitting: oneByOne, tell: (one) => told.push(one) });
  return lines(told);
}

describe("damaged permissions", () => {
  const setAside =
    "Unexpected content of `.variorum/permissions.json`, expected permissions: set aside as `.variorum/permissions.json.set-aside`";

  test.each(["", '{"plugins":[{"na', "[]", '{"plugins":{}}'])(
    "%j allows nothing, and is set aside",
    (text) => {
      const disk = untouched();
      expect(allowing(disk, earlier)).toEqual([]);
      disk.save(kept, text);
      expect(permissionsIn(home, settings, disk)(earlier)).toBe(false);
      expect(allowing(disk, plugin)).toEqual([setAside]);
      expect(bytesOf(disk, `${kept}.set-aside`)).toBe(text);
      expect([plugin, earlier].map(permissionsIn(home, settings, disk))).toEqual([true, false]);
    },
  );

  test("a wrong seal allows nothing, and the others stay allowed", () => {
    const disk = untouched();
    allowing(disk, earlier);
    allowing(disk, plugin);
    const { plugins } = JSON.parse(bytesOf(disk, kept)) as { readonly plugins: readonly object[] };
    const spoilt = plugins.map((one, place) => (place === 0 ? { ...one, seal: "c".repeat(64) } : one));
    disk.save(kept, JSON.stringify({ plugins: spoilt }));
    expect([earlier, plugin].map(permissionsIn(home, settings, disk))).toEqual([false, true]);
    expect(allowing(disk, earlier)).toEqual([]);
    expect([earlier, plugin].map(permissionsIn(home, settings, disk))).toEqual([true, true]);
  });

  test("a key that is none is set aside, and a new one is made", () => {
    const disk = untouched();
    allowing(disk, earlier);
    disk.save(`${settings}/key`, "12ab");
    expect(allowing(disk, plugin)).toEqual([
      `Unexpected content of \`${settings}/key\`, expected your own key: set aside as \`${settings}/key.set-aside\``,
    ]);
    expect([plugin, earlier].map(permissionsIn(home, settings, disk))).toEqual([true, false]);
  });
});

describe("a damaged memo", () => {
  const file = "/cache/variorum/x.json";
  const outcomes = new Map<string, Outcome>([
    [
      "d".repeat(64),
      {
        status: "computed",
        numbers: { p: { value: 0.25, low: null, high: null } },
        leftOut: [],
        warnings: [],
        data: null,
      },
    ],
  ]);
  const damaged: Readonly<Record<string, (text: string) => string>> = {
    "cut off": (text) => text.slice(0, -9),
    "with another figure": (text) => text.replace("0.25", "0.26"),
    "with other bytes": (text) => text.replace("computed", "comp\u0000ted"),
    "of other JSON": () => '{"version":"2"}',
    empty: () => "",
  };

  test.each(Object.entries(damaged))("%s is set aside with a word, and the next is kept", (_, damage) => {
    const disk = untouched();
    const told: Said[] = [];
    const store = memoStoreIn(file, { disk, tell: (one) => told.push(one) });
    store.save(outcomes);
    expect([...store.load()]).toEqual([...outcomes]);
    disk.save(file, damage(bytesOf(disk, file)));
    expect([...store.load()]).toEqual([]);
    expect([...store.load()]).toEqual([]);
    expect(lines(told)).toEqual([
      "Unexpected content of `/cache/variorum/x.json`, expected outcomes of earlier runs: set aside as `x.json.set-aside`",
    ]);
    store.save(outcomes);
    expect([...store.load()]).toEqual([...outcomes]);
    expect(disk.texts(home)).toEqual(start);
  });

  test("a folder in its place is set aside, and one of an earlier version of the program is let go without a word", () => {
    const disk = untouched();
    const told: Said[] = [];
    const store = memoStoreIn(file, { disk, tell: (one) => told.push(one) });
    disk.save(`${file}/what`, "?");
    expect([...store.load()]).toEqual([]);
    expect(told).toHaveLength(1);
    expect(bytesOf(disk, `${file}.set-aside/what`)).toBe("?");
    disk.save(file, '{"version":1,"compute":{}}');
    expect([...store.load()]).toEqual([]);
    expect(told).toHaveLength(1);
    store.save(outcomes);
    expect(store.load().size).toBe(1);
  });
});
