import { spawnSync } from "node:child_process";
import {
  chmodSync,
  chownSync,
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openDesk } from "../../src/host/desk/desk.ts";
import { hashOf } from "../../src/base/text/hash.ts";
import { CannotWrite, writeChanges } from "../../src/host/edit-files.ts";
import { reportSchema } from "../../src/show/report/schema.ts";

const program = fileURLToPath(new URL("../../dist/cli.js", import.meta.url));
const fixes = fileURLToPath(new URL("fixes/", import.meta.url));
let place = "";

beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), "variorum-fixes-"));
  chmodSync(place, 0o755);
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

/** Somebody who may read a folder and not write it: whoever runs the tests as root is not stopped by a mode. */
const nobody = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};

function run(words: readonly string[], who: { readonly uid?: number; readonly gid?: number } = {}) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...words], {
    encoding: "utf8",
    env: { ...process.env, XDG_CACHE_HOME: join(place, "cache") },
    ...who,
  });
  return { code: status, out: stdout, err: stderr };
}

/** A copy of a corpus with mistakes in it. */
function copied(name: string): string {
  const folder = mkdtempSync(join(place, `${name}-`));
  cpSync(join(fixes, name, "before"), folder, { recursive: true });
  chmodSync(folder, 0o755);
  return folder;
}

/** What is in a folder beside the program's own desk, where the step can be taken back. */
function filesIn(folder: string): readonly string[] {
  return readdirSync(folder)
    .filter((name) => name !== ".variorum")
    .sort();
}

function textsIn(folder: string): Readonly<Record<string, string>> {
  return Object.fromEntries(filesIn(folder).map((name) => [name, readFileSync(join(folder, name), "utf8")]));
}

