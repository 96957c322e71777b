import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import type { Checked, Model } from "../../../src/build.ts";
import { readCorpusFolder } from "../../../src/host/corpus-folder.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { artefactPage } from "../../../src/show/artefacts/artefact.ts";
import { artefactsPage } from "../../../src/show/artefacts/artefacts.ts";
import type { Thing } from "../../../src/show/artefacts/tree.ts";
import { fitting } from "../../../src/show/artefacts/tree.ts";
import { siUnitFor, siWords } from "../../../src/show/artefacts/si-words.ts";
import { historyLine } from "../../../src/show/artefacts/history/line.ts";

/** A corpus of one file of records, as JSON, which is YAML. */
function corpus(records: object, settings: object = {}): Checked<Model> {
  const files = [
    { path: "corpus.yaml", text: JSON.stringify({ title: "A heap of things", ...settings }) },
    { path: "records.yaml", text: JSON.stringify(records) },
  ];
  return build(files, plugins, emptyMemo());
}

function modelOf(checked: Checked<Model>): Model {
  if (!checked.model) throw new Error("no model");
  return checked.model;
}

const demoFiles = readCorpusFolder(fileURLToPath(new URL("../../../demo-corpus", import.meta.url)));
let demo: Model;

beforeAll(() => {
  demo = modelOf(build(demoFiles, plugins, emptyMemo()));
});

const readings = (model: Model, id: string) =>
  artefactPage(model, id)?.dimensions.flatMap((one) =>
    one.dimensions.flatMap((dimension) => dimension.readings),
  ) ?? [];

describe("readings in conflict", () => {
  const value = fc.oneof(
    fc
      .tuple(fc.integer({ min: 80, max: 140 }), fc.integer({ min: 1, max: 5 }))
      .map(([cm, u]) => `${cm} ± ${u} cm`),
    fc.integer({ min: 90, max: 130 }).map((cm) => `≥ ${cm} cm`),
    fc.integer({ min: 90, max: 130 }).map((cm) => `≤ ${cm} cm`),
    fc.integer({ min: 3, max: 4 }).map((feet) => `about ${feet} ft`),
  );
  const reading = fc.record({
    of: fc.constantFrom("pot", "pot", "pot", "pot/rim"),
    dimension: fc.constantFrom("height", "height", "height", "width"),
    value,
    year: fc.integer({ min: 1890, max: 1990 }).map(String),
    state: fc.constantFrom("complete", "complete", "preserved", "reconstructed"),
    between: fc.constantFrom("", "", "", "", "rim to base"),
    spread: fc.constantFrom("false", "false", "false", "false", "true"),
    repeats: fc.constantFrom("", "", "", "", "", "m0"),
  });

  test("marks are those of the rule, on random values", () => {
    let marked = 0;
    fc.assert(
      fc.property(fc.array(reading, { minLength: 3, maxLength: 9 }), fc.boolean(), (all, altered) => {
        const restored = [{ when: "1940", what: "put together", kind: "restoration" }];
        const measurements = all.map(({ between, repeats, ...rest }, n) => ({
          id: `m${n}`,
          ...rest,
          ...(between === "" ? {} : { between }),
          ...(repeats === "" || n === 0 ? {} : { repeats }),
        }));
        const checked = corpus({
          artefacts: [
            { id: "pot", name: "A pot", ...(altered ? { history: restored } : {}) },
            { id: "pot/rim", name: "Its rim" },
          ],
          measurements,
        });
        const told = checked.findings
          .filter((one) => one.rule === "conflicting-measurements")
          .flatMap((one) => one.about);
        const shown = readings(modelOf(checked), "pot").filter((one) => one.clashing);
        marked += shown.length;
        expect(shown.map((one) => one.id).sort()).toEqual([...told].sort());
      }),
      { numRuns: 300, seed: 7 },
    );
    expect(marked).toBeGreaterThan(50);
  });

  test("the difference and what is allowed are those of format.md 6", () => {
    const model = modelOf(
      corpus({
        artefacts: [{ id: "pot", name: "A pot" }],
        measurements: [
          { of: "pot", dimension: "height", value: "1.00 ± 0.01 m" },
          { of: "pot", dimension: "height", value: "1.24 ± 0.01 m" },
        ],
      }),
    );
    const [clash] = artefactPage(model, "pot")?.dimensions[0]?.dimensions[0]?.clashes ?? [];
    expect(clash?.by).toBe("0.24 m");
    expect(clash?.times).toBeCloseTo(
      0.24 / (2 * Math.sqrt(0.01 ** 2 + 0.01 ** 2 + 0.01 ** 2 + 0.0124 ** 2)),
      9,
    );
  });
});

