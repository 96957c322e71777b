import { say, type Caution, type Example } from "../../src/plugin.ts";

/** The conditions under which spacings mislead (methods D). */
export const cautions: readonly Caution[] = [
  {
    id: "one-way-of-measuring",
    text: say`All gaps must be measured the same way, from centre to centre or from edge to edge.`,
  },
  {
    id: "broken-ends",
    text: say`Breaking is taken as unrelated to the gap; longer gaps are more likely to be cut, so the estimates lean short.`,
  },
  {
    id: "feature-width",
    text: say`A least gap, such as the width of the features, makes even random features look regular.`,
  },
  { id: "as-even-as-measured", whenMet: true, text: say`The gaps are as even as the measurement can show.` },
  {
    id: "median-not-reached",
    whenMet: true,
    text: say`More than half of the gaps may be longer than any observed: there is no median.`,
  },
  {
    id: "order",
    text: say`Positions are the gaps added up in the order in which they are listed.`,
  },
  {
    id: "scale-from-elsewhere",
    text: say`A scale factor must come from other dimensions than the spacing itself.`,
  },
  {
    id: "longest-stretch",
    whenMet: true,
    text: say`A broken end parts the row: the period was tested on the longest stretch without one.`,
  },
  {
    id: "comparison-too-small",
    whenMet: true,
    text: say`With so few gaps no difference between the rows could reach 5 %.`,
  },
  {
    id: "scale-decides",
    whenMet: true,
    text: say`Within the uncertainty of the scale factor the rows now differ and now do not.`,
  },
  {
    id: "below-smallest-p",
    whenMet: true,
    text: say`p lies below 1 × 10⁻⁹, the smallest that the exact method can tell from 0.`,
  },
  {
    id: "positions-uncertain",
    whenMet: true,
    text: say`Positions add up the errors of the gaps, and here they add up to so much that the period cannot be tested well.`,
  },
  {
    id: "drawn-relabellings",
    whenMet: true,
    text: say`There are too many relabellings to look at all: the comparison was drawn at random.`,
  },
  {
    id: "more-draws",
    whenMet: true,
    text: say`A p from drawn sets lies within twice its own error of 1 % or 5 %: other draws might put it beyond. Raise \`draws\`.`,
  },
  {
    id: "ranges-only",
    whenMet: true,
    text: say`A range from the smallest to the largest of an unknown number of gaps gives no p: only whether two such ranges meet.`,
  },
];

const posts = [62, 58, 65, 60, 71, 57, 63];

/** A worked example with numbers from outside. */
export const examples: readonly Example[] = [
  {
    title: "Seven gaps between posts, invented",
    source:
      "Expected mean and cv computed in R and Python outside this program; p by the volume of a ball in a simplex",
    files: {
      "corpus.yaml": "format: 1\ntitle: Posts\n",
      "posts.yaml": [
        "artefacts:",
        ...posts.map((_, i) => `  - { id: gap-${i + 1}, name: Gap ${i + 1} }`),
        "measurements:",
        ...posts.map(
          (gap, i) => `  - { id: m-${i + 1}, of: gap-${i + 1}, dimension: gap, value: ${gap} cm }`,
        ),
        "derivations:",
        "  - id: even",
        "    plugin: spacing",
        `    inputs: { gaps: [${posts.map((_, i) => `m-${i + 1}`).join(", ")}] }`,
        "",
      ].join("\n"),
    },
    derivation: "even",
    expected: {
      n: { value: 7, tolerance: 0 },
      censored: { value: 0, tolerance: 0 },
      mean: { value: 0.622857142857143, tolerance: 1e-9 },
      cv: { value: 0.0762765557262197, tolerance: 1e-9 },
      p: { value: 5.08503329041056e-7, tolerance: 1e-12 },
    },
  },
  {
    title: "Two rows with broken ends, invented",
    source:
      "Median by R survival 3.5-3, survfit; comparison by all 792 relabellings, combn in R and coin 1.4-2",
    files: {
      "corpus.yaml": "format: 1\ntitle: Two rows\n",
      "rows.yaml": [
        "artefacts: [{ id: north, name: The north row }, { id: south, name: The south row }]",
        "measurements:",
        ...gapsOf("north", ["55", "60", "62", "64", "70", "≥ 58", "≥ 66"]),
        ...gapsOf("south", ["88", "92", "101", "≥ 75", "97"]),
        "derivations:",
        "  - id: alike",
        "    plugin: spacing",
        "    inputs:",
        `      gaps: [${[1, 2, 3, 4, 5, 6, 7].map((i) => `north-${i}`).join(", ")}]`,
        `      other: [${[1, 2, 3, 4, 5].map((i) => `south-${i}`).join(", ")}]`,
        "",
      ].join("\n"),
    },
    derivation: "alike",
    expected: {
      n: { value: 5, tolerance: 0 },
      censored: { value: 2, tolerance: 0 },
      median: { value: 0.64, tolerance: 1e-9 },
      "compare-p": { value: 0.0113636363636364, tolerance: 1e-12 },
    },
  },
];

function gapsOf(row: string, values: readonly string[]): readonly string[] {
  return values.map(
    (value, i) =>
      `  - { id: ${row}-${i + 1}, of: ${row}, dimension: gap, between: post ${i + 1} to post ${i + 2}, value: ${value} cm }`,
  );
}
