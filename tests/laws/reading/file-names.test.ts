import { spawnSync } from "node:child_process";
import { closeSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { freeName } from "../../../src/app/pages/artefacts/images/file-name.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { openDesk } from "../../../src/host/desk/desk.ts";
import { encloseNew, enclosedIn, openEnclosed } from "../../../src/host/enclosed.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { freePaper, papersOf } from "../../../src/show/desk/papers/papers.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { wantedFigures } from "../../../src/show/telling/figures/wanted.ts";
import { changed } from "../desk/desk-cases.ts";

const made: string[] = [];
afterEach(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** A folder with files, their names given to the disk as `called` has them. */
function folderOf(files: Readonly<Record<string, string>>, called = (name: string) => name): string {
  const folder = mkdtempSync(join(tmpdir(), "variorum-names-"));
  made.push(folder);
  for (const [file, text] of Object.entries(files)) {
    const path = join(folder, called(file));
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }
  return folder;
}

const readIn = (folder: string) => build(readCorpusFolder(folder), plugins, emptyMemo());
const filesIn = (folder: string) => readdirSync(folder).filter((name) => name !== ".variorum");
const nfd = (text: string): string => text.normalize("NFD");

describe("accented letters in names, whole or in parts", () => {
  const accented = {
    "corpus.yaml": `title: Grüße
bibliography: [Bücher.bib]
artefact-tables: [Pfähle/täfel.csv]
citation-style: häuser.csl
dimensions: { höhe: { kind: length } }
`,
    "Bücher.bib": "@book{müller-1990, author = {Müller, Ö}, title = {Pfähle}, year = 1990}\n",
    "Pfähle/täfel.csv": "id,name\npost-1,Pfahl\n",
    "Grüße.yaml": `measurements:
  - { of: post-1, dimension: höhe, value: 2 m, from: müller-1990 p. 3 }
  - { of: post-1, dimension: ${nfd("höhe")}, value: 2.01 m, from: ${nfd("müller-1990")} p. 4 }
`,
    "Grün.yaml": "claims:\n  - { id: twice, text: First. }\n",
    "Grz.yaml": "claims:\n  - { id: twice, text: Second. }\n",
    "images/Tür.svg": "<svg xmlns='http://www.w3.org/2000/svg'/>",
  };

  test("name the same files, in the same order, whichever way the disk has them", () => {
    const [whole, inParts] = [folderOf(accented), folderOf(accented, nfd)];
    expect(filesIn(inParts)).toContain(nfd("Grüße.yaml"));
    const told = [whole, inParts].map((folder) => {
      const { model, findings } = readIn(folder);
      if (!model) throw new Error("Missing model, expected one");
      const said = findings.map((one) => [one.rule, inEnglish(one.message), one.at?.file.normalize("NFC")]);
      return { said, report: reportOf(model, [], new Map()), graph: model.graph };
    });
    expect(told[1]?.said).toEqual(told[0]?.said);
    expect(told[1]?.report).toEqual(told[0]?.report);
    const { graph, said } = told[1] ?? { graph: null, said: [] };
    expect(graph?.records.has("post-1")).toBe(true);
    expect(graph?.sources.has("müller-1990")).toBe(true);
    expect(said.filter(([rule]) => rule === "unknown-reference" || rule === "unlisted-dimension")).toEqual(
      [],
    );
    // Only the style is missing, and of two claims of one name the first in the order of whole letters is kept.
    expect(said.filter(([rule]) => rule === "unreadable-file")).toHaveLength(1);
    expect(said.find(([rule]) => rule === "duplicate-id")?.[2]).toBe("Grün.yaml");
  });

  test("lead to a picture, and its address is that of the record", () => {
    for (const folder of [folderOf(accented), folderOf(accented, nfd)]) {
      const open = openEnclosed(folder, "images/Tür.svg");
      expect(open?.type).toBe("image/svg+xml");
      if (open) closeSync(open.open);
      expect(openEnclosed(folder, "images/Tor.svg")).toBeNull();
    }
  });

  test("are changed where they are, under the name that the disk has", () => {
    const folder = folderOf(accented, nfd);
    const path = nfd("Grün.yaml");
    const desk = openDesk(folder);
    desk.edit("a word", [changed(path, accented["Grün.yaml"], "claims: []\n")]);
    expect(readFileSync(join(folder, path), "utf8")).toBe("claims: []\n");
    expect(filesIn(folder).filter((name) => name.normalize("NFC") === "Grün.yaml")).toEqual([path]);
  });
});

describe("names that differ in capitals only", () => {
  const two = {
    "corpus.yaml": "title: Posts\nbibliography: [Bibliography.bib]\n",
    "posts.yaml": "claims: []\n",
  };

  test("are two files where the disk has two", () => {
    const folder = folderOf({
      "corpus.yaml": "title: Posts\n",
      "Posts.yaml": "artefacts:\n  - { id: a, name: A }\n",
      "posts.yaml": "artefacts:\n  - { id: b, name: B }\n",
    });
    // A disk that takes them for one has the second alone.
    if (filesIn(folder).length === 3)
      expect(
        readIn(folder)
          .model?.graph.list("artefacts")
          .map(({ id }) => id),
      ).toEqual(["a", "b"]);
  });

  test("are told with the nearest name, and one press writes it", () => {
    const folder = folderOf({ ...two, "bibliography.bib": "@book{a, title = {A}}\n", "books.json": "[]" });
    const told = readIn(folder).findings.find((one) => one.rule === "unreadable-file");
    expect(told && inEnglish(told.message)).toBe(
      "Missing file `Bibliography.bib`, expected `bibliography.bib`",
    );
    const text = edited(two["corpus.yaml"], told?.fix?.edits ?? []);
    expect(text).toBe("title: Posts\nbibliography: [bibliography.bib]\n");
    writeFileSync(join(folder, "corpus.yaml"), text);
    expect(readIn(folder).findings.filter((one) => one.rule === "unreadable-file")).toEqual([]);
  });

  test.each([
    ["Posts.yaml", "posts.yaml"],
    ["Readings/vane.yaml", "readings"],
    ["readings/HALE.yml", "readings/hale.yml"],
    [nfd("grüße.yaml"), "grüße.yaml"],
    ["GRÜSSE.yaml", "grüsse.yaml"],
  ])("a new file %s does not come in beside %s", (file, there) => {
    const folder = folderOf({
      ...two,
      "readings/hale.yml": "claims: []\n",
      "grüße.yaml": "claims: []\n",
      "grüsse.yaml": "claims: []\n",
    });
    const before = filesIn(folder);
    const desk = openDesk(folder);
    const message = `Unexpected name \`${file}\` beside \`${there}\`, which some disks take for the same; expected another: nothing was written`;
    expect(() => desk.edit("a file", [changed(file, null, "claims: []\n")])).toThrow(message);
    expect(filesIn(folder)).toEqual(before);
  });

  test("two new ones do not come in together, and one that took its way back comes again", () => {
    const folder = folderOf(two);
    const desk = openDesk(folder);
    const both = [changed("a.yaml", null, "claims: []\n"), changed("A.yaml", null, "claims: []\n")];
    expect(() => desk.edit("two", both)).toThrow(/beside `A\.yaml`|beside `a\.yaml`/);
    desk.edit("one", both.slice(0, 1));
    desk.undo();
    desk.redo();
    expect(filesIn(folder).toSorted()).toEqual(["a.yaml", "corpus.yaml", "posts.yaml"]);
  });

  test("a paper does not come in beside one", async () => {
    const folder = folderOf({ ...two, "papers/vane.pdf": "%PDF-" });
    const content = (async function* () {
      yield Buffer.from("%PDF-");
    })();
    await expect(encloseNew(folder, "papers/Vane.pdf", content)).rejects.toThrow("beside `papers/vane.pdf`");
    expect(enclosedIn(folder).map(({ file }) => file)).toEqual(["papers/vane.pdf"]);
  });
});

describe("long names", () => {
  test("of 255 bytes are written, taken back and leave nothing behind; longer ones are refused in words", () => {
    const folder = folderOf({ "corpus.yaml": "title: Long\n" });
    const desk = openDesk(folder);
    for (const name of [`${"a".repeat(250)}.yaml`, `${"ü".repeat(125)}.yaml`]) {
      expect(Buffer.byteLength(name)).toBe(255);
      desk.edit("a file", [changed(name, null, "claims: []\n")]);
      desk.edit("a word", [changed(name, "claims: []\n", "claims: [] # none\n")]);
      desk.undo();
      expect(readFileSync(join(folder, name), "utf8")).toBe("claims: []\n");
      expect(filesIn(folder).toSorted()).toEqual(["corpus.yaml", name].toSorted());
      desk.undo();
    }
    for (const name of [`${"a".repeat(251)}.yaml`, `${"ü".repeat(200)}.yaml`])
      expect(() => desk.edit("a file", [changed(name, null, "claims: []\n")])).toThrow(
        /^Unexpected (?:name|length of the name) .*: nothing was written$/,
      );
    expect(filesIn(folder)).toEqual(["corpus.yaml"]);
  });

  test("in deep folders are read and changed, and what lies deeper than a path can tell is said", () => {
    const folder = folderOf({ "corpus.yaml": "title: Deep\n" });
    const part = "d".repeat(100);
    const deep = Array.from({ length: 34 }, () => part).join("/");
    mkdirSync(join(folder, deep), { recursive: true });
    const file = `${deep}/claims.yaml`;
    writeFileSync(join(folder, file), "claims:\n  - { id: a, text: A. }\n");
    openDesk(folder).edit("none", [changed(file, "claims:\n  - { id: a, text: A. }\n", "claims: []\n")]);
    expect(readFileSync(join(folder, file), "utf8")).toBe("claims: []\n");
    // Step by step, as a program that goes into its folders can: no path is as long as this.
    const dig = `const { mkdirSync, writeFileSync } = require("node:fs");
      for (let step = 0; step < 9; step++) { mkdirSync("${part}"); process.chdir("${part}"); writeFileSync("claims.yaml", "claims: []"); }`;
    try {
      const dug = spawnSync(process.execPath, ["-e", dig], { cwd: join(folder, deep), encoding: "utf8" });
      expect(dug.stderr).toBe("");
      const { model, findings } = readIn(folder);
      expect(model?.graph.settings.title).toBe("Deep");
      expect(findings.map(({ rule }) => rule)).toEqual(["unreadable-file"]);
      expect(enclosedIn(folder)).toEqual([]);
    } finally {
      spawnSync("rm", ["-rf", folder]);
    }
  });
});

describe("any sign in a name", () => {
  const odd = [
    "a b.yaml",
    "50 %.yaml",
    "100%25.yaml",
    "post #4.yaml",
    "what?.yaml",
    `"q'.yaml`,
    "خاتم.yaml",
    "a&b=c;d.yaml",
  ];

  test("is read, changed and told as the disk has it", () => {
    const texts = Object.fromEntries(
      odd.map((name, at) => [name, `claims:\n  - { id: c-${at}, text: C. }\n`]),
    );
    const folder = folderOf({ "corpus.yaml": "title: Odd\n", ...texts });
    expect(readIn(folder).model?.graph.list("claims")).toHaveLength(odd.length);
    const desk = openDesk(folder);
    desk.edit(
      "all",
      odd.map((name) => changed(name, texts[name] ?? "", "claims: []\n")),
    );
    for (const name of odd) expect(readFileSync(join(folder, name), "utf8")).toBe("claims: []\n");
    desk.undo();
    expect(readIn(folder).model?.graph.list("claims")).toHaveLength(odd.length);
    expect(filesIn(folder).toSorted()).toEqual(["corpus.yaml", ...odd].toSorted());
  });

  test.each([
    "aux.yaml",
    "Con.csv",
    "nul.2.yaml",
    "com1/a.yaml",
    "LPT9.bib",
    "a./b.yaml",
    "a /b.yaml",
    "what?.yaml",
    "a*.yaml",
  ])("that a system cannot have is in no new name: %s", (file) => {
    const desk = openDesk(folderOf({ "corpus.yaml": "title: New\n" }));
    expect(() => desk.edit("a file", [changed(file, null, "claims: []\n")])).toThrow(
      "expected one that files have on every system: nothing was written",
    );
  });

  test("a device is no name of what is made", () => {
    const folder = folderOf({
      "corpus.yaml": "title: Devices\n",
      "things.yaml":
        "artefacts:\n  - { id: aux, name: A }\n  - { id: com1, name: B }\n  - { id: auxiliary, name: C }\n",
    });
    const { model } = readIn(folder);
    const figures = model && wantedFigures(model, ["aux", "com1", "auxiliary"]);
    expect(figures && "refused" in figures ? figures.refused : figures?.map(({ name }) => name)).toEqual([
      "aux_",
      "com1_",
      "auxiliary",
    ]);
    expect(freeName("CON.PNG", [])).toBe("images/CON_.png");
    expect(freePaper("nul", "pdf", [])).toBe("papers/nul_.pdf");
    expect(papersOf(["nul"], ["papers/nul_.pdf"]).get("nul")).toEqual(["papers/nul_.pdf"]);
  });
});
