import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { casesOf } from "../check-values/case-file.ts";
import { isFields, type Case } from "../check-values/case.ts";
import { methods } from "../check-values/methods.ts";
import { verdictOn } from "../check-values/runner.ts";

// Expected values from R, numpy and scipy, GNU units and others; each case names its oracle and the origin of its data.
const cases = casesOf(readFileSync(new URL("check-values.json", import.meta.url), "utf8"));
const groupOf = (name: string): string => name.slice(0, name.indexOf("."));

/** How many cases of the file each group of methods has. */
const casesInGroup: Readonly<Record<string, number>> = {
  ...{ argument: 1, cite: 25, counts: 7, dates: 4, fit: 9, next: 5, scaling: 11 },
  ...{ silence: 4, spacing: 14, stats: 1, support: 7, unitfit: 33, units: 8 },
};
const present = [...new Set(Object.keys(methods).map(groupOf))].filter((group) => group in casesInGroup);

test("the copy is whole", () => {
  expect(cases).toHaveLength(129);
  expect(Object.values(casesInGroup).reduce((sum, count) => sum + count)).toBe(129);
  expect(present).toEqual(expect.arrayContaining(["argument", "units"]));
});

describe.each(present)("%s", (group) => {
  const own = cases.filter(({ method }) => groupOf(method) === group);

  test("every case of the group can be run", () => {
    expect(own).toHaveLength(casesInGroup[group]!);
    expect(own.filter(({ method }) => !(method in methods)).map(({ id }) => id)).toEqual([]);
  });

  test.each(own.filter(({ id }) => id !== "B1-table"))("$id", (one) => {
    expect(verdictOn(one)).toEqual({ differences: [] });
  });
});

test("of the table of 133 units (GNU units 2.22) those that the program knows agree, at least 62", () => {
  const table = cases.find(({ id }) => id === "B1-table")!;
  const names = isFields(table.input) ? (table.input["units"] as readonly string[]) : [];
  const { values } = table.expected as { values: readonly { readonly unit: string }[] };
  expect(names).toHaveLength(133);
  const known = values.filter(({ unit }) => isKnown(unit));
  const cut: Case = { ...table, input: { units: known.map(({ unit }) => unit) }, expected: { values: known } };
  expect(known.length).toBeGreaterThanOrEqual(62);
  expect(verdictOn(cut)).toEqual({ differences: [] });
});

function isKnown(unit: string): boolean {
  const { values } = methods["units.toSI"]!({ units: [unit] }) as { values: readonly object[] };
  return values.every((value) => !("error" in value));
}
