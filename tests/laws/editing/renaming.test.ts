import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build } from "../../../src/build.ts";
import type { Model, SourceFile } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { renaming } from "../../../src/link/edit/renamed.ts";
import { pluginFilesIn } from "../../../src/read/source-file.ts";

const demo = readCorpusFolder(fileURLToPath(new URL("../../../demo-corpus", import.meta.url)));

function modelOf(files: readonly SourceFile[]): Model {
  const { model } = build(files, plugins, { read: new Map(), compute: new Map() });
  if (!model) throw new Error("The corpus of the test cannot be read");
  return model;
}

/** The files after a renaming, with what it said of itself. */
function renamed(files: readonly SourceFile[], model: Model, from: string, to: string) {
  const done = renaming(model.graph, model.files, from, to);
  if ("problem" in done) throw new Error(inEnglish(done.problem));
  const after = files.map((file) => ({
    ...file,
    text: edited(
      file.text,
      done.edits.filter((edit) => edit.file === file.path),
    ),
  }));
  return { ...done, after };
}

/** Every place where a record names another, by grammar, as the names stand in the graph. */
function said(model: Model, called: (id: string) => string) {
  const standings = [...model.judgement.standings].map(([id, standing]) => [
    id.split(">").map(called).join(">"),
    standing,
  ]);
  return Object.fromEntries(standings.toSorted(([a = ""], [b = ""]) => (a < b ? -1 : 1)));
}

const whole = modelOf(demo);
const named = [
  ...[...whole.graph.records.values()].filter((one) => one.named).map((one) => one.id),
  ...whole.graph.sources.keys(),
];

describe("another name for a record", () => {
  test("every reference follows: nothing is unknown, and all stands as it stood", () => {
    fc.assert(
      fc.property(fc.constantFrom(...named), (from) => {
        const to = "zz-another-name";
        const { names, after } = renamed(demo, whole, from, to);
        const model = modelOf(after);
        const called = (id: string): string => names.get(id) ?? id;
        expect(model.graph.findings.filter((one) => one.rule === "unknown-reference")).toEqual([]);
        expect([...model.graph.records.keys()].toSorted()).toEqual(
          [...whole.graph.records.keys()].map(called).toSorted(),
        );
        expect(said(model, (id) => id)).toEqual(said(whole, called));
      }),
      { numRuns: 40 },
    );
  });

  test("named back, every file is what it was, byte for byte", () => {
    fc.assert(
      fc.property(fc.constantFrom(...named), (from) => {
        const { after } = renamed(demo, whole, from, "zz-another-name");
        const back = renamed(after, modelOf(after), "zz-another-name", from);
        expect(back.after).toEqual(demo);
      }),
      { numRuns: 40 },
    );
  });

  test("the plug-ins of a corpus are left alone", () => {
    const { after } = renamed(demo, whole, named[0] ?? "", "zz-another-name");
    expect(pluginFilesIn(after)).toEqual(pluginFilesIn(demo));
  });
});

const corpus = (records: string): readonly SourceFile[] => [
  { path: "corpus.yaml", text: "format: 1\ntitle: Merrow\nbibliography: [b.json]\nwithhold: [ring/post]\n" },
  { path: "b.json", text: '[{ "id": "vane-1968", "type": "book", "title": "Rings" }]' },
  { path: "a.yaml", text: records },
];

describe("what a name takes with it", () => {
  const records = `source: vane-1968
artefacts:
  - { id: ring, name: The ring } # ring stays in a comment
  - { id: ring/post, name: 'A post of the ring' }
  - { id: ring/stone, name: A stone, part-of: barrow }
  - { id: barrow, name: ring }
measurements:
  - { of: ring, dimension: width, value: 12 m }
observations:
  - { id: o, of: "ring", text: ring }
relations:
  - { id: r, earlier: ring, later: the great fire }
derivations:
  - id: d
    plugin: unit-fit
    inputs: { values: [ ring:width@vane-1968 ] }
`;

  test("parts called after their whole, made names and events that are things follow; words do not", () => {
    const files = corpus(records);
    const { after, names } = renamed(files, modelOf(files), "ring", "circle");
    expect(after.find((file) => file.path === "a.yaml")?.text).toBe(`source: vane-1968
artefacts:
  - { id: circle, name: The ring } # ring stays in a comment
  - { id: circle/post, name: 'A post of the ring' }
  - { id: ring/stone, name: A stone, part-of: barrow }
  - { id: barrow, name: ring }
measurements:
  - { of: circle, dimension: width, value: 12 m }
observations:
  - { id: o, of: "circle", text: ring }
relations:
  - { id: r, earlier: circle, later: the great fire }
derivations:
  - id: d
    plugin: unit-fit
    inputs: { values: [ circle:width@vane-1968 ] }
`);
    expect(after.find((file) => file.path === "corpus.yaml")?.text).toContain("withhold: [circle/post]");
    expect(names.get("ring:width@vane-1968")).toBe("circle:width@vane-1968");
  });

  test("the key of a source is renamed in its bibliography and at the head of the files that are from it", () => {
    const files = corpus(records);
    const { after } = renamed(files, modelOf(files), "vane-1968", "vane-1969");
    expect(after.map((file) => file.text).join("\n")).not.toContain("vane-1968");
    expect(after[1]?.text).toContain('"id": "vane-1969"');
  });

  test.each([
    ["ring", "barrow", /Duplicate id/],
    ["ring", "Ring A", /Unexpected id/],
    ["ring", "ring/", /Unexpected id/],
    ["nobody", "x", /Unknown id/],
    ["ring:width@vane-1968", "x", /Unknown id/],
  ])("%s is not renamed to %s", (from, to, why) => {
    const model = modelOf(corpus(records));
    const refused = renaming(model.graph, model.files, from, to);
    expect("problem" in refused ? inEnglish(refused.problem) : refused).toMatch(why);
  });
});
