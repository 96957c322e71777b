import { say, type Plugin } from "../../src/plugin.ts";
import { cautions, examples } from "./about.ts";
import { unitFitFigure } from "./figure.ts";
import { refuseMeasured } from "./measured.ts";
import { searched } from "./search/searched.ts";
import { unitFitSentence } from "./sentence.ts";
import { withUnit } from "./given/with-unit.ts";

/** Whether lengths or masses are whole multiples of a unit: one given beforehand, or one searched for. */
export const unitFit: Plugin = {
  id: "unit-fit",
  version: "1.3.1",
  title: say`Unit fit`,
  doc: say`Asks whether measurements cluster at whole multiples of a unit. A unit given beforehand is tested as it stands; a search pays for having looked at many units.`,
  sources: [
    "Kendall 1974, Phil. Trans. R. Soc. A 276, 231–266 (cosine quantogram)",
    "Broadbent 1955, Biometrika 42, 45–57; 1956, Biometrika 43, 32–44 (lumped variance)",
    "Holm 1979 (several looks at the same data, from memory)",
  ],
  inputs: [
    { name: "values", kind: "measurements", doc: say`Lengths or masses, each one trial of the unit.` },
  ],
  parameters: [
    { name: "unit", kind: "unit", doc: say`A unit known before these data were seen.` },
    { name: "low", kind: "quantity", doc: say`Smallest unit of a search.` },
    { name: "high", kind: "quantity", doc: say`Largest unit of a search.` },
    {
      name: "draws",
      kind: "number",
      doc: say`Sets without a unit drawn for each null of a search.`,
      default: "10000",
      most: 1_000_000,
    },
  ],
  numbers: [
    { name: "n", kind: "count", doc: say`Measurements that entered.` },
    { name: "phi", kind: "number", doc: say`Height of the quantogram at the unit.` },
    {
      name: "p",
      kind: "probability",
      doc: say`How often data without a unit fit as well: exact V-test, or of the whole search.`,
    },
    { name: "lumped-p", kind: "probability", doc: say`The same by the residuals (exact), for a unit given.` },
    { name: "q", kind: "input", doc: say`The unit as these data estimate it, the multiples taken as right.` },
    {
      name: "p-adjusted",
      kind: "probability",
      doc: say`p times the number of looks (Holm 1979, first step).`,
    },
  ],
  compute: (inputs, settings, tools) => {
    const measured = inputs["values"] ?? [];
    const bad = refuseMeasured(measured);
    if (bad !== null) return bad;
    const unit = settings["unit"];
    return unit?.kind === "unit"
      ? withUnit(measured, unit.value, tools)
      : searched(measured, settings, tools);
  },
  figure: unitFitFigure,
  sentence: unitFitSentence,
  cautions,
  examples,
};
