import {
  fieldsOf,
  numberOf,
  paragraph,
  say,
  textOf,
  type Bar,
  type Computation,
  type Figure,
  type Text,
} from "../../../src/plugin.ts";
import { factorsWords, reachWords, type Meeting, type Reach } from "./ranges.ts";

/** Two rows of which only the reach is known: one beneath the other, the first as it is and enlarged. */
export function meetingFigure(met: Meeting, { data }: Computation): Figure {
  const shown = fieldsOf(fieldsOf(data)["shown"]);
  const unit = textOf(shown["unit"]) || "m";
  const size = numberOf(shown["size"]) || 1;
  const [least, most] = met.factors;
  const enlarged = least !== 1 || most !== 1;
  const rows: readonly { readonly name: Text; readonly reach: Reach }[] = [
    { name: say`these gaps`, reach: met.own },
    ...(enlarged ? [{ name: say`times ${reachWords(met.factors, 1, 4)}`, reach: met.enlarged }] : []),
    { name: say`the other row`, reach: met.other },
  ];
  const far = 1.2 * Math.max(...rows.map(({ reach }) => reach[1] ?? reach[0]));
  return {
    title: say`Two rows of gaps of which only the reach is known`,
    panels: [
      {
        title: say`From the smallest to the largest gap of each row`,
        caption: paragraph([
          say`Rows with a length in common meet: these would ${factorsWords(met.needed)}.`,
          rows.some(({ reach }) => reach[1] === null) ? say`Dashed, without an end: at least so long.` : null,
        ]),
        shows: "each",
        x: { label: say`length of a gap`, unit, from: 0 },
        y: { label: "", unit: "1", names: rows.map(({ name }) => name) },
        marks: [
          {
            mark: "bars",
            role: "between",
            label: say`gaps`,
            bars: rows.map(({ reach }, row): Bar => ({
              row,
              from: reach[0] / size,
              to: (reach[1] ?? far) / size,
              open: reach[1] === null ? "more" : null,
              label: reachWords(reach, size, 3, unit),
            })),
          },
        ],
      },
    ],
  };
}