describe("check --fix", () => {
  test("shows each change with its lines and writes nothing", () => {
    const folder = copied("yaml-habits");
    const before = textsIn(folder);
    const { code, out, err } = run(["check", folder, "--fix"]);
    expect([code, err]).toEqual([1, ""]);
    expect(out).toContain("block.yaml:32  split-value  Put the value in quotes\n");
    expect(out).toContain("    32 is       ┆     value: > 240 cm\n");
    expect(out).toContain('    32 would be ┆     value: "> 240 cm"\n');
    expect(out).toMatch(/14 changes in 2 files would be made\. Nothing was written; --fix --write makes them\.\n$/);
    expect(textsIn(folder)).toEqual(before);
  });

  test("with --write it makes them, byte for byte what was meant, and says what is left", () => {
    const folder = copied("yaml-habits");
    chmodSync(join(folder, "block.yaml"), 0o640);
    const { code, out, err } = run(["check", folder, "--fix", "--write"]);
    expect(err).toBe("");
    expect(out).toContain("    32 is now   ┆     value: \"> 240 cm\"\n");
    expect(out).toMatch(/14 changes in 2 files made\.\nLeft: 1 error, \d+ warnings?, \d+ notes?\.\n$/);
    expect(code).toBe(1);
    expect(textsIn(folder)).toEqual(textsIn(join(fixes, "yaml-habits", "after")));
    expect(statSync(join(folder, "block.yaml")).mode & 0o777).toBe(0o640);
    expect(run(["check", folder, "--fix", "--write"]).out).toBe("Nothing can be mended with certainty.\n");
  });

  test("what was mended can be taken back at the desk", () => {
    const folder = copied("decimals");
    const before = textsIn(folder);
    run(["check", folder, "--fix", "--write"]);
    expect(textsIn(folder)).not.toEqual(before);
    openDesk(folder).undo();
    expect(textsIn(folder)).toEqual(before);
  });

  test("a change over two files is made in both; one that touches another waits for the next time", () => {
    const folder = copied("unstable");
    expect(run(["check", folder, "--fix", "--write"]).out).toContain(
      "2 changes in 2 files made; 1 waiting, to be asked for again afterwards.",
    );
    expect(run(["check", folder, "--fix", "--write"]).out).toContain("1 change in 1 file made.");
    expect(textsIn(folder)).toEqual(textsIn(join(fixes, "unstable", "after")));
  });

  test("a choice is made only when its rule is named", () => {
    const folder = copied("choices");
    const { out } = run(["check", folder, "--fix", "--write"]);
    expect(out).toContain("a choice of yours: --rule beaten-input makes it");
    expect(textsIn(folder)).toEqual(textsIn(join(fixes, "choices", "before")));
    run(["check", folder, "--fix", "--write", "--rule", "beaten-input"]);
    expect(textsIn(folder)).toEqual(textsIn(join(fixes, "choices", "after")));
  });

  test("with --json the report keeps its shape, before and after", () => {
    const folder = copied("names");
    const shown = reportSchema.parse(JSON.parse(run(["check", folder, "--fix", "--json"]).out));
    expect(JSON.parse(run(["check", folder, "--json"]).out)).toEqual(shown);
    const fixable = shown.findings.filter((one) => one.fix !== null);
    expect(fixable.length).toBeGreaterThan(5);
    const mended = reportSchema.parse(JSON.parse(run(["check", folder, "--fix", "--write", "--json"]).out));
    expect(mended.findings.filter((one) => one.level === "error").length).toBeLessThan(
      shown.findings.filter((one) => one.level === "error").length,
    );
  });

  test("nothing withheld is shown, not even beside a change", () => {
    const folder = mkdtempSync(join(place, "withheld-"));
    writeFileSync(join(folder, "corpus.yaml"), "title: Land\nwithhold: [hidden-spring]\n");
    writeFileSync(
      join(folder, "a.yaml"),
      "artefacts:\n  - { id: hidden-spring, name: Deep Pool, materail: water }\n  - { id: field, name: Field, coordinates: grid 5678, materail: loam }\nobservations:\n  - { id: o, of: hidden-sprng, text: Wet. }\n",
    );
    const { out } = run(["check", folder, "--fix"]);
    expect(out).toContain("material");
    for (const secret of ["hidden-spring", "Deep Pool", "grid 5678"]) expect(out).not.toContain(secret);
    expect(run(["check", folder]).out).not.toContain("hidden-spring");
    expect(run(["check", folder, "--json"]).out).not.toContain("hidden-spring");
  });

  test("a mistake in what is withheld is not told with the same mistake elsewhere", () => {
    const folder = mkdtempSync(join(place, "alike-"));
    writeFileSync(join(folder, "corpus.yaml"), "title: Land\nwithhold: [hidden-spring]\n");
    const measured = (of: string): string => `  - { of: ${of}, dimension: depth, value: 3 m, featur: x }\n`;
    writeFileSync(
      join(folder, "a.yaml"),
      `artefacts:\n  - { id: hidden-spring, name: Deep Pool }\n  - { id: field, name: Field }\nmeasurements:\n${measured("hidden-spring")}${measured("field")}${measured("hidden-spring")}`,
    );
    const { out } = run(["check", folder]);
    expect(out).toContain("a.yaml:6:");
    expect(out).toContain("Unknown field `featur`");
    expect(out).not.toMatch(/also:|is met in|a\.yaml:[57]/u);
  });

  test("records that could not be read give nothing withheld away, nor an exact place", () => {
    const folder = mkdtempSync(join(place, "unread-"));
    writeFileSync(join(folder, "corpus.yaml"), "title: Land\nwithhold: [hidden-spring]\n");
    writeFileSync(
      join(folder, "a.yaml"),
      `artefacts:
  - { id: hidden-spring, name: Deep Pool }
  - { id: lost-ring, coordinates: grid 9012, found-at: under the oak, withhold-location: true }
measurements:
  - { id: secret-depth, of: hidden-spring, dimension: depth, value: quite deep, note: by the mill }
  - { id: secret-girth, of: hidden-spring, dimension: girth, value: 18,2 m, note: by the mill }
observations:
  - { id: secret-ash, of: [hidden-spring, nowhere], text: Ash by the mill. }
  - { id: secret-bone, of: hidden-spring/inner, text: Bone by the mill., because: nothing }
`,
    );
    for (const words of [[], ["--json"], ["--fix"], ["--format", "sarif"]]) {
      const { out } = run(["check", folder, ...words]);
      expect(out).toMatch(/withholds|Nothing can be mended/);
      for (const secret of ["hidden-spring", "Deep Pool", "secret-", "the mill", "grid 9012", "the oak"])
        expect(out).not.toContain(secret);
    }
  });

  test.each([
    [["--write"], "Unexpected --write alone, expected it together with --fix\n"],
    [["--rule", "split-value"], "Unexpected --rule alone, expected it together with --fix\n"],
    [["--fix", "--rule", "split-valu"], "Unknown rule `split-valu`, expected split-value\n"],
    [["--fix", "--standpoints"], "Unexpected --fix together with --standpoints, expected one of them\n"],
    [["--fix", "--format", "sarif"], "Unexpected --format sarif, expected text or json with --fix\n"],
  ])("%j is one line on standard error and 2", (words, message) => {
    expect(run(["check", copied("names"), ...words])).toEqual({ code: 2, out: "", err: message });
  });

  test("a folder that may not be written is one clear message, and nothing is changed", () => {
    const folder = copied("decimals");
    const before = textsIn(folder);
    chmodSync(folder, 0o555);
    const { code, out, err } = run(["check", folder, "--fix", "--write", "--no-memo"], nobody);
    chmodSync(folder, 0o755);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toBe("The folder of the corpus may only be read: nothing was written\n");
    expect(textsIn(folder)).toEqual(before);
    expect(readdirSync(folder).filter((name) => name.startsWith("."))).toEqual([]);
  });
});

