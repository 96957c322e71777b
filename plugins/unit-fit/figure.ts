import {
  fieldsOf,
  formatNumber,
  membersOf,
  numberOf,
  rowsOf,
  textOf,
  type Axis,
  type Computation,
  type Figure,
  type Json,
  type Naming,
  type Pair,
  type Panel,
  type Peak,
  type Settings,
} from "../../src/plugin.ts";

type Fields = { readonly [key: string]: Json };

/** A unit's relatives as they are said: so many times the unit, and the words. */
const family: readonly (readonly [number, string])[] = [
  [1 / 3, "a third"],
  [1 / 2, "half"],
  [2, "twice"],
];

/** The fit of each trial unit, and what is left of each measurement after whole multiples of the unit. */
export function unitFitFigure(computation: Computation, settings: Settings, name: Naming): Figure {
  const data = fieldsOf(computation.data);
  const shown = fieldsOf(data["shown"]);
  const scale = { unit: textOf(shown["unit"]) || "1", size: numberOf(shown["size"]) || 1 };
  const given = settings["unit"];
  const called = given?.kind === "unit" ? `the ${given.value.name}` : "the best unit";
  return {
    title: given?.kind === "unit" ? `Fit to the ${given.value.name}` : "Search for a unit",
    panels: [quantogram(data, scale), residuals(data, scale, called, name)],
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
  const what = searched ? "the best unit" : "the unit given";
  const free = searched
    ? "5 % of sets without a unit rise above this somewhere"
    : "5 % of sets without a unit rise above this at the unit given";
  const band = searched ? "95 % interval of the unit" : "uncertainty of the unit, 95 %";
  return {
    title: "How well each trial unit fits",
    caption: `Cosine quantogram: the higher the curve, the nearer the measurements are to whole multiples of the trial unit. ${
      searched ? "The best unit" : "The unit given"
    } is ${amount(q, unit)}, where the curve is at ${formatNumber(heightAt(curve, q), 3)}; the dashed line is exceeded by 5 % of sets without a unit, ${
      searched ? "somewhere in the same search" : "at this unit"
    }. ${
      high > low ? `Shaded: ${band}. ` : ""
    }${limit < end ? "Units above the smallest measurement were left out of the search. " : ""}A unit lifts its half, its third and its double with it.`,
    shows: "together",
    x: { label: "trial unit", unit },
    y: { label: "fit", unit: "1" },
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
              label: "smallest measurement",
              each: true as const,
            },
          ]
        : []),
      { mark: "line", points: curve, role: "main", label: "fit" },
      { mark: "peaks", peaks: peaksOn(curve, q, unit, what), label: "the unit and its family" },
    ],
  };
}

/** The unit and those of its relatives that lie within the curve. */
function peaksOn(curve: readonly Pair[], q: number, unit: string, what: string): readonly Peak[] {
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

function residuals(data: Fields, { unit, size }: Scale, called: string, name: Naming): Panel {
  const half = numberOf(data["q"]) / size / 2;
  const multiples = membersOf(data["multiples"]).map(numberOf);
  const items = membersOf(data["items"]).map(fieldsOf);
  const points = rowsOf(data["residuals"], [size, size]);
  const y: Axis = { label: "more or less than a whole multiple", unit };
  const small = points.some(([value = 0]) => value < half);
  return {
    title: `What is left of each measurement after whole multiples of ${called}`,
    caption: `Each measurement less the nearest whole multiple of ${called}, with its 95 % interval where it has one; the dashed lines are half a unit away, ${
      small
        ? "further than which only a measurement of less than half the unit can lie, which counts as one"
        : "as far as anything can lie"
    }.`,
    shows: "each",
    x: { label: "measurement", unit },
    y,
    marks: [
      { mark: "rule", axis: "y", at: 0, role: "main", label: "a whole multiple" },
      { mark: "rule", axis: "y", at: half, role: "null", label: "half a unit more" },
      { mark: "rule", axis: "y", at: -half, role: "null", label: "half a unit less" },
      {
        mark: "dots",
        label: "measurements",
        dots: points.map(([value = 0, rest = 0], i) => {
          const item = items[i] ?? {};
          const reach = numberOf(item["reach"]) / size;
          const count = multiples[i] ?? 0;
          return {
            at: [value, rest],
            ...(reach > 0 ? { yEnds: [rest - reach, rest + reach] as const } : {}),
            label: `${textOf(item["dimension"])} of ${name(textOf(item["artefact"]))}: ${count} ${count === 1 ? "unit" : "units"}`,
          };
        }),
      },
    ],
  };
}

function amount(value: number, unit: string): string {
  const shown = formatNumber(value, 4);
  return unit === "1" ? shown : `${shown} ${unit}`;
}
