import { say, type Plugin } from "../../src/plugin.ts";
import { cautions, examples } from "./about.ts";
import { computed } from "./computed.ts";
import { chronologyFigure } from "./figure.ts";
import { chronologySentence } from "./sentence.ts";

/** Whether all that is said of some dates can be true, and between which years it puts what is asked. */
export const chronology: Plugin = {
  id: "chronology",
  version: "1.0.0",
  title: say`Chronology`,
  doc: say`Asks whether all that relations, dates and histories say of some events can be true, and between which years they then lie.`,
  sources: [
    "Dechter, Meiri & Pearl 1991, Artificial Intelligence 49, 61–95 (differences of times as a network)",
    "Bellman 1958, Quarterly of Applied Mathematics 16, 87–90 (shortest paths, from memory)",
  ],
  inputs: [
    {
      name: "of",
      kind: "dates",
      doc: say`The things whose making is dated, or events in words, as relations and histories name them.`,
    },
  ],
  parameters: [],
  numbers: [
    { name: "consistent", kind: "count", doc: say`1 where all that is said can be true together, else 0.` },
    {
      name: "earliest",
      kind: "number",
      doc: say`The first year in which any of what is asked may be, astronomical: 1 BC is 0, 2 BC is −1.`,
    },
    {
      name: "latest",
      kind: "number",
      doc: say`The last year in which any of what is asked may be, astronomical.`,
    },
  ],
  compute: computed,
  figure: chronologyFigure,
  sentence: chronologySentence,
  cautions,
  examples,
};
