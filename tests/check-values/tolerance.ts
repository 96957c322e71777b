import { isFields, type Case, type Fields } from "./case.ts";
import { formulaValue } from "./formula.ts";

/** How far a number may be off, and in what words the case says so. */
export type Tolerance = { readonly width: number; readonly words: string };

/** A number being compared: the names on the way to it, and the objects it and its expected value stand in. */
export type Place = {
  readonly names: readonly string[];
  readonly expectedBeside: Fields;
  readonly gotBeside: Fields;
};

/** Six significant digits, for a number about which the case says nothing. */
const unstated = 1e-5;
/** What "exact" leaves to the rounding of the last digits of a computed number. */
const rounding = 1e-12;
const defaultDraws = 10_000;

/** Short names of the case files that stand for a family of fields. */
const families: Readonly<Record<string, RegExp>> = { p: /^p(?![a-z])/, or: /^(?:oddsRatio|ci\d)/ };

/** What is wrong with the tolerances of a case, or null: each is a number or a formula under a known name. */
export function toleranceFault(tolerance: Fields): string | null {
  for (const [name, value] of Object.entries(tolerance)) {
    if (name === "exact" ? value === true : name.endsWith("_floor") && floorOf(value) !== null) continue;
    if (!/^(?:.+_)?(?:abs|rel)$/.test(name))
      return `Unknown tolerance \`${name}\`, expected exact, abs, rel, NAME_abs, NAME_rel or NAME_floor`;
    const isNumber = typeof value === "number" && value >= 0;
    if (!isNumber && typeof value !== "string")
      return `Tolerance \`${name}\` is ${JSON.stringify(value)}, expected a number or a formula`;
  }
  return null;
}

/**
 * The tolerance of a number: that of its own name or the nearest name around it, else of its family, else the general
 * `abs` and `rel`, else `stat`. Where both an absolute and a relative one are stated the wider counts.
 */
export function toleranceOf(expected: number, place: Place, { tolerance, input }: Case): Tolerance {
  const own = place.names.at(-1) ?? "";
  const simulated = typeof place.gotBeside["B"] === "number" ? [`${own}_mc_`] : [];
  const family = Object.keys(families).filter((name) => families[name]!.test(own));
  const prefixes = [
    ...simulated,
    ...[...place.names].reverse().map(prefix),
    ...family.map(prefix),
    "",
    prefix("stat"),
  ];
  const stated = prefixes.find((start) => `${start}abs` in tolerance || `${start}rel` in tolerance);
  if (stated !== undefined) {
    const names = variables(expected, place, input);
    const part = (kind: "abs" | "rel", scale: number) => {
      const value = tolerance[stated + kind];
      if (value === undefined) return [];
      const width = typeof value === "number" ? value : formulaValue(String(value), names);
      return [{ width: width * scale, words: `${stated}${kind} ${String(value)}` }];
    };
    const parts = [...part("abs", 1), ...part("rel", expected === 0 ? rounding : Math.abs(expected))];
    return parts.reduce((wide, next) => (next.width > wide.width ? next : wide));
  }
  if (tolerance["exact"] === true)
    return { width: rounding * Math.max(1, Math.abs(expected)), words: "exact" };
  return { width: unstated * Math.abs(expected), words: `rel ${unstated} (none stated)` };
}

const prefix = (name: string): string => `${name}_`;

/** Whether the field is the standard error of a simulated p, which varies as the p does and follows from it. */
export function isErrorOfSimulatedP({ names, expectedBeside }: Place, { tolerance }: Case): boolean {
  const ofP = tolerance["p_abs"];
  return names.at(-1) === "se" && "p" in expectedBeside && typeof ofP === "string" && /\bse\b/.test(ofP);
}

/** The standard error of a simulated p. */
export function standardError(p: number, place: Place, input: unknown): number {
  return Math.sqrt((p * (1 - p)) / drawsOf(place, input));
}

/** Below which p a case expects null, or null when it has no such note: from `NAME_floor: below 1e-9 print p < 1e-9`. */
export function floorFor(name: string, tolerance: Fields): number | null {
  const note = Object.keys(tolerance).find((key) => key.endsWith("_floor") && families["p"]!.test(name));
  return note === undefined ? null : floorOf(tolerance[note]);
}

function floorOf(note: unknown): number | null {
  const stated = /^below (\S+) print/.exec(typeof note === "string" ? note : "")?.[1];
  const floor = Number(stated);
  return stated === undefined || Number.isNaN(floor) ? null : floor;
}

function variables(expected: number, place: Place, input: unknown) {
  return (name: string): number | undefined => {
    if (name === "p") return expected;
    if (name === "B") return drawsOf(place, input);
    if (name !== "se") return undefined;
    const { se } = place.expectedBeside;
    return typeof se === "number" ? se : standardError(expected, place, input);
  };
}

function drawsOf({ gotBeside }: Place, input: unknown): number {
  const draws = isFields(input) && typeof input["B"] === "number" ? input["B"] : gotBeside["B"];
  return typeof draws === "number" && draws > 0 ? draws : defaultDraws;
}
