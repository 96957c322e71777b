import * as fc from "fast-check";
import { expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { plugins } from "../../../plugins/index.ts";
import { edtfYear } from "../../../src/base/date/edtf.ts";
import type { Finding } from "../../../src/base/finding.ts";
import { build, type SourceFile } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { corpusOf } from "../../make-corpus/corpus.ts";

const settings: SourceFile = { path: "corpus.yaml", text: "title: Dates\n" };

/** What the rule says of a corpus of these records. */
function told(records: readonly string[]): readonly Finding[] {
  const files = [settings, { path: "records.yaml", text: records.join("\n") }];
  const { model, findings } = build(files, plugins, emptyMemo());
  if (!model) throw new Error("the corpus has no model");
  expect(findings.filter((one) => one.level === "error")).toEqual([]);
  return findings.filter((one) => one.rule === "anachronism");
}

/** What really happened: the year of each of five things, and how people saw it, never wrongly. */
const truth = fc.record({
  years: fc.array(fc.integer({ min: -300, max: 300 }), { minLength: 5, maxLength: 5 }),
  slack: fc.array(fc.tuple(fc.nat(30), fc.nat(30)), { minLength: 5, maxLength: 5 }),
  later: fc.array(fc.nat(200), { minLength: 5, maxLength: 5 }),
  pairs: fc.array(fc.tuple(fc.nat(4), fc.nat(4), fc.nat(20), fc.boolean()), { maxLength: 8 }),
});
type Truth = typeof truth extends fc.Arbitrary<infer Value> ? Value : never;

const span = (low: number, high: number): string => `"${edtfYear(low)}/${edtfYear(high)}"`;

function recordsOf({ years, slack, later, pairs }: Truth): readonly string[] {
  const year = (n: number): number => years[n] ?? 0;
  const things = years.map((made, n) => {
    const [before, after] = slack[n] ?? [0, 0];
    const moved = made + (later[n] ?? 0);
    return `  - { id: t${n}, name: thing ${n}, date: ${span(made - before, made + after)}, history: [{ when: ${span(moved, moved + after)}, what: moved, kind: move }] }`;
  });
  const relations = pairs.flatMap(([one, other, by, near]) => {
    const [first, last] = year(one) < year(other) ? [one, other] : [other, one];
    const apart = year(last) - year(first);
    if (apart === 0) return [];
    const least = apart > by ? `, at-least: ${apart - by}` : "";
    return [
      `  - { id: r${one}${other}${by}${near ? "n" : ""}, earlier: t${first}, later: t${last}${near ? `, at-most: ${apart + by}` : least} }`,
    ];
  });
  const claims = years.map(
    (made, n) =>
      `  - { id: c${n}, text: Claim ${n}., dates: [{ event: t${n}, is: ${span(made, made)} }, { event: The feast ${n}, after: t${n} }] }`,
  );
  return [
    "artefacts:",
    ...things,
    ...(relations.length > 0 ? ["relations:", ...new Set(relations)] : []),
    "claims:",
    ...claims,
    "observations:",
    "  - { id: o, of: t0, text: Seen. }",
    "arguments:",
    ...years.map((_, n) => `  - { id: a${n}, because: [o], therefore: c${n} }`),
  ];
}

/** Relations of the same things may have been drawn twice: ids stay unique by the set above, texts may not. */
const distinctIds = (records: readonly string[]): boolean => {
  const ids = records.flatMap((line) => /id: (\S+),/.exec(line)?.[1] ?? []);
  return new Set(ids).size === ids.length;
};

test("what is true is never told to be impossible", () => {
  fc.assert(
    fc.property(truth, (happened) => {
      const records = recordsOf(happened);
      fc.pre(distinctIds(records));
      expect(told(records)).toEqual([]);
    }),
    { numRuns: 150 },
  );
});

test("a relation that turns the truth round is named, wherever it stands among true ones", () => {
  const apart = truth.filter(({ years, slack }) => {
    const [first = 0, last = 0] = years;
    return first + (slack[0]?.[1] ?? 0) < last - (slack[1]?.[0] ?? 0);
  });
  fc.assert(
    fc.property(apart, (happened) => {
      const records = [...recordsOf(happened)];
      fc.pre(distinctIds(records));
      const wrong = "  - { id: wrong, earlier: t1, later: t0 }";
      const at = records.indexOf("relations:");
      if (at < 0) records.push("relations:", wrong);
      else records.splice(at + 1, 0, wrong);
      const findings = told(records);
      expect(findings.length).toBeGreaterThan(0);
      for (const one of findings) expect(one.about).toContain("wrong");
    }),
    { numRuns: 150 },
  );
});

test("rivals, claims that fall and relations that fall say nothing together", () => {
  const base = [
    "artefacts: [{ id: hall, name: the hall, date: '1500' }]",
    "observations: [{ id: o, of: hall, text: Seen. }]",
    "arguments:",
    "  - { id: a, because: [o], therefore: early }",
    "  - { id: b, because: [o], therefore: late }",
  ];
  const claims = (more: string): readonly string[] => [
    "claims:",
    `  - { id: early, text: Early., ${more}dates: [{ event: the feast, before: hall }] }`,
    "  - { id: late, text: Late., dates: [{ event: the feast, after: hall }] }",
  ];
  expect(told([...base, ...claims("")]).map((one) => one.about)).toEqual([["early", "late"]]);
  expect(told([...base, ...claims("incompatible-with: [late], ")])).toEqual([]);
  expect(told([...base, "  - { id: d, because: [o], against: [early] }", ...claims("")])).toHaveLength(1);
  expect(
    told([...base, "  - { id: d, because: [o], against: [a] }", ...claims("")]).map((one) =>
      inEnglish(one.message),
    ),
  ).toEqual([]);
  const relation = "relations: [{ id: r, earlier: the feast, later: hall }]";
  const late = claims("").filter((line) => !line.includes("early"));
  const alone = base.filter((line) => !line.includes("early"));
  expect(told([...alone, ...late, relation]).map((one) => one.about)).toEqual([["late", "r"]]);
  expect(told([...alone, "  - { id: d, because: [o], against: [r] }", ...late, relation])).toEqual([]);
});

test("what is not yet in print dates nothing", () => {
  const files = [
    { path: "corpus.yaml", text: "title: Dates\nbibliography: [b.bib]\n" },
    {
      path: "b.bib",
      text: "@book{new, author = {A, B}, title = {T}, year = 1950}\n@book{old, author = {A, B}, title = {S}, year = 1900}\n",
    },
    {
      path: "records.yaml",
      text: [
        "artefacts:",
        "  - { id: hall, name: the hall, date: [{ is: '1500', from: new }] }",
        "  - { id: barn, name: the barn, date: [{ is: '1400', from: old }] }",
        "relations: [{ id: r, earlier: hall, later: barn, from: old }]",
      ].join("\n"),
    },
  ];
  const asOf = (year: number): number =>
    build(files, plugins, emptyMemo(), { asOf: year }).findings.filter((one) => one.rule === "anachronism")
      .length;
  expect([asOf(1949), asOf(1950)]).toEqual([0, 1]);
});

test("invented corpora of a thousand records hold no impossible order", () => {
  const { findings } = build(corpusOf({ records: 1000, seed: 5 }), plugins, emptyMemo());
  expect(findings.filter((one) => one.rule === "anachronism")).toEqual([]);
});
