import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { driverLine, setUp } from "../../../src/cli/merge/set-up.ts";
import { settle } from "../../../src/cli/merge/settle.ts";
import { startCorpus } from "../../../src/cli/start/new.ts";
import { committedFiles } from "../../../src/host/desk/git.ts";
import type { Clones, Files } from "./git-clones.ts";
import {
  atDesk,
  cleared,
  clonesWith,
  edited,
  findingsIn,
  hasGit,
  pageOf,
  program,
  reportIn,
  textIn,
} from "./git-clones.ts";

const ring = `# The ring on Merrow Down.
claims:
  - id: roofed
    text: The ring carried a roof.   # so everybody then
  - { id: open, text: The ring stood open., note: to the sky }
observations:
  - id: deep
    of: ring
    text: The post stood deep in the chalk.
arguments:
  - { id: deep-so-roofed, because: deep, therefore: roofed }
`;
const start: Files = {
  "corpus.yaml": "format: 1\ntitle: The ring\nbibliography: [books.bib]\nmeasurement-tables: [depths.csv]\n",
  "ring.yaml": ring,
  "things.yaml": "artefacts:\n  - { id: ring, name: The ring }\n",
  "books.bib": "@book{vane-1968,\n  title = {The ring},\n  year = {1968},\n}\n",
  "depths.csv": "id,of,dimension,value,unit\nm1,ring,depth,62,cm\n",
};

let clones: Clones;
afterEach(() => cleared(clones));

/** A change of one file: each text in it is put in the place of another. */
const put =
  (path: string, ...pairs: readonly (readonly [string, string])[]) =>
  (files: Files): Files => {
    let text = files[path] ?? "";
    for (const [from, to] of pairs) {
      expect(text).toContain(from);
      text = text.replace(from, () => to);
    }
    return { [path]: text };
  };
const all =
  (...changes: readonly ((files: Files) => Files)[]) =>
  (files: Files): Files =>
    changes.reduce((made, change) => ({ ...made, ...change({ ...files, ...made }) }), {} as Files);

type Change = ReturnType<typeof put>;

/** Has both sides make a change and mine take in theirs; git's exit code. */
async function merged(mine: Change, theirs: Change, how = "--no-rebase"): Promise<number | null> {
  await edited(clones, clones.mine, mine);
  await edited(clones, clones.theirs, theirs);
  return clones.git(clones.mine, "pull", "-q", "--no-edit", how, clones.theirs, "main").code;
}

/** Whether my clone is, in all it comes to, as a corpus in which both changes were made one after the other. */
async function asInOne(mine: Change, theirs: Change): Promise<void> {
  const one = clonesWith(start, null);
  try {
    await edited(one, one.mine, all(mine, theirs));
    expect(findingsIn(clones.mine)).toEqual([]);
    expect(reportIn(clones.mine)).toEqual(reportIn(one.mine));
  } finally {
    cleared(one);
  }
}