test("a derivation takes what the page says it takes, and copies count for nothing", () => {
  const rows = readings(demo, "ring-a").filter(
    (one) => one.figure.includes("7.6") || one.figure.includes("25 ft"),
  );
  expect(rows.filter((one) => one.use === "in-mean").map((one) => one.figure)).toEqual([
    "about 25 ft",
    "7.64 ± 0.08 m (2 s)",
  ]);
  const copies = rows.filter((one) => one.copyOf !== null);
  expect(copies.map((one) => [one.copyOf, one.use])).toEqual([
    ["Hale 1896", "left-out"],
    ["Brandt 1962", "left-out"],
    ["Costa 1974", "left-out"],
  ]);
});

test("after what alteration a thing was looked at is told", () => {
  const looks = artefactPage(demo, "ring-a/post-04")?.looks ?? [];
  const late = looks.filter((one) => one.year > 1964);
  expect(late.length).toBeGreaterThan(0);
  for (const look of late) expect(look.after?.kind).toBe("restoration");
  for (const look of looks.filter((one) => one.year < 1964)) expect(look.after).toBeNull();
});

test("digits make sense: the value stands within half its last digit, the uncertainty within a quarter", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.02, max: 900, noNaN: true }),
      fc.double({ min: 1e-4, max: 0.4, noNaN: true }),
      (value, share) => {
        const u = value * share;
        const unit = siUnitFor("length", [value]);
        const quantity = {
          text: "",
          kind: "length",
          form: "value",
          unit: "m",
          unitSize: 1,
          value,
          low: null,
          high: null,
          u,
          digit: 0,
          shared: [],
        } as const;
        const said = /^([\d.]+) ± ([\d.]+) (mm|m|km)$/.exec(siWords(quantity, unit));
        const [, v = "", w = ""] = said ?? [];
        const last = w.includes(".") ? 10 ** -(w.split(".")[1]?.length ?? 0) : 10 ** /0*$/.exec(w)![0].length;
        expect(Math.abs(Number(v) - value / unit.size)).toBeLessThanOrEqual(last / 2 + 1e-9 * Number(v));
        expect(Math.abs(Number(w) * unit.size - u)).toBeLessThanOrEqual(u / 4 + 1e-12);
      },
    ),
  );
});

describe("the line of years", () => {
  const event = fc
    .tuple(fc.integer({ min: 1700, max: 2020 }), fc.integer({ min: 0, max: 30 }), fc.boolean(), fc.boolean())
    .map(([low, more, openStart, openEnd]) => ({
      kind: "move" as const,
      what: "carried off",
      when: String(low),
      low: openStart && !openEnd ? null : low,
      high: openEnd ? null : low + more,
      vague: false,
      befell: [],
      from: [],
      alters: false,
    }));
  const look = fc
    .integer({ min: 1700, max: 2020 })
    .map((year) => ({ year, who: "Vane and Hale", measured: 1, seen: 0, bases: [], after: null }));
  const label = { event: () => "a move, long ago", look: () => "Vane and Hale, 1900", year: String };

  test("years are to scale, and no label meets another", () => {
    fc.assert(
      fc.property(
        fc.array(event, { maxLength: 9 }),
        fc.array(look, { minLength: 1, maxLength: 9 }),
        fc.constantFrom(340, 760),
        (events, looks, width) => {
          const line = historyLine(events, looks, width, label);
          if (line === null) throw new Error("a line was expected");
          const [first, last] = [line.ticks[0], line.ticks.at(-1)];
          const years = [Number(first?.label), Number(last?.label)] as const;
          const perYear = ((last?.at ?? 0) - (first?.at ?? 0)) / (years[1] - years[0]);
          for (const mark of line.above) {
            expect(mark.from).toBeCloseTo(
              (first?.at ?? 0) + ((looks[mark.of]?.year ?? 0) - years[0]) * perYear,
              6,
            );
          }
          for (const row of [line.above, line.below]) {
            for (const [n, one] of row.entries()) {
              expect(one.labelAt).toBeGreaterThanOrEqual(0);
              expect(one.labelAt + one.labelWidth).toBeLessThanOrEqual(width);
              for (const other of row.slice(n + 1)) {
                const apart =
                  one.lane !== other.lane ||
                  one.labelAt + one.labelWidth < other.labelAt ||
                  other.labelAt + other.labelWidth < one.labelAt;
                expect(apart).toBe(true);
              }
            }
          }
        },
      ),
    );
  });
});

