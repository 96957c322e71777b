import type { Id } from "../../../base/finding.ts";
import { objectOf } from "../../../base/json.ts";
import { byText } from "../../../base/order.ts";
import type { Fate, Fates } from "../../../judge/standpoints/told/apart.ts";
import type { Alternative, Component } from "../../../judge/standpoints/component.ts";
import type { Fit } from "../../../judge/standpoints/scholars/fit.ts";
import type { Report } from "../../report/schema.ts";
import { standpointsIn } from "./found.ts";
import type { Judged } from "./found.ts";

type Reported = NonNullable<Report["standpoints"]>;
type ReportedFit = Reported["fits"][number];

/** The coherent standpoints as the machine-readable result has them. */
export function standpointsReport(model: Judged): Reported {
  const { count, exact, components, joint, fits, unknown } = standpointsIn(model);
  return {
    count: String(count),
    exact,
    components: components.map(componentOf),
    joint: objectOf(
      joint.map(({ claim, on, inAll, inSome }) => [claim, { on: [...on], inAll, inSome }] as const),
    ),
    fits: fitsOf(fits),
    unknown: unknown.toSorted(byText),
  };
}

function componentOf(one: Component): Reported["components"][number] {
  return {
    about: one.about.map(({ kind, between }) => ({ kind, between: [...between] })),
    count: String(one.count),
    exact: one.exact,
    claims: objectOf([...one.accepted].map(([id, { inAll, inSome }]) => [id, { inAll, inSome }] as const)),
    alternatives: one.alternatives.map(alternativeOf),
    fits: fitsOf(one.fits),
    unknown: one.unknown.toSorted(byText),
  };
}

function alternativeOf({
  fates,
  ways,
  toldBy,
  fits,
}: Alternative): Reported["components"][number]["alternatives"][number] {
  return {
    ways,
    toldBy: objectOf(toldBy.map((id) => [id, fates.get(id) ?? "falls"] as const)),
    stands: those(fates, "stands"),
    open: those(fates, "open"),
    falls: those(fates, "falls"),
    fits: fitsOf(fits),
  };
}

function those(fates: Fates, wanted: Fate): Id[] {
  return [...fates].flatMap(([id, fate]) => (fate === wanted ? [id] : [])).sort(byText);
}

function fitsOf(fits: readonly Fit[]): ReportedFit[] {
  return fits
    .map(({ scholar, positions, but }) => ({
      scholar,
      positions,
      but: but && { claim: but.claim, stance: but.stance, standing: but.standing },
    }))
    .sort((a, b) => byText(a.scholar, b.scholar));
}
