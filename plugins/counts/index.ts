import { say, type Plugin } from "../../src/plugin.ts";
import { cautions, examples } from "./about.ts";
import { computed } from "./computed.ts";
import { countsFigure } from "./figure.ts";
import { countsSentence } from "./sentence.ts";

/** Whether something is more frequent on one side than on the other, for as much as was looked at. */
export const counts: Plugin = {
  id: "counts",
  version: "1.0.0",
  title: say`Counts`,
  doc: say`Asks whether something is found more often on one side than on the other, for as much as was looked at.`,
  sources: [
    "Fisher 1935, J. R. Statist. Soc. 98, 39–82 (exact test of two shares, from memory)",
    "Przyborowski & Wilenski 1940, Biometrika 31, 313–323 (exact conditional test of two rates, from memory)",
    "Clopper & Pearson 1934, Biometrika 26, 404–413; Wilson 1927, JASA 22, 209–212 (intervals of a share, from memory)",
    "Garwood 1936, Biometrika 28, 437–442 (interval of a rate, from memory)",
    "Hirji, Tsiatis & Mehta 1989, Am. Stat. 43, 7–11 (median-unbiased ratio where the likeliest is infinite, from memory)",
  ],
  inputs: [
    {
      name: "first",
      kind: "measurements",
      doc: say`Counts on the first side, or observations of a feature looked for on it.`,
      takesBounds: true,
      takesObservations: true,
      takesAlong: "per",
    },
    {
      name: "second",
      kind: "measurements",
      doc: say`The same on the second side.`,
      takesBounds: true,
      takesObservations: true,
      takesAlong: "per",
    },
  ],
  parameters: [
    {
      name: "per",
      kind: "text",
      doc: say`The dimension over which counts are taken, of the same things: edge examined, or how many were examined.`,
    },
  ],
  numbers: [
    {
      name: "ratio",
      kind: "number",
      doc: say`The rate of the first side over that of the second; of things that have a feature or not, the odds ratio.`,
    },
    {
      name: "p",
      kind: "probability",
      doc: say`How often sides that are alike would differ as much, two-sided and exact.`,
    },
  ],
  compute: computed,
  figure: countsFigure,
  sentence: countsSentence,
  cautions,
  examples,
};
