import type { Caution, Example } from "../../src/plugin.ts";

/** The conditions under which spacings mislead (methods D). */
export const cautions: readonly Caution[] = [
  {
    id: "one-way-of-measuring",
    text: "All gaps must be measured the same way, from centre to centre or from edge to edge.",
  },
  {
    id: "broken-ends",
    text: "Breaking is taken as unrelated to the gap; longer gaps are more likely to be cut, so the estimates lean short.",
  },
  {
    id: "feature-width",
    text: "A least gap, such as the width of the features, makes even random features look regular.",
  },
  { id: "as-even-as-measured", text: "The gaps are as even as the measurement can show." },
  {
    id: "median-not-reached",
    text: "More than half of the gaps may be longer than any observed: there is no median.",
  },
  {
    id: "positions-uncertain",
    text: "Positions add up the errors of the gaps, and here they add up to so much that the period cannot be tested well.",
  },
  {
    id: "drawn-relabellings",
    text: "There are too many relabellings to look at all: the comparison was drawn at random.",
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
      "corpus.yaml": "title: Posts\n",
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
];
