import { isFields, type Case, type Fields } from "./case.ts";
import { floorFor, isErrorOfSimulatedP, standardError, toleranceOf, type Place } from "./tolerance.ts";

/** One value that is not as expected. */
export type Difference = {
  readonly path: string;
  readonly got: unknown;
  readonly expected: unknown;
  readonly tolerance: string;
};

/** Where the result departs from what the case expects; what the result holds besides is not looked at. */
export function differences(one: Case, got: unknown): readonly Difference[] {
  const found: Difference[] = [];
  const root: Place = { names: [], expectedBeside: {}, gotBeside: {} };
  compare(one, one.expected, got, "", root, found);
  return found;
}

function compare(
  one: Case,
  expected: unknown,
  got: unknown,
  path: string,
  place: Place,
  found: Difference[],
): void {
  const differ = (tolerance: string) => found.push({ path, got, expected, tolerance });
  if (Array.isArray(expected)) {
    if (!Array.isArray(got)) return void differ("a list");
    if (got.length !== expected.length) return void differ(`a list of ${expected.length}`);
    const [wanted, given] = one.unordered === true ? [inOrder(expected), inOrder(got)] : [expected, got];
    wanted.forEach((item, at) => compare(one, item, given[at], `${path}[${at}]`, place, found));
  } else if (isFields(expected)) {
    if (!isFields(got)) return void differ("an object");
    for (const name of Object.keys(expected)) {
      const inside = { names: [...place.names, name], expectedBeside: expected, gotBeside: got };
      compare(one, expected[name], fieldOf(got, name), path === "" ? name : `${path}.${name}`, inside, found);
    }
  } else if (typeof expected === "number") {
    const words = numberFault(one, expected, got, place);
    if (words !== null) differ(words);
  } else if (expected === null) {
    if (!isNothing(got) && !isBelowFloor(got, place, one)) differ("no value");
  } else if (expected !== got && !isSameInfinity(expected, got)) differ("exact");
}

function inOrder(list: readonly unknown[]): readonly unknown[] {
  const key = (item: unknown) => JSON.stringify(Array.isArray(item) ? inOrder(item) : item);
  return [...list].sort((a, b) => (key(a) < key(b) ? -1 : 1));
}

/** The tolerance that a number fails, or null when it is near enough. */
function numberFault(one: Case, expected: number, got: unknown, place: Place): string | null {
  if (isErrorOfSimulatedP(place, one)) {
    const p = place.gotBeside["p"];
    const follows = typeof p === "number" ? standardError(p, place, one.input) : NaN;
    return near(got, follows, follows / 100) ? null : "sqrt(p(1-p)/B) of the p got, within 1 %";
  }
  const { width, words } = toleranceOf(expected, place, one);
  return near(got, expected, width) ? null : words;
}

const near = (got: unknown, expected: number, width: number): boolean =>
  typeof got === "number" && Math.abs(got - expected) <= width;

function fieldOf(fields: Fields, name: string): unknown {
  return Object.hasOwn(fields, name) ? fields[name] : undefined;
}

/** JSON has no way to write what is not a finite number but null. */
function isNothing(got: unknown): boolean {
  return got === null || got === undefined || (typeof got === "number" && !Number.isFinite(got));
}

function isBelowFloor(got: unknown, { names }: Place, { tolerance }: Case): boolean {
  const floor = floorFor(names.at(-1) ?? "", tolerance);
  return floor !== null && typeof got === "number" && got >= 0 && got < floor;
}

/** The oracles write an infinite number as a text. */
function isSameInfinity(expected: unknown, got: unknown): boolean {
  if (expected === "Inf" || expected === "Infinity")
    return got === Infinity || got === "Infinity" || got === "Inf";
  return (expected === "-Inf" || expected === "-Infinity") && (got === -Infinity || got === "-Infinity");
}
