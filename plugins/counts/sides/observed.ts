import { refuseFewer, say, type LeftOut, type Observed, type Refusal } from "../../../src/plugin.ts";
import { sideOf } from "./side.ts";
import type { Sides } from "./side.ts";

const reasons = {
  unclear: say`cannot be told`,
  "not-reported": say`not reported, which is not the same as absent`,
} as const;

/** Two sides of observations: of those that could tell, the share in which the feature was seen. */
export function sidesObserved(first: readonly Observed[], second: readonly Observed[]): Sides | Refusal {
  const all = [first, second];
  const leftOut = all.flat().flatMap((one): readonly LeftOut[] => {
    const { id, present } = one;
    return present === "true" || present === "false" ? [] : [{ id, why: reasons[present] }];
  });
  const telling = all.map((side) => side.filter(({ present }) => present === "true" || present === "false"));
  const few = telling.map((side) => refuseFewer(side.length, 1, say`observations on a side that can tell`));
  const bad = few.find((one) => one !== null);
  if (bad) return bad;
  const [one, other] = telling.map((side) =>
    sideOf(
      side.map(({ present }) => ({ count: present === "true" ? 1 : 0, exposure: 1 })),
      [...new Set(side.flatMap(({ artefacts }) => artefacts))],
    ),
  );
  if (one === undefined || other === undefined) throw new Error("sidesObserved: expected two sides");
  return {
    of: "shares",
    first: one,
    second: other,
    per: "thing looked at",
    unit: "1",
    size: 1,
    leftOut,
    warnings: [],
  };
}
