import { expect, test } from "vitest";
import type { SourceFile } from "../../../src/build.ts";
import { reviewed, textOf, worked } from "./review-cases.ts";

/** Every word that is to stay out has `zzyx` in it; whatever may be told has not. */
const records = `
scholars:
  - { id: hale, name: Josiah Hale }
  - { id: zzyx-scholar, name: Anna Zzyxova }
questions:
  - id: what
    text: What was the ring for?
    answers: [pen, house, zzyx-claim]
claims:
  - { id: pen, text: The ring was a pen., from: hale-1896 p. 1 }
  - { id: house, text: The ring was a house., from: hale-1896 p. 2 }
  - { id: zzyx-claim, text: The ring was a zzyxium. }
  - { id: leaning, text: The ring was round., from: zzyx-2001 p. 3 }
artefacts:
  - id: ring
    name: the ring
    coordinates: 51.0001, -1.0001 zzyx
    found-at: Zzyx Farm
    withhold-location: true
  - { id: ring/post-1, name: post 1 }
  - { id: zzyx-thing, name: the zzyx stone, found-at: Zzyx Hill }
passages:
  - { id: hidden-words, at: p. 9, from: zzyx-2001, quote: zzyx said this, lang: en }
positions:
  - { who: hale, claim: pen, stance: holds, from: hale-1896 p. 1, words: a pen }
  - { who: zzyx-scholar, claim: pen, stance: rejects, from: hale-1896 p. 3, words: zzyx no }
  - { who: [hale, zzyx-scholar], claim: house, stance: doubts, from: hale-1896 p. 4 }
  - { who: hale, claim: zzyx-claim, stance: holds, from: hale-1896 p. 5 }
  - { id: named-view, who: hale, claim: pen, stance: doubts, from: zzyx-2001 p. 20, words: zzyx view }
  - { who: hale, claim: leaning, stance: holds, from: hidden-words }
observations:
  - { id: seen, of: ring, text: A ditch runs round it., feature: ditch, basis: autopsy, year: 1894, from: hale-1896 p. 6 }
  - { id: zzyx-seen, of: zzyx-thing, text: The zzyx stone is scored., from: hale-1896 p. 7 }
  - { id: both, of: [ring, zzyx-thing], text: They lie in one line., from: hale-1896 p. 8 }
  - { id: told-on, of: ring, text: It was burnt., from: hale-1896 p. 9, via: zzyx-2001 p. 5 }
measurements:
  - { id: a, of: ring, dimension: width, value: 2.00 m, from: hale-1896 p. 9 }
  - { id: b, of: ring/post-1, dimension: width, value: 1.00 m, from: hale-1896 p. 9 }
  - { id: zzyx-c, of: zzyx-thing, dimension: width, value: 3.00 m, from: hale-1896 p. 9 }
  - { id: d, of: ring, dimension: width, value: 2.50 m, from: zzyx-2001 p. 9 }
arguments:
  - { id: ditch, because: [seen], therefore: pen, text: Ditches keep beasts in., from: hale-1896 p. 10 }
  - { id: by-hidden, because: [seen], therefore: house, text: A zzyx reason., by: zzyx-scholar, from: zzyx-2001 p. 11 }
  - { id: mixed, because: [seen, zzyx-seen], therefore: house, text: Both say so., from: hale-1896 p. 12 }
  - { id: against, because: [zzyx-seen], against: [ditch], text: A zzyx objection., from: zzyx-2001 p. 13 }
  - { id: second-hand, because: [told-on, both], therefore: leaning, from: hale-1896 p. 14 }
derivations:
  - id: widths
    plugin: unit-fit
    short: widths in a foot
    inputs: { values: [a, b, zzyx-c, d] }
    parameters: { unit: foot }
    bears-on: [{ claim: house, supports: { p: "< 0.01" } }]
images:
  - { id: shown, of: ring, file: images/ring.svg, kind: drawing, publish: true, credit: the compilers }
  - { id: kept, of: ring, file: images/zzyx-kept.svg, kind: drawing }
  - { id: of-both, of: [ring, zzyx-thing], file: images/zzyx-both.svg, kind: drawing, publish: true }
examinations:
  - id: look
    of: [ring, zzyx-thing]
    method: look again
    outcomes: [{ id: yes, text: It is a pen., therefore: [pen] }, { id: no, text: It is not., against: [ditch] }]
searches:
  - { id: shelf, where: the shelf, words: ring, when: 2024-01-01, found: 5, screened: 4, kept: 2, left-out: [{ n: 1, why: doubles }], by: [hale, zzyx-scholar] }
readings:
  - { from: hale-1896, status: read }
  - { from: zzyx-2001, status: not-found }
`;

const bibliography = `
@book{hale-1896, author = {Hale, Josiah}, title = {On rings}, year = {1896}}
@book{zzyx-2001, author = {Zzyxova, Anna}, title = {Zzyx}, year = {2001}}
`;

const settings = `
format: 1
title: A ring
bibliography: [all.bib]
dimensions: { width: { kind: length } }
withhold: [zzyx-scholar, zzyx-2001, zzyx-thing, zzyx-claim]
`;

const files: readonly SourceFile[] = [
  { path: "all.bib", text: bibliography },
  { path: "corpus.yaml", text: settings },
  { path: "records.yaml", text: records },
];

test("nothing that is withheld is in a review, and it says that something is", () => {
  const { model, ...rest } = worked(files);
  expect(model.graph.findings.filter(({ level }) => level === "error")).toEqual([]);
  for (const question of [null, "what"]) {
    const manuscript = reviewed({ model, ...rest }, { question });
    expect(JSON.stringify(manuscript).match(/.{0,80}zzyx.{0,40}/iu)).toBeNull();
    const text = textOf(manuscript);
    expect(text).toContain("something that is withheld");
    expect(text).toMatch(/records are withheld/u);
    expect(text).toMatch(/places of finds are withheld/u);
    expect(text).toMatch(/Hale|hale-1896/u);
    const pictures = manuscript.blocks.flatMap((one) =>
      one.is === "plate" && one.picture.is === "image" ? [one.picture.file] : [],
    );
    expect(pictures).toEqual(["images/ring.svg"]);
  }
});

test("a log that does not add up says so, and what is withheld is in none of its sums", () => {
  const text = textOf(reviewed(worked(files), { sections: ["searches"] }));
  expect(text).toContain("The log does not tell what became of one record that was screened: “the shelf”.");
  expect(text).toContain("Records set aside before screening\n1");
  expect(text).toContain("Works in the bibliography\n1");
  expect(text).toContain("The searches kept one record more than the bibliography has works");
});
