import type { QuantityKind } from "../quantity.ts";
import further from "./further-units.json" with { type: "json" };
import historical from "./historical-units.json" with { type: "json" };
import { namesWithAdjective } from "./historical-names.ts";
import type { Unit } from "./unit.ts";

type Row = readonly [id: string, size: number, symbols: string, names: string, loose?: string];

const si = "SI Brochure, 9th edition (2019)";
const international = "International Yard and Pound Agreement (1959)";

const lengths: readonly Row[] = [
  ["km", 1000, "km", "kilometre, kilometer"],
  ["m", 1, "m", "metre, meter"],
  ["dm", 0.1, "dm", "decimetre, decimeter"],
  ["cm", 0.01, "cm", "centimetre, centimeter"],
  ["mm", 0.001, "mm", "millimetre, millimeter"],
  ["micron", 1e-6, "µm, um", "micrometre, micrometer, micron"],
];
const imperialLengths: readonly Row[] = [
  ["inch", 0.0254, "in", "inch"],
  ["foot", 0.3048, "ft", "foot"],
  ["yard", 0.9144, "yd", "yard"],
];
const masses: readonly Row[] = [
  ["tonne", 1000, "t", "tonne"],
  ["kg", 1, "kg", "kilogram, kilogramme", "kilo"],
  ["g", 0.001, "g", "gram, gramme"],
  ["mg", 1e-6, "mg", "milligram, milligramme"],
];
const imperialMasses: readonly Row[] = [
  ["lb", 0.45359237, "lb", "pound"],
  ["oz", 0.45359237 / 16, "oz", "ounce"],
  ["grain", 6.479891e-5, "gr", "grain"],
];
const angles: readonly Row[] = [
  ["degree", Math.PI / 180, "°, deg", "degree"],
  ["arcmin", Math.PI / 10800, "′, arcmin", "arcminute, minute of arc"],
  ["arcsec", Math.PI / 648000, "″, arcsec", "arcsecond, second of arc"],
  ["rad", 1, "rad", "radian"],
  ["mrad", 0.001, "mrad", "milliradian"],
];
const times: readonly Row[] = [
  ["julianyear", 31557600, "yr", "year"],
  ["week", 604800, "wk", "week"],
  ["day", 86400, "d", "day"],
  ["hour", 3600, "h", "hour"],
  ["minute", 60, "min", "minute"],
  ["s", 1, "s", "second"],
];
const areas: readonly Row[] = [
  ["km2", 1e6, "km², km2, km^2", "square kilometre, square kilometer"],
  ["ha", 10000, "ha", "hectare"],
  ["m2", 1, "m², m2, m^2", "square metre, square meter"],
  ["cm2", 1e-4, "cm², cm2, cm^2", "square centimetre, square centimeter"],
  ["mm2", 1e-6, "mm², mm2, mm^2", "square millimetre, square millimeter"],
];
const volumes: readonly Row[] = [
  ["m3", 1, "m³, m3, m^3", "cubic metre, cubic meter"],
  ["litre", 0.001, "l, L, dm³, dm3", "litre, liter, cubic decimetre, cubic decimeter"],
  ["cm3", 1e-6, "cm³, cm3, cm^3, ml, mL", "cubic centimetre, cubic centimeter, millilitre, milliliter"],
];
const numbers: readonly Row[] = [["percent", 0.01, "%", "percent, per cent"]];

const kinds: Readonly<Record<string, QuantityKind>> = {
  m: "length",
  kg: "mass",
  radian: "angle",
  s: "time",
  "m^2": "area",
  "m^3": "volume",
};

/** Every unit the program knows by itself: SI, the international foot and pound, and the historical units. */
export const builtInUnits: readonly Unit[] = [
  ...modern("length", si, lengths),
  ...modern("length", international, imperialLengths),
  ...modern("mass", si, masses),
  ...modern("mass", international, imperialMasses),
  ...modern("angle", si, angles),
  ...modern("time", `${si}; the year is of 365.25 days`, times),
  ...modern("area", si, areas),
  ...modern("volume", si, volumes),
  ...modern("number", si, numbers),
  ...historical.units.map(fromRecord),
  ...further.units.map(fromDefinition),
];

const sameUnit: Readonly<Record<string, string>> = {
  pes: "romanfoot",
  passus: "romanpace",
  pous: "greekfoot",
  kus: "sumeriancubit",
};

/** The built-in unit with this identifier, as tables of definitions name it (`romanfoot`, `pes`). */
export function unitById(id: string): Unit | null {
  const same = Object.hasOwn(sameUnit, id) ? sameUnit[id] : id;
  return builtInUnits.find((unit) => unit.id === same) ?? null;
}

function modern(kind: QuantityKind, source: string, rows: readonly Row[]): readonly Unit[] {
  return rows.map(([id, size, symbols, names, loose]) => ({
    id,
    name: list(kind === "time" ? names : symbols)[0] ?? id,
    symbols: list(symbols),
    names: list(names),
    looseNames: list(loose ?? ""),
    kind,
    size,
    u: 0,
    uAssumed: false,
    source,
    note: null,
    own: false,
  }));
}

/** Half the published range is the half-width of a rectangular distribution; without one, 1 % of the size. */
function fromRecord(record: (typeof historical.units)[number]): Unit {
  const names = list(namesWithAdjective[record.id] ?? "");
  const { low, high } = record;
  const known = low !== null && high !== null;
  return {
    id: record.id,
    name: names[0] ?? record.id,
    symbols: [],
    names,
    looseNames: record.names.flatMap((name) => list(name.replace(/\([^)]*\)/gu, "").replaceAll(" / ", ", "))),
    kind: kinds[record.siUnit] ?? "number",
    size: record.si,
    u: known ? (high - low) / Math.sqrt(12) : record.si / 100,
    uAssumed: !known,
    source: `${record.source} (${record.provenance})`,
    note: record.note,
    own: false,
  };
}

/** A unit that a file of definitions gives without a range: exact where modern, else 1 % stands in for it. */
function fromDefinition(definition: (typeof further.units)[number]): Unit {
  const names = list(definition.names);
  return {
    id: definition.id,
    name: names[0] ?? definition.id,
    symbols: [],
    names,
    looseNames: [],
    kind: kinds[definition.siUnit] ?? "number",
    size: definition.si,
    u: definition.exact ? 0 : definition.si / 100,
    uAssumed: !definition.exact,
    source: definition.source,
    note: definition.note,
    own: false,
  };
}

function list(names: string): readonly string[] {
  return names
    .split(",")
    .map((name) => name.trim())
    .filter((name) => name !== "");
}
