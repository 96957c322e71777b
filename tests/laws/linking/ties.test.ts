import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import type { Checked, Model } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { comparedIn } from "../../../src/judge/rules/measurements/ties/compared.ts";
import type { Compared } from "../../../src/judge/rules/measurements/ties/compared.ts";
import { followsIn } from "../../../src/judge/rules/measurements/ties/follows.ts";
import { partsByWhole, takingOf, tiesOf } from "../../../src/judge/rules/measurements/ties/tied.ts";
import { readSum } from "../../../src/link/ties/expression.ts";
import { artefactPage } from "../../../src/show/artefacts/artefact.ts";
import { shownFindings } from "../../../src/show/withhold.ts";

interface Reading {
  readonly of: string;
  readonly dimension: string;
  readonly value: string;
  readonly [field: string]: unknown;
}

const bowl = { diameter: { kind: "length" }, perimeter: { kind: "length", equals: "π × diameter" } };

/** A corpus of things and measurements, as JSON, which is YAML. */
function corpus(
  dimensions: object,
  measurements: readonly Reading[],
  more: object = {},
  things?: readonly object[],
): Checked<Model> {
  const named = [...new Set(measurements.map((one) => one.of))].map((id) => ({ id, name: `the ${id}` }));
  const files = [
    { path: "corpus.yaml", text: JSON.stringify({ title: "A shelf of bowls", dimensions, ...more }) },
    { path: "records.yaml", text: JSON.stringify({ artefacts: things ?? named, measurements }) },
  ];
  return build(files, plugins, emptyMemo());
}

function modelOf({ model }: Checked<Model>): Model {
  if (!model) throw new Error("no model");
  return model;
}

/** The first tie of a thing, compared. */
function comparedOf(checked: Checked<Model>, thing: string): Compared | null {
  const { graph } = modelOf(checked);
  const [tied] = tiesOf(graph, thing, partsByWhole(graph).get(thing) ?? []);
  return tied === undefined
    ? null
    : comparedIn(
        graph,
        tied,
        takingOf(graph, () => true),
      );
}

const disagreements = ({ findings }: Checked<Model>) =>
  findings.filter(({ rule }) => rule === "dimensions-disagree");
const errors = ({ findings }: Checked<Model>) =>
  findings.filter(({ level }) => level === "error").map(({ message }) => inEnglish(message));

const size = fc.double({ min: 1, max: 900, noNaN: true });
const share = fc.double({ min: 0.001, max: 0.05, noNaN: true });
const off = fc.double({ min: 0.7, max: 1.3, noNaN: true });

/** A bowl with its diameter and perimeter, each with its standard uncertainty, times a factor and in a unit. */
function bowlOf(
  [d, ud, p, up]: readonly number[],
  {
    times = 1,
    unit = "mm",
    per = 1,
    tape = 0,
  }: Partial<Record<"times" | "per" | "tape", number>> & {
    readonly unit?: string;
  } = {},
): Checked<Model> {
  const said = (value = 0, u = 0): string => `${(value * times) / per} ± ${(u * times) / per} ${unit}`;
  const shares = tape > 0 ? { "shares-error": { with: "tape", of: `${tape * 100} %` } } : {};
  return corpus(bowl, [
    { of: "bowl", dimension: "diameter", value: said(d, ud), ...shares },
    { of: "bowl", dimension: "perimeter", value: said(p, up), ...shares },
  ]);
}

const measured = fc.record({ d: size, ud: share, up: share, off }).map(({ d, ud, up, off: by }) => {
  const p = Math.PI * d * by;
  return [d, ud * d, p, up * p] as const;
});

