import { build } from "../../../src/build.ts";
import type { Memo, Model, SourceFile } from "../../../src/build.ts";
import { edited } from "../../../src/base/text/edit.ts";
import { prepared } from "../../../src/link/edit/prepare.ts";
import type { Action } from "../../../src/link/edit/action.ts";
import { nothingFilled, nothingMeasured } from "../../../src/show/desk/visit/filled/filled.ts";
import type { Filled } from "../../../src/show/desk/visit/filled/filled.ts";
import { visitSheet } from "../../../src/show/desk/visit/sheet/sheet.ts";
import type { VisitSheet } from "../../../src/show/desk/visit/sheet/sheet.ts";
import { measureKey } from "../../../src/show/desk/visit/sheet/keys.ts";
import type { VisitAsked } from "../../../src/show/desk/visit/asked.ts";

/** A store with two pegs, one of them under seal, and a look at the other that decides how the hole was made. */
export const visitFiles: Readonly<Record<string, string>> = {
  "corpus.yaml": `format: 1
title: The Sallow Row
bibliography: [sources.bib]
dimensions:
  girth: { kind: length, also: [Umfang], taken: a tape round the middle }
withhold: [peg-9, sealed-1950]
`,
  "sources.bib": `@book{hale-1990, author = {Hale, Ada}, title = {The Row}, year = {1990}}
@book{sealed-1950, author = {Under, Seal}, title = {Kept under seal}, year = {1950}}
`,
  "scholars.yaml": `scholars:
  - { id: reed, name: Mal Reed, known-as: ["Reed, M."] }
  - { id: hale, name: Ada Hale }
`,
  "things.yaml": `artefacts:
  - id: peg-1
    name: the first peg
    numbers: { inventory: K 17 }
    found-at: the hollow behind Fennimore mill
    coordinates: 51.0 -1.0
    withhold-location: true
    held-at: county store
    access: { keeper: county store, permit: reader's ticket, lead-time: two weeks }
  - { id: peg-2, name: the second peg, held-at: county store, access: { keeper: county store } }
  - { id: peg-9, name: the Quenby peg, held-at: county store, access: { keeper: county store } }
measurements:
  - { of: peg-1, dimension: length, value: 42.7 cm, between: tip to shoulder, from: hale-1990 p. 3, instrument: steel rule }
  - { id: sealed-length, of: peg-1, dimension: length, value: 43.9 cm, between: tip to shoulder, from: sealed-1950 p. 4 }
  - { of: peg-1, dimension: length, value: 61.3 cm, between: tip to head, from: hale-1990 p. 3 }
  - { of: peg-9, dimension: length, value: 11.1 cm, from: hale-1990 p. 9 }
observations:
  - { id: bored, of: peg-1, text: The hole was bored., feature: spiral marks, from: hale-1990 p. 4 }
claims:
  - { id: bored-hole, text: The hole was bored. }
  - { id: burnt-hole, text: The hole was burnt. }
questions:
  - { id: how, text: How was the hole made?, answers: [bored-hole, burnt-hole] }
arguments:
  - { id: marks, because: bored, therefore: bored-hole }
examinations:
  - id: look
    of: [peg-1, peg-9]
    method: look at the hole under raking light
    permit: reader's ticket
    outcomes:
      - id: spiral
        text: The marks turn.
        sees: [{ feature: spiral marks, present: true }]
        measures: [{ of: peg-1, dimension: Umfang, value: 97.7 mm }, { of: peg-9, dimension: length, value: 11.2 cm }]
      - id: char
        text: The hole is charred.
        sees: [{ feature: charring, present: true }]
        therefore: [burnt-hole]
        against: [bored]
        strength: strong
`,
};

const memo: Memo = { read: new Map(), compute: new Map() };

/** The model of a corpus of files. */
export function modelOf(files: Readonly<Record<string, string>>): Model {
  const sources: readonly SourceFile[] = Object.entries(files).map(([path, text]) => ({ path, text }));
  const { model } = build(sources, [], memo, {}, { plan: true });
  if (!model) throw new Error("no corpus");
  return model;
}

export const lookAsked: VisitAsked = { examination: "look", keeper: null, also: [] };

/** The sheet of a visit to a corpus of files, planned. */
export function sheetOf(files: Readonly<Record<string, string>>, asked = lookAsked): VisitSheet {
  const model = modelOf(files);
  const sheet = visitSheet(model, asked, model.plan && { plan: model.plan, plugins: [] });
  if (!sheet) throw new Error("no sheet");
  return sheet;
}

/** The files after an action. */
export function after(
  files: Readonly<Record<string, string>>,
  action: Action,
): Readonly<Record<string, string>> {
  const step = prepared({ graph: modelOf(files).graph, files: new Map(Object.entries(files)) }, action);
  if (!("changes" in step)) throw new Error(JSON.stringify(step));
  const next = { ...files };
  for (const change of step.changes) next[change.file] = edited(next[change.file] ?? "", change.edits);
  return next;
}

export const girth = measureKey({ of: "peg-1", dimension: "girth", between: "" });
export const length = measureKey({ of: "peg-1", dimension: "length", between: "tip to shoulder" });

/** A sheet filled in by Reed on a day, with readings of some rows. */
export function filledWith(
  readings: Readonly<Record<string, readonly string[]>>,
  more: Partial<Filled> = {},
): Filled {
  return {
    ...nothingFilled,
    by: "reed",
    on: "2026-05-04",
    instrument: "tape",
    ...more,
    measured: Object.fromEntries(
      Object.entries(readings).map(([key, own]) => [
        key,
        { ...nothingMeasured, readings: [...own], unit: "mm" },
      ]),
    ),
  };
}
