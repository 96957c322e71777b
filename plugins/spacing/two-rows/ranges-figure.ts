import { fieldsOf, numberOf, textOf, type Bar, type Computation, type Figure } from "../../../src/plugin.ts";
import { factorsWords, reachWords, type Meeting, type Reach } from "./ranges.ts";

/** Two rows of which only the reach is known: one beneath the other, the first as it is and enlarged. */
export function meetingFigure(met: Meeting, { data }: Computation): Figure {
  const shown = fieldsOf(fieldsOf(data)["shown"]);
  const unit = textOf(shown["unit"]) || "m";
  const size = numberOf(shown["size"]) || 1;
  const [least, most] = met.factors;
  const enlarged = least !== 1 || most !== 1;
  const rows: readonly { readonly name: string; readonly reach: Reach }[] = [
    { name: "these gaps", reach: met.own },
    ...(enlarged ? [{ name: `times ${reachWords(met.factors, 1, 4)}`, reach: met.enlarged }] : []),
    { name: "the other row", reach: met.other },
  ];
  const far = 1.2 * Math.max(...rows.map(({ reach }) => reach[1] ?? reach[0]));
  return {
    title: "Two rows of gaps of which only the reach is known",
    panels: [
      {
        title: "From the smallest to the largest gap of each row",
        caption: `Rows with a length in common meet: these would ${factorsWords(met.needed)}.${
          rows.some(({ reach }) => reach[1] === null) ? " Dashed, without an end: at least so long." : ""
        }`,
        shows: "each",
        x: { label: "length of a gap", unit, from: 0 },
        y: { label: "", unit: "1", names: rows.map(({ name }) => name) },
        marks: [
          {
            mark: "bars",
            role: "between",
            label: "gaps",
            bars: rows.map(({ reach }, row): Bar => ({
              row,
              from: reach[0] / size,
              to: (reach[1] ?? far) / size,
              open: reach[1] === null ? "more" : null,
              label: `${reachWords(reach, size)} ${unit}`,
            })),
          },
        ],
      },
    ],
  };
}