describe("a dimension beside what it should equal", () => {
  test("differs by the same whatever the unit", () => {
    fc.assert(
      fc.property(measured, (values) => {
        const [one, other] = [bowlOf(values), bowlOf(values, { unit: "cm", per: 10 })].map((made) =>
          comparedOf(made, "bowl"),
        );
        expect(other?.by).toBeCloseTo(one?.by ?? Number.NaN, 9);
        expect(other?.allowed).toBeCloseTo(one?.allowed ?? Number.NaN, 9);
        expect(other?.disagrees).toBe(one?.disagrees);
      }),
      { numRuns: 60 },
    );
  });

  test("differs so many times as much when all is so many times as large", () => {
    fc.assert(
      fc.property(measured, fc.constantFrom(0.5, 2, 8), (values, times) => {
        const [one, other] = [bowlOf(values), bowlOf(values, { times })].map((made) =>
          comparedOf(made, "bowl"),
        );
        expect((other?.by ?? 0) / times).toBeCloseTo(one?.by ?? Number.NaN, 9);
        expect((other?.allowed ?? 0) / times).toBeCloseTo(one?.allowed ?? Number.NaN, 9);
      }),
      { numRuns: 60 },
    );
  });

  test("agrees where it was made to, and disagrees where it is twice as much", () => {
    fc.assert(
      fc.property(size, share, (d, u) => {
        const p = Math.PI * d;
        expect(disagreements(bowlOf([d, u * d, p, u * p]))).toEqual([]);
        expect(disagreements(bowlOf([d, u * d, 2 * p, u * p]))).toHaveLength(1);
      }),
      { numRuns: 60 },
    );
  });

  test("is allowed twice the combined uncertainty, and what one tape does to both sides cancels", () => {
    fc.assert(
      fc.property(measured, share, (values, tape) => {
        const [d, ud, p, up] = values.map((one) => one / 1000);
        if (d === undefined || ud === undefined || p === undefined || up === undefined) return;
        const made = comparedOf(bowlOf(values, { tape }), "bowl");
        const difference = p - Math.PI * d;
        const r = 0.01;
        const own = Math.hypot(up, Math.PI * ud, r * p, r * Math.PI * d);
        expect(made?.by).toBeCloseTo(difference, 9);
        // The tape stretches both alike, so that it is only of the difference that it makes a share.
        expect(made?.allowed).toBeCloseTo(2 * Math.hypot(own, tape * difference), 9);
        expect(made?.expected.u).toBeCloseTo(Math.PI * Math.hypot(ud, tape * d), 9);
      }),
      { numRuns: 60 },
    );
  });

  test("is told only of the bound's wrong side", () => {
    const told = (perimeter: object): number =>
      disagreements(
        corpus(bowl, [
          { of: "bowl", dimension: "diameter", value: "10.0 ± 0.1 cm" },
          { of: "bowl", dimension: "perimeter", value: "", ...perimeter },
        ]),
      ).length;
    expect(told({ value: "20 cm", state: "preserved" })).toBe(0);
    expect(told({ value: "40 cm", state: "preserved" })).toBe(1);
    expect(told({ value: "≤ 40 cm" })).toBe(0);
    expect(told({ value: "≤ 20 cm" })).toBe(1);
    expect(told({ value: "20 cm" })).toBe(1);
  });

  test("that is only a bound has still the error with which it was measured", () => {
    const kept = (value: string) =>
      comparedOf(
        corpus(bowl, [
          { of: "bowl", dimension: "diameter", value: "12.0 ± 0.1 cm" },
          { of: "bowl", dimension: "perimeter", value, state: "preserved" },
        ]),
        "bowl",
      );
    const r = 0.01;
    const around = Math.PI * 0.12;
    const found = kept("40.0 ± 3.0 cm");
    expect(found?.allowed).toBeCloseTo(2 * Math.hypot(0.03, Math.PI * 0.001, r * 0.4, r * around), 12);
    expect(found?.disagrees).toBe(false);
    expect(kept("40.0 ± 0.3 cm")?.disagrees).toBe(true);
  });

  test("that differs by exactly what is allowed does not disagree", () => {
    const half = { height: { kind: "length", equals: "head + shaft" } };
    fc.assert(
      fc.property(fc.integer({ min: 11, max: 999 }), fc.integer({ min: 11, max: 999 }), (head, shaft) => {
        const read = (tenths: number): string => `${(tenths / 10).toFixed(1)} cm`;
        const off = (by: number) =>
          comparedOf(
            corpus(
              half,
              [
                { of: "peg", dimension: "head", value: read(head) },
                { of: "peg", dimension: "shaft", value: read(shaft) },
                { of: "peg", dimension: "height", value: read(head + shaft + by) },
              ],
              { reproducibility: "0 %" },
            ),
            "peg",
          );
        // Three sizes read to one digit: twice √3 / √12 of a digit is one digit.
        expect(off(1)?.allowed).toBeCloseTo(0.001, 12);
        expect(off(1)?.disagrees).toBe(false);
        expect(off(2)?.disagrees).toBe(true);
      }),
      { numRuns: 30 },
    );
  });

  test("is not compared across a loss, between several landmarks, nor with what is reconstructed", () => {
    const history = [{ when: "1902", what: "half of it lost", kind: "loss" }];
    const told = (perimeter: object, thing: object = {}): number => {
      const measurements = [
        { of: "bowl", dimension: "diameter", value: "10.0 ± 0.1 cm", year: "1890" },
        { of: "bowl", dimension: "perimeter", value: "20 cm", year: "1950", ...perimeter },
      ];
      return disagreements(corpus(bowl, measurements, {}, [{ id: "bowl", name: "the bowl", ...thing }]))
        .length;
    };
    expect(told({})).toBe(1);
    expect(told({}, { history })).toBe(0);
    expect(told({ state: "reconstructed" })).toBe(0);
    const several = corpus(bowl, [
      { of: "bowl", dimension: "diameter", value: "10.0 cm" },
      { of: "bowl", dimension: "perimeter", value: "20 cm", between: "handle to handle" },
      { of: "bowl", dimension: "perimeter", value: "22 cm", between: "spout to handle" },
    ]);
    expect(disagreements(several)).toEqual([]);
  });
});

