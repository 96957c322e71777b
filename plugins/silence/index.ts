import { say, type Plugin } from "../../src/plugin.ts";
import { cautions, examples } from "./about.ts";
import { computed } from "./computed.ts";
import { silenceFigure } from "./figure.ts";
import { silenceSentence } from "./sentence.ts";

/** What it is worth that a source passes something over, by how often it reports such things where they are known. */
export const silence: Plugin = {
  id: "silence",
  version: "1.0.0",
  title: say`Silence`,
  doc: say`Asks how much more likely a source's silence is where there was nothing than where there was something, by its habit of reporting.`,
  sources: [
    "The rate as a Beta distribution with a flat prior, and the chance of silence under it: common practice, a textbook result",
    "Kass & Raftery 1995, J. Am. Stat. Assoc. 90, 773–795 (words for likelihood ratios, from memory)",
  ],
  inputs: [
    {
      name: "reported",
      kind: "observations",
      doc: say`Those of the known traces that the silent source itself reports.`,
      optional: true,
      ofSource: true,
    },
    {
      name: "known",
      kind: "observations",
      doc: say`Comparable traces known to be there, by anyone, where the source could have seen them.`,
      optional: true,
    },
    {
      name: "occasions",
      kind: "observations",
      doc: say`The silences that are weighed; those of one source count as one.`,
      ofSource: true,
    },
  ],
  parameters: [
    {
      name: "false-reports",
      kind: "number",
      doc: say`Share of occasions on which the source reports such a trace where there is none.`,
      default: "0",
    },
  ],
  numbers: [
    {
      name: "likelihood-ratio",
      kind: "number",
      doc: say`How many times as likely the silence is where there was nothing, absent to present; its interval is that of the rate.`,
    },
    {
      name: "reporting-rate",
      kind: "number",
      doc: say`The rate at which the source reports such traces: the mean of its distribution, (1 + reported) / (2 + known).`,
    },
  ],
  compute: computed,
  figure: silenceFigure,
  sentence: silenceSentence,
  cautions,
  examples,
};