describe.runIf(hasGit)("two clones that were edited at their desks and are merged by git", () => {
  test("with records of their own, and fields of one record, come to what one corpus with both edits comes to", async () => {
    clones = clonesWith(start);
    const mine = all(
      put(
        "ring.yaml",
        ["carried a roof.", "carried a roof of turf."],
        ["text: The ring stood open.", "text: The ring stood open then."],
        ["arguments:", "  - { id: dry, of: ring, text: The floor was dry. } # of the north\narguments:"],
      ),
      put("books.bib", [
        "1968},\n}\n",
        "1968},\n}\n\n@book{hale-1896,\n  title = {A},\n  year = {1896},\n}\n",
      ]),
      put("depths.csv", ["m1,ring,depth,62,cm\n", "m1,ring,depth,62.5,cm\nm2,ring,width,2,m\n"]),
    );
    const theirs = all(
      put(
        "ring.yaml",
        ["note: to the sky", "note: to the sky of the Down"],
        [
          "arguments:",
          "  # Not in the report.\n  - { id: burnt, of: ring, text: A hearth was burnt. }\narguments:",
        ],
      ),
      put("books.bib", [
        "1968},\n}\n",
        "1968},\n}\n\n% seen\n@book{kern-1901,\n  title = {B},\n  year = {1901},\n}\n",
      ]),
      (files) => ({ "depths.csv": `${files["depths.csv"] ?? ""}m3,ring,height,3,m\n` }),
    );
    expect(await merged(mine, theirs)).toBe(0);
    const text = textIn(clones.mine, "ring.yaml");
    expect(text).toContain(
      "  - { id: open, text: The ring stood open then., note: to the sky of the Down }\n",
    );
    expect(text).toContain("carried a roof of turf.   # so everybody then\n");
    expect(text).toContain(
      "  # Not in the report.\n  - { id: burnt, of: ring, text: A hearth was burnt. }\n",
    );
    expect(text).toContain("  - { id: dry, of: ring, text: The floor was dry. } # of the north\n");
    expect(textIn(clones.mine, "books.bib")).toContain("% seen\n@book{kern-1901,");
    await asInOne(mine, theirs);
    expect(clones.git(clones.mine, "status", "--porcelain").out).toBe("");
  });

  test("with one field changed on both: the file says so at its place, and the app settles it by record in one step", async () => {
    clones = clonesWith(start);
    const code = await merged(
      put("ring.yaml", ["deep in", "three feet deep in"], ["carried a roof", "carried a turf roof"]),
      put("ring.yaml", ["deep in", "a metre deep in"], ["text: The ring stood", "text: It stood"]),
    );
    expect(code).toBe(1);
    expect(clones.git(clones.mine, "status", "--porcelain").out).toBe("UU ring.yaml\n");
    expect(findingsIn(clones.mine)).toEqual([
      "conflict-marks ring.yaml:9 Unexpected conflict marks in one place, expected one text: two versions of the file were not merged",
    ]);
    const [clash, ...others] = pageOf(clones.mine, "ring.yaml")?.clashes ?? [];
    expect(others).toEqual([]);
    expect([clash?.field, clash?.base, clash?.mine, clash?.theirs].map((one) => JSON.stringify(one))).toEqual(
      [
        expect.stringContaining("text"),
        expect.stringContaining("stood deep in"),
        expect.stringContaining("three feet"),
        expect.stringContaining("a metre"),
      ],
    );
    await atDesk(clones.mine, () => [pageOf(clones.mine, "ring.yaml", "t")?.change ?? {}]);
    expect(textIn(clones.mine, "ring.yaml")).toBe(
      ring
        .replace("deep in", "a metre deep in")
        .replace("carried a roof", "carried a turf roof")
        .replace("text: The ring stood", "text: It stood"),
    );
    expect(findingsIn(clones.mine)).toEqual([]);
    expect(clones.git(clones.mine, "commit", "-q", "-am", "Merge").code).toBe(0);
  });

  test("with a record that one took out and the other changed, settled on the command line", async () => {
    clones = clonesWith(start);
    const record = "  - id: deep\n    of: ring\n    text: The post stood deep in the chalk.\n";
    const code = await merged(
      put(
        "ring.yaml",
        [record, ""],
        ["\narguments:\n  - { id: deep-so-roofed, because: deep, therefore: roofed }", ""],
      ),
      put("ring.yaml", ["deep in", "a metre deep in"]),
    );
    expect(code).toBe(1);
    const shown = clones.variorum(clones.mine, "merge-files", "--settle", "ring.yaml");
    expect(shown).toMatchObject({ code: 1, err: "" });
    expect(shown.out).toMatch(/^ring\.yaml: its two versions say two things in one place \(by record\)\n/);
    expect(shown.out).toMatch(
      /ours\n +nothing\n +theirs\n(.*\n)+? +text: The post stood a metre deep in the chalk\.\n/,
    );
    expect(() => settle(join(clones.mine, "ring.yaml"), { take: ["2=ours"] })).toThrow(
      "Unknown place 2, expected 1 to 1",
    );
    const settled = clones.variorum(
      clones.mine,
      "merge-files",
      "--settle",
      "ring.yaml",
      "--take",
      "1=theirs",
    );
    expect(settled).toEqual({
      code: 0,
      out: "Settled: ring.yaml, one place\nNext: git add ring.yaml\n",
      err: "",
    });
    expect(textIn(clones.mine, "ring.yaml")).toContain("text: The post stood a metre deep in the chalk.\n");
    expect(findingsIn(clones.mine)).toEqual([]);
  });

  test("with another id on one side and a reference to the old one on the other: that is found", async () => {
    clones = clonesWith(start);
    const code = await merged(
      put("ring.yaml", ["id: roofed", "id: ring-roofed"], ["therefore: roofed", "therefore: ring-roofed"]),
      (files) => ({
        "hale.yaml": "positions:\n  - { who: hale, claim: roofed, stance: holds }\n",
        "things.yaml": `${files["things.yaml"] ?? ""}scholars:\n  - { id: hale, name: Edwin Hale }\n`,
      }),
    );
    expect(code).toBe(0);
    expect(findingsIn(clones.mine)).toEqual([
      expect.stringMatching(/^unknown-reference hale\.yaml:2 Unknown .*roofed/),
    ]);
  });

  test("with the line ends of another system on one side: theirs are kept throughout, with both edits", async () => {
    clones = clonesWith(start);
    const code = await merged(
      (files) => ({
        "ring.yaml": (files["ring.yaml"] ?? "").replaceAll("\n", "\r\n").replace("a roof.", "no roof."),
      }),
      put(
        "ring.yaml",
        ["stood open.", "stood open then."],
        ["arguments:", "  - { id: dry, of: ring, text: Dry. }\narguments:"],
      ),
    );
    expect(code).toBe(0);
    const text = textIn(clones.mine, "ring.yaml");
    expect(text.replaceAll("\r\n", "\n")).toBe(
      ring
        .replace("a roof.", "no roof.")
        .replace("stood open.", "stood open then.")
        .replace("arguments:", "  - { id: dry, of: ring, text: Dry. }\narguments:"),
    );
    expect(text.match(/(?<!\r)\n/u)).toBeNull();
  });

  test("by a rebase, in which the sides change places, a conflict is settled and the rebase goes on", async () => {
    clones = clonesWith(start);
    const code = await merged(
      put("ring.yaml", ["deep in", "three feet deep in"]),
      put("ring.yaml", ["deep in", "a metre deep in"], ["a roof.", "no roof."]),
      "--rebase",
    );
    expect(code).toBe(1);
    const [clash] = pageOf(clones.mine, "ring.yaml")?.clashes ?? [];
    expect(JSON.stringify([clash?.mine, clash?.theirs])).toMatch(/a metre.*three feet/);
    expect(settle(join(clones.mine, "ring.yaml"), { take: ["theirs"] }).settled).toBe(true);
    expect(clones.git(clones.mine, "add", "ring.yaml").code).toBe(0);
    expect(clones.git(clones.mine, "rebase", "--continue").code).toBe(0);
    expect(textIn(clones.mine, "ring.yaml")).toBe(
      ring.replace("deep in", "three feet deep in").replace("a roof.", "no roof."),
    );
  });

  test("across each other, so that what they were made from is itself a merge with conflicts", async () => {
    clones = clonesWith(start);
    const { git, mine, theirs } = clones;
    expect(
      await merged(
        put("ring.yaml", ["deep in", "three feet in"]),
        put("ring.yaml", ["deep in", "a metre in"]),
      ),
    ).toBe(1);
    git(mine, "checkout", "--ours", "ring.yaml");
    git(mine, "commit", "-q", "-am", "Mine");
    git(mine, "branch", "before", "main~1");
    expect(git(theirs, "pull", "-q", "--no-edit", "--no-rebase", mine, "before").code).toBe(1);
    git(theirs, "checkout", "--ours", "ring.yaml");
    git(theirs, "commit", "-q", "-am", "Theirs");
    expect(git(mine, "pull", "-q", "--no-edit", "--no-rebase", theirs, "main").code).toBe(1);
    const marked = pageOf(mine, "ring.yaml");
    expect(marked?.clashes.map(({ field }) => field)).toEqual(["text"]);
    expect(JSON.stringify(marked?.clashes)).toMatch(/three feet.*a metre/);
    expect(findingsIn(mine)).toEqual([expect.stringMatching(/^conflict-marks ring\.yaml:9 /)]);
  });
});

