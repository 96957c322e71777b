import { describe, expect, test } from "vitest";
import { plugins } from "../../../plugins/index.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { emptyMemo } from "../../../src/host/evaluate.ts";
import { corpus } from "../judging/standpoint-corpora.ts";
import { readUnder } from "../linking/supposed-model.ts";

/** Ten gaps of each of two rows, a search for a period in the one, and that period given for some gaps. */
function given(gaps: object, period: string, more: readonly object[] = []) {
  const row = (of: string, off: number) =>
    [41, 62, 58, 97, 33, 71, 49, 88, 55, 64].map((size, at) => ({
      id: `${of}-${at}`,
      of,
      dimension: "gap",
      between: `${at} and ${at + 1}`,
      value: `${size + off} cm`,
    }));
  const range = { low: "30 cm", high: "90 cm", draws: "1000" };
  const from = (of: string) => ({ gaps: { of, dimension: "gap" } });
  const files = corpus({
    artefacts: ["north", "south"].map((id) => ({ id, name: `the ${id} row` })),
    measurements: [
      ...row("north", 0),
      ...row("south", 7),
      { id: "again", of: "north", dimension: "gap", between: "0 and 1", value: "41.2 cm" },
    ],
    derivations: [
      { id: "found", plugin: "spacing", inputs: from("north"), parameters: range },
      ...more,
      { id: "tested", plugin: "spacing", inputs: { gaps }, parameters: { period: { number: period } } },
    ],
  });
  const { byId } = readUnder(files, plugins, emptyMemo()).model.derivations;
  const tested = byId.get("tested");
  return { status: tested?.status, reason: tested?.reason ?? null, why: inEnglish(tested?.why ?? "") };
}

describe("a period that another derivation gives is known beforehand", () => {
  const refused = {
    status: "refused",
    reason: "unit-from-these-data",
    why: "The period was found in these data, expected one known beforehand",
  };

  test("for other gaps than it was found in", () => {
    expect(given({ of: "south", dimension: "gap" }, "found.period").status).toBe("computed");
  });

  test("not for those, some of them, nor another reading of one", () => {
    expect(given({ of: "north", dimension: "gap" }, "found.period")).toEqual(refused);
    expect(given({ of: ["south", "north"], dimension: "gap" }, "found.period")).toEqual(refused);
    const one = ["again", ...Array.from({ length: 10 }, (_, at) => `south-${at}`)];
    expect(given(one, "found.period")).toEqual(refused);
  });

  test("nor by way of a third derivation", () => {
    const between = {
      id: "between",
      plugin: "spacing",
      inputs: { gaps: { of: "south", dimension: "gap" } },
      parameters: { period: { number: "found.period" } },
    };
    expect(given({ of: "north", dimension: "gap" }, "between.period", [between])).toEqual(refused);
  });
});
