import { expect, test } from "vitest";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { build } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import type { Graph } from "../../../src/link/graph.ts";
import { artefactCalled } from "../../../src/show/desk/grid/columns/artefact.ts";
import { likelyList, matched } from "../../../src/show/desk/grid/columns/matched.ts";
import { meaningFrom, meaningText } from "../../../src/show/desk/grid/columns/meaning.ts";
import type { TableList } from "../../../src/show/desk/grid/columns/meaning.ts";

const graph = graphOf(`artefacts:
  - { id: pit-1, name: The deep pit, numbers: { inventory: K-17, excavation: "4" } }
  - { id: pit-2, name: The wide pit, numbers: { inventory: K-18, excavation: "12" } }
  - { id: "12", name: A hearth, numbers: { inventory: 1-12 } }
  - { id: pit-3, name: The wide pit, numbers: { inventory: 11-2 } }
  - { id: sealed, name: Sealed pit, numbers: { inventory: Q-99 } }
measurements:
  - { of: pit-1, dimension: weight, value: 2 kg }
  - { of: sealed, dimension: secret span, value: 2 m }
`);

function graphOf(records: string, more = ""): Graph {
  const settings = `title: Pits\n${more}withhold: [sealed]\ndimensions:\n  diameter: { kind: length, also: [Mündungsweite] }\n  depth: { kind: length }\n`;
  const files = [
    { path: "corpus.yaml", text: settings },
    { path: "records.yaml", text: records },
  ];
  const { model } = build(files, [], emptyMemo(new Map()), {});
  if (!model) throw new Error("expected a corpus that can be read");
  return model.graph;
}

const called = (text: string, register?: string): string => {
  const found = artefactCalled(graph, text, register);
  if (found.is === "found") return found.id;
  return found.is === "several" ? `several: ${found.ids.join(" ")}` : `none: ${found.near.join(" ")}`;
};

test("an artefact is found by its id, its name and its number in any register, however it is typed", () => {
  for (const text of ["pit-1", "The deep pit", "the  DEEP-pit", "K-17", "k 17", "K17", " K\u201017 ", "4"])
    expect(called(text), text).toBe("pit-1");
  expect(called("The wide pit")).toBe("several: pit-2 pit-3");
  expect(called("K-19")).toMatch(/^none: pit-[12]/);
  expect(called("1 12")).toBe("12");
  expect(called("11.2")).toBe("pit-3");
});

test("an id is itself before it is a number, but for a column of numbers", () => {
  expect(called("12")).toBe("12");
  expect(called("12", "excavation")).toBe("pit-2");
  expect(called("pit-2", "excavation")).toBe("pit-2");
});

test("what is withheld is neither found nor offered as near", () => {
  expect(called("Q-99")).toBe("none: ");
  expect(called("sealed")).toBe("none: ");
  expect(called("Sealed pits")).not.toContain("sealed");
});

const meant = (head: readonly string[], list: TableList = "measurements"): readonly string[] =>
  matched(graph, head, list).map(({ meaning }) => meaningText(meaning));

test("columns are told by the corpus's own names and by headings that are usual in five languages", () => {
  expect(meant(["Inv. no.", "Diameter (cm)", "±", "Mündungsweite", "weather"])).toEqual([
    "of by inventory number",
    "diameter in cm",
    "uncertainty of diameter in cm",
    "x-mundungsweite",
    "x-weather",
  ]);
  expect(meant(["Fundnummer", "Dm. [mm]", "Fehler", "T / cm", "Bemerkung", "Quelle"])).toEqual([
    "of by excavation number",
    "diameter in mm",
    "uncertainty of diameter in mm",
    "depth in cm",
    "note",
    "from",
  ]);
  expect(meant(["N° d'inventaire", "Mesure", "Valeur (mm)", "Incertitude", "Année"])).toEqual([
    "of by inventory number",
    "dimension",
    "value in mm",
    "uncertainty",
    "year",
  ]);
  expect(meant(["Reperto", "diametro_cm", "prof. (cm)", "peso in kg"])).toEqual([
    "of",
    "diameter in cm",
    "depth in cm",
    "weight in kg",
  ]);
  expect(meant(["رقم الجرد", "القطر (سم)", "ملاحظات"])).toEqual([
    "of by inventory number",
    "diameter in cm",
    "note",
  ]);
  expect(meant(["id", "Cat. no.", "Inv. Nr.", "Bezeichnung", "Material", "Teil von"], "artefacts")).toEqual([
    "id",
    "publication number",
    "inventory number",
    "name",
    "material",
    "part-of",
  ]);
});

