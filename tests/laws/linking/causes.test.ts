import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { plugins } from "../../../plugins/index.ts";
import type { Finding } from "../../../src/base/finding.ts";
import { build } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";

const sources = `@book{hale-1896, author = {Hale, Josiah}, title = {Of the Rings}, year = 1896}
@book{vane-1968, author = {Vane, Ruth}, title = {The Rings Again}, year = 1968}
@book{vane-1970, author = {Vane, Ruth}, title = {The Rings Once More}, year = 1970}
`;
const people = "scholars:\n  - { id: hale, name: Josiah Hale }\n  - { id: vane, name: Ruth Vane }\n";

/** What a rule finds in a corpus of one file of records. */
function found(rule: string, records: string, main = "", scholars = people): readonly Finding[] {
  const files = [
    { path: "corpus.yaml", text: `title: Land\nbibliography: [sources.bib]\n${main}` },
    { path: "sources.bib", text: sources },
    { path: "people.yaml", text: scholars },
    { path: "records.yaml", text: records },
  ];
  return build(files, plugins, emptyMemo()).findings.filter((one) => one.rule === rule);
}

const rows = (count: number, row: (n: number) => string): string =>
  Array.from({ length: count }, (_, n) => `  - { ${row(n + 1)} }\n`).join("");

const things = `artefacts:\n${rows(6, (n) => `id: gap-${n}, name: gap ${n}`)}`;

