import { say, type Plugin } from "../../src/plugin.ts";
import { cautions, examples } from "./about.ts";
import { computed } from "./computed.ts";
import { spacingFigure } from "./figure.ts";
import { spacingSentence } from "./sentence.ts";

/** Whether features stand at even gaps, at a period, or as another row does; broken ends are taken as what they are. */
export const spacing: Plugin = {
  id: "spacing",
  version: "1.4.1",
  title: say`Spacing`,
  doc: say`Asks how even the gaps of a row are, whether they follow a period, and whether two rows are spaced alike.`,
  sources: [
    "Kaplan & Meier 1958, JASA 53, 457–481",
    "Gehan 1965, Biometrika 52, 203–223",
    "Turnbull 1976, J. R. Statist. Soc. B 38, 290–295 (ranges as data, from memory)",
    "Kluyver 1905 (length of a random walk, for the exact Rayleigh test, from memory)",
  ],
  inputs: [
    {
      name: "gaps",
      kind: "measurements",
      doc: say`Gaps along the row, in order; bounds are broken ends.`,
      takesBounds: true,
    },
    {
      name: "other",
      kind: "measurements",
      doc: say`Gaps of another row.`,
      optional: true,
      takesBounds: true,
    },
    {
      name: "scale",
      kind: "number",
      doc: say`A factor by which the gaps are multiplied first, from other dimensions than the spacing itself.`,
      optional: true,
    },
  ],
  parameters: [
    { name: "period", kind: "quantity", doc: say`A period known beforehand.`, beforehand: true },
    { name: "low", kind: "quantity", doc: say`Smallest period of a search.` },
    { name: "high", kind: "quantity", doc: say`Largest period of a search.` },
    {
      name: "draws",
      kind: "number",
      doc: say`Sets drawn where there is no exact p.`,
      default: "10000",
      most: 1_000_000,
    },
  ],
  numbers: [
    { name: "n", kind: "count", doc: say`Observed gaps; mean and cv are theirs.` },
    { name: "censored", kind: "count", doc: say`Gaps known only as at least so long.` },
    { name: "mean", kind: "input", doc: say`Mean observed gap.` },
    { name: "cv", kind: "number", doc: say`Coefficient of variation of the observed gaps.` },
    { name: "p", kind: "probability", doc: say`How often gaps at random would be as even.` },
    { name: "median", kind: "input", doc: say`Median gap, broken ends taken into account.` },
    { name: "period", kind: "input", doc: say`The period given or found.` },
    {
      name: "period-p",
      kind: "probability",
      doc: say`How often positions without a period follow it as well.`,
    },
    {
      name: "compare-p",
      kind: "probability",
      doc: say`How often two rows spaced alike would differ as much.`,
    },
  ],
  compute: computed,
  figure: spacingFigure,
  sentence: spacingSentence,
  cautions,
  examples,
};
