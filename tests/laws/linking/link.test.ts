import { describe, expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build } from "../../../src/build.ts";
import type { Model, SourceFile } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { foldedName } from "../../../src/link/origin/people.ts";

const main = {
  path: "corpus.yaml",
  text: "title: T\nbibliography: [b.bib]\ndimensions:\n  post-hole depth: { also: [Pfostenlochtiefe] }\n",
};
const bib = {
  path: "b.bib",
  text: [
    "@book{vane-1968, author = {Vane, Isolde J.}, title = {Paces}, year = 1968}",
    "@book{hale-1896, author = {Josiah Hale}, title = {Rings}, year = {1974}, origdate = {1896}}",
    "@book{undated, title = {Anon}}",
    "@book{both-1970, author = {Vane, I. and Nobody, Nemo}, title = {Both}, year = 1970}",
    "",
  ].join("\n"),
};

function modelOf(records: string): Model & { readonly told: readonly string[] } {
  const files: readonly SourceFile[] = [main, bib, { path: "r.yaml", text: records }];
  const { model, findings } = build(files, [], emptyMemo());
  if (!model) throw new Error("no model");
  return { ...model, told: findings.map((one) => `${one.rule}: ${inEnglish(one.message)}`) };
}

const people =
  'scholars:\n  - { id: vane, name: Isolde J. Vane, known-as: [I. Vane] }\n  - { id: hale, name: "Hale, Josiah" }\n';
const things =
  "artefacts:\n  - { id: ring, name: Ring }\n  - { id: ring/post-1, name: Post 1 }\n  - { id: ring/post-1/base, name: Base }\n";

test("where a record was said follows from what it cites, and from what it says itself where that is silent", () => {
  const { graph } = modelOf(
    `${people}${things}passages:
  - { id: of-both, at: p. 2, from: both-1970 }
  - { id: through, at: p. 9, from: hale-1896, via: vane-1968 }
  - { id: one-way, at: p. 1, from: other-way }
  - { id: other-way, at: p. 1, from: one-way }
observations:
  - { id: of-source, of: ring, text: A., from: vane-1968 p. 3, year: 1901 }
  - { id: of-undated, of: ring, text: B., from: undated, year: 1902 }
  - { id: of-passage, of: ring, text: C., from: of-both, year: 1903 }
  - { id: of-read, of: ring, text: D., from: through }
  - { id: of-two, of: ring, text: E., from: [vane-1968, of-both] }
  - { id: of-circle, of: ring, text: F., from: one-way, year: 1904 }
  - { id: of-none, of: ring, text: G., year: 1905 }
arguments:
  - { id: by-name, text: H., because: of-none, therefore: c, from: vane-1968, by: hale }
claims:
  - { id: c, text: C. }
`,
  );
  const found = (id: string): readonly unknown[] => {
    const { sources, via, scholars, year } = graph.provenance(id);
    return [sources.join(" "), via.join(" "), scholars.join(" "), year];
  };
  expect(found("of-source")).toEqual(["vane-1968", "", "vane", 1968]);
  expect(found("of-undated")).toEqual(["undated", "", "", 1902]);
  expect(found("of-passage")).toEqual(["both-1970", "", "vane", 1970]);
  expect(found("of-read")).toEqual(["hale-1896", "vane-1968", "hale", 1896]);
  expect(found("of-two")).toEqual(["vane-1968 both-1970", "", "vane", 1970]);
  expect(found("of-circle")).toEqual(["", "", "", 1904]);
  expect(found("of-none")).toEqual(["", "", "", 1905]);
  expect(found("by-name")).toEqual(["vane-1968", "", "hale", 1968]);
  expect(found("ring")).toEqual(["", "", "", null]);
});

test("records that go without an id are named after what they say, and equals are numbered", () => {
  const { graph } = modelOf(
    `${people}${things}claims:\n  - { id: c, text: C. }\nmeasurements:\n  - { of: ring, dimension: Post-hole Depth, value: 1 m, from: vane-1968 p. 3 }\n  - { of: ring, dimension: Post-hole Depth, value: 1.1 m, from: vane-1968 p. 4 }\n  - { of: ring, dimension: width, value: 3 m }\npositions:\n  - { who: vane, claim: c, stance: holds, from: hale-1896 }\n`,
  );
  expect(graph.list("measurements").map((one) => one.id)).toEqual([
    "ring:post-hole-depth@vane-1968",
    "ring:post-hole-depth@vane-1968#2",
    "ring:width",
  ]);
  expect(graph.list("positions").map((one) => one.id)).toEqual(["vane:c@hale-1896"]);
});

test("parts follow from ids, unless part-of says otherwise; a circle is cut and told", () => {
  const { graph } = modelOf(things);
  expect(graph.withParts("ring")).toEqual(["ring", "ring/post-1", "ring/post-1/base"]);
  const circle = modelOf(
    "artefacts:\n  - { id: a, name: A, part-of: b }\n  - { id: b, name: B, part-of: a }\n",
  );
  expect(circle.told.filter((one) => one.includes("circle of parts"))).toHaveLength(1);
});