describe("what is withheld is on no page", () => {
  const all = (model: Model): string => {
    const ids = model.graph.list("artefacts").map((one) => one.id);
    return JSON.stringify([artefactsPage(model, ids), ids.map((id) => artefactPage(model, id))]);
  };

  test("in the demo", () => {
    const said = all(demo);
    expect(said).toContain("Thornminster");
    for (const hidden of ["trench-9", "Trench 9", "39 07", "4417", "Nether Coombe, a field"]) {
      expect(said).not.toContain(hidden);
    }
  });

  test("things, readings, observations, sources of units and places, parts among them", () => {
    const records = {
      artefacts: [
        {
          id: "pot",
          name: "A pot",
          "found-at": "Long Field",
          coordinates: "12 34",
          "withhold-location": "true",
          shape: { circle: ["width"] },
        },
        { id: "pot/rim", name: "Its rim", "found-at": "Long Field, north" },
        { id: "jar", name: "Secret jar", shape: { circle: ["width"] } },
        { id: "jar/lid", name: "Secret lid" },
      ],
      measurements: [
        { id: "w1", of: "pot", dimension: "width", value: "31.7 cm" },
        { id: "w2", of: "pot", dimension: "width", value: "29.3 cm", condition: "told in confidence" },
        { id: "w3", of: "jar/lid", dimension: "width", value: "77.7 cm" },
      ],
      observations: [{ id: "o1", of: ["jar"], text: "Secretly seen" }],
      images: [{ id: "i1", of: ["pot"], file: "images/hidden.svg" }],
    };
    const model = modelOf(corpus(records, { withhold: ["jar", "w2", "i1"] }));
    const said = all(model);
    expect(said).toContain("31.7 cm");
    for (const hidden of [
      "Long Field",
      "12 34",
      "ecret",
      "29.3",
      "confidence",
      "77.7",
      "hidden.svg",
      "mean of",
    ])
      expect(said).not.toContain(hidden);
    expect(artefactPage(model, "jar/lid")).toBeNull();
    const open = all(modelOf(corpus(records)));
    for (const shown of ["ecret", "29.3", "confidence", "77.7", "hidden.svg"]) expect(open).toContain(shown);
  });
});

test("the tree holds every thing once, and words find parts with their wholes", () => {
  const flat = (things: readonly Thing[]): readonly string[] =>
    things.flatMap((thing) => [thing.id, ...flat(thing.parts)]);
  const { things } = artefactsPage(demo, []);
  const ids = demo.graph.list("artefacts").map((one) => one.id);
  expect([...flat(things)].sort()).toEqual(ids.filter((id) => id !== "trench-9").sort());
  expect(flat(fitting(things, "1998.41.12 CHARRED"))).toEqual([
    "ring-a",
    "ring-a/post-12",
    "ring-a/post-12/foot",
  ]);
  expect(fitting(things, "no such thing")).toEqual([]);
});

test("as of a year, only what was in print by then is shown", () => {
  const early = modelOf(build(demoFiles, plugins, emptyMemo(), { asOf: 1900 }));
  const page = artefactPage(early, "ring-a");
  expect(page?.looks.map((one) => one.who)).toEqual(["Hale"]);
  expect(page?.events.every((one) => (one.high ?? 0) <= 1900)).toBe(true);
  expect(JSON.stringify(page?.dimensions)).not.toContain("Marrack");
});

