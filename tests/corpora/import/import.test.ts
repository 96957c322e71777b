import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import * as z from "zod";
import { openDesk } from "../../../src/host/desk/desk.ts";
import { tableImportSchema } from "../../../src/show/desk/import/table/told/report.ts";
import { importSchema } from "../../../src/show/desk/import/report.ts";
import { rememberDemo } from "../remembered.ts";

const root = fileURLToPath(new URL("../../../", import.meta.url));
let place = "";

beforeAll(() => {
  place = mkdtempSync(join(tmpdir(), "variorum-"));
});
afterAll(() => rmSync(place, { recursive: true, force: true }));

function run(...words: readonly string[]): { readonly code: number | null; readonly out: string; readonly err: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [join(root, "dist", "cli.js"), ...words], {
    cwd: place,
    encoding: "utf8",
    env: { ...process.env, XDG_CACHE_HOME: join(place, "cache") },
    maxBuffer: 64 * 1024 * 1024,
  });
  return { code: status, out: stdout, err: stderr };
}

/** A copy of the demo, and a file to bring into it. */
function corpusAnd(name: string, content: string | Uint8Array): readonly [corpus: string, file: string] {
  const corpus = mkdtempSync(join(place, "corpus-"));
  cpSync(join(root, "demo-corpus"), corpus, { recursive: true });
  const file = join(corpus, "..", name);
  writeFileSync(file, content);
  return [corpus, file];
}

const bibliography = (corpus: string): string => readFileSync(join(corpus, "bibliography.bib"), "utf8");

const some = `@article{ferrant-1937,
  author = {Ferrant, Edith}, title = {Excavations on Merrow Down, 1937}, year = {1937}, doi = {10.1000/1937}
}

@book{thorn-1990,
  author = {Thorn, Ada},
  title  = {Chalk and Charcoal},
  year   = {1990}
}
`;

