import { say, type Caution, type Example } from "../../src/plugin.ts";

/** The conditions under which a chain of dates misleads (methods G). */
export const cautions: readonly Caution[] = [
  {
    id: "loose-dates",
    whenMet: true,
    text: say`Some of the dates are given as approximate or uncertain; they are taken as they are written, with no margin.`,
  },
  {
    id: "open-end",
    whenMet: true,
    text: say`Nothing that is said sets a bound at one end: how early, or how late, cannot be decided.`,
  },
  {
    id: "ranges-at-a-level",
    text: say`A calibrated radiocarbon range is taken as a hard limit. At 95 % a contradiction means that one statement at least is outside its range, and of m independent ranges one is with a chance of 1 − 0.95 to the power of m.`,
  },
  {
    id: "all-alike",
    text: say`All statements count alike, whoever made them. Where they cannot all be true some that clash are named, none of which the clash can do without; which of them is wrong is not for the arithmetic.`,
  },
  {
    id: "may-touch",
    text: say`Before means before, in the same year or not; how long between is not said unless a relation says it.`,
  },
  {
    id: "several-dates",
    text: say`Of several dates given for one thing any may be right: they count from the first year of any to the last year of any.`,
  },
  {
    id: "no-claims",
    text: say`What claims say of dates does not enter, so that a claim is not held up by itself.`,
  },
];

const chain = [
  "artefacts:",
  "  - { id: coin, name: The coin, date: -0049/-0031 }",
  "  - { id: wall, name: The wall, date: -0119/-0061 }",
  "relations:",
  "  - { id: s2, earlier: wall, later: the laying of the floor }",
  "  - { id: s3, earlier: the laying of the floor, later: the digging of the pit, at-least: 5 }",
  "  - { id: s4, earlier: coin, later: the digging of the pit }",
  "  - { id: s6, earlier: wall, later: the digging of the pit, at-most: 60 }",
  "derivations:",
];

/** Worked examples with numbers from outside. */
export const examples: readonly Example[] = [
  {
    title: "A wall, a floor, a pit and a coin, invented: when the pit was dug",
    source:
      "scipy linprog (HiGHS) for the tightest bounds of the same chain, a year being a stretch from its beginning to that of the next",
    files: {
      "corpus.yaml": "format: 1\ntitle: The pit\n",
      "chain.yaml": [
        ...chain,
        "  - { id: pit-dug, plugin: chronology, inputs: { of: the digging of the pit } }",
        "",
      ].join("\n"),
    },
    derivation: "pit-dug",
    expected: {
      consistent: { value: 1, tolerance: 0 },
      earliest: { value: -49, tolerance: 0 },
      latest: { value: -1, tolerance: 0 },
    },
  },
  {
    title: "A hearth, a wall and its pottery, invented: dates that cannot all be true",
    source: "networkx 3.6.1 negative_edge_cycle on the same constraints",
    files: {
      "corpus.yaml": "format: 1\ntitle: The hearth\n",
      "hearth.yaml": [
        "artefacts:",
        "  - { id: hearth, name: The hearth, date: 0800/0900 }",
        "  - { id: wall, name: The wall, date: 0950/1050 }",
        "  - { id: roof, name: The roof, date: 0600/0700 }",
        "relations:",
        "  - { id: s1, earlier: wall, later: hearth }",
        "derivations:",
        "  - { id: hearth-built, plugin: chronology, inputs: { of: [hearth, wall] } }",
        "",
      ].join("\n"),
    },
    derivation: "hearth-built",
    expected: { consistent: { value: 0, tolerance: 0 } },
  },
];
