import type { SourceFile } from "../../../src/read/source-file.ts";

const settings = `
title: Rods of "Sallow Fen" \\ Αγορά
language: en-GB
licence: CC-BY-4.0
version: "2"
authors: [{ name: A. Compiler, orcid: 0000-0002-1825-0097, role: editor }]
bibliography: [books.json]
units: { rod-foot: { is: 0.31 ± 0.01 m, from: vale-1950 p. 3, found-in: [k-17] } }
dimensions: { length: { kind: length, taken: end to end, also: [Länge] }, spacing: { kind: length }, turn: { kind: angle, sign: any } }
withhold: [secret-find, hidden-scholar, hidden-1960, hidden-claim]
`;

const records = `
scholars:
  - { id: vale, name: A. Vale, known-as: [Vale A.], orcid: 0000-0001-5109-3700 }
  - { id: haddad, name: سلمى حدّاد }
  - { id: hidden-scholar, name: Nemo Occultus }
questions:
  - { id: use, text: What was K-17 for?, answers: [rule, pin, hidden-claim] }
claims:
  - { id: rule, text: K-17 is a measuring rod., about: [k-17], dates: [{ event: making, is: -0299 }] }
  - { id: pin, text: K-17 is a weaving pin., from: pin-passage }
  - { id: in-feet, text: The rod is in feet. }
  - { id: hidden-claim, text: K-17 is a sceptre of Occultus. }
passages:
  - { id: pin-passage, from: haddad-1988, at: "p. 212, fig. 3", quote: "دبوس نسّاج\\nبلا شك", lang: ar, translation: plainly a weaver's pin }
  - id: vale-passage
    from: vale-1950
    at: p. 3
    quote: "a \\"rule\\" \\\\ nothing else"
    lang: EN-gb
    via: haddad-1988 p. 9
    selector: { type: FragmentSelector, conformsTo: "http://tools.ietf.org/rfc/rfc3778", value: page=5, refinedBy: { type: TextQuoteSelector, exact: nothing else } }
  - { id: hidden-passage, from: hidden-1960, at: p. 1, quote: occulted words }
positions:
  - { who: vale, claim: rule, stance: holds, certainty: probable, from: vale-passage, words: "nothing else" }
  - { id: haddad-on-rule, who: haddad, claim: rule, stance: rejects, from: haddad-1988 p. 211 }
  - { who: haddad, claim: pin, stance: holds, certainty: certain, from: pin-passage, year: 1988 }
  - { who: vale, claim: pin, stance: doubts, from: vale-1950 }
  - { who: vale, claim: in-feet, stance: leaves-open, from: vale-1950 }
  - { who: hidden-scholar, claim: pin, stance: holds, from: vale-1950 }
artefacts:
  - { id: fen, name: Sallow Fen, kind: site, coordinates: grid 99887766, found-at: behind the chapel, withhold-location: true }
  - id: k-17
    name: Bone rod K-17
    part-of: fen
    material: bone
    numbers: { inventory: K-17 }
    held-at: Fen museum
    access: { keeper: Fen museum }
    found-at: behind the chapel
    date: [{ is: -0299/-0199, from: vale-1950, by: vale }, { is: 1850~, from: haddad-1988 }]
    history:
      - { when: 1936-02, what: dug up, kind: excavation, from: vale-1950 }
      - { when: 1951, what: glued, kind: restoration }
      - { when: 1960, what: drilled for a core, kind: sampling, from: hidden-1960 }
      - { when: 1970?, what: brought to the museum, kind: move }
  - { id: k-17/tip, name: tip of K-17, history: [{ when: 1999, what: broken off, kind: loss }, { when: 1998, what: drawn sample, kind: sampling }] }
  - { id: k-18, name: Rod K-18, date: "-0299", found-at: Trench Z }
  - { id: secret-find, name: The Occultum }
images:
  - { id: photo, of: [k-17], file: images/k17.jpg, kind: photograph, publish: true, when: 1936, made-by: A. Vale, credit: Fen museum, licence: CC0-1.0 }
  - { id: unpublished, of: [k-17], file: images/unpublished-picture.jpg, publish: false }
  - { id: with-secret, of: [k-17, secret-find], file: images/with-the-secret.jpg, publish: true }
observations:
  - { id: wear, of: k-17, text: The tip is worn., feature: use wear, basis: autopsy, by: vale, year: 1950, from: vale-1950 p. 4 }
  - { id: no-wear, of: k-17, text: No wear at all., feature: use wear, present: false, basis: autopsy, from: haddad-1988 p. 9 }
  - { id: wear-unclear, of: k-17/tip, text: Wear or polish., feature: use wear, present: unclear, basis: photograph, from: haddad-1988 }
  - { id: wear-silent, of: k-18, text: Nothing is said of wear., feature: use wear, present: not-reported, basis: autopsy, from: vale-1950 }
  - { id: absent-in-print, of: k-18, text: No pigment., feature: pigment, present: false, basis: report, from: haddad-1988 }
  - { id: absent-unnamed, of: k-18, text: Nothing there., present: false, basis: autopsy }
  - { id: two-alike, of: [k-17, k-18], text: The two are of one hand., feature: one hand, basis: autopsy }
  - { id: of-secret, of: secret-find, text: The Occultum shines. }
measurements:
  - { id: length-17, of: k-17, dimension: length, value: 148.2 ± 0.4 mm, basis: autopsy, state: preserved, by: vale, year: 1950, from: vale-1950 p. 3, instrument: calliper }
  - { id: spacing-17, of: k-17, dimension: spacing, between: notch 1 to notch 2, value: 31.4 mm, basis: autopsy, readings: [31.3 mm, 31.5 mm], n: 2 }
  - { of: k-18, dimension: length, value: 6 in, basis: drawing, from: haddad-1988 }
  - { of: k-18, dimension: length, value: ≥ 15 cm, basis: report, from: haddad-1988, repeats: vale-1950 }
  - { of: k-18, dimension: spacing, value: 30–33 mm, spread: true, n: 5, basis: autopsy }
  - { of: k-18, dimension: turn, value: -12° 30′, basis: autopsy, state: reconstructed }
  - { id: secret-length, of: secret-find, dimension: length, value: 77.7 m }
relations:
  - { id: older, earlier: k-17, later: the flood, because: silt, at-least: 10, from: vale-1950 }
  - { id: same, same-time: [k-17, k-18], because: one hand }
arguments:
  - { id: for-rule, because: [wear, length-17, older, feet], therefore: rule, from: vale-1950 p. 4, scheme: trace, text: It measures., strength: strong, why-strength: it was tried }
  - { id: for-pin, because: [no-wear, haddad-on-rule], therefore: pin, from: haddad-1988 }
  - { id: against-rule, because: [in-feet], against: rule, scheme: silence, from: haddad-1988 }
  - { id: against-length, because: [wear-unclear], against: [length-17, wear], from: haddad-1988 }
  - { id: undercut, because: [no-wear], against: [for-rule], from: haddad-1988 }
  - { id: from-secret, because: [of-secret], therefore: pin }
derivations:
  - { id: feet, plugin: counts, inputs: { first: { of: k-17, dimension: posts }, second: { of: k-18, dimension: posts } }, bears-on: [{ claim: in-feet, supports: { ratio: "> 1" } }] }
examinations:
  - { id: look, of: [k-17, secret-find], method: microscope, permit: ask the keeper, outcomes: [{ id: worn, text: It is worn., sees: [{ feature: use wear }], therefore: [rule], against: [pin] }] }
searches:
  - { id: shelf, where: shelf 4, words: rod OR pin, when: 2024-02-05, found: 9, screened: 9, kept: 2, left-out: [{ n: 7, why: other rods }] }
readings:
  - { from: vale-1950, status: read, when: 2024-02-06 }
`;

