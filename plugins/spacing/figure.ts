import {
  fieldsOf,
  formatNumber,
  membersOf,
  numberOf,
  paragraph,
  rowsOf,
  say,
  textOf,
  type Computation,
  type ComputedNumber,
  type Figure,
  type Json,
  type Mark,
  type Pair,
  type Panel,
  type Stretch,
  type Text,
} from "../../src/plugin.ts";
import { meetingFigure } from "./two-rows/ranges-figure.ts";
import { meetingIn } from "./two-rows/ranges.ts";

type Fields = { readonly [key: string]: Json };

/** A row of gaps as it is drawn: what it is called, its data, and by how much it is enlarged. */
interface Row {
  readonly name: Text;
  readonly data: Fields;
  readonly factor: number;
  readonly role: "main" | "other" | "null";
}

/** The gaps along the edge with their broken ends, and for each length the share of gaps longer than it. */
export function spacingFigure(computation: Computation): Figure {
  const met = meetingIn(computation);
  if (met !== null) return meetingFigure(met, computation);
  const data = fieldsOf(computation.data);
  const shown = fieldsOf(data["shown"]);
  const unit = textOf(shown["unit"]) || "1";
  const size = numberOf(shown["size"]) || 1;
  const rows = rowsIn(data);
  return {
    title: rows.length > 1 ? say`Two rows of gaps` : say`A row of gaps`,
    panels: [edges(rows, unit, size), shares(computation, rows, unit, size)],
  };
}

function rowsIn(data: Fields): readonly Row[] {
  const own = fieldsOf(data["row"]);
  const other = fieldsOf(data["other"]);
  const factor = numberOf(fieldsOf(data["compared"])["factor"]) || 1;
  const enlarged: Row = {
    name: say`these gaps, times ${formatNumber(factor, 3)}`,
    data: own,
    factor,
    role: "null",
  };
  return [
    { name: say`these gaps`, data: own, factor: 1, role: "main" },
    ...(factor === 1 ? [] : [enlarged]),
    ...(Object.keys(other).length === 0
      ? []
      : [{ name: say`the other row`, data: other, factor: 1, role: "other" as const }]),
  ];
}

function edges(rows: readonly Row[], unit: string, size: number): Panel {
  const stretches = rows.flatMap(({ data, factor }, row) =>
    membersOf(data["edge"])
      .map(fieldsOf)
      .map((one): Stretch => {
        const open = one["open"] === "start" || one["open"] === "end" ? one["open"] : null;
        const [from, to] = [numberOf(one["from"]), numberOf(one["to"])].map((at) => (at * factor) / size);
        return { row, from: from ?? 0, to: to ?? 0, open };
      }),
  );
  const broken = stretches.some((one) => one.open !== null);
  return {
    title: say`The gaps one after another, to scale`,
    caption: paragraph([
      say`Uprights are features, in the order listed; the figures are lengths in ${unit}.`,
      broken ? say`Dashed, with no upright at one end: broken off, at least so long.` : null,
    ]),
    shows: "each",
    x: { label: say`along the row`, unit, from: 0 },
    y: { label: "", unit: "1", names: rows.map((row) => row.name) },
    marks: [{ mark: "edge", stretches, label: say`gaps` }],
  };
}

function shares({ numbers }: Computation, rows: readonly Row[], unit: string, size: number): Panel {
  const median = numbers["median"];
  const at = median === undefined ? null : medianOf(median, unit, size);
  const ranges = rows.some(({ data }) => membersOf(data["between"]).length > 0);
  const broken = rows.some(({ data }) => membersOf(data["broken"]).length > 0);
  return {
    title: say`The share of gaps longer than each length`,
    caption: paragraph([
      estimate(ranges, broken),
      ranges ? say`Shaded: within a range the share cannot be told.` : null,
      at === null ? say`Half of the gaps are not reached, so there is no median.` : at.said,
    ]),
    shows: "each",
    x: { label: say`length of a gap`, unit, from: 0 },
    y: { label: say`share of gaps that are longer`, unit: "1", from: 0, to: 1 },
    marks: [...(at === null ? [] : [at.mark]), ...rows.flatMap((row) => curve(row, size))],
  };
}

/** By what method the share was estimated, and what its broken ends are. */
function estimate(ranges: boolean, broken: boolean): Text {
  if (ranges)
    return broken
      ? say`By the estimate of Turnbull, for ranges; short strokes are broken ends, which count for as long as they were seen.`
      : say`By the estimate of Turnbull, for ranges.`;
  return broken
    ? say`By the estimate of Kaplan and Meier; short strokes are broken ends, which count for as long as they were seen.`
    : say`By the estimate of Kaplan and Meier.`;
}

/** Where half of the gaps are reached: a place, or of ranges the stretch within which it lies. */
function medianOf(
  { value, low, high }: ComputedNumber,
  unit: string,
  size: number,
): { readonly said: Text; readonly mark: Mark } {
  if (low === null || high === null || low === high) {
    const words = `${formatNumber(value / size, 4)} ${unit}`;
    const mark = {
      mark: "rule",
      axis: "x",
      at: value / size,
      role: "null",
      label: say`median ${words}`,
    } as const;
    return { said: say`The median of these gaps is ${words}.`, mark };
  }
  const [from, to] = [low / size, high / size];
  const [least, most] = [formatNumber(from, 4), `${formatNumber(to, 4)} ${unit}`];
  const mark = { mark: "reach", axis: "x", from, to, label: say`median, ${least} to ${most}` } as const;
  return { said: say`The median of these gaps lies between ${least} and ${most}.`, mark };
}

function curve({ name, data, factor, role }: Row, size: number): readonly Mark[] {
  const scale = size / factor;
  const pairs = (field: string): readonly Pair[] =>
    rowsOf(data[field], [scale, 1]).map(([x = 0, y = 0]): Pair => [x, y]);
  const between = rowsOf(data["between"], [scale, 1, 1]).map(
    ([x = 0, low = 0, high = 0]) => [x, low, high] as const,
  );
  const stretches = Array.from({ length: between.length / 2 }, (_, i) => between.slice(2 * i, 2 * i + 2));
  return [
    ...stretches.map((points): Mark => ({ mark: "band", points, label: say`${name}, not to be told` })),
    { mark: "line", points: pairs("steps"), role, label: name },
    ...(pairs("broken").length > 0
      ? [{ mark: "strokes" as const, points: pairs("broken"), label: say`${name}, broken ends` }]
      : []),
  ];
}
