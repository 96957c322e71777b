import type { Id } from "../../../base/finding.ts";
import type { Reported } from "../../report/report.ts";
import { shownUnder } from "../../withhold.ts";
import { barUnits } from "./bar.ts";
import type { BarUnit } from "./bar.ts";
import { drawnOf } from "./drawn.ts";
import type { Drawn, Undrawn } from "./drawn.ts";

/** Things drawn to one scale: groups that each stand side by side, what could not be drawn, and units for a scale bar. */
export interface Drawing {
  readonly groups: readonly (readonly Drawn[])[];
  readonly undrawn: readonly Undrawn[];
  readonly units: readonly BarUnit[];
}

/** A drawing of some things side by side; null where none of them has a shape. */
export function drawingOf(model: Reported, ids: readonly Id[]): Drawing | null {
  return drawingIn(model, [ids]);
}

/** A drawing of a thing, and below it of its parts: the record gives them no places, so they stand in rows. */
export function drawingWithParts(model: Reported, id: Id): Drawing | null {
  return drawingIn(model, [[id], model.graph.withParts(id).slice(1)]);
}

function drawingIn(model: Reported, groups: readonly (readonly Id[])[]): Drawing | null {
  const { graph } = model;
  const shownOf = shownUnder(model);
  const undrawn: Undrawn[] = [];
  const drawn = groups.map((group) =>
    [...new Set(group)].flatMap((id): readonly Drawn[] => {
      const record = graph.records.get(id);
      if (record?.list !== "artefacts" || !shownOf(id)) return [];
      const one = drawnOf(model, record);
      if (one === null) return [];
      if ("outline" in one) return [one];
      undrawn.push(one);
      return [];
    }),
  );
  const shown = drawn.filter((group) => group.length > 0);
  if (shown.length === 0 && undrawn.length === 0) return null;
  return { groups: shown, undrawn, units: barUnits(model) };
}
