import { say, type Caution, type Example } from "../../src/plugin.ts";

/** The conditions under which compared counts mislead (methods F). */
export const cautions: readonly Caution[] = [
  {
    id: "no-comparison",
    whenMet: true,
    text: say`No comparison possible: all or none were found on both sides, which any ratio could give.`,
  },
  {
    id: "comparison-too-small",
    whenMet: true,
    text: say`With so few no difference between the sides could reach 5 %.`,
  },
  {
    id: "no-upper-end",
    whenMet: true,
    text: say`The ratio has no upper end, for the second side had none, or the first had nothing without it. The value given is the one under which as much would be seen half of the time.`,
  },
  {
    id: "per-thing",
    whenMet: true,
    text: say`No exposure is named: counts are taken per thing, as if each offered as much to look at.`,
  },
  {
    id: "clustered",
    whenMet: true,
    text: say`The counts of single things scatter more than chance would have them: what is counted comes in clusters, and p and interval are too narrow.`,
  },
  {
    id: "loose-counts",
    whenMet: true,
    text: say`Some of the counts or exposures are given as approximate or as a range; they are taken as if exact, and p and interval are too narrow.`,
  },
  {
    id: "read-as-shares",
    whenMet: true,
    text: say`No more was counted than there were things examined, so each count is read as how many of them had it. Where one thing may have several, take rates over another exposure.`,
  },
  {
    id: "p-and-interval-differ",
    whenMet: true,
    text: say`p and the interval fall on different sides of 5 %: p adds up what is no more probable either way, the interval has 2.5 % beyond each end. Take neither as settled.`,
  },
  {
    id: "looked-at",
    text: say`The exposure must be what was looked at (metres of edge preserved and examined), not what once existed.`,
  },
  {
    id: "alike-preserved",
    text: say`Both sides must be as well preserved and looked at as closely: a difference of survival or of care shows as a difference of rates.`,
  },
  {
    id: "independent",
    text: say`Each find counts as independent of the others; finds that come in pairs, rows or from one hand are fewer than they seem.`,
  },
  {
    id: "chosen-after",
    text: say`A feature picked because it differs between the two sides will differ; p holds for what was decided before counting.`,
  },
];

const stones = ["a", "b", "c", "d"];

function marked(group: string, seen: number): readonly string[] {
  return stones.map(
    (name, i) =>
      `  - { id: ${group}-${name}-seen, of: ${group}-${name}, text: Tooling looked for., feature: tooling, present: ${i < seen} }`,
  );
}

/** Worked examples with numbers from outside. */
export const examples: readonly Example[] = [
  {
    title: "Drilled holes along two edges, invented",
    source: "R poisson.test(c(7, 2), c(120, 95)), exact conditional test",
    files: {
      "corpus.yaml": "format: 1\ntitle: Two edges\n",
      "edges.yaml": [
        "artefacts: [{ id: upper, name: The upper edge }, { id: lower, name: The lower edge }]",
        "measurements:",
        "  - { of: upper, dimension: drilled holes, value: 7 }",
        "  - { of: upper, dimension: edge examined, value: 120 m }",
        "  - { of: lower, dimension: drilled holes, value: 2 }",
        "  - { of: lower, dimension: edge examined, value: 95 m }",
        "derivations:",
        "  - id: holes",
        "    plugin: counts",
        "    inputs:",
        "      first: { of: upper, dimension: drilled holes }",
        "      second: { of: lower, dimension: drilled holes }",
        "    parameters: { per: edge examined }",
        "",
      ].join("\n"),
    },
    derivation: "holes",
    expected: {
      ratio: { value: 2.77083333333333, tolerance: 1e-9 },
      p: { value: 0.314822296584698, tolerance: 1e-9 },
    },
  },
  {
    title: "Tooling on the stones of two rows, invented",
    source: "R fisher.test(rbind(c(3, 1), c(1, 3))); the ratio by scipy 1.17.1 contingency.odds_ratio",
    files: {
      "corpus.yaml": "format: 1\ntitle: Two rows of stones\n",
      "stones.yaml": [
        "artefacts:",
        "  - { id: east, name: The east row }",
        "  - { id: west, name: The west row }",
        ...["east", "west"].flatMap((row) =>
          stones.map(
            (name) => `  - { id: ${row}-${name}, name: Stone ${name} of the ${row} row, part-of: ${row} }`,
          ),
        ),
        "observations:",
        ...marked("east", 3),
        ...marked("west", 1),
        "derivations:",
        "  - id: tooled",
        "    plugin: counts",
        "    inputs:",
        "      first: { of: east, feature: tooling }",
        "      second: { of: west, feature: tooling }",
        "",
      ].join("\n"),
    },
    derivation: "tooled",
    expected: {
      p: { value: 0.485714285714286, tolerance: 1e-9 },
      ratio: { value: 6.408319658199662, tolerance: 1e-8 },
    },
  },
];
