import { say, type Caution, type Example } from "../../src/plugin.ts";

/** The conditions under which a weighed silence misleads (methods F). */
export const cautions: readonly Caution[] = [
  {
    id: "reporting-rate-unknown",
    whenMet: true,
    text: say`Reporting rate unknown: nothing comparable is known that the source could have reported. The likelihood ratio of 2 at most is that of a flat distribution of the rate, however often the source is silent, and its ends are as wide as that.`,
  },
  {
    id: "known-by-itself",
    whenMet: true,
    text: say`All that counts as known is known from the silent source alone. What it passed over elsewhere could not show: count what others found where it had looked.`,
  },
  {
    id: "reports-of-another",
    whenMet: true,
    text: say`Not all reports counted are by the silent source, or of several that are silent one has no report counted: the habit of one is judged by another's.`,
  },
  {
    id: "one-observer",
    whenMet: true,
    text: say`Several of the silent sources are by one observer. They count as independent occasions, which they are only if each was written from a fresh look.`,
  },
  {
    id: "conspicuousness",
    text: say`What is known must be as conspicuous as what was passed over: an author who always reports walls may never report stains.`,
  },
  {
    id: "one-checklist",
    text: say`Occasions of one source are not independent, for it was written with one list in mind; they count as one.`,
  },
  {
    id: "chance-to-see",
    text: say`The source must have had the chance to see it: what had been dug away or was not yet opened says nothing by not being reported.`,
  },
  {
    id: "flat-prior",
    text: say`Before anything is counted every reporting rate is taken as equally likely, which weighs as much as two more known traces, one of them reported.`,
  },
  {
    id: "scale",
    text: say`The words for what a likelihood ratio is worth are a convention (Kass & Raftery 1995, from memory), not a measurement.`,
  },
];

const bibliography = [
  "@book{hallow-1901, author = {Hallow, Ada}, title = {Digging at Ember Hill}, date = {1901}}",
  "@book{hallow-1906, author = {Hallow, Ada}, title = {The Second Trench}, date = {1906}}",
  "@book{quill-1911, author = {Quill, Tobias}, title = {A Walk over Ember Hill}, date = {1911}}",
  "@book{stern-1988, author = {Stern, Ida}, title = {Ember Hill Looked at Again}, date = {1988}}",
].join("\n");

const corpus = "format: 1\ntitle: Ember Hill\nbibliography: [sources.bib]\n";
const pits = Array.from({ length: 12 }, (_, i) => i + 1);

/** Twelve pits in which one source saw burnt clay, nine of which the silent one reports, and its silences elsewhere. */
function pitsWith(silences: readonly string[]): string {
  const seen = pits.map(
    (i) =>
      `  - { id: seen-${i}, of: pit-${i}, text: Burnt clay in pit ${i}., feature: burnt clay, from: stern-1988 }`,
  );
  const reported = pits
    .slice(0, 9)
    .map(
      (i) =>
        `  - { id: told-${i}, of: pit-${i}, text: Red clay in pit ${i}., feature: burnt clay, from: hallow-1901 }`,
    );
  const silent = silences.map(
    (source, i) =>
      `  - { id: silent-${i + 1}, of: ditch, text: No word of burnt clay in the ditch., feature: burnt clay, present: not-reported, from: ${source} }`,
  );
  return [
    "artefacts:",
    "  - { id: ditch, name: The ditch }",
    ...pits.map((i) => `  - { id: pit-${i}, name: Pit ${i} }`),
    "observations:",
    ...seen,
    ...reported,
    ...silent,
    "derivations:",
    "  - id: silence-of-the-ditch",
    "    plugin: silence",
    "    inputs:",
    `      known: { of: [${pits.map((i) => `pit-${i}`).join(", ")}], feature: burnt clay, present: true }`,
    `      reported: { of: [${pits.map((i) => `pit-${i}`).join(", ")}], feature: burnt clay, present: true, from: hallow-1901 }`,
    "      occasions: { of: ditch, feature: burnt clay, present: not-reported }",
    "",
  ].join("\n");
}

/** Worked examples with numbers from outside. */
export const examples: readonly Example[] = [
  {
    title: "Nine of twelve reported and one silence, invented",
    source:
      "R lbeta and qbeta: detection ~ Beta(1 + k, 1 + m − k), E[(1 − d)^n] = B(a + k, b + m − k + n) / B(a + k, b + m − k)",
    files: {
      "corpus.yaml": corpus,
      "sources.bib": bibliography,
      "pits.yaml": pitsWith(["hallow-1901", "hallow-1901"]),
    },
    derivation: "silence-of-the-ditch",
    expected: {
      "likelihood-ratio": { value: 3.5, tolerance: 1e-9 },
      "reporting-rate": { value: 0.714285714285714, tolerance: 1e-9 },
    },
  },
  {
    title: "Nine of twelve reported and three silences in three sources, invented",
    source: "R lbeta: the same, with n = 3",
    files: {
      "corpus.yaml": corpus,
      "sources.bib": bibliography,
      "pits.yaml": pitsWith(["hallow-1901", "hallow-1906", "quill-1911"]),
    },
    derivation: "silence-of-the-ditch",
    expected: { "likelihood-ratio": { value: 28, tolerance: 1e-9 } },
  },
];
