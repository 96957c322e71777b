import { say, type Caution, type Example } from "../../src/plugin.ts";

/** The conditions under which a unit fit misleads (methods A). */
export const cautions: readonly Caution[] = [
  {
    id: "module",
    text: say`A pace, a hand or a habit of counting courses also produces a quantum: a peak is evidence of a module, not of a standard.`,
  },
  {
    id: "rounded",
    text: say`Data already rounded to the unit prove nothing; nor do dimensions converted from it.`,
  },
  {
    id: "design-dimensions",
    text: say`Building dimensions must be design dimensions: joints, repairs and duplicate blocks are to be left out first (Pakkanen 2002).`,
  },
  {
    id: "subset",
    text: say`The evidence depends on the subset of measurements and on what was expected beforehand (Freeman 1976, J. R. Statist. Soc. A 139, 20–55).`,
  },
  {
    id: "precision-of-the-mean",
    text: say`The precision of the mean unit is not the precision of the rods: its error shrinks with every measurement even when every builder paced.`,
  },
  {
    id: "small-sample",
    text: say`With fewer than ten measurements a search can show only a very exact unit.`,
  },
  {
    id: "range-above-smallest-length",
    whenMet: true,
    text: say`Units above the smallest measurement were left out of the search: any of them fits it as less than one.`,
  },
  {
    id: "whole-numbers-accepted",
    text: say`The interval of the unit takes the whole numbers as right; it does not say how sure they are.`,
  },
  {
    id: "same-artefact",
    text: say`Lengths of one artefact, or one length measured three times, are not independent trials of a unit.`,
  },
  {
    id: "family",
    text: say`With small errors a unit, its half and its third all stand out: a search finds a family of units, not one.`,
  },
  {
    id: "rests-on-one-artefact",
    whenMet: true,
    text: say`Without one of the artefacts the best unit would be another by more than 1 %.`,
  },
  {
    id: "unit-uncertain",
    whenMet: true,
    text: say`Within the uncertainty of the unit and of what the measurements share p passes 1 % or 5 %: the verdict depends on the exact size taken.`,
  },
  {
    id: "constant-offset",
    whenMet: true,
    text: say`The measurements come in regular steps, but not from 0: all may include the same joint, rim or margin.`,
  },
  {
    id: "uninformative-items",
    whenMet: true,
    text: say`Most measurements are so uncertain, or so many units long, that they would fit the unit anyhow.`,
  },
  {
    id: "less-than-one-unit",
    whenMet: true,
    text: say`A measurement is less than half the unit, and was counted as one.`,
  },
  {
    id: "bandwidth-raised",
    whenMet: true,
    text: say`The smoothing of the null was raised to half the unit, so that it does not keep it.`,
  },
  {
    id: "peak-at-range-edge",
    whenMet: true,
    text: say`The best unit lies at the edge of the range searched: a wider range may find a better one.`,
  },
  {
    id: "more-draws",
    whenMet: true,
    text: say`A p from drawn sets lies within twice its own error of 1 % or 5 %: other draws might put it beyond. Raise \`draws\`.`,
  },
  {
    id: "nulls-disagree",
    whenMet: true,
    text: say`Of the two ways of drawing sets without a unit, one puts p below 5 % and one above: the verdict depends on what is taken for no unit.`,
  },
  {
    id: "below-smallest-p",
    whenMet: true,
    text: say`p lies below 1 × 10⁻⁹, the smallest that the exact method can tell from 0.`,
  },
];

const feet = [
  1.3, 0.664, 0.49, 1.3, 0.912, 0.491, 2.608, 0.77, 0.633, 3.89, 1.648, 1.94, 0.285, 0.617, 0.298, 0.683,
  1.297, 0.96, 0.284,
];

const rims = [16.3, 41.6, 33.2, 12.7, 29.2, 41.3, 45.6, 45.8, "37.0", "29.0", 37.1, 28.6, 29.3, 37.2];

/** Worked examples with numbers from outside. */
export const examples: readonly Example[] = [
  {
    title: "The blocks of the Erechtheion in feet of 0.327 m, given beforehand",
    source:
      "Nineteen dimensions from Pakkanen 2002, Table 1; p by Fourier inversion in scipy, computed outside this program",
    files: {
      "corpus.yaml": "format: 1\ntitle: Blocks\nunits:\n  doric-foot-given: { is: 0.327 m }\n",
      "blocks.yaml": [
        "artefacts:",
        ...feet.map((_, i) => `  - { id: block-${i + 1}, name: Block ${i + 1} }`),
        "measurements:",
        ...feet.map(
          (value, i) => `  - { id: m-${i + 1}, of: block-${i + 1}, dimension: side, value: ${value} m }`,
        ),
        "derivations:",
        "  - id: fit",
        "    plugin: unit-fit",
        `    inputs: { values: [${feet.map((_, i) => `m-${i + 1}`).join(", ")}] }`,
        "    parameters: { unit: doric-foot-given }",
        "",
      ].join("\n"),
    },
    derivation: "fit",
    expected: {
      n: { value: 19, tolerance: 0 },
      phi: { value: 3.534449, tolerance: 1e-6 },
      p: { value: 0.0001225309, tolerance: 1.2e-6 },
      "lumped-p": { value: 0.003046885, tolerance: 2e-5 },
    },
  },
  {
    title: "Fourteen bowls, invented: rims of 4.15 cm times a whole number, searched",
    source: "Peak by a numpy grid in 1/q and scipy's bounded minimiser; p by numpy, 10,000 sets",
    files: {
      "corpus.yaml": "format: 1\ntitle: Bowls\n",
      "bowls.yaml": [
        "artefacts:",
        ...rims.map((_, i) => `  - { id: bowl-${i + 1}, name: Bowl ${i + 1} }`),
        "measurements:",
        ...rims.map(
          (rim, i) => `  - { id: r-${i + 1}, of: bowl-${i + 1}, dimension: rim, value: ${rim} cm }`,
        ),
        "derivations:",
        "  - id: search",
        "    plugin: unit-fit",
        `    inputs: { values: [${rims.map((_, i) => `r-${i + 1}`).join(", ")}] }`,
        "    parameters: { low: 1.5 cm, high: 12 cm, draws: 2000 }",
        "",
      ].join("\n"),
    },
    derivation: "search",
    expected: {
      n: { value: 14, tolerance: 0 },
      phi: { value: 5.008226495117204, tolerance: 1e-6 },
      q: { value: 0.04142219538126982, tolerance: 4e-7 },
      p: { value: 0.0001, tolerance: 0.004 },
    },
  },
];
