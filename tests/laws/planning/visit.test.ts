import fc from "fast-check";
import { expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { nothingMeasured } from "../../../src/show/desk/visit/filled/filled.ts";
import { visitTold } from "../../../src/show/desk/visit/filled/told.ts";
import { isReturned, returnedIn, returnedText } from "../../../src/show/desk/visit/returned.ts";
import { featureKey, pictureKey } from "../../../src/show/desk/visit/sheet/keys.ts";
import { after, filledWith, girth, length, lookAsked, modelOf, sheetOf, visitFiles } from "./visit-cases.ts";

const told = (filled: Parameters<typeof visitTold>[2], files = visitFiles) =>
  visitTold(modelOf(files).graph, lookAsked, filled);

test("a sheet asks first for what outcomes measure, between the points of what is recorded", () => {
  const { measures, features, things, pictures } = sheetOf(visitFiles);
  expect(measures.map((one) => [one.of.id, one.dimension, one.between, one.asked])).toEqual([
    ["peg-1", "girth", "", true],
    ["peg-1", "length", "tip to shoulder", false],
    ["peg-1", "length", "tip to head", false],
  ]);
  expect(measures[0]).toMatchObject({ taken: "a tape round the middle", unit: "mm", old: [] });
  expect(measures[1]).toMatchObject({ unit: "cm", instruments: ["steel rule"] });
  expect(measures[1]?.old.map((one) => one.said)).toEqual(["42.7 cm", "43.9 cm"]);
  expect(features.map((one) => [one.feature, one.asked, one.old.length])).toEqual([
    ["spiral marks", true, 1],
    ["charring", true, 0],
  ]);
  expect(things.map((one) => [one.id, one.numbers, one.heldAt])).toEqual([
    ["peg-1", [["inventory", "K 17"]], "county store"],
  ]);
  expect(pictures.map((one) => inEnglish(one.shows)).every((text) => text.includes("scale"))).toBe(true);
});

test("the sheet of a keeper has what is examined there, and names the rest", () => {
  const asked = { examination: null, keeper: "county store", also: [] };
  const sheet = sheetOf(visitFiles, asked);
  expect(sheet.things.map((one) => one.id)).toEqual(["peg-1"]);
  expect(sheet.others.map((one) => one.id)).toEqual(["peg-2"]);
  const more = sheetOf(visitFiles, { ...asked, also: ["peg-2", "peg-9"] });
  expect(more.things.map((one) => one.id)).toEqual(["peg-1", "peg-2"]);
  expect(more.others).toEqual([]);
});

test("readings become a mean with its uncertainty, and each record says whose it is", () => {
  const filled = filledWith({ [girth]: ["41", "42", "43", ""] }, { conditions: { "peg-1": "dry, cracked" } });
  const { measured, action, coming } = told(filled);
  // By hand: mean 42, u = √(1/3 + 1/12) = 0.645, half = t(3.125) u = 2.0, of which half is written.
  expect(measured[girth]?.value).toBe("42.0 ± 1.0 mm");
  expect(measured[girth]?.summary).toMatchObject({
    n: 3,
    mean: "42.0 mm",
    spread: "1 mm",
    ofMean: "0.58 mm",
    u: "0.65 mm",
  });
  expect(coming).toEqual({ measurements: 1, observations: 0, images: 0, arguments: 0 });
  const files = after(visitFiles, action!);
  expect(files["things.yaml"]).toContain("value: 42.0 ± 1.0 mm");
  const { graph } = modelOf(files);
  const made = graph.list("measurements").find((one) => one.values.dimension === "girth");
  expect(made?.values).toMatchObject({
    of: "peg-1",
    basis: "autopsy",
    instrument: "tape",
    n: 3,
    condition: "dry, cracked",
    by: ["reed"],
    year: 2026,
  });
  expect(made?.values.readings?.map((one) => one.text)).toEqual(["41 mm", "42 mm", "43 mm"]);
  expect(made?.values.value.u).toBeCloseTo(0.001, 6);
  expect(graph.findings.filter((one) => one.level === "error")).toEqual([]);
});

test("the same value of the same person and day comes in once", () => {
  const filled = filledWith(
    { [length]: ["427"] },
    { pictures: { [pictureKey("peg-1", "")]: { file: "a.jpg", scale: "1:1" } } },
  );
  const { action } = told(filled);
  const files = after(visitFiles, action!);
  const again = told(filled, files);
  expect(again.action).toBeNull();
  expect(again.already).toEqual([length]);
  // Another day of the same year is another reading.
  expect(told({ ...filled, on: "2026-05-05" }, files).coming.measurements).toBe(1);
});

test("what cannot be summed up stays, with its reason and what would mend it", () => {
  const { measured, bad, action } = told(filledWith({ [girth]: ["41,2"], [length]: ["≥ 40 cm", "41 cm"] }));
  expect(measured[girth]?.troubles[0]).toMatchObject({ at: 0 });
  expect(inEnglish(measured[girth]?.troubles[0]?.message ?? "")).toContain("41,2");
  expect(inEnglish(measured[length]?.troubles[0]?.message ?? "")).toContain(
    "a bound, a range or what has its own ± stands alone",
  );
  expect([bad, action]).toEqual([2, null]);
  const alone = told(filledWith({ [length]: ["≥ 40 cm"] }));
  expect(alone.measured[length]?.value).toBe("≥ 40 cm");
  const nobody = told({ ...filledWith({ [girth]: ["41"] }), by: "nobody", on: "2026-02-30" });
  expect(nobody.head.map((one) => one.field)).toEqual(["by", "on"]);
  expect(nobody.action).toBeNull();
});

test("an early look at earlier values is noted, a feature is seen or not, and the outcome is argued from", () => {
  const rows = filledWith({ [girth]: ["41"] }).measured;
  const filled = {
    ...filledWith({}),
    by: "Reed, M.",
    measured: { [girth]: { ...nothingMeasured, ...rows[girth], seen: true } },
    looked: {
      [featureKey({ of: ["peg-1"], feature: "charring" })]: {
        present: "true" as const,
        text: "",
        seen: false,
      },
    },
    found: { look: "char" },
  };
  const { action, coming } = told(filled);
  expect(coming).toEqual({ measurements: 1, observations: 2, images: 0, arguments: 2 });
  const before = modelOf(visitFiles);
  const now = modelOf(after(visitFiles, action!));
  const made = now.graph.list("measurements").find((one) => one.values.dimension === "girth");
  expect(made?.values.note).toBe(
    "Visit of 2026-05-04. Earlier values were looked at before all readings were taken.",
  );
  expect(made?.values.by).toEqual(["reed"]);
  const charring = now.graph.list("observations").find((one) => one.values.feature === "charring");
  expect(charring?.values).toMatchObject({ text: "Charring: seen.", present: "true" });
  const standings = (model: typeof now) =>
    ["bored-hole", "burnt-hole"].map((id) => model.judgement.standings.get(id));
  // As the plan said that it would be.
  expect(standings(before)).toEqual(["stands", "unsupported"]);
  const line = sheetOf(visitFiles).looks?.[0]?.outcomes.find((one) => one.id === "char");
  const planned = new Map(line?.claims.map((one) => [one.id, one.is]));
  expect(standings(now)).toEqual(["bored-hole", "burnt-hole"].map((id) => planned.get(id)));
});

test("a file that comes back says what the form would have said", () => {
  const texts = fc.string({ maxLength: 8 });
  const figure = fc.oneof(fc.integer({ min: 1, max: 99 }).map(String), texts);
  fc.assert(
    fc.property(
      fc.array(figure, { maxLength: 4 }),
      fc.array(figure, { maxLength: 4 }),
      texts,
      fc.constantFrom("", "spiral", "char"),
      (some, others, condition, outcome) => {
        const filled = {
          ...filledWith({ [girth]: some, [length]: others }),
          conditions: { "peg-1": condition },
          found: { look: outcome },
        };
        const text = returnedText({ asked: lookAsked, filled });
        expect(isReturned(text)).toBe(true);
        const back = returnedIn(text);
        if ("problem" in back) throw new Error(inEnglish(back.problem));
        expect(back.asked).toEqual(lookAsked);
        expect(told(back.filled)).toEqual(told(filled));
      },
    ),
    { numRuns: 40 },
  );
});

test("anything else than a filled sheet is refused", () => {
  for (const text of ["", "{}", "[1]", '{"variorum-visit":2}', '{"variorum-visit":1,"asked":{},"filled":{}}'])
    expect(returnedIn(text), text).toHaveProperty("problem");
  expect(returnedIn('{"variorum-visit":1,"asked":{"keeper":"x"},"filled":{"measured":[]}}')).toHaveProperty(
    "problem",
  );
  const hostile = JSON.stringify({
    "variorum-visit": 1,
    asked: { examination: "look" },
    filled: {
      by: "reed",
      on: "2026-05-04",
      measured: { __proto__: {}, "[": { readings: ["1"] }, '["no","x",""]': { readings: ["1"] } },
    },
  });
  const back = returnedIn(hostile);
  if ("problem" in back) throw new Error("refused");
  expect(told(back.filled)).toMatchObject({ bad: 2, action: null });
});