describe("a whole beside the sum of its parts", () => {
  const whole = { length: { kind: "length", equals: "sum of parts" } };
  const rod = (id: string, value: string, more: object = {}): Reading => ({
    of: id,
    dimension: "length",
    value,
    ...more,
  });

  test("has the uncertainty of the sum, with what its parts share added up first", () => {
    const shared = { "shares-error": { with: "tape", of: "1 %" } };
    const found = comparedOf(
      corpus(whole, [
        rod("rod", "100.0 ± 0.1 cm"),
        rod("rod/a", "30.0 ± 0.3 cm", shared),
        rod("rod/b", "70.0 ± 0.4 cm", shared),
      ]),
      "rod",
    );
    expect(found?.expected.value).toBeCloseTo(1, 12);
    expect(found?.expected.u).toBeCloseTo(Math.hypot(0.003, 0.004, 0.01), 12);
    expect(found?.disagrees).toBe(false);
  });

  test("is told nothing of while a recorded part is not measured, or is withheld", () => {
    const parts = [rod("rod", "1.00 m"), rod("rod/a", "10 cm"), rod("rod/b", "20 cm")];
    const things = ["rod", "rod/a", "rod/b", "rod/c"].map((id) => ({ id, name: `the ${id}` }));
    const told = (more: object, all = things.slice(0, 3)) => corpus(whole, parts, more, all);
    expect(disagreements(told({}))).toHaveLength(1);
    expect(disagreements(told({}, things))).toEqual([]);
    for (const withheld of ["rod", "rod/a"]) {
      const checked = told({ withhold: [withheld] });
      expect(disagreements(checked)).toEqual([]);
      const page = artefactPage(modelOf(checked), "rod");
      expect(page?.dimensions.flatMap((one) => one.dimensions.flatMap(({ ties }) => ties)) ?? []).toEqual([]);
      const said = JSON.stringify([page, shownFindings(modelOf(checked).graph, checked.findings)]);
      expect(said).not.toMatch(/30 cm|0\.30?/u);
    }
  });

  test("is shown beside the length that it should equal", () => {
    const checked = corpus(whole, [
      rod("rod", "1.00 ± 0.01 m"),
      rod("rod/a", "10 ± 1 cm"),
      rod("rod/b", "20 ± 1 cm"),
    ]);
    const [own] = artefactPage(modelOf(checked), "rod")?.dimensions ?? [];
    const [tie] = own?.dimensions[0]?.ties ?? [];
    expect(tie).toMatchObject({
      sum: "the sum of parts",
      expected: "0.300 ± 0.014 m",
      disagrees: true,
      by: "0.7 m",
      more: true,
      bounded: false,
    });
  });
});

