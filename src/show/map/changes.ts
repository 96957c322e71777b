import type { Id } from "../../base/finding.ts";
import type { Standing } from "../../judge/judge.ts";
import { labelOf } from "../../link/names/label.ts";
import type { Reported } from "../report/report.ts";
import { withheldIn } from "../withhold.ts";
import { counted } from "./section/boxes/words.ts";
import type { Net } from "./section/net/net.ts";
import { printIn } from "./section/net/print.ts";

/** The years in which sources came into print, in order; those of withheld sources are not told. */
export function yearsOf({ graph }: Reported): readonly number[] {
  const withheld = withheldIn(graph);
  const years = [...graph.sources.values()].flatMap((source) =>
    source.year === null || withheld(source.key) ? [] : [source.year],
  );
  return [...new Set(years)].sort((a, b) => a - b);
}

/** The last year before another in which anything came into print. */
export function yearBefore(years: readonly number[], year: number): number | null {
  return years.findLast((one) => one < year) ?? null;
}

const now: Readonly<Record<Standing, string>> = {
  stands: "now stands",
  open: "is now open",
  falls: "now falls",
  unsupported: "is now unsupported",
};

const was: Readonly<Record<Standing, string>> = {
  stands: "stood",
  open: "was open",
  falls: "fell",
  unsupported: "was unsupported",
};

/** What became of the claims of a dispute between two steps in time, and what came into print, in sentences. */
export function changesBetween(
  net: Net,
  about: ReadonlySet<Id>,
  before: Reported,
  after: Reported,
): readonly string[] {
  const [then, later] = [printIn(net, before), printIn(net, after)];
  const standing = (model: Reported, id: Id): Standing => model.judgement.standings.get(id) ?? "unsupported";
  const claims = net.claims.flatMap((id): readonly string[] => {
    if (!about.has(id) || !later.node(id)) return [];
    const name = `“${labelOf(net.graph, id)}”`;
    const is = standing(after, id);
    if (!then.node(id)) return [`${name} is named for the first time and ${now[is]}.`];
    const had = standing(before, id);
    return had === is ? [] : [`${name} ${was[had]} and ${now[is]}.`];
  });
  const fresh = [...about].filter((id) => !then.node(id) && later.node(id));
  const count = (kind: "step" | "label"): number => fresh.filter((id) => net.kindOf(id) === kind).length;
  const [steps, labels] = [count("step"), count("label")];
  const parts = [
    ...(steps > 0 ? [counted(steps, "argument")] : []),
    ...(labels > 0 ? [`${labels} seen or measured`] : []),
  ];
  return parts.length === 0 ? claims : [...claims, `New in print: ${parts.join(", ")}.`];
}
