import fc from "fast-check";
import { expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import type { Model } from "../../../src/build.ts";
import { standpointsText } from "../../../src/cli/print/standpoints.ts";
import { reportOf } from "../../../src/show/report/report.ts";
import { reportSchema } from "../../../src/show/report/schema.ts";
import { standpointsPage } from "../../../src/show/judged/standpoints/page.ts";
import { standpointsReport } from "../../../src/show/judged/standpoints/report.ts";
import {
  aboutInWords,
  countInWords,
  inThousands,
  waysInWords,
} from "../../../src/show/judged/standpoints/wording.ts";
import { filesOf, randomCase } from "../../oracle/random-corpus.ts";
import { modelOf } from "../../oracle/computed-model.ts";
import { corpus, pairsCorpus } from "./standpoint-corpora.ts";

/** A ring that was roofed or open, by two observations that dispute one another, and one thing that is withheld. */
const ring = (settings: object = {}) =>
  modelOf(
    corpus(
      {
        scholars: [
          { id: "ada", name: "Ada North" },
          { id: "bo", name: "Bo South" },
          { id: "cy", name: "Cy West" },
        ],
        artefacts: [
          { id: "post", name: "A post" },
          { id: "spring", name: "The hidden spring" },
        ],
        questions: [{ id: "which", text: "Roofed or open?", answers: ["roofed", "open-ring"] }],
        claims: [
          { id: "roofed", text: "The ring carried a roof." },
          { id: "open-ring", text: "The ring stood open." },
          { id: "walled", text: "The ring had walls." },
          { id: "old", text: "The ring is old." },
          { id: "wet", text: "The land was wet." },
        ],
        observations: [
          { id: "deep", of: "post", text: "The post stood deep." },
          { id: "shallow", of: "post", text: "The post stood shallow." },
          { id: "worn", of: "post", text: "The post was worn." },
          { id: "spring-full", of: "spring", text: "The hidden spring ran." },
          { id: "spring-dry", of: "spring", text: "The hidden spring was dry." },
        ],
        arguments: [
          { id: "not-shallow", because: "deep", against: "shallow" },
          { id: "not-deep", because: "shallow", against: "deep" },
          { id: "so-roofed", because: "deep", therefore: "roofed" },
          { id: "so-open", because: "shallow", therefore: "open-ring" },
          { id: "so-walled", because: "roofed", therefore: "walled" },
          { id: "so-old", because: "worn", therefore: "old" },
          { id: "spring-ran", because: "spring-full", against: "spring-dry" },
          { id: "spring-ran-not", because: "spring-dry", against: "spring-full" },
          { id: "so-wet", because: "spring-full", therefore: "wet" },
        ],
        positions: [
          { who: "ada", claim: "roofed", stance: "holds", year: "1990" },
          { who: "ada", claim: "walled", stance: "holds", year: "1990" },
          { who: "bo", claim: "roofed", stance: "holds", year: "1950" },
          { who: "bo", claim: "open-ring", stance: "holds", year: "1960" },
          { who: "cy", claim: "open-ring", stance: "holds", year: "1970" },
          { who: "cy", claim: "walled", stance: "holds", year: "1970" },
          { who: "cy", claim: "old", stance: "rejects", year: "1970" },
        ],
      },
      settings,
    ),
  );

test("a part is headed by its contradiction, and its alternatives are told by the answers", () => {
  const page = standpointsPage(ring());
  expect(inEnglish(countInWords(page))).toBe("4 coherent standpoints: 2 × 2.");
  const [part] = page.components;
  const about = part?.about.map((one) =>
    aboutInWords(one)
      .map((piece) => piece.text)
      .join(""),
  );
  expect(about).toEqual(["The post stood deep or The post stood shallow"]);
  expect(part?.questions.map((one) => one.id)).toEqual(["which"]);
  expect(part?.ways.map((way) => way.toldBy.map((one) => `${one.id} ${one.fate}`))).toEqual([
    ["roofed stands"],
    ["open-ring stands"],
  ]);
  expect(part?.claims.map((row) => [row.id, ...row.fates])).toEqual([
    ["roofed", "stands", "falls"],
    ["open-ring", "falls", "stands"],
    ["walled", "stands", "falls"],
  ]);
  expect(page.settled.find((one) => one.standing === "stands")?.claims.map((one) => one.id)).toEqual(["old"]);
});

test("under each alternative stand the scholars whose latest positions fit, one who left a claim for its rival among them", () => {
  const page = standpointsPage(ring());
  const fits = page.components[0]?.ways.map((way) =>
    way.fits.map((one) => [one.id, one.but && `${one.but.stance} ${one.but.claim.id} ${one.but.standing}`]),
  );
  expect(fits).toEqual([
    [
      ["ada", null],
      ["cy", "holds open-ring falls"],
    ],
    [
      ["bo", null],
      ["cy", "holds walled falls"],
    ],
  ]);
  expect(page.fits.map((one) => one.id)).toEqual(["ada", "bo"]);
  expect(page.scholars).toBe(3);
});

const told = (model: Model): string =>
  JSON.stringify([standpointsPage(model), standpointsReport(model), standpointsText(model)]);

test("nothing withheld is told, neither in the page, nor in the report, nor in the text; what hangs on it is counted", () => {
  const open = told(ring());
  for (const secret of ["hidden spring", "spring-full", "spring-ran"]) expect(open).toContain(secret);
  const model = ring({ withhold: ["spring"] });
  const closed = told(model);
  for (const secret of ["hidden", "spring"]) expect(closed).not.toContain(secret);
  const page = standpointsPage(model);
  expect(page.count).toBe("4");
  expect(page.components[1]?.about).toEqual([{ kind: "withheld", between: [] }]);
  expect(page.components[1]?.ways.map((way) => way.toldBy.map((one) => one.text))).toEqual([
    ["The land was wet"],
    ["The land was wet"],
  ]);
  const both = standpointsPage(ring({ withhold: ["spring", "wet", "ada"] }));
  expect(both.components[1]?.ways.map((way) => [way.ways, way.toldBy])).toEqual([[2, []]]);
  expect(told(ring({ withhold: ["spring", "wet", "ada"] }))).not.toMatch(/spring|land|Ada/);
});

test("the report keeps to its schema, has the key always, and is the same for the same corpus", () => {
  for (const seed of Array.from({ length: 60 }, (_, n) => n + 1)) {
    const one = randomCase(seed);
    const [model, again] = [modelOf(filesOf(one)), modelOf(filesOf(one))];
    const report = reportOf(model, [], new Map(), { standpoints: standpointsReport(model) });
    expect(reportSchema.parse(report)).toEqual(report);
    expect(JSON.stringify(report.standpoints)).toBe(JSON.stringify(standpointsReport(again)));
    expect(reportOf(model, [], new Map()).standpoints).toBe(null);
  }
});

test("what is too much to lay out is said to be so, with what is known of each claim", () => {
  const page = standpointsPage(modelOf(pairsCorpus(12, "locked")));
  const [part] = page.components;
  expect(inEnglish(countInWords(page))).toMatch(/^At least [\d\u202f]+ coherent standpoints\.$/);
  expect(part && inEnglish(waysInWords(part))).toMatch(
    /^At least [\d\u202f]+ ways to decide it, too many to lay out\.$/,
  );
  expect(part?.ways).toEqual([]);
  expect(part?.accepted.filter((one) => one.holds === "all").map((one) => one.id)).toEqual(
    Array.from({ length: 12 }, (_, n) => `either-${n}`),
  );
  const joined = standpointsPage(modelOf(pairsCorpus(12, "joined")));
  expect(inEnglish(countInWords(joined))).toContain("4\u202f096 coherent standpoints: 2 × 2");
  expect(joined.joint.map((one) => [one.id, one.holds, one.on.length])).toEqual([["whole", "some", 12]]);
});

test("a number of hundreds of digits is told by its power of ten, rounded down, and a long product by its length", () => {
  fc.assert(
    fc.property(fc.stringMatching(/^[1-9]\d{0,60}$/), (digits) => {
      const n = BigInt(digits);
      const told = inThousands(String(n));
      const [, first = "", power = ""] = /^≈\u00a0(\d\.\d)\u00a0×\u00a010([⁰¹²³⁴⁵⁶⁷⁸⁹]+)$/.exec(told) ?? [];
      if (power === "") {
        expect(told.replaceAll("\u202f", "")).toBe(String(n));
        return;
      }
      const exponent = Number(power.replace(/./g, (digit) => String("⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(digit))));
      const unit = 10n ** BigInt(exponent - 1);
      const told10 = BigInt(first.replace(".", "")) * unit;
      expect(told10 <= n && n < told10 + unit).toBe(true);
    }),
    { numRuns: 100, seed: 2 },
  );
  const page = standpointsPage(ring());
  const parts = Array.from({ length: 30 }, () => page.components[0] ?? expect.fail("no part"));
  expect(inEnglish(countInWords({ ...page, components: parts, count: String(2n ** 60n) }))).toBe(
    "≈\u00a01.1\u00a0×\u00a010¹⁸ coherent standpoints: the product of the ways of 30 parts.",
  );
});

test("where a circle of attacks has no coherent way out it is said that it stays open", () => {
  const odd = corpus({
    artefacts: [{ id: "post", name: "A post" }],
    observations: [{ id: "seen", of: "post", text: "It was seen." }],
    arguments: [{ id: "doubtful", because: "seen", against: "doubtful" }],
  });
  const page = standpointsPage(modelOf(odd));
  expect(inEnglish(countInWords(page))).toBe("One coherent standpoint.");
  const [part] = page.components;
  expect(
    part && aboutInWords(part.about[0] ?? { kind: "withheld", between: [] }).map((one) => one.text),
  ).toEqual(["the corpus's argument", " speaks against itself"]);
  expect(part && inEnglish(waysInWords(part))).toContain("stays open in every standpoint");
});