test("a sign of ± beside a dimension's name says what is ± of it, and a sum is no such sign", () => {
  for (const head of ["± diameter", "diameter ±", "+/- diameter", "σ diameter", "diameter (cm) ±"])
    expect(meant(["Diameter (cm)", head])[1], head).toBe("uncertainty of diameter in cm");
  expect(meant(["± diameter", "Diameter (cm)"])).toEqual(["uncertainty of diameter in cm", "diameter in cm"]);
  expect(meant(["Diameter (cm)", "Σ diameter"])[1]).not.toContain("uncertainty");
});

test("one standard deviation is looked at before it is taken for the two that ± is in a corpus", () => {
  const expanded = graphOf("", "plus-minus: expanded\n");
  for (const head of ["σ", "sd", "standard error", "Standardabweichung"]) {
    const [, found] = matched(expanded, ["Diameter (cm)", head], "measurements");
    expect([found?.meaning.is, found?.unsure], head).toEqual(["uncertainty", true]);
    expect(found && inEnglish(found.why)).toContain("coverage");
  }
  const [, plain] = matched(expanded, ["Diameter (cm)", "±"], "measurements");
  expect(plain?.unsure).toBe(false);
  const [, standard] = matched(graph, ["Diameter (cm)", "σ"], "measurements");
  expect(standard?.unsure).toBe(false);
});

test("what is guessed at is said to be unsure, and nothing is a column twice", () => {
  const [rim, wight, again] = matched(graph, ["rim (cm)", "wieght", "weight"], "measurements");
  expect(rim).toMatchObject({ meaning: { is: "dimension", dimension: "rim", unit: "cm" }, unsure: true });
  expect(wight).toMatchObject({ meaning: { is: "dimension", dimension: "weight" }, unsure: true });
  expect(again).toMatchObject({ meaning: { field: "x-weight" }, unsure: true });
  expect(JSON.stringify(matched(graph, ["secret span", "secrets span"], "measurements"))).not.toContain(
    '"dimension":"secret span"',
  );
});

test("a table is taken for measurements where it has figures of dimensions", () => {
  expect(likelyList(graph, ["Inv. no.", "D (cm)"])).toBe("measurements");
  expect(likelyList(graph, ["of", "dimension", "value"])).toBe("measurements");
  expect(likelyList(graph, ["id", "name", "Inv. no.", "material"])).toBe("artefacts");
});

test("a meaning is written as an option and read back as it was", () => {
  for (const [text, list] of [
    ["of", "measurements"],
    ["of by inventory number", "measurements"],
    ["diameter in cm", "measurements"],
    ["weight", "measurements"],
    ["uncertainty of depth in mm", "measurements"],
    ["value in cm", "measurements"],
    ["unit", "measurements"],
    ["x-weather", "measurements"],
    ["nothing", "artefacts"],
    ["inventory number", "artefacts"],
    ["held-at", "artefacts"],
  ] as const) {
    const meaning = meaningFrom(graph, text, list);
    expect(meaning && meaningText(meaning), text).toBe(text);
  }
  expect(meaningFrom(graph, "Mündungsweite (cm)", "measurements")).toEqual({
    is: "dimension",
    dimension: "diameter",
    unit: "cm",
  });
  expect(meaningFrom(graph, "shape", "artefacts")).toBe(null);
});
