import type { Id } from "../../../base/finding.ts";
import { formatNumber } from "../../../base/quantity/quantity-print.ts";
import type { Unit } from "../../../base/unit/unit.ts";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { labelText } from "../../../link/names/label.ts";
import type { Reported } from "../../report/report.ts";
import { citableUnder, shownUnder } from "../../withhold.ts";

/** A unit that a second scale bar may be graduated in. */
export interface BarUnit {
  readonly name: string;
  /** In metres, with its standard uncertainty. */
  readonly size: number;
  readonly u: number;
  /** No range is published, and 1 % stands in for it. */
  readonly uAssumed: boolean;
  readonly source: Text;
}

/** A scale bar in px: its divisions, filled in turn, and where its end may lie as the unit's own uncertainty has it. */
export interface Bar {
  readonly divisions: readonly { readonly from: number; readonly to: number; readonly filled: boolean }[];
  readonly ticks: readonly { readonly at: number; readonly label: string }[];
  readonly length: number;
  /** One standard uncertainty of the whole length; 0 where the unit is exact. */
  readonly u: number;
}

/** The corpus's own units of length, and the historical ones that its measurements are written in. */
export function barUnits(model: Reported): readonly BarUnit[] {
  const { graph } = model;
  const [shown, citable] = [shownUnder(model), citableUnder(model)];
  const own = graph.settings.units.filter((unit) => unit.kind === "length" && unit.from.every(citable));
  const used = new Set(
    graph
      .list("measurements")
      .filter((one) => shown(one.id))
      .flatMap(({ values }) => values.value.shared.map((error) => error.with)),
  );
  const historical = graph.settings.quantities.units.units.filter(
    (unit) => !unit.own && unit.kind === "length" && unit.u > 0 && used.has(`unit:${unit.name}`),
  );
  return [
    ...own.map((unit) => barUnit(unit, sourceWords(unit.from, unit.source))),
    ...historical.map((unit) => barUnit(unit, unit.source)),
  ];

  function sourceWords(from: readonly Id[], otherwise: string): Text {
    const [one, ...others] = from.map((id) => labelText(graph, id));
    return one === undefined ? otherwise : others.reduce((before, next) => say`${before}; ${next}`, one);
  }
}

function barUnit({ name, size, u, uAssumed }: Unit, source: Text): BarUnit {
  return { name, size, u, uAssumed, source };
}

const metre: BarUnit = { name: "m", size: 1, u: 0, uAssumed: false, source: "" };

/** The metric bar: 1, 2 or 5 times a power of ten, the longest that fits. */
export function metricBar(perMetre: number, room: number): Bar {
  const [length, parts] = longest(perMetre, room, -6);
  const unit = length >= 1 ? 1 : length >= 0.01 ? 0.01 : 0.001;
  const sign = unit === 1 ? "m" : unit === 0.01 ? "cm" : "mm";
  return barOf(metre, length, parts, perMetre, (value) => formatNumber(value / unit), sign);
}

/** A bar of so many of a unit, or of a half or a quarter; null where not even that fits. */
export function unitBar(unit: BarUnit, perMetre: number, room: number): Bar | null {
  const each = perMetre * unit.size;
  if (each <= room) {
    const [count, parts] = longest(each, room, 0);
    return barOf(unit, count, parts, each, formatNumber, unit.name);
  }
  const part = [0.5, 0.25].find((one) => each * one <= room);
  return part === undefined ? null : barOf(unit, part, 1, each, formatNumber, unit.name);
}

/** The longest bar of 1, 2 or 5 times a power of ten, and in how many it is divided. */
function longest(each: number, room: number, least: number): readonly [number, number] {
  let power = Math.floor(Math.log10(room / each));
  if (power < least) power = least;
  const base = 10 ** power;
  const [mantissa, parts] = (
    [
      [5, 5],
      [2, 4],
      [1, 5],
    ] as const
  ).find(([one]) => one * base * each <= room) ?? [1, 5];
  return [mantissa * base, parts];
}

function barOf(
  unit: BarUnit,
  count: number,
  parts: number,
  each: number,
  said: (value: number) => string,
  sign: string,
): Bar {
  const length = count * each;
  const division = length / parts;
  const every = Math.ceil(34 / division);
  const places = Array.from({ length: parts + 1 }, (_, n) => n);
  return {
    divisions: places.slice(1).map((n) => ({
      from: (n - 1) * division,
      to: n * division,
      filled: n % 2 === 1,
    })),
    ticks: places
      .filter((n) => n === parts || (n % every === 0 && parts - n >= every))
      .map((n) => ({
        at: n * division,
        label: n === parts ? `${said(count)} ${sign}` : said((count * n) / parts),
      })),
    length,
    u: (length * unit.u) / unit.size,
  };
}
