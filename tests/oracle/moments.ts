import * as fc from "fast-check";
import { zero, type Difference, type Statement } from "../../src/base/date/differences.ts";

/** Events of the random systems. Four moments to a year let as many as three of them come one after another within it. */
export const events = ["a", "b", "c"] as const;
const [firstYear, lastYear, perYear] = [0, 4, 4];

/** Every way to put the events at moments of the years looked at, as numbers on the line of years. */
function* placings(): Generator<ReadonlyMap<string, number>> {
  const count = (lastYear - firstYear + 1) * perYear;
  const moment = (n: number): number => firstYear + n / perYear;
  for (let n = 0; n < count ** events.length; n++) {
    yield new Map([
      [zero, 0],
      ...events.map((event, place): [string, number] => [
        event,
        moment(Math.floor(n / count ** place) % count),
      ]),
    ]);
  }
}

const everywhere = [...placings()];

const holds = ({ from, to, most, strict }: Difference, at: ReadonlyMap<string, number>): boolean => {
  const apart = (at.get(to) ?? NaN) - (at.get(from) ?? NaN);
  return strict === true ? apart < most : apart <= most;
};

/** The ways to place the events in which all statements are true, tried one by one. */
export function truePlacings(statements: readonly Statement[]): readonly ReadonlyMap<string, number>[] {
  const all = statements.flatMap((one) => one.says);
  return everywhere.filter((at) => all.every((one) => holds(one, at)));
}

/** Whether nothing comes before itself, by the closure of all distances (Floyd and Warshall), wherever on the line. */
export function closes(statements: readonly Statement[]): boolean {
  const all = statements.flatMap((one) => one.says);
  const places = [...new Set([zero, ...events, ...all.flatMap(({ from, to }) => [from, to])])];
  // So small a part of a year that all strict steps together stay below any difference of whole years.
  const least = 1 / 1024;
  const length = new Map<string, number>();
  const between = (from: string, to: string): number => length.get(`${from} ${to}`) ?? Infinity;
  for (const { from, to, most, strict } of all)
    length.set(`${from} ${to}`, Math.min(between(from, to), most - (strict === true ? least : 0)));
  for (const via of places)
    for (const from of places)
      for (const to of places)
        length.set(`${from} ${to}`, Math.min(between(from, to), between(from, via) + between(via, to)));
  return places.every((place) => between(place, place) >= 0);
}

const event = fc.constantFrom(...events);

/** What people say of dates: a span of years, an order with or without a distance, one time. */
const says: fc.Arbitrary<readonly Difference[]> = fc.oneof(
  fc
    .tuple(event, fc.integer({ min: firstYear, max: lastYear }), fc.integer({ min: 0, max: 2 }))
    .map(([at, low, long]) => within(at, low, Math.min(lastYear, low + long))),
  fc.tuple(event, event).map(([first, second]) => [{ from: second, to: first, most: 0, strict: true }]),
  fc
    .tuple(event, event, fc.integer({ min: 1, max: 3 }))
    .map(([first, second, years]) => [{ from: second, to: first, most: -years }]),
  fc
    .tuple(event, event, fc.integer({ min: 0, max: 2 }))
    .map(([first, second, years]) => [{ from: first, to: second, most: years }]),
);

const within = (at: string, low: number, high: number): readonly Difference[] => [
  { from: at, to: zero, most: -low },
  { from: zero, to: at, most: high + 1, strict: true },
];

/** Random statements, each event kept to the years looked at by one of its own. */
export const randomStatements: fc.Arbitrary<readonly Statement[]> = fc
  .array(says, { minLength: 0, maxLength: 6 })
  .map((all) => [
    ...all.map((said, place) => ({ id: `s${place}`, says: said })),
    ...events.map((at) => ({ id: `years of ${at}`, says: within(at, firstYear, lastYear) })),
  ]);