const counts = `
measurements:
  - { id: posts-17, of: k-17, dimension: posts, value: 17, basis: autopsy }
  - { id: posts-18, of: k-18, dimension: posts, value: 8, basis: autopsy }
`;

const books = [
  {
    id: "vale-1950",
    type: "article-journal",
    title: "Rods & <i>pins</i>",
    author: [{ family: "Vale", given: "A." }],
    issued: { "date-parts": [[1950, 3]] },
    DOI: "10.9999/rods.1",
    "x-shelf": "B 4",
  },
  {
    id: "haddad-1988",
    type: "book",
    title: "دبابيس",
    language: "ar",
    author: [{ literal: "سلمى حدّاد" }],
    issued: { "date-parts": [[1988]] },
  },
  { id: "old-scroll", type: "manuscript", title: "Scroll", issued: { "date-parts": [[-300]] } },
  { id: "hidden-1960", type: "report", title: "Occulted report", issued: { "date-parts": [[1960]] } },
];

/** An invented corpus with a record of every kind, most of their fields, scripts and signs that must be escaped, and things withheld. */
export const everything: readonly SourceFile[] = [
  { path: "books.json", text: JSON.stringify(books) },
  { path: "corpus.yaml", text: settings },
  { path: "counts.yaml", text: counts },
  { path: "records.yaml", text: records },
];

/** Words that are withheld there, and may stand in no file. */
export const withheldWords = [
  "ccult",
  "99887766",
  "behind the chapel",
  "secret",
  "hidden",
  "77.7",
  "unpublished-picture",
  "drilled",
] as const;
