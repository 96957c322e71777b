import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { build } from "../../../src/build.ts";
import type { SourceFile } from "../../../src/build.ts";
import { renaming } from "../../../src/link/edit/renamed.ts";

const bibliography = `@book{our, title = {Ours}}
@incollection{our-part, title = {A part}, crossref = {our}}
@article{hale, title = {Our word}, related = {our-part, our}}
`;

function corpus(records: string, text = bibliography): readonly SourceFile[] {
  return [
    { path: "corpus.yaml", text: "format: 1\ntitle: Merrow\nbibliography: [b.bib]\n" },
    { path: "b.bib", text },
    { path: "a.yaml", text: records },
  ];
}

function renamed(files: readonly SourceFile[], from: string, to: string): readonly SourceFile[] | string {
  const { model } = build(files, plugins, { read: new Map(), compute: new Map() });
  if (!model) throw new Error("The corpus of the test cannot be read");
  const done = renaming(model.graph, model.files, from, to);
  if ("problem" in done) return JSON.stringify(done.problem);
  return files.map((file) => ({
    ...file,
    text: edited(
      file.text,
      done.edits.filter((edit) => edit.file === file.path),
    ),
  }));
}

const textOf = (files: readonly SourceFile[] | string, path: string): string | undefined =>
  typeof files === "string" ? files : files.find((file) => file.path === path)?.text;

describe("another key for a source", () => {
  test.each(["source: our # ours", '"source": our', "source : 'our'", 'source:   "our"', "source: &key our"])(
    "%s",
    (head) => {
      const body = "\nclaims:\n  - { id: a, text: our own }\n";
      const after = renamed(corpus(`${head}${body}`), "our", "zed");
      expect(textOf(after, "a.yaml")).toBe(`${head.replace(/(?<![a-z])our(?![a-z])/, "zed")}${body}`);
    },
  );

  test("follows to the entries that have fields from it, and to no word that it is part of", () => {
    expect(textOf(renamed(corpus("source: our\n"), "our", "zed"), "b.bib")).toBe(`@book{zed, title = {Ours}}
@incollection{our-part, title = {A part}, crossref = {zed}}
@article{hale, title = {Our word}, related = {our-part, zed}}
`);
  });

  test.each(["o'x", "*z", "&z", "!z", "a:", "[z", "z]", "-", "@z", "|", "> z", "#z", "z#", "z,y", "`z"])(
    "none with a sign that would be read as YAML: %s",
    (to) => {
      const files = corpus(
        "claims:\n  - { id: a, text: T, from: 'our p. 3' }\n  - { id: b, text: T, from: our }\n",
      );
      expect(renamed(files, "our", to)).toMatch(/Unexpected id/);
    },
  );

  test.each(["Vane1968", "press:x/y", "Müller.1968", "a+b"])("%s is one", (to) => {
    const files = corpus(
      "claims:\n  - { id: a, text: T, from: 'our p. 3' }\n  - { id: b, text: T, from: our }\n",
    );
    expect(textOf(renamed(files, "our", to), "a.yaml")).toBe(
      `claims:\n  - { id: a, text: T, from: '${to} p. 3' }\n  - { id: b, text: T, from: ${to} }\n`,
    );
  });
});

describe("another id for a record", () => {
  test("parts of parts follow, wherever they stand", () => {
    const things = (id: string): string =>
      `artefacts:\n  - { id: ${id}/b/c, name: C }\n  - { id: ${id}/b, name: B }\n  - { id: ${id}, name: A }\n`;
    expect(textOf(renamed(corpus(things("ring")), "ring", "zed"), "a.yaml")).toBe(things("zed"));
  });

  test("words that are no ids stay, also where a record is called so", () => {
    const records = (id: string): string => `artefacts:
  - { id: ${id}, name: The foot of the statue, kind: foot, material: foot }
measurements:
  - { id: m, of: ${id}, dimension: foot, value: 3 m, instrument: foot }
derivations:
  - id: d
    plugin: unit-fit
    inputs: { values: { of: ${id}, dimension: foot } }
    parameters: { unit: foot }
  - id: e
    plugin: chronology
    inputs: { of: [${id}, foot of the hill cleared] }
talks:
  - { id: t, title: foot, steps: [{ show: { table: foot, drawing: [${id}] } }, { show: [${id}] }] }
`;
    expect(textOf(renamed(corpus(records("foot")), "foot", "zed"), "a.yaml")).toBe(records("zed"));
  });

  test("an id that a record has which cannot be read is taken", () => {
    const files = corpus("claims:\n  - { id: lost }\n  - { id: a, text: Roofed. }\n");
    expect(renamed(files, "a", "lost")).toMatch(/Duplicate id/);
  });
});
