import { describe, expect, test } from "vitest";
import { dirOf } from "../../../src/app/parts/link.tsx";
import { languageName, methodName } from "../../../src/app/words/index.ts";
import { conditionParts, numberName, printed } from "../../../src/app/words/shown/numbers.ts";

describe("what the files write short is written out", () => {
  test("languages by their names, and what is no code as it is", () => {
    expect(languageName("ar")).toBe("Arabic");
    expect(languageName("grc")).toBe("Ancient Greek");
    expect(languageName("not a code")).toBe("not a code");
  });

  test("methods and numbers without the strokes of a file", () => {
    expect(methodName("unit-fit")).toBe("Unit fit");
    expect(numberName("p-adjusted")).toBe("adjusted p");
    expect(numberName("a-stranger's-number")).toBe("a stranger's number");
  });

  test("conditions, their comparisons and the words between by turns", () => {
    expect(conditionParts("k within 1.9..2.1 and compare-p > 0.05, or p < 0.01")).toEqual([
      "k within 1.9 to 2.1",
      " and ",
      "p of likeness > 0.05",
      ", or ",
      "p < 0.01",
    ]);
    expect(conditionParts("k within -2 .. -1")).toEqual(["k within -2 to -1"]);
  });

  test("powers of ten and shares", () => {
    expect(printed("p = 2.0e-8, 5 % of sets")).toBe("p = 2.0\u00a0×\u00a010⁻⁸, 5\u00a0% of sets");
    expect(printed("house12 e-mail 1985")).toBe("house12 e-mail 1985");
  });
});

test("a foreign name does not turn round the words that follow it", () => {
  expect(dirOf("سلمى حدّاد holds: an open ring")).toBe("ltr");
  expect(dirOf("\u2068حدّاد 1988\u2069's argument from metrology")).toBe("ltr");
  expect(dirOf("حدّاد 1988, ص ٨٤")).toBe("auto");
  expect(dirOf("لا نار ولا جدار ولا سقف (Merrow)")).toBe("rtl");
  expect(dirOf("Edith Ferrant")).toBe("auto");
});
