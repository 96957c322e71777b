import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";

/** A photograph of 16 by 8 px, as a browser made it. */
const photograph = Buffer.from(
  "/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1xeXBkeFxlZ2P/2wBDARESEhgVGC8aGi9jQjhCY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2P/wAARCAAIABADASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAf/xAAYEAEAAwEAAAAAAAAAAAAAAAAAF2Wk4v/EABQBAQAAAAAAAAAAAAAAAAAAAAD/xAAUEQEAAAAAAAAAAAAAAAAAAAAA/9oADAMBAAIRAxEAPwBGVvm7UAAf/9k=",
  "base64",
);

/** The photograph with Exif after its head: a directory with nothing in it but a place (Exif 2.32, tag 0x8825), and the place's words behind it. */
function located(words: string): Buffer {
  const tiff = Buffer.alloc(8 + 2 + 12 + 4);
  tiff.write("II*\0", 0, "latin1");
  tiff.writeUInt32LE(8, 4);
  tiff.writeUInt16LE(1, 8);
  tiff.writeUInt16LE(0x8825, 10);
  tiff.writeUInt16LE(4, 12);
  tiff.writeUInt32LE(1, 14);
  tiff.writeUInt32LE(tiff.length, 18);
  const content = Buffer.concat([Buffer.from("Exif\0\0"), tiff, Buffer.from(words)]);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(content.length + 2, 2);
  return Buffer.concat([photograph.subarray(0, 2), head, content, photograph.subarray(2)]);
}

/** What stands in everything that must stay out, and nowhere else. */
export const secret = /umbra|44\.4471|Una May|Under Seal|The pit|51\.7777/iu;

