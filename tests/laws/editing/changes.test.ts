import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import type { Model } from "../../../src/build.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { changesBetween } from "../../../src/show/desk/changes/page.ts";
import { mergePage } from "../../../src/show/desk/changes/merging/page.ts";

const base: Readonly<Record<string, string>> = {
  "corpus.yaml": "title: The ring\nbibliography: [sources.bib]\nwithhold: [trench-9]\n",
  "sources.bib": "@book{vane-1968,\n  author = {Vane, Ruth},\n  title = {The Rings},\n  year = {1968}\n}\n",
  "things.yaml": `artefacts:
  - { id: ring, name: The ring, found-at: Merrow Down, coordinates: "51.1, -0.5" }
  - { id: trench-9, name: The garden, found-at: behind the wall }
  - id: hoard
    name: The hoard
    withhold-location: true
    found-at: under the oak
  - { id: hoard/cup, name: The cup, found-at: by the well }
`,
  "claims.yaml": `claims:
  - { id: roofed, text: The ring carried a roof., about: [ring] }
  - { id: garden-claim, text: The garden was dug., about: [trench-9] }
observations:
  - { id: deep, of: ring, text: The post stood deep. }
  - { id: wet, of: trench-9, text: The soil was wet. }
measurements:
  - { of: ring, dimension: diameter, value: 18.2 m, from: vane-1968 p. 12 }
  - { of: ring, dimension: diameter, value: 18.4 m }
arguments:
  - { id: deep-so-roofed, because: deep, therefore: roofed }
`,
};

function modelOf(files: Readonly<Record<string, string>>): Model {
  const all = Object.entries(files).map(([path, text]) => ({ path, text }));
  const { model } = build(all, plugins, emptyMemo());
  if (!model) throw new Error("unexpected corpus, expected one that can be read");
  return model;
}

/** The base with one passage of a file put otherwise. */
function withText(file: string, from: string, to: string, files = base): Readonly<Record<string, string>> {
  const text = files[file] ?? "";
  expect(text).toContain(from);
  return { ...files, [file]: text.replace(from, to) };
}

const between = (now: Readonly<Record<string, string>>, was = base) =>
  changesBetween(modelOf(was), modelOf(now));
const lines = (
  rows: readonly { readonly pieces: readonly { readonly text: string }[] }[],
): readonly string[] => rows.map((row) => row.pieces.map((piece) => piece.text).join(""));

describe("two times of a corpus are compared by record", () => {
  test("nothing differs between a corpus and itself, nor where only line ends do", () => {
    const nothing = { records: [], standings: [], files: [] };
    expect(between(base)).toEqual(nothing);
    const windows = Object.fromEntries(
      Object.entries(base).map(([path, text]) => [path, `\ufeff${text.replaceAll("\n", "\r\n")}`]),
    );
    expect(between(windows)).toEqual(nothing);
  });

  test("a field is told in the words of the sheet, with what was and what is", () => {
    const { records } = between(withText("claims.yaml", "18.2 m", "18.3 m"));
    expect(records.map(({ how, kind, id }) => [how, kind, id])).toEqual([
      ["changed", "measurement", "ring:diameter@vane-1968"],
    ]);
    const [field] = records[0]?.fields ?? [];
    expect(field?.name).toBe("value");
    expect(lines(field?.before ?? [])).toEqual(["18.2 m"]);
    expect(lines(field?.after ?? [])).toEqual(["18.3 m"]);
  });

  test("comments and layout alone are told of the file", () => {
    const { records, files } = between(withText("claims.yaml", "claims:", "# Read again.\nclaims:"));
    expect(records).toEqual([]);
    expect(files).toEqual([{ file: "claims.yaml", how: "layout" }]);
  });

  test("a record that goes takes its claim's standing with it", () => {
    const line = "  - { id: deep-so-roofed, because: deep, therefore: roofed }\n";
    const { records, standings } = between(withText("claims.yaml", `arguments:\n${line}`, ""));
    expect(records.map(({ how, id }) => [how, id])).toEqual([["taken", null]]);
    expect(standings).toEqual([
      { id: "roofed", text: "The ring carried a roof", was: "stands", is: "unsupported" },
    ]);
  });

  test("another id is one change, not one in every record that refers to it", () => {
    const text = (base["claims.yaml"] ?? "")
      .replace("id: deep,", "id: deep-post,")
      .replace("because: deep,", "because: deep-post,");
    const { records } = between({ ...base, "claims.yaml": text });
    expect(records.map(({ how, id, fields }) => [how, id, fields.map((one) => one.name)])).toEqual([
      ["changed", "deep-post", ["id"]],
    ]);
  });

  test("a record without an id that says a little else is the same record", () => {
    const { records } = between(
      withText("claims.yaml", "value: 18.4 m }", "value: 18.4 m, from: vane-1968 p. 13 }"),
    );
    expect(records.map(({ how, fields }) => [how, fields.map((one) => one.name)])).toEqual([
      ["changed", ["from"]],
    ]);
  });

  test("a record in another file has moved, and one that cannot be read is not taken out", () => {
    const claim = "  - { id: roofed, text: The ring carried a roof., about: [ring] }\n";
    const moved = { ...withText("claims.yaml", claim, ""), "more.yaml": `claims:\n${claim}` };
    expect(between(moved).records.map(({ how, from, file, fields }) => [how, from, file, fields])).toEqual([
      ["changed", "claims.yaml", "more.yaml", []],
    ]);
    const broken = withText("claims.yaml", "stood deep.", "stood deep, or so.");
    expect(between(broken).records.map(({ how, text }) => [how, text])).toContainEqual([
      "unread",
      "The post stood deep",
    ]);
    const marked = { ...base, "claims.yaml": `<<<<<<< a\n${base["claims.yaml"] ?? ""}=======\n>>>>>>> b\n` };
    expect(between(marked)).toMatchObject({
      records: [],
      files: [{ file: "claims.yaml", how: "unmerged" }],
    });
  });

  test("so are bibliographies and settings", () => {
    const now = withText(
      "sources.bib",
      "The Rings",
      "The Rings of Merrow Down",
      withText("corpus.yaml", "title: The ring", "title: Two rings"),
    );
    expect(between(now).records.map(({ kind, fields }) => [kind, fields.map((one) => one.name)])).toEqual([
      ["source", ["title"]],
      ["settings", ["title"]],
    ]);
  });
});

