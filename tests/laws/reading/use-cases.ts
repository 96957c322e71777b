import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { build } from "../../../src/build.ts";
import type { Checked, Model, SourceFile } from "../../../src/build.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import type { Finding } from "../../../src/base/finding.ts";
import { plugins } from "../../../plugins/index.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";

/** Texts of files by their paths. */
export type Texts = Readonly<Record<string, string>>;

/** A register of things with its bibliography, invented: what several disputes about Merrow Down share. */
export const register: Texts = {
  "corpus.yaml": `format: 1
title: The Merrow register
licence: CC-BY-4.0
bibliography: [register.bib]
artefact-tables: [posts.csv]
withhold: [trench-9]
`,
  "register.bib": `@book{vane-1968, author = {Vane, Ada}, title = {The rings}, date = {1968}}
@book{hale-1896, author = {Hale, Tom}, title = {Down and barrow}, date = {1896}}
`,
  "things.yaml": `scholars:
  - { id: vane, name: Ada Vane }
claims:
  - { id: roofed, text: The ring of the register was roofed., about: [ring-a] }
artefacts:
  - id: ring-a
    name: Ring A
    found-at: The north slope
    coordinates: 51.23 N
    date: [{ is: -2400/-2200, from: vane-1968 p. 40, by: vane }]
    history: [{ when: 1967, what: Dug by Vane., kind: excavation, from: [vane-1968 p. 3] }]
  - { id: ring-b, name: Ring B, part-of: down, found-at: The secret field, withhold-location: true }
  - { id: down, name: The Down }
  - { id: trench-9, name: The ninth trench }
  - { id: trench-9/sherd, name: A sherd of the trench }
measurements:
  - { of: ring-a, dimension: diameter, value: 99 m, from: vane-1968 p. 5 }
`,
  "posts.csv":
    "id,name,part-of,numbers.find\nring-a/post-1,Post 1,,17\nring-b/post-1,Post 1 of B,ring-b,18\n",
  "review/preface.md": "Prose of the register.\n",
};

/** A dispute that uses the register as \`down\`, with ids and keys of its own that the register has too. */
export const dispute: Texts = {
  "corpus.yaml": `format: 1
title: The post-rings
language: en
bibliography: [own.bib]
use: [{ as: down, folder: ../merrow-register }]
`,
  "own.bib": "@book{vane-1968, author = {Vane, Ada}, title = {Another work}, date = {1969}}\n",
  "dispute.yaml": `scholars:
  - { id: vane, name: Ada Vane }
artefacts:
  - { id: ring-a, name: A ring of our own }
questions:
  - { id: what, text: What was ring A?, answers: [roofed, open] }
claims:
  - { id: roofed, text: Ring A was roofed., from: down/vane-1968 p. 2, about: [down/ring-a] }
  - { id: open, text: Ring A was open., about: [down/ring-a] }
observations:
  - { id: burnt, of: down/ring-a/post-1, text: The base is burnt., from: down/vane-1968 p. 12 }
measurements:
  - { of: down/ring-a, dimension: diameter, value: 18.2 m, from: "down/vane-1968 p. 5, fig. 3" }
  - { of: ring-a, dimension: diameter, value: 12.4 m, from: vane-1968 p. 5 }
arguments:
  - { id: so-roofed, because: [burnt], therefore: roofed }
`,
};

/** The files of a corpus that uses others, each of which stands at its folder. */
export function files(own: Texts, others: Readonly<Record<string, Texts>>): readonly SourceFile[] {
  const at = (folder: string, texts: Texts): readonly SourceFile[] =>
    Object.entries(texts).map(([path, text]) => ({ path: folder === "" ? path : `${folder}/${path}`, text }));
  return [...at("", own), ...Object.entries(others).flatMap(([folder, texts]) => at(folder, texts))];
}

/** Both corpora, either with some of its files changed. */
export const both = (own: Texts = {}, theirs: Texts = {}): readonly SourceFile[] =>
  files({ ...dispute, ...own }, { "../merrow-register": { ...register, ...theirs } });

/** What is built of files with the program's own plug-ins and nothing remembered. */
export const built = (of: readonly SourceFile[]): Checked<Model> => build(of, plugins, emptyMemo());

/** The model of files that can be read. */
export function modelOf(of: readonly SourceFile[]): Model {
  const { model } = built(of);
  if (!model) throw new Error("no model");
  return model;
}

/** A finding in a line: level, rule, file, message. */
export const line = ({ level, rule, at, message }: Finding): string =>
  `${level} ${rule} ${at?.file ?? "-"}: ${inEnglish(message)}`;

/** Errors in lines. */
export const errorsOf = (of: readonly SourceFile[]): readonly string[] =>
  built(of)
    .findings.filter(({ level }) => level === "error")
    .map(line);

/** Writes texts below a folder. */
export function written(folder: string, texts: Texts): string {
  for (const [path, text] of Object.entries(texts)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}
