import { expect, test } from "vitest";
import { repeated } from "../../src/show/desk/visit/repeat.ts";
import { studentQuantile } from "../../src/base/numeric/index.ts";

// JCGM 100:2008 (GUM). Its tables are written down here from memory.

test("five readings each of voltage, current and phase: GUM H.2, table H.2", () => {
  const cases = [
    { readings: [5.007, 4.994, 5.005, 4.99, 4.999], mean: 4.999, u: 0.0032, places: 4 },
    { readings: [19.663, 19.639, 19.64, 19.685, 19.678], mean: 19.661, u: 0.0095, places: 4 },
    { readings: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433], mean: 1.04446, u: 0.00075, places: 5 },
  ];
  for (const { readings, mean, u, places } of cases) {
    const told = repeated(readings, 0);
    expect(told.mean).toBeCloseTo(mean, 6);
    expect(told.u).toBeCloseTo(u, places);
    expect(told.t).toBeCloseTo(2.78, 2);
  }
});

test("t for 95 %: GUM table G.2", () => {
  for (const [freedom, t] of [
    [1, 12.71],
    [2, 4.3],
    [4, 2.78],
    [10, 2.23],
    [19, 2.09],
  ] as const)
    expect(studentQuantile(0.95, freedom)).toBeCloseTo(t, 2);
});

test("the resolution alone is 0.29 of its step, and is combined with the spread: GUM F.2.2.1", () => {
  expect(repeated([7], 1).u).toBeCloseTo(0.29, 2);
  const same = repeated([7, 7, 7], 1);
  expect(same.ofMean).toBe(0);
  expect(same.u).toBeCloseTo(0.29, 2);
  // By hand: s of 41, 42, 43 is 1, of their mean 1/√3; with a step of 1 √(1/3 + 1/12) = √(5/12); ν = 2 (5/4)² = 3.125.
  const apart = repeated([41, 42, 43], 1);
  expect(apart.u).toBeCloseTo(Math.sqrt(5 / 12), 12);
  expect(apart.t).toBeCloseTo(studentQuantile(0.95, 3.125), 9);
});
