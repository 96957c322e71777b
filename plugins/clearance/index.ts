import { say, type Plugin } from "../../src/plugin.ts";
import { cautions, examples } from "./about.ts";
import { computed } from "./computed.ts";
import { clearanceFigure } from "./figure.ts";
import { clearanceSentence } from "./sentence.ts";

/** Whether two parts that are said to mate would go together, and with how much room. */
export const clearance: Plugin = {
  id: "clearance",
  version: "1.0.1",
  title: say`Clearance`,
  doc: say`Asks whether a peg goes into a socket within the errors of both, dimension by dimension and all together.`,
  sources: [
    "JCGM 100:2008 (GUM), sections 4.3 and 5 (propagation, rectangular errors, correlation)",
    "Fréchet 1935 (bounds of a joint probability, from memory)",
    "Handbooks of tolerance analysis (from memory)",
  ],
  inputs: [
    {
      name: "socket",
      kind: "measurements",
      doc: say`Dimensions of the part that receives; bounds are taken as what they are.`,
      pairedWith: "peg",
      takesBounds: true,
    },
    {
      name: "peg",
      kind: "measurements",
      doc: say`The same dimensions of the part that goes in.`,
      takesBounds: true,
    },
  ],
  parameters: [
    {
      name: "loosest",
      kind: "quantity",
      doc: say`The most room with which the parts would still be said to fit.`,
    },
  ],
  numbers: [
    {
      name: "clearance",
      kind: "input",
      doc: say`Socket less peg in the tightest dimension, those left aside that a bound lets be of any size above where there are others; its ends are the least of the ends of all dimensions, ranges taken whole.`,
    },
    {
      name: "p-fit",
      kind: "chance",
      doc: say`The chance that all dimensions fit, as if independent; with limits where a bound leaves a dimension open.`,
    },
  ],
  compute: computed,
  figure: clearanceFigure,
  sentence: clearanceSentence,
  cautions,
  examples,
};