describe("what follows from other dimensions", () => {
  const follows = (checked: Checked<Model>, thing: string, dimension: string) =>
    followsIn(modelOf(checked).graph, () => true)(thing, dimension);

  test("is either side of a tie, and nothing where a bound stands in it", () => {
    const one = (dimension: string, value: string) => corpus(bowl, [{ of: "bowl", dimension, value }]);
    const around = follows(one("diameter", "10.0 ± 0.2 cm"), "bowl", "perimeter");
    expect(around?.value).toBeCloseTo(0.1 * Math.PI, 12);
    expect(around?.u).toBeCloseTo(0.002 * Math.PI, 12);
    const across = follows(one("perimeter", "31.4 ± 0.2 cm"), "bowl", "diameter");
    expect(across?.value).toBeCloseTo(0.314 / Math.PI, 12);
    expect(across?.u).toBeCloseTo(0.002 / Math.PI, 12);
    expect(follows(one("perimeter", "≥ 31.4 cm"), "bowl", "diameter")).toBeNull();
    expect(follows(one("height", "31.4 cm"), "bowl", "diameter")).toBeNull();
  });

  test("of a part is the whole without the others, unless nothing is left", () => {
    const lengths = { length: { kind: "length", equals: "sum of parts" } };
    const things = ["rod", "rod/a", "rod/b", "rod/c"].map((id) => ({ id, name: id }));
    const rods = (whole: string) =>
      corpus(
        lengths,
        [
          { of: "rod", dimension: "length", value: whole },
          { of: "rod/a", dimension: "length", value: "30 ± 1 cm" },
          { of: "rod/b", dimension: "length", value: "20 ± 1 cm" },
        ],
        {},
        things,
      );
    const rest = follows(rods("90 ± 2 cm"), "rod/c", "length");
    expect(rest?.value).toBeCloseTo(0.4, 12);
    expect(rest?.u).toBeCloseTo(Math.hypot(0.02, 0.01, 0.01), 12);
    expect(follows(rods("40 ± 2 cm"), "rod/c", "length")).toBeNull();
  });
});

