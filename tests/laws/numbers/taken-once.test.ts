import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import type { SharedError } from "../../../src/base/quantity.ts";
import { parseQuantity } from "../../../src/base/quantity/quantity-text.ts";
import { unitTable } from "../../../src/base/unit/unit-table.ts";
import { merged } from "../../../src/derive/prepare/merge.ts";
import { select } from "../../../src/derive/prepare/select.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import type { Measured } from "../../../src/plugin.ts";
import { corpus } from "../judging/standpoint-corpora.ts";
import { readUnder } from "../linking/supposed-model.ts";

function reading(value: number, u: number, shared: readonly SharedError[]): Measured {
  const context = { units: unitTable([]), approximate: 0.025, plusMinus: "standard" as const };
  const read = parseQuantity(`${value} ± ${u} cm`, context);
  if (!("ok" in read)) throw new Error("no quantity");
  const quantity = { ...read.ok, shared };
  return {
    id: `m-${value}`,
    artefact: "bowl",
    dimension: "width",
    quantity,
    state: "complete",
    source: null,
  };
}

const size = fc.double({ min: 10, max: 12, noNaN: true });
const share = fc.double({ min: 0.001, max: 0.1, noNaN: true });

describe("the mean of several readings shares an error", () => {
  test("as far as they do: a cause of one of two equally good readings has half its weight", () => {
    fc.assert(
      fc.property(size, size, share, share, (a, b, one, other) => {
        const { shared } = merged([
          reading(a, 0.5, [{ with: "tape", relative: one }]),
          reading(b, 0.5, [{ with: "rod", relative: other }]),
        ]).quantity;
        const of = (cause: string) => shared.find((error) => error.with === cause)?.relative;
        // The mean (a + b) / 2 changes by a / 2 times the tape's error, and by b / 2 times the rod's.
        expect(of("tape")).toBeCloseTo((one * a) / (a + b), 12);
        expect(of("rod")).toBeCloseTo((other * b) / (a + b), 12);
      }),
    );
  });

  test("whole where all of them do, by the weights where it is of another size in each", () => {
    fc.assert(
      fc.property(size, size, share, share, (a, b, one, other) => {
        const shared = (first: number, second: number) =>
          merged([
            reading(a, 0.5, [{ with: "tape", relative: first }]),
            reading(b, 1, [{ with: "tape", relative: second }]),
          ]).quantity.shared;
        expect(shared(one, one)[0]?.relative).toBeCloseTo(one, 12);
        // Weights by 1 / u² are 4 to 1.
        expect(shared(one, other)[0]?.relative).toBeCloseTo((4 * a * one + b * other) / (4 * a + b), 12);
      }),
    );
  });
});

describe("a preferred source that has a value and a bound", () => {
  const taken = (values: readonly string[], more: object = {}) => {
    const files = corpus(
      {
        artefacts: [{ id: "wall", name: "the wall" }],
        measurements: values.map((value, n) => ({
          id: `m-${n}`,
          of: "wall",
          dimension: "length",
          value,
          from: "delver-1902",
          ...more,
        })),
      },
      { bibliography: "books.bib" },
    );
    const bib = {
      path: "books.bib",
      text: "@book{delver-1902, author = {Delver, Ada}, title = {Walls}, year = 1902}",
    };
    const { graph } = readUnder([...files, bib], plugins, emptyMemo()).model;
    const input = { of: "wall", dimension: "length", prefer: ["delver-1902"] };
    return select(input, { graph, counts: () => true, choices: [] }).selected;
  };

  test("gives the value alone, as no bound is ever one", () => {
    const [one, ...rest] = taken(["≥ 8 m", "6.0 ± 0.1 m"]);
    expect(rest).toEqual([]);
    expect(one?.ids).toEqual(["m-1"]);
    expect(one?.measured.quantity).toMatchObject({ form: "value", value: 6, u: 0.1 });
  });

  test("gives a bound and no mean where it has several", () => {
    for (const found of [taken(["≥ 8 m", "≥ 6 m"]), taken(["8 m", "6 m"], { state: "preserved" })])
      expect(found[0]?.measured.quantity).toMatchObject({ form: "at-least", value: 8, u: null });
  });
});
