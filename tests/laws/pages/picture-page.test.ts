import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import type { Checked, Model } from "../../../src/build.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { measuredOf } from "../../../src/derive/prepare/select.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { artefactPage } from "../../../src/show/artefacts/artefact.ts";
import type { PictureAsked } from "../../../src/show/artefacts/picture/asked.ts";
import { measuredOnPicture } from "../../../src/show/artefacts/picture/measuring.ts";
import { imagePage } from "../../../src/show/artefacts/picture/page.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { freeName } from "../../../src/app/pages/artefacts/images/file-name.ts";

function corpus(records: object, settings: object = {}): Checked<Model> {
  const files = [
    { path: "corpus.yaml", text: JSON.stringify({ title: "A row of pots", ...settings }) },
    { path: "records.yaml", text: JSON.stringify(records) },
  ];
  return build(files, plugins, emptyMemo());
}

function modelOf(checked: Checked<Model>): Model {
  if (!checked.model) throw new Error("no model");
  return checked.model;
}

const pots = {
  artefacts: [
    { id: "pot", name: "Pot" },
    { id: "pot/rim", name: "Rim" },
    { id: "hoard", name: "Hoard of the lane" },
  ],
  images: [
    {
      id: "pot-1950",
      of: ["pot"],
      file: "images/pot-1950.jpg",
      kind: "photograph",
      when: "1950",
      credit: "A. Keeper",
    },
    { id: "both", of: ["pot", "hoard"], file: "images/both.png", licence: "CC0-1.0", publish: "true" },
    { id: "sealed", of: ["hoard"], file: "images/sealed.png" },
  ],
  measurements: [
    { id: "old-height", of: "pot", dimension: "height", value: "30.0 ± 0.2 cm", year: "1940" },
    { id: "hoard-length", of: "hoard", dimension: "length", value: "40 cm", year: "1940" },
  ],
};

/** A bar of 100 pixels that is 20.0 cm, and a line of so many pixels, once. */
const asked = (pixels: number, more: Partial<PictureAsked> = {}): PictureAsked => ({
  image: "pot-1950",
  width: 1000,
  height: 800,
  scale: {
    way: "bar",
    length: "20.0 cm",
    known: null,
    ratio: "",
    perInch: "",
    within: "",
    readings: [
      [
        { x: 200, y: 700 },
        { x: 300, y: 700 },
      ],
    ],
  },
  taken: "distance",
  readings: [
    [
      { x: 300, y: 150 },
      { x: 300, y: 150 + pixels },
    ],
  ],
  halfWidth: "",
  of: "pot",
  dimension: "height",
  between: "",
  unit: "cm",
  basis: "photograph",
  by: null,
  year: "1950",
  ...more,
});

const { graph } = modelOf(corpus(pots));
const told = (question: PictureAsked) => {
  const found = measuredOnPicture(graph, question);
  if (!found) throw new Error("no such picture");
  return found;
};

describe("a picture on its page", () => {
  test("what is not known of it is told, and whether it may be printed", () => {
    const model = modelOf(corpus(pots));
    expect(imagePage(model, "pot-1950")).toMatchObject({
      lacks: ["licence"],
      isPublished: false,
      year: "1950",
    });
    expect(imagePage(model, "both")).toMatchObject({ lacks: ["credit"], isPublished: true, year: "" });
    expect(artefactPage(model, "pot")?.images.map((one) => one.id)).toEqual(["pot-1950", "both"]);
    expect(imagePage(model, "pot-1950")?.things.map((one) => one.id)).toEqual(["pot", "pot/rim"]);
    expect(imagePage(model, "pot")).toBeNull();
  });

  test("of what is withheld there is no picture, no name, and no length to set a scale by", () => {
    const model = modelOf(corpus(pots, { withhold: ["hoard"] }));
    expect(imagePage(model, "sealed")).toBeNull();
    const both = imagePage(model, "both");
    expect(both?.of.map((one) => one.id)).toEqual(["pot"]);
    expect(JSON.stringify([both, artefactPage(model, "pot")])).not.toMatch(/hoard/i);
    expect(measuredOnPicture(model.graph, asked(140, { image: "sealed" }))).toBeNull();
    const known = { ...asked(140).scale, way: "known" as const, known: "hoard-length" };
    expect(measuredOnPicture(model.graph, asked(140, { image: "both", scale: known }))?.scale).toBeNull();
    expect(
      measuredOnPicture(modelOf(corpus(pots)).graph, asked(140, { image: "both", scale: known }))?.scale,
    ).not.toBeNull();
  });

  test("no output of the command line has a picture that is not published, or one of what is withheld", () => {
    const { model, findings } = corpus(pots, { withhold: ["hoard"] });
    if (!model) throw new Error("no model");
    const texts = new Map([["records.yaml", JSON.stringify(pots)]]);
    expect(JSON.stringify(reportOf(model, findings, texts))).not.toMatch(/pot-1950|sealed|A\. Keeper/);
  });
});