describe("check --fix --write where the disk refuses", () => {
  const wrong = (id: string): string =>
    `artefacts:\n  - { id: ${id}, name: Ring, materail: oak }\n`;

  /** A corpus that belongs to whoever runs the program, with two files to mend. */
  function corpus(): string {
    const folder = mkdtempSync(join(place, "refused-"));
    mkdirSync(join(folder, "below"));
    writeFileSync(join(folder, "corpus.yaml"), "title: Rings\n");
    writeFileSync(join(folder, "a.yaml"), wrong("one"));
    writeFileSync(join(folder, "below", "b.yaml"), wrong("two"));
    for (const path of ["", "corpus.yaml", "a.yaml", "below", "below/b.yaml"])
      if (nobody.uid !== undefined) chownSync(join(folder, path), nobody.uid, nobody.gid);
    return folder;
  }

  function isUntouched(folder: string): void {
    expect(readFileSync(join(folder, "a.yaml"), "utf8")).toBe(wrong("one"));
    expect(readFileSync(join(folder, "below", "b.yaml"), "utf8")).toBe(wrong("two"));
    expect(filesIn(folder)).toEqual(["a.yaml", "below", "corpus.yaml"]);
    expect(readdirSync(join(folder, "below"))).toEqual(["b.yaml"]);
  }

  test("a file below a folder is mended in its place, and keeps its owner", () => {
    const folder = corpus();
    const before = statSync(join(folder, "below", "b.yaml"));
    run(["check", folder, "--fix", "--write"]);
    expect(readFileSync(join(folder, "below", "b.yaml"), "utf8")).toContain("material: oak");
    expect(readdirSync(join(folder, "below"))).toEqual(["b.yaml"]);
    const after = statSync(join(folder, "below", "b.yaml"));
    expect([after.uid, after.gid]).toEqual([before.uid, before.gid]);
  });

  test("a file that may only be read stays as it is, though its folder may be written", () => {
    const folder = corpus();
    chmodSync(join(folder, "below", "b.yaml"), 0o444);
    const { code, out, err } = run(["check", folder, "--fix", "--write", "--no-memo"], nobody);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toBe("`below/b.yaml` may not be written, expected one that may: nothing was written\n");
    isUntouched(folder);
  });

  // In a folder with the sticky bit a file of somebody else's may be written and not replaced.
  test.skipIf(nobody.uid === undefined)(
    "where the second of two cannot be put in its place, the first is put back as it was",
    () => {
      const folder = corpus();
      for (const path of ["below", "below/b.yaml"]) chownSync(join(folder, path), 0, 0);
      chmodSync(join(folder, "below"), 0o1777);
      chmodSync(join(folder, "below", "b.yaml"), 0o666);
      const { code, out, err } = run(["check", folder, "--fix", "--write", "--no-memo"], nobody);
      expect([code, out]).toEqual([2, ""]);
      expect(err).toBe(
        "The folder of `below/b.yaml` may not be written, expected one that may: nothing was written\n",
      );
      isUntouched(folder);
    },
  );
});