describe("variorum import", () => {
  test("adds what is new, leaves what is there, and is read afterwards without an error", async () => {
    const [corpus, file] = corpusAnd("some.bib", some);
    const before = bibliography(corpus);
    const { code, out, err } = run("import", file, "--into", corpus);
    expect([code, err]).toEqual([0, ""]);
    expect(out).toContain("1 added, 0 merged, 1 left alone, 0 not read.");
    expect(out).toContain("like ferrant-1937 (bibliography.bib:20): the same title and year, the same key");
    expect(bibliography(corpus)).toBe(`${before}\n${some.slice(some.indexOf("@book"))}`);
    await rememberDemo(join(place, "cache"), corpus);
    expect(run("check", corpus).code).toBe(0);
    expect(run("import", file, "--into", corpus).out).toContain("0 added, 0 merged, 2 left alone, 0 not read.");
  });

  test("merges what is missing where it is asked to, and nothing else", () => {
    const [corpus, file] = corpusAnd("more.bib", some);
    const before = bibliography(corpus);
    expect(run("import", file, "--into", corpus, "--merge", "missing").out).toContain("merged into ferrant-1937: doi");
    expect(bibliography(corpus)).toContain("  year    = {1937},\n  doi     = {10.1000/1937}\n}");
    expect(bibliography(corpus).replace(",\n  doi     = {10.1000/1937}", "").startsWith(before)).toBe(true);
  });

  test("tells a script the same by its schema, the same bytes each time", () => {
    const [corpus, file] = corpusAnd("json.bib", `${some}@book{broken, title = {open\n`);
    const { code, out } = run("import", file, "--into", corpus, "--json");
    expect(code).toBe(1);
    const report = importSchema.parse(JSON.parse(out));
    expect(report.added.map((one) => [one.key, one.to])).toEqual([["thorn-1990", "bibliography.bib"]]);
    expect(report.leftAlone.map((one) => [one.own, one.missing])).toEqual([["ferrant-1937", ["doi"]]]);
    expect(report.failed.map((one) => [one.line, one.text])).toEqual([[10, "@book{broken, title = {open"]]);
    const again = run("import", file, "--into", corpus, "--json").out;
    expect(run("import", file, "--into", corpus, "--json").out).toBe(again);
  });

  test("the shipped schema is the program's own", () => {
    const shipped: unknown = JSON.parse(
      readFileSync(new URL("../../../src/show/desk/import/import.schema.json", import.meta.url), "utf8"),
    );
    expect(shipped).toEqual(z.toJSONSchema(importSchema));
  });

  test("makes a bibliography of the format and names it, in one change of corpus.yaml", async () => {
    const ris = "TY  - BOOK\nAU  - Thorn, Ada\nTI  - Chalk and Charcoal\nPY  - 1990\nER  - \n";
    const [corpus, file] = corpusAnd("new.ris", ris);
    const settings = readFileSync(join(corpus, "corpus.yaml"), "utf8");
    expect(run("import", file, "--into", corpus).code).toBe(0);
    expect(readFileSync(join(corpus, "bibliography.ris"), "utf8")).toBe(ris);
    expect(readFileSync(join(corpus, "corpus.yaml"), "utf8")).toBe(
      settings.replace("[bibliography.bib, other-scripts.json]", "[bibliography.bib, other-scripts.json, bibliography.ris]"),
    );
    await rememberDemo(join(place, "cache"), corpus);
    expect(run("check", corpus).code).toBe(0);
  });

  test("does nothing at all where one of the files cannot be had", () => {
    const [corpus, file] = corpusAnd("good.bib", some);
    const before = bibliography(corpus);
    const latin = join(corpus, "..", "latin.bib");
    writeFileSync(latin, Buffer.from("@book{a, title = {M\u00fcller}, year = 1900}", "latin1"));
    for (const [words, said] of [
      [[file, latin, "--into", corpus], "no UTF-8"],
      [[file, join(corpus, "..", "none.bib"), "--into", corpus], "Unknown file"],
      [[file, join(corpus, "about.md"), "--into", corpus], "Unknown kind of file"],
      [[file, "--into", join(corpus, "nowhere")], "Unknown folder"],
      [[file], "Missing --into"],
      [[file, "--into", corpus, "--merge", "all"], "Expected missing"],
    ] as const) {
      const { code, out, err } = run("import", ...words);
      expect([code, out], err).toEqual([2, ""]);
      expect(err).toContain(said);
      expect(err.trim().split("\n")).toHaveLength(1);
    }
    expect(bibliography(corpus)).toBe(before);
  });

  test("tells nothing of a source that is withheld", () => {
    const [corpus, file] = corpusAnd("hidden.bib", some);
    const settings = join(corpus, "corpus.yaml");
    const text = readFileSync(settings, "utf8").replace("withhold: [trench-9]", "withhold: [trench-9, ferrant-1937]");
    writeFileSync(settings, text);
    const before = bibliography(corpus);
    for (const how of [["--merge", "missing", "--json"], []]) {
      const { out } = run("import", file, "--into", corpus, ...how);
      expect(out).not.toContain("errant");
      expect(out).toMatch(/withholds|"withheld": true/);
    }
    expect(bibliography(corpus).startsWith(before)).toBe(true);
  });

  test("is a step of the desk, which takes it back, and a table is told row by row", () => {
    const [corpus, file] = corpusAnd("store.csv", "Inv. no.;D (cm);±;air\nA2;42,5;0,5;dry\nA-3;;;\nXYZ-404;1;;\n");
    const at = join(corpus, "readings", "vane-1968.yaml");
    const before = readFileSync(at, "utf8");
    const words = ["--into", corpus, "--decimal", "comma", "--all", "from=vane-1968"];
    const columns = ["--columns", "air=nothing, D (cm)=diameter in cm"];
    const { code, out } = run("import", file, ...words, ...columns, "--json");
    expect(code).toBe(1);
    const report = tableImportSchema.parse(JSON.parse(out));
    expect(report.columns.map((one) => one.is)).toEqual([
      "of by inventory number",
      "diameter in cm",
      "uncertainty of diameter in cm",
      "nothing",
    ]);
    expect(report.added).toEqual([
      { line: 2, id: "ring-a/post-02", dimension: "diameter", value: "42.5 ± 0.5 cm" },
    ]);
    expect(report.failed.map(({ line, why }) => [line, why])).toEqual([
      [4, ["Unknown artefact `XYZ-404`, expected the id, the name or a number of one"]],
    ]);
    const added = "  - { of: ring-a/post-02, dimension: diameter, value: 42.5 ± 0.5 cm";
    expect(readFileSync(at, "utf8")).toContain(added);
    expect(openDesk(corpus).state().undo).toBe("Table brought in from store.csv");
    openDesk(corpus).undo();
    expect(readFileSync(at, "utf8")).toBe(before);
    const [wrong, other] = [run("import", file, "--into", corpus, "--columns", "airs=note"), run("import", file, file, "--into", corpus)];
    expect([wrong.code, wrong.err]).toEqual([2, "Unknown column `airs`, expected `air`\n"]);
    expect(other.code).toBe(2);
    expect(other.err).toContain("one table at a time");
  });

  test("the shipped schema of a table's report is the program's own", () => {
    const shipped: unknown = JSON.parse(
      readFileSync(
        new URL("../../../src/show/desk/import/table/told/table-import.schema.json", import.meta.url),
        "utf8",
      ),
    );
    expect(shipped).toEqual(z.toJSONSchema(tableImportSchema));
  });
});
