import { expect, test } from "vitest";
import { resultantAbove } from "../../../src/plugin.ts";

test("two even phases lie within an angle of each other as often as that angle is of half a turn", () => {
  for (const degrees of [0, 0.09, 1.8, 60, 90, 180]) {
    const length = Math.cos((degrees / 2) * (Math.PI / 180));
    expect(resultantAbove(2, length)).toBeCloseTo(degrees / 180, 9);
  }
});