describe("authors are scholars", () => {
  test("whatever the order of names, points, accents and case", () => {
    expect(foldedName("Vane, Isolde J.")).toBe(foldedName("isolde j vane"));
    expect(foldedName("Dörpfeld, W.")).toBe(foldedName("W Dorpfeld"));
    const { graph } = modelOf(people);
    expect(graph.authorsOf("vane-1968")).toEqual(["vane"]);
    expect(graph.authorsOf("hale-1896")).toEqual(["hale"]);
    expect(graph.authorsOf("both-1970")).toEqual(["vane"]);
  });

  test("a record without `by` is theirs, in print since the original of a reprint", () => {
    const { graph } = modelOf(
      `${people}${things}observations:\n  - { id: o, of: ring, text: Seen., from: hale-1896 }\n`,
    );
    expect(graph.provenance("o")).toEqual({
      sources: ["hale-1896"],
      via: [],
      scholars: ["hale"],
      year: 1896,
    });
  });

  test("what comes from a passage has its source and its via", () => {
    const { graph } = modelOf(
      `${people}${things}passages:\n  - { id: p, at: p. 3, from: hale-1896, via: vane-1968 }\nobservations:\n  - { id: o, of: ring, text: Seen., from: p }\n`,
    );
    expect(graph.provenance("o")).toMatchObject({ sources: ["hale-1896"], via: ["vane-1968"] });
  });
});

test("spellings of a dimension are one name, and its kind is that of most", () => {
  const { graph, told } = modelOf(
    `${things}measurements:\n  - { id: a, of: ring, dimension: Posthole  Depth, value: 1 m }\n  - { id: b, of: ring, dimension: Pfostenlochtiefe, value: 1 m }\n  - { id: c, of: ring, dimension: post-hole depth, value: 1 m }\n  - { id: d, of: ring, dimension: post-hole depth, value: 1 kg }\n`,
  );
  expect(graph.dimensionName("PFOSTENLOCHTIEFE")).toBe("post-hole depth");
  expect(graph.dimensionKind("post-hole depth")).toBe("length");
  expect(graph.records.has("d")).toBe(false);
  expect(told.filter((one) => one.startsWith("bad-value"))).toEqual([
    "bad-value: Unexpected mass `1 kg`, expected a length for post-hole depth",
  ]);
});

test("what refers to a lost record is not reported again", () => {
  const { told, graph } = modelOf(
    `${things}claims:\n  - { id: c }\narguments:\n  - { id: a, because: [o], therefore: c }\n  - { id: b, because: [o], against: a }\nobservations:\n  - { id: o, of: ring, text: Seen. }\n`,
  );
  expect(told.filter((one) => one.startsWith("unknown-reference"))).toEqual([]);
  expect(told.filter((one) => one.startsWith("bad-value"))).toHaveLength(1);
  expect(graph.list("arguments").map((one) => one.id)).toEqual([]);
});

describe("examinations and questions", () => {
  const answers = `${things}claims: [{ id: c, text: Old. }, { id: d, text: New. }, { id: e, text: Red. }]\n`;
  const question = (prior: string): string =>
    `questions: [{ id: q, text: When?, answers: [c, d], prior: { ${prior} } }]\n`;
  const outcomes = (...each: readonly string[]): string =>
    `examinations:\n  - id: x\n    of: [ring]\n    method: look\n    outcomes:\n${each.map((one) => `      - { ${one} }\n`).join("")}`;
  const wrongs = (told: readonly string[]): readonly string[] =>
    told.filter((one) => /^(bad-value|duplicate-id)/.test(one));

  test("two outcomes of one name are told, and the first is kept", () => {
    const { graph, told } = modelOf(
      `${answers}${outcomes("id: a, text: So.", "id: a, text: Or so.", "id: b, text: Else.")}`,
    );
    expect(wrongs(told)).toEqual([
      "duplicate-id: Duplicate outcome `a`, expected another name; the first is kept",
    ]);
    const [kept] = graph.list("examinations");
    expect(kept?.values.outcomes.map((one) => one.text)).toEqual(["So.", "Else."]);
  });

  test("a probability lies between 0 and 1, a cost and a prior are 0 or more", () => {
    const { graph, told } = modelOf(
      `${answers}${question("c: -0.5, d: 2")}${outcomes("id: a, text: So., probability: 1.5", "id: b, text: Else., probability: { c: 40 %, d: -0.1 }")}    cost: -3\n`,
    );
    expect(wrongs(told)).toEqual([
      "bad-value: Unexpected `-0.5`, expected a number, 0 or more",
      "bad-value: Unexpected `1.5`, expected a probability from 0 to 1",
      "bad-value: Unexpected `-0.1`, expected a probability from 0 to 1",
      "bad-value: Unexpected `-3`, expected a number, 0 or more",
    ]);
    expect([...(graph.list("questions")[0]?.values.prior ?? [])]).toEqual([["d", 2]]);
    expect(graph.list("examinations")[0]?.values.outcomes[1]?.probability).toEqual(new Map([["c", 0.4]]));
  });

  test("a prior is of the question's own answers, a probability of answers alone", () => {
    const { told } = modelOf(
      `${answers}${question("c: 0.5, e: 0.5")}${outcomes("id: a, text: So., probability: { d: 0.4, e: 0.5 }")}`,
    );
    expect(wrongs(told)).toEqual([
      "bad-value: Unexpected `e`, expected one of the question's answers",
      "bad-value: Unexpected `e`, expected an answer of some question",
    ]);
  });
});