describe("one cause is one finding with a list", () => {
  test("readings of six gaps by the same two", () => {
    const records = `${things}measurements:\n${rows(6, (n) => `id: h${n}, of: gap-${n}, dimension: width, value: ${n}.00 m, from: hale-1896`)}${rows(6, (n) => `id: v${n}, of: gap-${n}, dimension: width, value: ${n}.90 m, from: vane-1968`)}`;
    const [only, ...others] = found("conflicting-measurements", records);
    expect(others).toEqual([]);
    expect(only?.about).toHaveLength(12);
    expect(inEnglish(only?.message ?? "")).toContain("3 more are in dispute between them");
  });

  test("places along one thing are told apart by their landmarks", () => {
    const records = `artefacts:\n  - { id: ring, name: the ring }\nmeasurements:\n${["post 1", "post 2"].map((between, n) => `  - { id: h${n}, of: ring, dimension: gap, between: ${between}, value: 1.00 m, from: hale-1896 }\n  - { id: v${n}, of: ring, dimension: gap, between: ${between}, value: 2.00 m, from: vane-1968 }\n`).join("")}`;
    const [only, ...others] = found("conflicting-measurements", records);
    expect(others).toEqual([]);
    expect(inEnglish(only?.message ?? "")).toMatch(
      /the ring \(post 1\) is given as .* and the ring \(post 2\) is given as /,
    );
  });

  test("an id that leads nowhere, met by many records", () => {
    const records = `observations:\n${rows(3, (n) => `id: o${n}, of: nowhere, text: Seen ${n}.`)}`;
    const [only, ...others] = found("unknown-reference", records);
    expect(others).toEqual([]);
    expect(only).toMatchObject({ about: ["o1", "o2", "o3"], fix: null });
    expect(inEnglish(only?.message ?? "")).toMatch(/^Unknown id `nowhere`, .*; it is met in 3 places$/);
    expect(only?.also).toHaveLength(2);
  });

  test("a file's source, which all its records have, is one place and one change", () => {
    const records = `source: vanne-1968\n${things}observations:\n${rows(3, (n) => `id: o${n}, of: gap-1, text: Seen ${n}.`)}`;
    const [only, ...others] = found("unknown-reference", records);
    expect(others).toEqual([]);
    expect(only?.about).toEqual(["o1", "o2", "o3"]);
    expect(inEnglish(only?.message ?? "")).not.toContain("it is met in");
    expect(only?.fix?.edits).toEqual([{ file: "records.yaml", start: 8, end: 18, text: "vane-1968" }]);
  });

  test("a field that is misspelt in every record, with one change for all", () => {
    const [only, ...others] = found(
      "unknown-field",
      `artefacts:\n${rows(3, (n) => `id: post-${n}, name: post ${n}, materail: oak`)}`,
    );
    expect(others).toEqual([]);
    expect(only?.fix?.edits).toHaveLength(3);
    expect(only?.about).toEqual(["post-1", "post-2", "post-3"]);
  });

  test("what is missing is missing in each record by itself", () => {
    expect(
      found("bad-value", `${things}observations:\n${rows(2, (n) => `id: o${n}, of: gap-1`)}`),
    ).toHaveLength(2);
  });

  test("a file that is named and not there, and one that is named twice", () => {
    const tables = "artefact-tables: [lost.csv]\nmeasurement-tables: [lost.csv]\n";
    expect(found("unreadable-file", things, tables)).toHaveLength(1);
    const files = [
      { path: "corpus.yaml", text: "title: Land\nbibliography: [sources.bib, sources.bib]\n" },
      { path: "sources.bib", text: sources },
    ];
    const errors = build(files, plugins, emptyMemo()).findings.filter((one) => one.level === "error");
    expect(errors.map((one) => inEnglish(one.message))).toEqual([
      "Duplicate file `sources.bib`, expected it once; it is read the first time",
    ]);
  });

  test("an author of several sources who is no scholar", () => {
    const records = "readings:\n  - { from: [hale-1896, vane-1968, vane-1970], status: read }\n";
    const told = found("unlisted-author", records, "", "scholars:\n  - { id: hale, name: Josiah Hale }\n");
    expect(told.map((one) => one.about)).toEqual([["vane-1968", "vane-1970"]]);
    expect(found("unlisted-author", records)).toEqual([]);
  });

  test("figures copied from one source into another, and what two saw differently", () => {
    const copied = `${things}measurements:\n${rows(3, (n) => `id: h${n}, of: gap-${n}, dimension: width, value: ${n}.1 m, from: hale-1896`)}${rows(3, (n) => `id: v${n}, of: gap-${n}, dimension: width, value: ${n}.1 m, from: vane-1968`)}`;
    expect(found("copied-number", copied).map((one) => one.about.length)).toEqual([6]);
    const seen = (feature: string, n: number) =>
      `  - { id: ${feature}-h${n}, of: gap-${n}, text: Seen., feature: ${feature}, from: hale-1896 }\n  - { id: ${feature}-v${n}, of: gap-${n}, text: Not seen., feature: ${feature}, present: false, from: vane-1968 }\n`;
    const differing = `${things}observations:\n${seen("ash", 1)}${seen("ash", 2)}${seen("daub", 3)}`;
    expect(found("conflicting-observations", differing).map((one) => one.about.length)).toEqual([4, 2]);
  });

  test("three stances of one scholar in one year that cannot go together", () => {
    const records = `claims:\n${rows(4, (n) => `id: c${n}, text: It was the ${n}.`)}questions:\n  - { id: q, text: Which?, answers: [c1, c2, c3] }\npositions:\n${rows(4, (n) => `id: p${n}, who: vane, claim: c${n}, stance: holds, from: vane-1968`)}`;
    expect(found("self-contradiction", records).map((one) => [...one.about].sort())).toEqual([
      ["p1", "p2", "p3"],
    ]);
  });

  test("claims that lean on one bare claim, and claims in one circle", () => {
    const claims = `claims:\n${rows(3, (n) => `id: c${n}, text: It was the ${n}.`)}positions:\n${rows(3, (n) => `who: vane, claim: c${n}, stance: holds, from: vane-1968`)}`;
    const leaning = `${claims}arguments:\n  - { id: a, because: c1, therefore: c2 }\n  - { id: b, because: c1, therefore: c3 }\n`;
    const [only, ...others] = found("unsupported-claim", leaning);
    expect(others).toEqual([]);
    expect(inEnglish(only?.message ?? "")).toBe(
      "Ruth Vane holds “It was the 1” without an argument, expected at least one under it; “It was the 2” (Ruth Vane) and “It was the 3” (Ruth Vane) lean on it.",
    );
    const round = `${claims}arguments:\n  - { id: a, because: c1, therefore: c2 }\n  - { id: b, because: c2, therefore: c1 }\n`;
    expect(found("circular-support", round).map((one) => [...one.about].sort())).toEqual([["c1", "c2"]]);
    // An acceptance of one claim is no acceptance of the others.
    const accept = "accept: [{ rule: unsupported-claim, about: [c2], why: A straw man. }]\n";
    expect(found("unsupported-claim", leaning, accept).map((one) => [one.about, one.accepted])).toEqual([
      [["c1", "c3"], null],
      [["c2", "c1"], "A straw man."],
    ]);
  });

  test("claims on one source, and records dated after one source", () => {
    const records = `${things}claims:\n${rows(2, (n) => `id: c${n}, text: It was the ${n}.`)}questions:\n  - { id: q, text: Which?, answers: [c1, c2], exclusive: false }\nobservations:\n${rows(
      2,
      (n) => `id: o${n}, of: gap-${n}, text: Seen ${n}., year: 1${n}99, from: hale-1896`,
    )
      .replaceAll("1199", "1899")
      .replaceAll(
        "1299",
        "1901",
      )}arguments:\n${rows(2, (n) => `id: a${n}, because: o${n}, therefore: c${n}`)}`;
    expect(found("single-source", records).map((one) => one.about)).toEqual([["c1", "c2", "hale-1896"]]);
    expect(found("single-artefact", records)).toHaveLength(2);
    const late = found("anachronism", records);
    expect(late.map((one) => one.about)).toEqual([["o1", "o2", "hale-1896"]]);
    expect(inEnglish(late[0]?.message ?? "")).toMatch(
      /“Seen 1” is dated 1899 and “Seen 2” 1901, after .* was in print, expected 1896 or earlier\.$/,
    );
  });

  test("what is withheld is told of alone, so that it hides nothing else", () => {
    const records = `artefacts:\n${rows(3, (n) => `id: post-${n}, name: post ${n}, colour: grey`)}`;
    const told = found("unknown-field", records, "withhold: [post-2]\n");
    expect(told.map((one) => one.about)).toEqual([["post-1", "post-3"], ["post-2"]]);
  });
});