describe("writing", () => {
  const first = "one\r\ntwo\r\n";
  const edit = { file: "a.yaml", start: 0, end: 3, text: "eins" };
  const change = (file: string, text: string) => ({ file, madeFor: hashOf(text), edits: [{ ...edit, file }] });

  function folderWith(files: Readonly<Record<string, string>>): string {
    const folder = mkdtempSync(join(place, "writing-"));
    for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
    return folder;
  }

  test("keeps everything else, a byte-order mark and line ends with it", () => {
    const text = `\ufeff${first}`;
    const folder = folderWith({ "a.yaml": text });
    writeChanges(folder, [{ file: "a.yaml", madeFor: hashOf(text), edits: [{ ...edit, start: 1, end: 4 }] }]);
    expect(readFileSync(join(folder, "a.yaml"), "utf8")).toBe("\ufeffeins\r\ntwo\r\n");
    expect(readdirSync(folder)).toEqual(["a.yaml"]);
  });

  test("a file that changed since is refused, and so are the changes of all others", () => {
    const folder = folderWith({ "a.yaml": first, "b.yaml": `${first}three` });
    const changes = [change("a.yaml", first), change("b.yaml", first)];
    expect(() => writeChanges(folder, changes)).toThrow(CannotWrite);
    expect(() => writeChanges(folder, changes)).toThrow("`b.yaml` was changed while the corpus was read");
    expect(textsIn(folder)).toEqual({ "a.yaml": first, "b.yaml": `${first}three` });
  });

  test("a file that is gone, or a link or a folder by now, is refused", () => {
    const folder = folderWith({ "elsewhere.txt": first });
    expect(() => writeChanges(folder, [change("a.yaml", first)])).toThrow("`a.yaml` is gone");
    symlinkSync(join(folder, "elsewhere.txt"), join(folder, "a.yaml"));
    expect(() => writeChanges(folder, [change("a.yaml", first)])).toThrow("Unexpected link at `a.yaml`");
    mkdirSync(join(folder, "b.yaml"));
    expect(() => writeChanges(folder, [change("b.yaml", first)])).toThrow("Unexpected folder at `b.yaml`");
    expect(readFileSync(join(folder, "elsewhere.txt"), "utf8")).toBe(first);
  });

  test("where the new text cannot be put beside the file, no file is changed and nothing is left behind", () => {
    const folder = folderWith({ "a.yaml": first, "b.yaml": first });
    mkdirSync(join(folder, `.b.yaml.${process.pid}.part`));
    expect(() => writeChanges(folder, [change("a.yaml", first), change("b.yaml", first)])).toThrow(
      "The folder of `b.yaml` cannot be written (EEXIST): nothing was written",
    );
    rmSync(join(folder, `.b.yaml.${process.pid}.part`), { recursive: true });
    expect(textsIn(folder)).toEqual({ "a.yaml": first, "b.yaml": first });
  });
});