/** What no page may tell: words of what is withheld, and exact places. */
const secret = /garden|behind the wall|The soil|under the oak|by the well|by the gate|51\.1|52\.2|trench-9/u;

describe("what is withheld at one of the two times is told of neither", () => {
  test.each<readonly [string, Readonly<Record<string, string>>]>([
    ["a withheld record", withText("things.yaml", "The garden", "The walled garden")],
    ["what is about it", withText("claims.yaml", "The soil was wet", "The soil was dry")],
    ["coordinates", withText("things.yaml", "51.1, -0.5", "52.2, -0.6")],
    ["a withheld place", withText("things.yaml", "under the oak", "by the gate")],
    ["a part's place", withText("things.yaml", "by the well", "by the gate")],
    ["the list of what is withheld", withText("corpus.yaml", "withhold: [trench-9]\n", "")],
    [
      "a withheld record that goes",
      withText("things.yaml", "  - { id: trench-9, name: The garden, found-at: behind the wall }\n", ""),
    ],
    [
      "a record that names it and cannot be read",
      withText("claims.yaml", "The soil was wet.", "The soil was wet, or so."),
    ],
  ])("%s", (_, now) => {
    expect(JSON.stringify(between(now))).not.toMatch(secret);
    expect(JSON.stringify(between(base, now))).not.toMatch(secret);
  });

  test("nor before it was withheld", () => {
    const open = withText(
      "things.yaml",
      "    withhold-location: true\n",
      "",
      withText("corpus.yaml", "withhold: [trench-9]\n", ""),
    );
    const all = {
      ...open,
      "things.yaml": (base["things.yaml"] ?? "")
        .replaceAll("name: The", "name: Their")
        .replaceAll("found-at: ", "found-at: once "),
    };
    expect(JSON.stringify(between(all, open))).toMatch(/found at/u);
    expect(JSON.stringify(between(base, all))).not.toMatch(secret);
  });
});

describe("two versions of a file are merged in words", () => {
  const both = (mine: string, theirs: string): string =>
    `<<<<<<< here\n${mine}=======\n${theirs}>>>>>>> there\n`;
  const page = (file: string, text: string, answers = "", byLines = false) => {
    const files = { ...base, [file]: text };
    const { model } = build(
      Object.entries(files).map(([path, one]) => ({ path, text: one })),
      plugins,
      emptyMemo(),
    );
    const told = mergePage(new Map(Object.entries(files)), model?.graph ?? null, { file, answers, byLines });
    if (!told?.marked) throw new Error("unexpected page, expected two versions");
    return told.marked;
  };
  const things = base["things.yaml"] ?? "";
  const changed = things
    .replace("The garden", "The walled garden")
    .replace("under the oak", "by the gate")
    .replace("51.1", "52.2")
    .replace("name: The ring", "name: The inner ring");

  test("with nothing of what is withheld, by record and by lines", () => {
    for (const byLines of [false, true]) {
      const told = page("things.yaml", both(things, changed), "", byLines);
      const { change: _, ...shown } = told;
      expect(JSON.stringify(shown)).not.toMatch(secret);
      expect(shown.by).toBe(byLines ? "lines" : "record");
    }
    const [clash] = page("things.yaml", both(things, changed)).clashes;
    expect([clash?.kind, clash?.text, clash?.field]).toEqual(["artefact", "The ring", "name"]);
    expect(lines(clash?.theirs ?? [])).toEqual(["The inner ring"]);
  });

  test("and of the settings themselves, without which nothing else can be read", () => {
    const settings = base["corpus.yaml"] ?? "";
    const told = page("corpus.yaml", both(settings, settings.replace("The ring", "Two rings")), "t");
    expect(told.clashes.map((one) => [one.kind, one.field])).toEqual([["settings", "title"]]);
    const [edit] = told.change?.edits ?? [];
    expect(edit?.text).toContain("Two rings");
    expect(told.answered).toBe("t");
  });

  test("what cannot be read record by record is merged by lines", () => {
    const told = page("claims.yaml", both("claims: [\n", "claims:\n"), "t");
    expect(told.by).toBe("lines");
    expect(told.byRecord).toBe(false);
    expect(edited(both("claims: [\n", "claims:\n"), told.change?.edits ?? [])).toBe("claims:\n");
  });
});