describe.runIf(hasGit)("where git cannot call the program", () => {
  test("its own merge leaves marks that are read and settled just so", async () => {
    clones = clonesWith(start, null);
    const code = await merged(
      put("ring.yaml", ["stood open.", "stood open then."], ["deep in", "three feet in"]),
      put("ring.yaml", ["to the sky", "to the stars"], ["deep in", "a metre in"]),
    );
    expect(code).toBe(1);
    expect(findingsIn(clones.mine)).toEqual([
      expect.stringMatching(/^conflict-marks ring\.yaml:5 .* in one place/),
    ]);
    expect(pageOf(clones.mine, "ring.yaml")?.by).toBe("record");
    expect(settle(join(clones.mine, "ring.yaml"), { take: ["theirs"] }).settled).toBe(true);
    expect(findingsIn(clones.mine)).toEqual([]);
  });

  test("since the program is gone, it merges by lines, and neither version is lost", async () => {
    clones = clonesWith(start, driverLine(process.execPath, join("/nowhere", "cli.js")));
    expect(
      await merged(
        put("ring.yaml", ["deep in", "three feet in"]),
        put("ring.yaml", ["deep in", "a metre in"]),
      ),
    ).toBe(1);
    expect(textIn(clones.mine, "ring.yaml")).toMatch(
      /^<{7}.*\n.*three feet in.*\n={7}\n.*a metre in.*\n>{7}/mu,
    );
  });

  test("since a version is no UTF-8, it merges by lines to the byte", async () => {
    clones = clonesWith(start);
    const { git, mine, theirs } = clones;
    const write = (folder: string, text: string): void => {
      writeFileSync(join(folder, "ring.yaml"), Buffer.from(text, "latin1"));
      git(folder, "commit", "-q", "-am", "Edit");
    };
    write(mine, ring.replace("a roof", "a r\u00f6of"));
    write(theirs, ring.replace("deep in", "a metre in"));
    const pulled = git(mine, "pull", "-q", "--no-edit", "--no-rebase", theirs, "main");
    expect(pulled.code).toBe(0);
    expect(pulled.err).toContain("expected a text file saved as UTF-8: nothing was merged");
    expect(readFileSync(join(mine, "ring.yaml"), "latin1")).toBe(
      ring.replace("a roof", "a r\u00f6of").replace("deep in", "a metre in"),
    );
  });
});