/** A corpus with something of every kind that is kept out of outputs, by its files. */
export const planted: Readonly<Record<string, string | Buffer>> = {
  "corpus.yaml": `title: Bowls of the Row # umbra
licence: CC-BY-4.0
authors: [{ name: Ines Marrow, orcid: 0000-0002-1825-0097 }]
bibliography: [sources.bib]
review: [introduction, question, answers, evidence, numbers, contradictions, next, computations, references]
withhold: [umbra-1950, umbra-may, umbra-pit, umbra-claim, umbra-q, umbra-look, umbra-size, umbra-plate, umbra-search, umbra-talk]
dimensions: { rim: { kind: length }, depth: { kind: length } }
accept: [{ rule: single-source, about: [umbra-claim], why: Umbrawords }]
`,
  "sources.bib": `@book{hale-1990, author = {Hale, Ada}, title = {The Row}, year = 1990}
@book{reed-2001, author = {Reed, Mal}, title = {The Row Again}, year = 2001}
@book{umbra-1950, author = {May, Una}, title = {Under Seal}, year = 1950}
`,
  "review/introduction.md": `The bowls were *found together*. {{claim:umbra-claim}} {{claim:one-set}} [@umbra-1950, p. 4; @hale-1990, p. 3]\n`,
  "readings/umbra-1950.yaml": `# Una May lent this.
claims:
  - { id: lone, text: They stood on a shelf. }
positions:
  - { who: hale, claim: lone, stance: holds, from: hale-1990 p. 12 }
`,
  "images/bowl.jpg": located("GPS 51.7777 N, umbra"),
  "images/umbra-kept.svg":
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 4"><title>umbra</title></svg>',
  "things.yaml": `scholars:
  - { id: hale, name: Ada Hale }
  - { id: reed, name: Mal Reed }
  - { id: umbra-may, name: Una May }
artefacts:
  - id: bowl-1
    name: The red bowl
    held-at: county store
    found-at: below Umbra Weir
    coordinates: 51.7777, -1.2
    withhold-location: true
    shape: { profile: [rim, depth] }
    x-own: umbrawords
    history:
      - { when: "1991", what: joined with wax, kind: conservation, from: reed-2001 p. 2 }
  - { id: bowl-1/foot, name: its foot, found-at: below Umbra Weir }
  - { id: bowl-2, name: The grey bowl, held-at: county store, coordinates: 51.7777, shape: { profile: [rim, depth] } }
  - { id: umbra-pit, name: The pit }
  - { id: umbra-pit/side, name: Its umbral side }
passages:
  - { id: sealed-p4, from: umbra-1950, at: p. 4, quote: a rim of 44.4471 cm }
measurements:
  - { of: bowl-1, dimension: rim, value: 18.2 cm, from: hale-1990 p. 3 }
  - { of: bowl-1, dimension: rim, value: 21.0 cm, from: reed-2001 p. 3 }
  - { of: bowl-1, dimension: rim, value: 44.4471 cm, from: umbra-1950 p. 4 }
  - { of: bowl-1, dimension: depth, value: 7.5 cm, from: hale-1990 p. 3 }
  - { of: bowl-2, dimension: rim, value: 36.0 cm, from: hale-1990 p. 3 }
  - { of: bowl-2, dimension: rim, value: 44.4471 cm, from: [umbra-1950 p. 5, reed-2001 p. 9] }
  - { of: bowl-2, dimension: rim, value: 44.4471 cm, from: sealed-p4 }
  - { of: bowl-2, dimension: depth, value: 15.5 cm, from: hale-1990 p. 3 }
  - { of: bowl-1, dimension: height, value: 9.2 cm, from: hale-1990 p. 3 }
  - { of: bowl-2, dimension: height, value: 18.1 cm, from: hale-1990 p. 3 }
  - { of: bowl-1, dimension: base, value: 6.1 cm, from: hale-1990 p. 3 }
  - { of: bowl-2, dimension: base, value: 12.3 cm, from: hale-1990 p. 3 }
  - { id: by-way, of: bowl-2, dimension: foot, value: 9.5 cm, from: hale-1990 p. 9, via: umbra-1950 p. 2 }
observations:
  - { id: worn, of: bowl-1, text: The rim is worn., feature: wear, from: hale-1990 p. 3 }
  - { id: umbra-pit/fill, of: bowl-2, text: It lay in the umbral fill., from: hale-1990 p. 7 }
claims:
  - { id: one-set, text: They are one set. }
  - { id: two-sets, text: They are two sets. }
  - { id: umbra-claim, text: Umbrawords of a claim., about: bowl-1 }
questions:
  - { id: umbra-q, text: Umbrawords of a question?, answers: [one-set, two-sets] }
  - { id: sets, text: One set or two?, answers: [one-set, two-sets, umbra-claim] }
images:
  - { id: photo, of: bowl-1, file: images/bowl.jpg, credit: County store, licence: CC0-1.0, publish: true }
  - { id: kept, of: bowl-1, file: images/umbra-kept.svg, credit: Umbracredit }
  - { id: umbra-plate, of: bowl-1, file: images/umbra-kept.svg, publish: true, credit: Umbracredit }
  - { id: with-pit, of: [bowl-1, umbra-pit], file: images/umbra-kept.svg, publish: true, credit: Umbracredit }
searches:
  - { id: umbra-search, where: Umbralibrary, words: umbrawords, found: 3, kept: 1, by: reed }
positions:
  - { who: hale, claim: one-set, stance: holds, from: hale-1990 p. 11 }
  - { who: [hale, umbra-may], claim: two-sets, stance: holds, year: 1960, words: umbrawords }
  - { who: reed, claim: two-sets, stance: holds, from: umbra-1950 p. 8, words: umbrawords }
readings:
  - { from: [umbra-1950, hale-1990], status: read }
arguments:
  - { id: by-rim, because: "bowl-1:rim@umbra-1950", therefore: two-sets, from: hale-1990 p. 12, text: umbrawords }
  - { id: by-both, because: ["bowl-1:rim@umbra-1950", worn], therefore: two-sets }
  - { id: by-wear, because: worn, therefore: one-set, from: hale-1990 p. 12 }
  - { id: by-umbra, because: worn, therefore: umbra-claim, text: umbrawords }
  - { id: against-rim, because: worn, against: "bowl-1:rim@umbra-1950", text: umbrawords }
derivations:
  - id: sizes
    plugin: scaling
    text: The two sizes
    inputs: { larger: { of: bowl-2, from: hale-1990 }, smaller: { of: bowl-1, from: hale-1990 } }
    bears-on: [{ claim: one-set, supports: { k: "> 1.5" } }, { claim: umbra-claim, supports: { k: "> 2" } }]
  - { id: mixed, plugin: scaling, text: All of the two, inputs: { larger: { of: bowl-2 }, smaller: { of: bowl-1 } } }
  - { id: umbra-size, plugin: scaling, text: Umbrawords, inputs: { larger: { of: bowl-2 }, smaller: { of: bowl-1 } }, bears-on: [{ claim: one-set, supports: { k: "> 2" } }] }
examinations:
  - { id: umbra-look, of: bowl-1, method: umbramethod, outcomes: [{ id: u, text: umbraoutcome, therefore: [one-set] }] }
  - id: look
    of: [bowl-1, bowl-2, umbra-pit]
    method: measure the rims again
    outcomes:
      - { id: same, text: They are alike., measures: [{ of: bowl-1, dimension: rim, value: 44 cm }], therefore: [one-set] }
      - { id: other, text: They differ., therefore: [two-sets, umbra-claim], against: ["bowl-1:rim@umbra-1950"] }
talks:
  - id: talk
    title: Bowls
    steps:
      - { show: { question: sets } }
      - { show: [umbra-claim, one-set, umbra-1950] }
      - { show: [umbra-claim] }
      - { show: { around: one-set, steps: 3 } }
      - { show: { figure: sizes } }
      - { show: { drawing: [bowl-1, bowl-2] } }
      - { show: { image: photo } }
      - { show: { image: kept } }
      - { show: { image: with-pit } }
      - { show: { table: measurements } }
  - { id: umbra-talk, title: Umbratalk, steps: [{ text: Umbrawords }] }
`,
};

/** Writes the planted corpus to a new folder. */
export function plantedFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "planted-"));
  for (const [path, content] of Object.entries(planted)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return folder;
}
