import {
  alike,
  fieldsOf,
  formatNumber,
  membersOf,
  numberOf,
  paragraph,
  row,
  rowsOf,
  say,
  textOf,
  type Computation,
  type Figure,
  type Mark,
  type Naming,
  type Pair,
  type Panel,
  type Said,
  type Settings,
} from "../../src/plugin.ts";
import { claimedIn, oneDimension, pairsIn, type Row } from "./rows.ts";

const REACH = 1.96;

/** The ratio of each homologous dimension against the common factor, and the sizes themselves with the line through them. */
export function scalingFigure(computation: Computation, _settings: Settings, name: Naming): Figure {
  const rows = pairsIn(computation, name);
  const shown = fieldsOf(fieldsOf(computation.data)["shown"]);
  const size = numberOf(shown["size"]);
  const scatter = size > 0 && rows.length > 1 ? [sizes(computation, rows, textOf(shown["unit"]), size)] : [];
  return {
    title: say`Homologous dimensions and their common factor`,
    panels: [ratios(computation, rows), ...scatter],
  };
}

function ratios(computation: Computation, rows: readonly Row[]): Panel {
  const { numbers } = computation;
  const single = oneDimension(computation);
  const k = numbers["k"];
  const factor = k?.value ?? 1;
  const [low, high] = [k?.low ?? null, k?.high ?? null];
  const ends: Pair | null = low === null || high === null || low <= 0 ? null : [low, high];
  const departing = rows.filter((row) => row.departs);
  const band: readonly Mark[] =
    ends === null
      ? []
      : [
          {
            mark: "reach",
            axis: "x",
            from: ends[0],
            to: ends[1],
            label: say`95 % interval of the common factor`,
          },
        ];
  const held = claimedIn(computation);
  const named =
    held === null ? null : say`Dotted, the factor of ${formatNumber(held.factor, 4)} that is claimed.`;
  const open =
    departing.length === 0
      ? null
      : say`Open: further from it than twice the standard uncertainty (${row(
          departing.map((one) => one.name),
          "comma",
        )}).`;
  return {
    title:
      single === null || rows.length < 2
        ? say`The ratio of each pair of dimensions`
        : say`The ratio of each pair of dimensions: ${single}`,
    caption: paragraph([
      withFactor(rows.length > 1 || ends !== null, band.length > 0, formatNumber(factor, 4)),
      named,
      open,
    ]),
    shows: "each",
    x: { label: say`ratio`, unit: "1", scale: "log" },
    y: { label: "", unit: "1", names: rows.map((row) => row.name) },
    marks: [
      ...band,
      {
        mark: "rule",
        axis: "x",
        at: factor,
        role: "main",
        label: say`common factor ${formatNumber(factor, 3)}`,
      },
      ...claimedRule(computation),
      {
        mark: "dots",
        label: say`ratios`,
        dots: rows.map(({ ratio, u, departs, name }, at) => ({
          at: [ratio, at],
          // A single ratio is as sure as the factor, which has no ends where a size is not distinct from 0.
          ...(rows.length > 1 ? { xEnds: around(ratio, u) } : ends === null ? {} : { xEnds: ends }),
          label: name,
          open: departs,
        })),
      },
    ],
  };
}

/** What the bars and the line are; an interval is there for each ratio, and for the factor, or not. */
function withFactor(each: boolean, ofFactor: boolean, factor: string): Said {
  if (!each)
    return say`Larger over smaller, without an interval, as one of the sizes is not distinct from 0; the line is the common factor ${factor}.`;
  return ofFactor
    ? say`Larger over smaller, each with its 95 % interval, the tolerance in it; the line is the common factor ${factor}, shaded its 95 % interval.`
    : say`Larger over smaller, each with its 95 % interval, the tolerance in it; the line is the common factor ${factor}.`;
}

/** The factor that somebody named, beside the common one. */
function claimedRule(computation: Computation): readonly Mark[] {
  const held = claimedIn(computation);
  if (held === null) return [];
  const ratios = pairsIn(computation, (id) => id).map((row) => row.ratio);
  const across = Math.log(Math.max(held.factor, ...ratios) / Math.min(held.factor, ...ratios));
  const apart = Math.abs(Math.log(held.factor / (computation.numbers["k"]?.value ?? 1)));
  // Close to the common factor its words would run into the other's; the caption names it too.
  const label = apart > 0.4 * across ? `claimed ${formatNumber(held.factor, 3)}` : "";
  return [{ mark: "rule", axis: "x", at: held.factor, role: "null", label }];
}

function sizes(computation: Computation, rows: readonly Row[], unit: string, size: number): Panel {
  const fit = fieldsOf(fieldsOf(computation.data)["fit"]);
  const factor = computation.numbers["k"]?.value ?? 1;
  const line = rowsOf(fit["points"], [size, size, size, size]);
  const ends = [Math.min(...rows.map((row) => row.smaller)), Math.max(...rows.map((row) => row.smaller))];
  const printed = [fit["slope"], ...membersOf(fit["interval"])].map((one) => formatNumber(numberOf(one), 3));
  const [slope = "", low, high] = alike(printed);
  const fitted: readonly Mark[] =
    line.length === 0
      ? []
      : [
          {
            mark: "band",
            points: line.map(([x = 0, , from = 0, to = 0]) => [x, from, to] as const),
            label: say`95 % band of the line`,
          },
          {
            mark: "line",
            points: line.map(([x = 0, y = 0]): Pair => [x, y]),
            role: "main",
            label: say`fitted, slope ${slope}`,
          },
        ];
  return {
    title: say`Size against size`,
    caption: paragraph([
      say`Both axes are logarithmic; bars are 95 % intervals. Dashed, one factor ${formatNumber(factor, 4)} for all sizes (slope 1).`,
      line.length === 0
        ? null
        : say`Solid, the line by least squares with its 95 % band: slope ${slope} (${low ?? ""} to ${high ?? ""}); a slope other than 1 would mean that proportions change with size.`,
    ]),
    shows: "each",
    x: { label: say`smaller`, unit, scale: "log" },
    y: { label: say`larger`, unit, scale: "log" },
    marks: [
      ...fitted,
      {
        mark: "line",
        points: ends.map((end): Pair => [end / size, (factor * end) / size]),
        role: "null",
        label: say`one factor`,
      },
      {
        mark: "dots",
        label: say`pairs of dimensions`,
        dots: rows.map((row) => ({
          at: [row.smaller / size, row.larger / size],
          xEnds: around(row.smaller / size, row.uSmaller / row.smaller),
          yEnds: around(row.larger / size, row.uLarger / row.larger),
          label: row.name,
          open: row.departs,
        })),
      },
    ],
  };
}

/** A 95 % interval in proportion, from the standard uncertainty of the logarithm. */
function around(value: number, u: number): Pair {
  return [value * Math.exp(-REACH * u), value * Math.exp(REACH * u)];
}