describe.runIf(hasGit)("the command", () => {
  test("sets up a clone, keeps what stands in its attributes, and says where there is no repository; a folder may be named from where one stands", async () => {
    clones = clonesWith({ ...start, ".gitattributes": "*.pdf binary\n*.csv merge=union" }, null);
    const { git, mine, place, variorum } = clones;
    expect(variorum(mine, "merge-files", "--set-up")).toMatchObject({ code: 0, err: "" });
    expect(git(mine, "config", "--local", "merge.variorum.driver").out.trim()).toBe(
      driverLine(process.execPath, program),
    );
    expect(git(mine, "check-attr", "merge", "ring.yaml", "depths.csv").out).toBe(
      "ring.yaml: merge: variorum\ndepths.csv: merge: union\n",
    );
    expect(textIn(mine, ".gitattributes")).toMatch(/^\*\.pdf binary\n\*\.csv merge=union\n/);
    const told = await committedFiles(relative(process.cwd(), mine));
    expect(told.files.map(({ path }) => path)).toEqual([
      "books.bib",
      "corpus.yaml",
      "depths.csv",
      "ring.yaml",
      "things.yaml",
    ]);
    startCorpus(join(place, "bare"));
    expect(textIn(place, "bare/.gitattributes")).toContain("*.bib merge=variorum\n");
    await expect(setUp(join(place, "bare"))).rejects.toThrow("in no git repository, expected one: git init");
  });

  test("shows nothing that is withheld, nor where a thing lies", () => {
    const thing = (name: string, at: string): string =>
      `<<<<<<< ours\n  - { id: trench-9, name: ${name} }\n  - { id: post, name: Post, coordinates: "${at}" }\n`;
    clones = clonesWith({ ...start, "corpus.yaml": "title: The ring\nwithhold: [trench-9]\n" }, null);
    const file = join(clones.mine, "things.yaml");
    const [one, two] = [thing("Garden", "51 N"), thing("Orchard", "52 N").replace("<<<<<<< ours", "=======")];
    writeFileSync(file, `artefacts:\n${one}${two}>>>>>>> theirs\n`);
    for (const byLines of [false, true]) {
      const { lines, settled } = settle(file, { take: [], byLines });
      expect([settled, lines.length > 5]).toEqual([false, true]);
      expect(lines.join("\n")).not.toMatch(/Garden|Orchard|5[12] N/u);
    }
  });

  test("merges three files by hand, and leaves the second as it was where it cannot", () => {
    clones = clonesWith(start, null);
    const { mine, variorum } = clones;
    const write = (name: string, text: string): void => writeFileSync(join(mine, name), text);
    write("base", ring);
    write("ours", ring.replace("a roof", "no roof"));
    write("theirs", ring.replace("a roof", "a turf roof"));
    const args = [
      "merge-files",
      "base",
      "ours",
      "theirs",
      "--path",
      "dig/ring.yaml",
      "--theirs-name",
      "their side",
    ];
    const { code, out, err } = variorum(mine, ...args, "--ours-name", "%X");
    expect([code, out]).toEqual([1, ""]);
    expect(err).toBe(
      "Conflict marks in one place of dig/ring.yaml (lines 4–10): variorum merge-files --settle dig/ring.yaml shows both versions\n",
    );
    expect(textIn(mine, "ours")).toMatch(
      /^<<<<<<< ours\n.*no roof.*\n\|{7}\n.*\n={7}\n.*turf.*\n>>>>>>> their side$/mu,
    );
    expect(variorum(mine, "merge-files", "base", "ours", "gone", "--path", "ring.yaml")).toMatchObject({
      code: 2,
      out: "",
    });
    expect(variorum(mine, "merge-files", "base", "ours")).toMatchObject({ code: 2, out: "" });
    expect(existsSync(join(mine, "gone"))).toBe(false);
  });
});
