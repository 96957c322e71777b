import { expect, test } from "vitest";
import { build } from "../../../src/build.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { apart, conflict } from "../../../src/judge/rules/measurements/compare.ts";
import { measuredOf } from "../../../src/derive/prepare/select.ts";
import { recordedOf } from "../../../src/show/desk/grid/there.ts";

const corpus = (nearest: string): string => `artefacts:
  - { id: sill, name: The sill }
measurements:
  - { id: rough, of: sill, dimension: length, value: 120 cm${nearest}, year: 1950 }
  - { id: fine, of: sill, dimension: length, value: 127.00 ± 0.05 cm, year: 1998 }
`;

function both(nearest: string) {
  const files = [
    { path: "corpus.yaml", text: "title: Sills\n" },
    { path: "sills.yaml", text: corpus(nearest) },
  ];
  const { model, findings: found } = build(files, [], emptyMemo(new Map()), {});
  if (!model) throw new Error("expected a corpus that can be read");
  const [rough, fine] = model.graph.list("measurements");
  if (!rough || !fine) throw new Error("expected two measurements");
  return { graph: model.graph, rough, fine, findings: found.map(({ rule }) => rule) };
}

test("what was rounded to 10 cm is not held to its last digit, neither in a derivation nor in a conflict", () => {
  const plain = both("");
  expect(conflict(plain.rough, plain.fine, plain.graph)).toBe(true);
  expect(plain.findings).toContain("conflicting-measurements");
  const { graph, rough, fine, findings } = both(", to-nearest: 10 cm");
  // 10 cm / √12 = 2.89 cm (GUM F.2.2.1); with 1 % of each, 2 √(2.89² + 0.05² + 1.2² + 1.27²) = 6.75 cm.
  expect(measuredOf(rough, graph).quantity.u).toBeCloseTo(0.0288675, 6);
  expect(apart(rough, fine, graph)?.allowed).toBeCloseTo(0.0675, 3);
  expect(apart(rough, fine, graph)?.by).toBeCloseTo(0.07, 9);
  expect(findings).toContain("conflicting-measurements");
  // The grid that it stands in says as much.
  expect(recordedOf(graph, ["sill"]).map(({ si }) => si)).toEqual(["1.20 ± 0.03 m", "1.2700 ± 0.0005 m"]);
  // And with what is coarser still they do not disagree.
  const coarse = both(", to-nearest: 20 cm");
  expect(conflict(coarse.rough, coarse.fine, coarse.graph)).toBe(false);
  expect(coarse.findings).not.toContain("conflicting-measurements");
});
