import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { build } from "../../../src/build.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { corpus } from "../judging/standpoint-corpora.ts";

function told(measurement: object, settings: object = {}) {
  const { model, findings } = build(
    corpus(
      {
        artefacts: [{ id: "bowl", name: "the bowl" }],
        measurements: [{ id: "wide", of: "bowl", dimension: "width", value: "20.0 cm", ...measurement }],
      },
      settings,
    ),
    plugins,
    emptyMemo(),
  );
  const errors = findings.filter(({ level }) => level === "error").map(({ message }) => inEnglish(message));
  return { errors, model };
}

describe("an error as a share of what is measured", () => {
  test.each(["1 %", "0.5 %", "0.02", "0"])("%s is one", (of) => {
    expect(told({ "shares-error": { with: "tape", of } }).errors).toEqual([]);
    const { errors, model } = told({}, { reproducibility: of });
    expect(errors).toEqual([]);
    expect(model?.graph.settings.reproducibility).toBeCloseTo(
      of.endsWith("%") ? Number.parseFloat(of) / 100 : Number(of),
      12,
    );
  });

  // 2 mm read as a pure number would be 0.002, and so 0.2 % of anything.
  test.each(["2 mm", "1 g", "5", "150 %", "-1 %", "≥ 1 %"])(
    "%s is none, and is told, not taken for one",
    (of) => {
      const expected = [`Unexpected share \`${of}\`, expected one such as \`1 %\``];
      const measured = told({ "shares-error": { with: "tape", of } });
      expect(measured.errors).toEqual(expected);
      expect(measured.model?.graph.list("measurements")).toEqual([]);
      for (const name of ["reproducibility", "approximate"]) {
        const { errors, model } = told({}, { [name]: of });
        expect(errors).toEqual(expected);
        expect(model?.graph.settings.reproducibility).toBe(0.01);
        expect(model?.graph.settings.approximate).toBe(0.025);
      }
    },
  );

  test("what a value was rounded to is of its own kind", () => {
    expect(told({ "to-nearest": "5 mm" }).errors).toEqual([]);
    expect(told({ "to-nearest": "5 g" }).errors).toEqual([
      "Unexpected mass `5 g`, expected a length for width",
    ]);
  });
});