describe("ids where they were taken for words", () => {
  const claims = `${things}claims:\n  - { id: roofed, text: It was roofed. }\n`;

  test.each([
    [
      "after: roofd",
      "unknown-reference",
      "Unknown id `roofd`, expected a claim or artefact such as `roofed`",
    ],
    ["before: gap-44", "unknown-reference", "Unknown id `gap-44`, expected a claim or artefact"],
    ["is: hale-1896", "unknown-reference", "Unexpected source `hale-1896`, expected a claim or artefact"],
    [
      "is: the year after",
      "bad-value",
      "Unexpected `the year after`, expected a date (EDTF), or the id of a claim or an artefact",
    ],
  ])("a date of a claim: %s", (bound, rule, message) => {
    const records = `${claims}  - { id: burnt, text: It burnt., dates: [{ event: the fire, ${bound} }] }\n`;
    const [only, ...others] = found(rule, records);
    expect(others).toEqual([]);
    expect(inEnglish(only?.message ?? "")).toContain(message);
    expect(only?.about).toEqual(["burnt"]);
  });

  test.each(["after: roofed", "after: gap-1", 'before: "1850"', "is: 1850/1860", "is: -0479", "is: 19XX"])(
    "a good date of a claim: %s",
    (bound) => {
      const records = `${claims}  - { id: burnt, text: It burnt., dates: [{ event: the fire, ${bound} }] }\n`;
      expect(found("unknown-reference", records)).toEqual([]);
      expect(found("bad-value", records)).toEqual([]);
    },
  );

  test("answers that a prior or an outcome gives a probability to, and what a talk shows", () => {
    const records = `${claims}questions:\n  - { id: q, text: Roofed?, answers: [roofed], prior: { roofed: 0.5, roofd: 0.5 } }\nexaminations:\n  - { id: look, of: gap-1, method: A look, outcomes: [{ id: yes, text: Yes., probability: { rofed: 0.5 } }] }\ntalks:\n  - { id: t, title: T, steps: [{ show: [roofed, gap-9] }, { show: { drawing: [gap-1, gap-8] } }] }\n`;
    const told = found("unknown-reference", records).map((one) => inEnglish(one.message).split(",")[0]);
    expect(told).toEqual([
      "Unknown id `roofd`",
      "Unknown id `rofed`",
      "Unknown id `gap-9`",
      "Unknown id `gap-8`",
    ]);
  });

  test("an event that is written like the id of a thing", () => {
    const records = `artefacts:\n  - { id: outer-ring, name: the ring }\nrelations:\n  - { id: r, earlier: outer-rng, later: the fire }\n`;
    expect(found("near-name", records)).toEqual([]);
    const slip = records.replace("outer-rng", "outr-ring");
    expect(found("near-name", slip).map((one) => inEnglish(one.message))).toEqual([
      "“outr-ring” is nearly “outer-ring”, expected one spelling or two plainly different names.",
    ]);
  });

  test("a short name of more than forty letters costs itself", () => {
    const records = `claims:\n  - { id: c, text: A claim., short: ${"x".repeat(41)} }\n  - { id: d, text: A claim., short: ${"é".repeat(40)} }\n`;
    expect(found("bad-value", records).map((one) => inEnglish(one.message))).toEqual([
      "Unexpected length of 41 letters, expected at most 40",
    ]);
  });
});

describe("nothing is read by half", () => {
  test.each([
    ["a comma", "text: Ash, and daub"],
    ["a number sign", "text: Ash #4 of them"],
    ["a colon", "text: Ash: a little"],
    ["a dash", "text: - ash"],
    ["a closing quote", 'text: "Ash" and daub'],
    ["a citation", "text: Ash., from: [hale-1896 p. 3, fig. 4]"],
  ])("a record with %s that YAML takes for its own is left out, the others are read", (_, field) => {
    const records = `${things}observations:\n  - { id: whole, of: gap-1, text: Daub. }\n  - { id: half, of: gap-1, ${field} }\narguments:\n  - { id: a, because: half, therefore: c }\nclaims:\n  - { id: c, text: A claim. }\n`;
    const files = [
      { path: "corpus.yaml", text: "title: Land\nbibliography: [sources.bib]\n" },
      { path: "sources.bib", text: sources },
      { path: "records.yaml", text: records },
    ];
    const { model, findings } = build(files, plugins, emptyMemo());
    const errors = findings.filter((one) => one.level === "error");
    expect(errors.map((one) => [one.rule, one.about])).toEqual([["split-value", ["half"]]]);
    expect(errors[0]?.fix).not.toBeNull();
    expect([...(model?.graph.records.keys() ?? [])]).toContain("whole");
    expect([...(model?.graph.records.keys() ?? [])]).not.toContain("half");
  });
});