describe("a measurement on a picture", () => {
  test("says what it comes to: 140 pixels of a bar of 100 that is 20.0 cm", () => {
    const { figure, record, scale, troubles } = told(asked(140));
    expect(troubles).toEqual([]);
    expect(figure?.si).toMatch(/^0\.280 ± 0\.003 m$|^280 ± 3 mm$/);
    // Its own: √(2/3) pixel of 2 mm. The scale's: √(2/3) of 100 pixels, and 0.5 mm/√3 of 200 mm.
    expect(record?.["value"]).toBe("28.00 ± 0.16 cm");
    expect(record?.["shares-error"]).toEqual({ with: "scale of pot-1950", of: "0.83 %" });
    expect(inEnglish(scale ?? "")).toContain("0.82 % from pointing");
    expect(record?.["note"]).toBe(
      "Points on images/pot-1950.jpg, 1000 × 800 pixels from its upper left corner: (300, 150) to (300, 290). Ends of the scale: (200, 700) to (300, 700).",
    );
    expect(record).not.toHaveProperty("readings");
  });

  test("reads back as it was taken, whatever ± means in the corpus", () => {
    const pixels = fc.integer({ min: 60, max: 500 });
    fc.assert(
      fc.property(
        pixels,
        fc.constantFrom("standard", "expanded"),
        fc.integer({ min: 1, max: 5 }),
        (length, meant, n) => {
          const settings = { "plus-minus": meant };
          const readings = Array.from({ length: n }, (_, at) => [
            { x: 100, y: 100 },
            { x: 100, y: 100 + length + at },
          ]);
          const record = measuredOnPicture(
            modelOf(corpus(pots, settings)).graph,
            asked(length, { readings }),
          )?.record;
          const again = corpus({ ...pots, measurements: [{ id: "new", ...record }] }, settings);
          expect(again.findings.filter((one) => one.level === "error")).toEqual([]);
          const made = modelOf(again).graph.list("measurements")[0];
          if (!made) throw new Error("not read");
          const { quantity } = measuredOf(made, modelOf(again).graph);
          expect(quantity.value).toBeCloseTo(0.002 * (length + (n - 1) / 2), 3);
          expect(quantity.shared).toHaveLength(1);
          expect(made.values.readings?.length ?? 1).toBe(n);
          expect(quantity.u).toBeGreaterThan(0);
          expect(quantity.u).toBeLessThan(0.02);
        },
      ),
      { numRuns: 25 },
    );
  });

  test("is told to conflict with what is on record exactly when the finding would be there once it is saved", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 130, max: 170 }),
        fc.constantFrom("", "foot to rim"),
        (pixels, between) => {
          const question = asked(pixels, { between });
          const { compared, record } = told(question);
          const [line] = compared;
          const after = corpus({ ...pots, measurements: [...pots.measurements, { id: "new", ...record }] });
          const finding = after.findings.some(
            ({ rule, about }) => rule === "conflicting-measurements" && about.includes("new"),
          );
          expect(line?.verdict === "conflicts").toBe(finding);
          expect(compared).toHaveLength(between === "" ? 1 : 0);
        },
      ),
      { numRuns: 40 },
    );
    // Both happen: 140 pixels are 2 cm too short, 150 are right.
    expect(told(asked(140)).compared[0]).toMatchObject({ verdict: "conflicts", withinScale: false });
    expect(told(asked(150)).compared[0]).toMatchObject({ verdict: "agrees" });
  });

  test("does not conflict across a restoration between the picture and the other measurement", () => {
    const mended = {
      ...pots,
      artefacts: [
        {
          id: "pot",
          name: "Pot",
          history: [{ when: "1945", what: "foot replaced", kind: "restoration" }],
        },
        ...pots.artefacts.slice(1),
      ],
    };
    const after = measuredOnPicture(modelOf(corpus(mended)).graph, asked(140));
    expect(after?.compared[0]).toMatchObject({ verdict: "apart", difference: null });
  });

  test("gives nothing back that was put in, and says what is amiss", () => {
    const known = { ...asked(140).scale, way: "known" as const, known: "old-height" };
    expect(told(asked(140, { scale: known })).troubles.map((one) => one.at)).toEqual(["known"]);
    expect(told(asked(140, { scale: known, dimension: "width" })).troubles).toEqual([]);
    const amiss = (more: Partial<PictureAsked>) => told(asked(140, more)).troubles.map((one) => one.at);
    const scaled = (more: Partial<PictureAsked["scale"]>) => ({ scale: { ...asked(140).scale, ...more } });
    expect(amiss(scaled({ length: "≥ 20 cm" }))).toEqual(["length"]);
    expect(amiss(scaled({ length: "20 kg" }))).toEqual(["length"]);
    expect(amiss(scaled({ way: "printed", ratio: "150" }))).toEqual(["ratio"]);
    expect(amiss(scaled({ way: "printed", ratio: "1:150", perInch: "many" }))).toEqual(["perInch"]);
    expect(amiss(scaled({ way: "printed", ratio: "1:150", perInch: "300", within: "2" }))).toEqual([]);
    expect(amiss({ halfWidth: "-1" })).toEqual(["halfWidth"]);
    expect(amiss({ year: "someday" })).toEqual(["year"]);
    expect(amiss({ taken: "angle", readings: [] })).toEqual(["dimension"]);
    const inLine = [0, 1, 2].map((at) => ({ x: 300 + 100 * at, y: 300 }));
    expect(amiss({ taken: "diameter", readings: [inLine] })).toEqual(["points"]);
    // Of an arc of 20° and radius 160 the rise is 2.4 pixels: every second one set to a pixel comes out far too small.
    const arcOf = (degrees: number, radius: number) =>
      [-0.5, 0, 0.5].map((part) => ({
        x: 500 + radius * Math.sin((part * degrees * Math.PI) / 180),
        y: 500 - radius * Math.cos((part * degrees * Math.PI) / 180),
      }));
    expect(amiss({ taken: "diameter", readings: [arcOf(20, 160)] })).toEqual(["points"]);
    expect(amiss({ taken: "diameter", readings: [arcOf(60, 160)] })).toEqual([]);
  });

  test("warns with figures when the scale bar is much shorter than what is measured", () => {
    const cautions = (pixels: number): string => told(asked(pixels)).cautions.map(inEnglish).join("\n");
    expect(cautions(450)).toMatch(/4\.5 times as long .* the scale makes 0\.83 % and pointing 0\.18 %/);
    expect(cautions(110)).not.toMatch(/times as long/);
    expect(cautions(110)).toMatch(/Parallax/);
    expect(told(asked(720)).cautions.map(inEnglish).join("\n")).toMatch(/outer tenth/);
  });
});

test("a picture comes in under a name that nothing has, with signs that any disk takes", () => {
  expect(freeName("Pot rim (1950).JPG", [])).toBe("images/Pot-rim-1950.jpg");
  expect(freeName("pot.png", ["images/Pot.png", "images/pot-2.png"])).toBe("images/pot-3.png");
  expect(freeName("../../etc/passwd.svg", [])).toBe("images/etc-passwd.svg");
  expect(freeName("فخار.webp", [])).toBe("images/فخار.webp");
  expect(freeName("….gif", [])).toBe("images/picture.gif");
});