describe("what happened, and who looked", () => {
  const bibliography = [
    "@book{old-1900, author = {Old, Ann}, title = {A}, year = 1900}",
    "@book{new-2000, author = {New, Zoe}, title = {B}, year = 2000}",
  ].join("\n");
  const event = { when: "1850", kind: "loss", what: "broken in two" };
  const records = {
    scholars: [
      { id: "ann", name: "Ann Old" },
      { id: "zoe", name: "Zoe New" },
    ],
    artefacts: [
      {
        id: "pot",
        name: "A pot",
        date: [
          { is: "-0400", from: "old-1900" },
          { is: "-0200", from: "new-2000" },
        ],
        history: [
          { ...event, from: "old-1900 p. 3" },
          { when: "1990", kind: "move", what: "carried off" },
        ],
      },
      { id: "pot/rim", name: "Its rim", history: [{ ...event, from: "new-2000 p. 9" }] },
    ],
    measurements: [
      { id: "a", of: "pot", dimension: "width", value: "31 cm", from: "old-1900" },
      { id: "b", of: "pot", dimension: "width", value: "31 cm", from: "new-2000", repeats: "a" },
    ],
  };
  const pageIn = (asOf?: number) => {
    const files = [
      { path: "corpus.yaml", text: JSON.stringify({ title: "T", bibliography: ["b.bib"] }) },
      { path: "b.bib", text: bibliography },
      { path: "records.yaml", text: JSON.stringify(records) },
    ];
    return artefactPage(
      modelOf(build(files, plugins, emptyMemo(), asOf === undefined ? {} : { asOf })),
      "pot",
    );
  };

  test("what befell several at once is told with everybody who tells it", () => {
    const sources = (asOf?: number) =>
      pageIn(asOf)
        ?.events.find((one) => one.kind === "loss")
        ?.from.flatMap((piece) => piece.to ?? []);
    expect(sources()).toEqual(["old-1900", "new-2000"]);
    expect(sources(1950)).toEqual(["old-1900"]);
  });

  test("as of a year, neither what happened after it nor dates given after it", () => {
    expect(pageIn()?.events.map((one) => one.kind)).toEqual(["loss", "move"]);
    expect(pageIn(1950)?.events.map((one) => one.kind)).toEqual(["loss"]);
    const dates = (asOf?: number) =>
      JSON.stringify(pageIn(asOf)?.facts.filter((field) => field.name === "date"));
    expect(dates()).toContain("201 BC");
    expect(dates(1950)).toContain("401 BC");
    expect(dates(1950)).not.toContain("201 BC");
  });

  test("who copies a figure did not look", () => {
    expect(pageIn()?.looks.map((one) => one.who)).toEqual(["Old"]);
  });
});

test("a withheld part on which an answer hangs is not named", () => {
  const records = {
    artefacts: [
      { id: "pot", name: "A pot" },
      { id: "pot/seal", name: "Its seal" },
    ],
    questions: [{ id: "q", text: "Whose?", answers: ["c"] }],
    claims: [{ id: "c", text: "The king's." }],
    observations: [{ id: "o", of: ["pot/seal"], text: "The king's seal." }],
    arguments: [{ id: "a", because: ["o"], therefore: "c" }],
  };
  const hanging = (settings: object) => artefactPage(modelOf(corpus(records, settings)), "pot")?.hanging;
  expect(hanging({})).toMatchObject([{ claim: "c", part: { id: "pot/seal" } }]);
  expect(hanging({ withhold: ["pot/seal"] })).toMatchObject([{ claim: "c", part: null }]);
});

test("readings that differ by all bounds come in one order", () => {
  const records = {
    artefacts: [{ id: "pot", name: "A pot" }],
    measurements: [3, 5, 4, 9].map((n) => ({ id: `n${n}`, of: "pot", dimension: "handles", value: `${n}` })),
  };
  const model = modelOf(corpus(records, { reproducibility: "0 %" }));
  const clashes = artefactPage(model, "pot")?.dimensions[0]?.dimensions[0]?.clashes ?? [];
  expect(clashes).toHaveLength(6);
  expect(clashes.map((one) => one.by)).toEqual(["6", "5", "4", "2", "1", "1"]);
});
