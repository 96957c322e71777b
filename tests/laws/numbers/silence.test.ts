import * as fc from "fast-check";
import { expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { plugins } from "../../../plugins/index.ts";
import { presentAfter, weighSilence } from "../../../plugins/silence/detection.ts";
import type { Lens } from "../../../src/build.ts";
import { computingHere, emptyMemo, evaluate } from "../../../src/host/evaluate.ts";
import { svgDocument } from "../../../src/host/print/svg-document.ts";
import { numberPage } from "../../../src/show/numbers/number.ts";
import { draw } from "../../../src/write/figure/draw.ts";
import { roundPlaces } from "../../../src/write/figure/extent.ts";
import { svgText } from "../../../src/write/figure/svg-text.ts";
import { light } from "../../../src/write/pen/palette.ts";
import { wholeInEnglish } from "../base/in-english.ts";

const sources = ["quill-1901", "quill-1906", "stern-1988", "ito-1990"]
  .map((key) => {
    const [name = "", year = ""] = key.split("-");
    return `@book{${key}, author = {${name.charAt(0).toUpperCase()}${name.slice(1)}, A.}, title = {On ${key}}, date = {${year}}}`;
  })
  .join("\n");

interface Seen {
  readonly id: string;
  readonly of: string;
  readonly feature?: string;
  readonly present?: string;
  readonly from?: string;
}

/** A corpus of pits and a ditch with these observations, and a silence to be weighed; more records as they are written. */
async function ditch(
  seen: readonly Seen[],
  derivation: object = {},
  more: object = {},
  lens: Lens = {},
  settings = "",
) {
  const pits = [...new Set(seen.flatMap((one) => one.of))];
  const records = {
    artefacts: pits.map((id) => ({ id, name: `the ${id.replace(/-/g, " ")}` })),
    observations: seen.map((one) => ({ feature: "burnt clay", text: `Burnt clay of ${one.of}.`, ...one })),
    claims: [
      { id: "unburnt", text: "The ditch never burnt." },
      { id: "burnt", text: "The ditch burnt." },
    ],
    derivations: [
      {
        id: "weighed",
        plugin: "silence",
        inputs: {
          known: { feature: "burnt clay", present: "true" },
          reported: { feature: "burnt clay", present: "true", from: "quill-1901" },
          occasions: { of: "ditch", present: "not-reported" },
        },
        "bears-on": [{ claim: "unburnt", supports: { "likelihood-ratio": "> 3" } }],
        ...derivation,
      },
    ],
    ...more,
  };
  const files = [
    { path: "corpus.yaml", text: `title: The ditch\nbibliography: [sources.bib]\n${settings}` },
    { path: "sources.bib", text: sources },
    { path: "records.yaml", text: JSON.stringify(records) },
  ];
  const memo = emptyMemo();
  const { model, findings } = await evaluate(files, plugins, memo, computingHere(plugins), { lens });
  if (!model) throw new Error(JSON.stringify(findings));
  expect(findings.filter((one) => one.level === "error")).toEqual([]);
  const derived = wholeInEnglish(model.derivations.byId.get("weighed"));
  const standing = (id: string): string => model.judgement.standings.get(id) ?? "not listed";
  const page = wholeInEnglish(numberPage(model, plugins, memo.compute, "weighed"));
  return { model, findings, derived, standing, page };
}

const silent: Seen = { id: "no-word", of: "ditch", present: "not-reported", from: "quill-1901" };
const pits = (n: number, from: string, name = "seen"): readonly Seen[] =>
  Array.from({ length: n }, (_, i) => ({ id: `${name}-${i}`, of: `pit-${i}`, from }));
/** Fifty pits known, all of them reported: a silence of that source says much. */
const telling = [silent, ...pits(50, "stern-1988"), ...pits(50, "quill-1901", "told")];
const argument = {
  arguments: [{ id: "from-silence", because: "no-word", therefore: "unburnt", scheme: "silence" }],
};

test("an argument from silence works only while a derivation of silence bears on its claim the same way", async () => {
  const weighed = await ditch(telling, {}, argument);
  // B(1 + 50, 1 + 0) / B(1 + 50, 1 + 1): 52 times as likely without.
  expect(weighed.derived?.numbers["likelihood-ratio"]?.value).toBeCloseTo(52, 9);
  expect(weighed.derived?.bearings.map((one) => one.bearing)).toEqual(["supports"]);
  expect([weighed.standing("from-silence"), weighed.standing("unburnt")]).toEqual(["stands", "stands"]);

  const little = await ditch(
    [silent, ...pits(12, "stern-1988"), ...pits(9, "quill-1901", "told")],
    {},
    argument,
  );
  expect(little.derived?.numbers["likelihood-ratio"]?.value).toBeCloseTo(3.5, 9);
  expect(little.derived?.bearings.map((one) => one.bearing)).toEqual(["inconclusive"]);
  expect([little.standing("from-silence"), little.standing("unburnt")]).toEqual([
    "unsupported",
    "unsupported",
  ]);

  const otherWay = { "bears-on": [{ claim: "unburnt", disputes: { "likelihood-ratio": "> 3" } }] };
  expect((await ditch(telling, otherWay, argument)).standing("from-silence")).not.toBe("stands");
  const otherClaim = { "bears-on": [{ claim: "burnt", supports: { "likelihood-ratio": "> 3" } }] };
  expect((await ditch(telling, otherClaim, argument)).standing("from-silence")).toBe("unsupported");
});

test("the silence weighs nothing once an observation that its rate was counted by is refuted, or is not yet in print", async () => {
  const against = [
    ...argument.arguments,
    { id: "not-clay", because: "seen-1", against: ["seen-0"], text: "What lay there was red sand." },
  ];
  const refuted = await ditch(telling, {}, { arguments: against });
  expect(refuted.standing("weighed")).toBe("falls");
  expect(refuted.standing("from-silence")).not.toBe("stands");
  expect(refuted.findings.map((one) => one.rule)).toContain("beaten-input");
  const before = await ditch(telling, {}, argument, { asOf: 1950 });
  // Then all that is known is known from the silent source itself, which the run says.
  expect(before.derived?.warnings).toContain("known-by-itself");
  expect(before.derived?.used.some((id) => id.startsWith("seen-"))).toBe(false);
});

test("the finding tells how often the silent source reports such traces, and what its silence is worth", async () => {
  const seen = [silent, ...pits(12, "stern-1988"), ...pits(9, "quill-1901", "told")];
  const { findings } = await ditch(seen, {}, argument);
  const told = findings.find((one) => one.rule === "silence-as-evidence");
  expect(inEnglish(told?.message ?? "")).toMatch(/reports 9 of/);
  expect(inEnglish(told?.message ?? "")).toMatch(/likelihood ratio of 3\.5/);
});

test("a feature of one thing is known once, however many saw it and however it is spelt", async () => {
  const seen = [
    silent,
    ...pits(12, "stern-1988"),
    ...pits(12, "ito-1990", "again").map((one) => ({ ...one, feature: "Burnt  Clay" })),
    ...pits(9, "quill-1901", "told"),
  ];
  const { derived } = await ditch(seen);
  expect(derived?.numbers["likelihood-ratio"]?.value).toBeCloseTo(3.5, 9);
  expect(derived?.warnings).toEqual([]);
  expect(derived?.leftOut.filter((one) => one.why === "another tells the same").map((one) => one.id)).toEqual(
    expect.arrayContaining(["again-0", "again-11"]),
  );
});

test("a list of ids is taken as it stands", async () => {
  const seen: readonly Seen[] = [
    silent,
    ...Array.from({ length: 12 }, (_, i) => ({
      id: `k-${i}`,
      of: "pit",
      from: i < 9 ? "quill-1901" : "ito-1990",
    })),
  ];
  const ids = seen.slice(1).map((one) => one.id);
  const inputs = { known: ids, reported: ids.slice(0, 9), occasions: ["no-word"] };
  const { derived } = await ditch(seen, { inputs });
  expect(derived?.numbers["likelihood-ratio"]?.value).toBeCloseTo(3.5, 9);
  expect(derived?.numbers["reporting-rate"]?.low).toBeCloseTo(0.461868460765959, 9);
});

test("silences of one source are one occasion, of three sources three; what is no silence is left out with the reason", async () => {
  const known = [...pits(12, "stern-1988"), ...pits(9, "quill-1901", "told")];
  const twice = [{ ...silent, id: "no-word-2", of: "gate" }, silent];
  const inputs = {
    known: { feature: "burnt clay", present: "true" },
    reported: { from: "quill-1901", present: "true" },
    occasions: { of: ["ditch", "gate"] },
  };
  const one = await ditch([...known, ...twice], { inputs });
  expect(one.derived?.numbers["likelihood-ratio"]?.value).toBeCloseTo(3.5, 9);
  const others = ["quill-1906", "ito-1990"].map((from, i) => ({ ...silent, id: `other-${i}`, from }));
  const gone = { id: "gone", of: "gate", present: "false", from: "stern-1988" };
  const three = await ditch([...known, ...twice, ...others, gone], { inputs });
  expect(three.derived?.numbers["likelihood-ratio"]?.value).toBeCloseTo(28, 9);
  expect(three.derived?.leftOut).toContainEqual({ id: "gone", why: "no silence" });
});

test("with nothing known the rate is unknown, which is said, and the silence is worth 2 at most", async () => {
  const others = ["quill-1906", "ito-1990"].map((from, i) => ({ ...silent, id: `other-${i}`, from }));
  const { derived, page } = await ditch([silent, ...others]);
  expect(derived?.numbers["likelihood-ratio"]?.value).toBe(2);
  expect(derived?.warnings).toContain("reporting-rate-unknown");
  expect(page?.cautions.met.join(" ")).toContain("Reporting rate unknown");
  expect(page?.sentence).toContain("cannot be decided");
});

test("refuses where there is no silence, and false reports that are no share", async () => {
  const nowhere = {
    known: { present: "true" },
    reported: { present: "true" },
    occasions: { of: "ditch", feature: "soot" },
  };
  expect((await ditch(telling, { inputs: nowhere })).derived?.reason).toBe("empty-selection");
  const seen = { known: ["seen-0"], reported: ["told-0"], occasions: ["seen-1"] };
  expect((await ditch(telling, { inputs: seen })).derived?.reason).toBe("no-silence");
  expect((await ditch(telling, { parameters: { "false-reports": "100 %" } })).derived?.reason).toBe(
    "no-share",
  );
});

test("the reports of another, and silences of one observer in several sources, are cautioned of", async () => {
  const seen = [silent, { ...silent, id: "again", from: "quill-1906" }, ...pits(12, "stern-1988")];
  const scholars = [{ id: "quill", name: "A. Quill" }];
  const inputs = {
    known: { feature: "burnt clay", present: "true" },
    reported: { feature: "burnt clay", present: "true", from: "stern-1988" },
    occasions: { of: "ditch", present: "not-reported" },
  };
  const { derived } = await ditch(seen, { inputs }, { scholars });
  expect(derived?.warnings).toEqual(expect.arrayContaining(["reports-of-another", "one-observer"]));
});

test("the page tells what was counted; nothing withheld is on it", async () => {
  const seen = [silent, ...pits(12, "stern-1988"), ...pits(9, "quill-1901", "told")];
  const open = await ditch(seen);
  expect(open.page?.entries.taken).toHaveLength(12 + 9 + 1);
  expect(open.page?.entries.taken.find((one) => one.id === "no-word")).toMatchObject({
    written: "passed over in silence",
    input: "occasions",
  });
  expect(open.page?.sentence).toContain(
    "Of 12 such traces known, Quill 1901 reports 9, which puts its rate at 0.71",
  );
  const hidden = await ditch(seen, {}, {}, {}, "withhold: [pit-3, quill-1901]\n");
  expect(hidden.derived?.numbers["likelihood-ratio"]?.value).toBeCloseTo(3.5, 9);
  const said = JSON.stringify(hidden.page);
  for (const secret of ["pit-3", "pit 3", "seen-3", "told-3", "quill-1901", "Quill 1901"])
    expect(said).not.toContain(secret);
  expect(hidden.page?.entries.withheld).toBeGreaterThan(0);
});

test("the figure is drawn without a browser: the band and the marks of the scale, and the habit", async () => {
  const { page } = await ditch([silent, ...pits(12, "stern-1988"), ...pits(9, "quill-1901", "told")]);
  const figure = page?.figure?.figure ?? { title: "", panels: [] };
  const [worth, habit] = figure.panels;
  const rules = (worth?.marks ?? []).flatMap((mark) => (mark.mark === "rule" ? [mark.at] : []));
  expect(rules).toEqual([1, 3, 20, 150]);
  const band = worth?.marks.find((mark) => mark.mark === "reach");
  // By the ends of R's qbeta for Beta(10, 4): 1 / (1 - d).
  expect(band?.mark === "reach" && band.from).toBeCloseTo(1 / (1 - 0.461868460765959), 8);
  expect(band?.mark === "reach" && band.to).toBeCloseTo(1 / (1 - 0.909079605427903), 8);
  const curve = (habit?.marks ?? []).flatMap((mark) =>
    mark.mark === "line" && mark.role === "main" ? [mark.points] : [],
  )[0];
  const area = (curve ?? []).reduce((sum, [, y]) => sum + y / 100, 0);
  expect(area).toBeCloseTo(1, 3);
  for (const width of [320, 720]) {
    const text = svgText(draw(figure, { document: svgDocument(), width, palette: light, id: "f" }));
    expect(text).toContain("<title ");
    expect(text).not.toMatch(/NaN|undefined|Infinity|style=/);
  }
});

const habits = fc
  .record({
    known: fc.integer({ min: 1, max: 60 }),
    occasions: fc.integer({ min: 1, max: 6 }),
    share: fc.float({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ known, occasions, share }) => ({
    known,
    occasions,
    reported: Math.round(share * known),
    falseReports: 0,
  }));

test("the chance of silence is the mean of (1 − d)ⁿ over the rate's distribution, by adding it up", () => {
  fc.assert(
    fc.property(habits, (habit) => {
      const { known, reported, occasions } = habit;
      let [mass, mean] = [0, 0];
      for (let i = 0.5; i < 4000; i += 1) {
        const d = i / 4000;
        const weight = d ** reported * (1 - d) ** (known - reported);
        mass += weight;
        mean += weight * (1 - d) ** occasions;
      }
      expect(weighSilence(habit).ifPresent / (mean / mass)).toBeCloseTo(1, 2);
    }),
  );
});

test("a silence weighs more the more its source reports and the more often it is silent, never below 1 but for false reports", () => {
  fc.assert(
    fc.property(habits, (habit) => {
      const { ratio, ratioEnds } = weighSilence(habit);
      expect(ratio).toBeGreaterThan(1);
      expect(ratioEnds[0]).toBeLessThan(ratio);
      expect(ratioEnds[1]).toBeGreaterThan(ratioEnds[0]);
      expect(weighSilence({ ...habit, occasions: habit.occasions + 1 }).ratio).toBeGreaterThan(ratio);
      if (habit.reported < habit.known)
        expect(weighSilence({ ...habit, reported: habit.reported + 1 }).ratio).toBeGreaterThan(ratio);
      expect(weighSilence({ ...habit, falseReports: 0.2 }).ratio / ratio).toBeCloseTo(
        0.8 ** habit.occasions,
        12,
      );
      expect(presentAfter(ratio, 0.5)).toBeCloseTo(1 / (1 + ratio), 12);
    }),
  );
});

test("what a supposed examination sees is known too, whatever source the selection asks for", async () => {
  const seen = [
    silent,
    ...pits(12, "stern-1988"),
    ...pits(9, "quill-1901", "told"),
    { id: "soot", of: "pit-x", feature: "soot", from: "ito-1990" },
  ];
  const outcomes = [
    { id: "clay", text: "There is burnt clay.", sees: [{ feature: "burnt clay", present: "true" }] },
    { id: "none", text: "There is none.", sees: [{ feature: "burnt clay", present: "false" }] },
  ];
  const examinations = [{ id: "look", of: ["pit-x"], method: "Look into pit x.", outcomes }];
  const inputs = {
    known: { feature: "burnt clay", present: "true", from: "stern-1988" },
    reported: { feature: "burnt clay", present: "true", from: "quill-1901" },
    occasions: ["no-word"],
  };
  const ratio = async (lens: Lens): Promise<number | undefined> =>
    (await ditch(seen, { inputs }, { examinations }, lens)).derived?.numbers["likelihood-ratio"]?.value;
  expect(await ratio({})).toBeCloseTo(3.5, 9);
  // Nine of thirteen: (1 + 4) / (2 + 13) is the chance of silence.
  expect(await ratio({ suppose: { examination: "look", outcome: "clay" } })).toBeCloseTo(3, 9);
  expect(await ratio({ suppose: { examination: "look", outcome: "none" } })).toBeCloseTo(3.5, 9);
});

test("on a narrow sheet too the scale of likelihood ratios has powers of ten", () => {
  for (const count of [2, 3, 4]) {
    const places = roundPlaces([0.8, 1000], count, "log");
    expect(places.length).toBeGreaterThanOrEqual(2);
    for (const place of places) expect(Math.log10(place)).toBeCloseTo(Math.round(Math.log10(place)), 12);
  }
});
