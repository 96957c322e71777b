import * as fc from "fast-check";
import { expect, test } from "vitest";
import { boundsOf } from "../../../src/base/date/differences.ts";
import { allImpossible, canAllBeTrue, smallestImpossible } from "../../../src/base/date/minimal.ts";
import { closes, events, randomStatements, truePlacings } from "../../oracle/moments.ts";

test("statements can all be true where events can be placed so, and their bounds are those of all placings", () => {
  fc.assert(
    fc.property(randomStatements, (statements) => {
      const placings = truePlacings(statements);
      expect(canAllBeTrue(statements)).toBe(placings.length > 0);
      expect(closes(statements)).toBe(placings.length > 0);
      const bounds = boundsOf(statements);
      expect(bounds === null).toBe(placings.length === 0);
      for (const event of events) {
        if (bounds === null) break;
        const years = placings.map((at) => Math.floor(at.get(event) ?? NaN));
        const { low, high, highStrict } = bounds.get(event) ?? { low: null, high: null, highStrict: false };
        expect(Math.floor(low ?? NaN)).toBe(Math.min(...years));
        expect(highStrict ? Math.ceil(high ?? NaN) - 1 : Math.floor(high ?? NaN)).toBe(Math.max(...years));
      }
    }),
    { numRuns: 400 },
  );
});

test("a set that cannot all be true is minimal, and none is smaller where there are few statements", () => {
  fc.assert(
    fc.property(randomStatements, (statements) => {
      const set = smallestImpossible(statements);
      const all = allImpossible(statements);
      expect(set === null).toBe(all.length === 0);
      if (set === null) return;
      expect(set.length).toBe(all[0]?.length);
      expect(closes(set)).toBe(false);
      for (const one of set) expect(closes(set.filter((other) => other !== one))).toBe(true);
    }),
    { numRuns: 300 },
  );
});

test("among many statements the set is minimal too, and no longer than a contradiction of two put among them", () => {
  const chain = Array.from({ length: 40 }, (_, n) => ({
    id: `step ${n}`,
    says: [{ from: `e${n + 1}`, to: `e${n}`, most: 0, strict: true }],
  }));
  const round = { id: "round", says: [{ from: "e0", to: "e40", most: 0, strict: true }] };
  expect(smallestImpossible(chain)).toBe(null);
  expect(smallestImpossible([...chain, round])).toHaveLength(41);
  const back = { id: "back", says: [{ from: "e20", to: "e21", most: 0, strict: true }] };
  const short = { id: "short", says: [{ from: "e20", to: "e23", most: 0 }] };
  fc.assert(
    fc.property(fc.shuffledSubarray([...chain, round, back, short], { minLength: 43 }), (statements) => {
      const set = smallestImpossible(statements) ?? [];
      expect(set.map((one) => one.id).sort()).toEqual(["back", "step 20"]);
    }),
  );
});

test("among many statements one that cannot be true by itself is told alone", () => {
  const between = (event: string, low: number, high: number) => [
    { from: event, to: "0", most: -low },
    { from: "0", to: event, most: high + 1, strict: true },
  ];
  // Two dates clash over the order of a and b; that c is before d and no year apart is impossible by itself.
  const dates = Array.from({ length: 20 }, (_, n) => ({ id: `date ${n}`, says: between(`e${n}`, n, n) }));
  const order = { id: "order", says: [{ from: "e0", to: "e9", most: 0, strict: true }] };
  const itself = {
    id: "itself",
    says: [
      { from: "d", to: "c", most: 0, strict: true },
      { from: "c", to: "d", most: 0 },
    ],
  };
  expect(
    smallestImpossible([order, ...dates])
      ?.map((one) => one.id)
      .sort(),
  ).toEqual(["date 0", "date 9", "order"]);
  expect(smallestImpossible([order, ...dates, itself])).toEqual([itself]);
});

test("a statement more never widens the bounds", () => {
  fc.assert(
    fc.property(randomStatements, (statements) => {
      const bounds = boundsOf(statements);
      const before = boundsOf(statements.slice(1));
      if (bounds === null || before === null) return;
      for (const [event, { low, high }] of bounds) {
        const was = before.get(event);
        expect(low ?? -Infinity).toBeGreaterThanOrEqual(was?.low ?? -Infinity);
        expect(high ?? Infinity).toBeLessThanOrEqual(was?.high ?? Infinity);
      }
    }),
  );
});