describe("a sum as it is written", () => {
  const known = ["diameter", "head", "shaft", "post-hole depth", "head - butt", "2nd width", "pi", "x"];
  const read = (written: string) => readSum(written, (name) => known.includes(name));

  test.each<readonly [string, readonly (readonly [number, string | null, string])[]]>([
    ["π × diameter", [[Math.PI, "diameter", "itself"]]],
    ["pi diameter", [[Math.PI, "diameter", "itself"]]],
    ["3.14159 × diameter", [[3.14159, "diameter", "itself"]]],
    ["2π × head", [[2 * Math.PI, "head", "itself"]]],
    ["2 pi head", [[2 * Math.PI, "head", "itself"]]],
    ["2 x head", [[2, "head", "itself"]]],
    ["2 x", [[2, "x", "itself"]]],
    ["diameter / 2", [[0.5, "diameter", "itself"]]],
    ["diameter/π", [[1 / Math.PI, "diameter", "itself"]]],
    ["½ diameter", [[0.5, "diameter", "itself"]]],
    ["1/2 diameter", [[0.5, "diameter", "itself"]]],
    ["2nd width", [[1, "2nd width", "itself"]]],
    ["pi", [[1, "pi", "itself"]]],
    [
      "post-hole depth + 2 head",
      [
        [1, "post-hole depth", "itself"],
        [2, "head", "itself"],
      ],
    ],
    [
      "diameter − 2 × head",
      [
        [1, "diameter", "itself"],
        [-2, "head", "itself"],
      ],
    ],
    [
      "head - shaft",
      [
        [1, "head", "itself"],
        [-1, "shaft", "itself"],
      ],
    ],
    ["head - butt", [[1, "head - butt", "itself"]]],
    ["sum of parts", [[1, null, "parts"]]],
    [
      "sum of head of parts + shaft",
      [
        [1, "head", "parts"],
        [1, "shaft", "itself"],
      ],
    ],
    [
      "head + sum of head of its parts",
      [
        [1, "head", "itself"],
        [1, "head", "parts"],
      ],
    ],
  ])("%s", (written, expected) => {
    const terms = read(written);
    if ("message" in terms) throw new Error(inEnglish(terms.message));
    expect(terms.map(({ name, of }) => [name, of])).toEqual(expected.map(([, name, of]) => [name, of]));
    terms.forEach(({ factor }, at) => expect(factor).toBeCloseTo(expected[at]?.[0] ?? Number.NaN, 12));
  });

  test.each([
    ["head × shaft", "a sum of terms"],
    ["π × diameter × head", "a sum of terms"],
    ["diameter^2", "a sum of terms"],
    ["(head + shaft) × 2", "a sum of terms"],
    ["0 × head", "a number above 0"],
    ["head +", "Missing dimension"],
    ["", "Missing dimension"],
    ["3,14 × diameter", "Unreadable number `3,14`"],
  ])("%s is refused", (written, why) => {
    const terms = read(written);
    expect("message" in terms ? inEnglish(terms.message) : "").toContain(why);
  });

  test("never fails, whatever it is", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom(..."2 π×+-/.,pix½head sum of parts") }), (written) => {
        const terms = read(written);
        if ("message" in terms) expect(inEnglish(terms.message)).not.toBe("");
        else for (const { factor } of terms) expect(Math.abs(factor)).toBeGreaterThan(0);
      }),
    );
  });
});

describe("a tie that cannot be is told and left out", () => {
  const told = (dimensions: object) => {
    const checked = corpus(dimensions, [{ of: "bowl", dimension: "height", value: "1 m" }]);
    return { errors: errors(checked), ties: modelOf(checked).graph.ties.length };
  };
  const length = { kind: "length" };

  test.each<readonly [string, object, RegExp]>([
    [
      "unknown",
      { width: { ...length, equals: "hieght + 2 height" } },
      /Unknown dimension `hieght`.*`height`/,
    ],
    [
      "of another kind",
      { width: { ...length, equals: "weight" }, weight: { kind: "mass" } },
      /Unexpected mass `weight`.*length `width`/,
    ],
    [
      "of itself",
      { width: { ...length, equals: "2 × width" } },
      /Unexpected `width` in what it equals itself/,
    ],
    ["of nothing", { width: { ...length, equals: "height - height" } }, /comes to nothing/],
    [
      "in a circle",
      {
        a: { ...length, equals: "2 b" },
        b: { ...length, equals: "height + c" },
        c: { ...length, equals: "a" },
      },
      /Unexpected circle of dimensions.*`a`, `b`, `c`/,
    ],
  ])("%s", (_, dimensions, why) => {
    const { errors: all, ties } = told(dimensions);
    expect(all).toHaveLength(1);
    expect(all[0]).toMatch(why);
    expect(ties).toBe(0);
  });

  test("at the term that is wrong", () => {
    const text = "title: Bowls\ndimensions:\n  width: { equals: 2 × hieght }\n  height: { kind: length }\n";
    const { findings } = build([{ path: "corpus.yaml", text }], plugins, emptyMemo());
    const at = findings.find(({ rule }) => rule === "bad-value")?.at;
    expect(at && text.slice(at.start, at.end)).toBe("2 × hieght");
  });

  test("a sum over parts is no circle, and two sums may stand for one dimension", () => {
    expect(told({ height: { ...length, equals: "sum of parts" } })).toEqual({ errors: [], ties: 1 });
    expect(told({ radius: length, width: { ...length, equals: ["2 × radius", "height"] } })).toEqual({
      errors: [],
      ties: 2,
    });
  });
});
