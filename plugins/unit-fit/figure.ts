import {
  count,
  fieldsOf,
  formatNumber,
  membersOf,
  numberOf,
  paragraph,
  rowsOf,
  say,
  textOf,
  type Axis,
  type Computation,
  type Figure,
  type Json,
  type Naming,
  type Pair,
  type Panel,
  type Peak,
  type Said,
  type Settings,
  type Text,
} from "../../src/plugin.ts";

type Fields = { readonly [key: string]: Json };

/** A unit's relatives as they are said: so many times the unit, and the words. */
const family: readonly (readonly [number, Said])[] = [
  [1 / 3, say`a third`],
  [1 / 2, say`half`],
  [2, say`twice`],
];

/** The fit of each trial unit, and what is left of each measurement after whole multiples of the unit. */
export function unitFitFigure(computation: Computation, settings: Settings, name: Naming): Figure {
  const data = fieldsOf(computation.data);
  const shown = fieldsOf(data["shown"]);
  const scale = { unit: textOf(shown["unit"]) || "1", size: numberOf(shown["size"]) || 1 };
  const given = settings["unit"];
  const unit = given?.kind === "unit" ? given.value.name : null;
  return {
    title: unit === null ? say`Search for a unit` : say`Fit to the ${unit}`,
    panels: [quantogram(data, scale), residuals(data, scale, unit, name)],
  };
}

interface Scale {
  readonly unit: string;
  readonly size: number;
}

function quantogram(data: Fields, { unit, size }: Scale): Panel {
  const searched = data["found"] === "searched";
  const curve = rowsOf(data["curve"], [size, 1]).map(([q = 0, phi = 0]): Pair => [q, phi]);
  const q = numberOf(data["q"]) / size;
  const [low = q, high = q] = membersOf(data["reach"]).map((end) => numberOf(end) / size);
  const [, limit = 0, end = 0] = membersOf(data["range"]).map((one) => numberOf(one) / size);
  const what = searched ? say`the best unit` : say`the unit given`;
  const free = searched
    ? say`5 % of sets without a unit rise above this somewhere`
    : say`5 % of sets without a unit rise above this at the unit given`;
  const band = searched ? say`95 % interval of the unit` : say`uncertainty of the unit, 95 %`;
  const [best, height] = [amount(q, unit), formatNumber(heightAt(curve, q), 3)];
  return {
    title: say`How well each trial unit fits`,
    caption: paragraph([
      say`Cosine quantogram: the higher the curve, the nearer the measurements are to whole multiples of the trial unit.`,
      searched
        ? say`The best unit is ${best}, where the curve is at ${height}; the dashed line is exceeded by 5 % of sets without a unit, somewhere in the same search.`
        : say`The unit given is ${best}, where the curve is at ${height}; the dashed line is exceeded by 5 % of sets without a unit, at this unit.`,
      high > low ? say`Shaded: ${band}.` : null,
      limit < end ? say`Units above the smallest measurement were left out of the search.` : null,
      say`A unit lifts its half, its third and its double with it.`,
    ]),
    shows: "together",
    x: { label: say`trial unit`, unit },
    y: { label: say`fit`, unit: "1" },
    marks: [
      ...(high > low
        ? [{ mark: "reach" as const, axis: "x" as const, from: low, to: high, label: band }]
        : []),
      { mark: "rule", axis: "y", at: 0, role: "zero", label: "" },
      { mark: "rule", axis: "y", at: numberOf(data["null"]), role: "null", label: free },
      ...(limit < end
        ? [
            {
              mark: "rule" as const,
              axis: "x" as const,
              at: limit,
              role: "null" as const,
              label: say`smallest measurement`,
              each: true as const,
            },
          ]
        : []),
      { mark: "line", points: curve, role: "main", label: say`fit` },
      { mark: "peaks", peaks: peaksOn(curve, q, unit, what), label: say`the unit and its family` },
    ],
  };
}

/** The unit and those of its relatives that lie within the curve. */
function peaksOn(curve: readonly Pair[], q: number, unit: string, what: Said): readonly Peak[] {
  const [from = 0, to = 0] = [curve[0]?.[0], curve.at(-1)?.[0]];
  const relatives = family
    .map(([times, detail]) => ({ at: times * q, detail, strong: false }))
    .filter(({ at }) => at >= from && at <= to);
  return [...relatives, { at: q, detail: what, strong: true }]
    .sort((a, b) => a.at - b.at)
    .map(({ at, detail, strong }) => ({
      at: [at, heightAt(curve, at)],
      label: amount(at, unit),
      detail,
      strong,
    }));
}

/** The height of the curve at a place, between the two points beside it. */
function heightAt(curve: readonly Pair[], x: number): number {
  const next = Math.max(
    1,
    curve.findIndex((point) => point[0] >= x),
  );
  const [x0, y0] = curve[next - 1] ?? [0, 0];
  const [x1, y1] = curve[next] ?? [1, 0];
  return x1 === x0 ? y1 : y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}

function residuals(data: Fields, { unit, size }: Scale, given: string | null, name: Naming): Panel {
  const half = numberOf(data["q"]) / size / 2;
  const multiples = membersOf(data["multiples"]).map(numberOf);
  const items = membersOf(data["items"]).map(fieldsOf);
  const points = rowsOf(data["residuals"], [size, size]);
  const y: Axis = { label: say`more or less than a whole multiple`, unit };
  const limits = points.some(([value = 0]) => value < half)
    ? say`further than which only a measurement of less than half the unit can lie, which counts as one`
    : say`as far as anything can lie`;
  return {
    title:
      given === null
        ? say`What is left of each measurement after whole multiples of the best unit`
        : say`What is left of each measurement after whole multiples of the ${given}`,
    caption:
      given === null
        ? say`Each measurement less the nearest whole multiple of the best unit, with its 95 % interval where it has one; the dashed lines are half a unit away, ${limits}.`
        : say`Each measurement less the nearest whole multiple of the ${given}, with its 95 % interval where it has one; the dashed lines are half a unit away, ${limits}.`,
    shows: "each",
    x: { label: say`measurement`, unit },
    y,
    marks: [
      { mark: "rule", axis: "y", at: 0, role: "main", label: say`a whole multiple` },
      { mark: "rule", axis: "y", at: half, role: "null", label: say`half a unit more` },
      { mark: "rule", axis: "y", at: -half, role: "null", label: say`half a unit less` },
      {
        mark: "dots",
        label: say`measurements`,
        dots: points.map(([value = 0, rest = 0], i) => {
          const item = items[i] ?? {};
          const reach = numberOf(item["reach"]) / size;
          return {
            at: [value, rest],
            ...(reach > 0 ? { yEnds: [rest - reach, rest + reach] as const } : {}),
            label: inUnits(textOf(item["dimension"]), name(textOf(item["artefact"])), multiples[i] ?? 0),
          };
        }),
      },
    ],
  };
}

function inUnits(dimension: string, thing: Text, n: number): Said {
  return n === 1 ? say`${dimension} of ${thing}: 1 unit` : say`${dimension} of ${thing}: ${count(n)} units`;
}

function amount(value: number, unit: string): string {
  const shown = formatNumber(value, 4);
  return unit === "1" ? shown : `${shown} ${unit}`;
}
