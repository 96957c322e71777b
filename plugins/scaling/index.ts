import { say, type Plugin } from "../../src/plugin.ts";
import { computed } from "./computed.ts";
import { scalingFigure } from "./figure.ts";
import { scalingSentence } from "./sentence.ts";

/** Whether two things are one design at two sizes: one scale factor for all homologous dimensions. */
export const scaling: Plugin = {
  id: "scaling",
  version: "1.5.0",
  title: say`Scaling`,
  doc: say`Asks whether one scale factor fits all homologous dimensions of two things within their errors.`,
  sources: [
    "Cochran 1954, Biometrics 10, 101–129 (heterogeneity, from memory)",
    "Viechtbauer 2007, Statist. Med. 26, 37–52 (the tolerance that would be needed, from memory)",
    "Fieller 1954, J. R. Statist. Soc. B 16, 175–185 (ratio with a coarse denominator)",
    "Warton, Wright, Falster & Westoby 2006, Biol. Rev. 81, 259–291 (lines through log sizes, for the figure)",
    "JCGM 100:2008 (GUM), section 5 (propagation of uncertainty)",
  ],
  inputs: [
    {
      name: "larger",
      kind: "measurements",
      doc: say`Dimensions of the larger thing.`,
      pairedWith: "smaller",
    },
    { name: "smaller", kind: "measurements", doc: say`The same dimensions of the smaller thing.` },
  ],
  parameters: [
    {
      name: "tolerance",
      kind: "quantity",
      doc: say`Natural variation between products of one maker, a share.`,
      default: "0 %",
    },
    {
      name: "claimed",
      kind: "number",
      doc: say`A factor that somebody names, to be held against the ratios.`,
    },
  ],
  numbers: [
    { name: "n", kind: "count", doc: say`Pairs of dimensions.` },
    { name: "k", kind: "number", doc: say`The common scale factor.` },
    { name: "heterogeneity", kind: "number", doc: say`Cochran's Q about the common factor.` },
    { name: "df", kind: "count", doc: say`Degrees of freedom of Q.` },
    { name: "p", kind: "probability", doc: say`How often one true factor would scatter as much.` },
    {
      name: "detectable",
      kind: "number",
      doc: say`The departure of one dimension that would hardly be missed, a share.`,
    },
  ],
  compute: computed,
  figure: scalingFigure,
  sentence: scalingSentence,
  cautions: [
    {
      id: "large-errors",
      text: say`With large uncertainties the test accepts everything: look at what departure would hardly have been missed.`,
    },
    {
      id: "tolerance",
      text: say`Without a tolerance, surveys to the millimetre reject every factor: products of one maker vary by nature.`,
    },
    {
      id: "common-error",
      text: say`An error common to both measurements cancels in the ratio and is left out of it.`,
    },
    {
      id: "denominator-not-distinct-from-zero",
      whenMet: true,
      text: say`The smaller dimension is so uncertain that the ratio has no finite interval.`,
    },
    {
      id: "one-dimension",
      whenMet: true,
      text: say`One dimension gives a ratio, and nothing to test it by.`,
    },
    {
      id: "departing-dimension",
      whenMet: true,
      text: say`At least one dimension departs from the common factor by more than twice its standard uncertainty.`,
    },
  ],
  examples: [
    {
      title: "Two jars, invented: height, belly, rim and foot",
      source: "Expected values by R metafor 3.8-1, rma(log(a/b), (ua/a)² + (ub/b)², method = 'FE')",
      files: {
        "corpus.yaml": "format: 1\ntitle: Two jars\n",
        "jars.yaml": [
          "artefacts: [{ id: big, name: The big jar }, { id: small, name: The small jar }]",
          "measurements:",
          ...[
            ["height", "31.0 ± 0.3", "20.4 ± 0.3"],
            ["belly", "24.2 ± 0.3", "16.3 ± 0.3"],
            ["rim", "18.9 ± 0.3", "12.5 ± 0.3"],
            ["foot", "9.8 ± 0.2", "6.6 ± 0.2"],
          ].flatMap(([name, a, b]) => [
            `  - { of: big, dimension: ${name}, value: ${a} cm }`,
            `  - { of: small, dimension: ${name}, value: ${b} cm }`,
          ]),
          "derivations:",
          "  - id: same-shape",
          "    plugin: scaling",
          "    inputs: { larger: { of: big }, smaller: { of: small } }",
          "",
        ].join("\n"),
      },
      derivation: "same-shape",
      expected: {
        n: { value: 4, tolerance: 0 },
        k: { value: 1.50480049396334, tolerance: 1e-8 },
        heterogeneity: { value: 0.838995909564262, tolerance: 1e-8 },
        df: { value: 3, tolerance: 0 },
        p: { value: 0.840118764814202, tolerance: 1e-8 },
      },
    },
    {
      title: "Two doors, invented: the larger is wider than its height would have it",
      source: "Expected values by R metafor 3.8-1, rma(log(a/b), (ua/a)² + (ub/b)², method = 'FE')",
      files: {
        "corpus.yaml": "format: 1\ntitle: Two doors\n",
        "doors.yaml": [
          "artefacts: [{ id: great, name: The great door }, { id: lesser, name: The lesser door }]",
          "measurements:",
          "  - { id: h1, of: great, dimension: height, value: 214 ± 2 cm }",
          "  - { id: h2, of: lesser, dimension: height, value: 160 ± 2 cm }",
          "  - { id: w1, of: great, dimension: width, value: 98 ± 2 cm }",
          "  - { id: w2, of: lesser, dimension: width, value: 81 ± 2 cm }",
          "derivations:",
          "  - id: one-design",
          "    plugin: scaling",
          "    inputs: { pairs: [[h1, h2], [w1, w2]] }",
          "",
        ].join("\n"),
      },
      derivation: "one-design",
      expected: {
        n: { value: 2, tolerance: 0 },
        k: { value: 1.31201398008685, tolerance: 1e-8 },
        heterogeneity: { value: 7.92034216339982, tolerance: 1e-7 },
        p: { value: 0.00488820268399983, tolerance: 1e-9 },
      },
    },
  ],
};
