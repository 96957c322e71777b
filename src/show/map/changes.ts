import type { Id } from "../../base/finding.ts";
import { count, row, say } from "../../base/text/said/said.ts";
import type { Said } from "../../base/text/said/said.ts";
import type { Standing } from "../../judge/judge.ts";
import { quotedLabel } from "../../judge/rules/tell.ts";
import type { Reported } from "../report/report.ts";
import { withheldIn } from "../withhold.ts";
import { argumentsIn } from "./section/boxes/fold-words.ts";
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

const now: Readonly<Record<Standing, Said>> = {
  stands: say`now stands`,
  open: say`is now open`,
  falls: say`now falls`,
  unsupported: say`is now unsupported`,
};

const was: Readonly<Record<Standing, Said>> = {
  stands: say`stood`,
  open: say`was open`,
  falls: say`fell`,
  unsupported: say`was unsupported`,
};

/** What became of the claims of a dispute between two steps in time, and what came into print, in sentences. */
export function changesBetween(
  net: Net,
  about: ReadonlySet<Id>,
  before: Reported,
  after: Reported,
): readonly Said[] {
  const [then, later] = [printIn(net, before), printIn(net, after)];
  const standing = (model: Reported, id: Id): Standing => model.judgement.standings.get(id) ?? "unsupported";
  const claims = net.claims.flatMap((id): readonly Said[] => {
    if (!about.has(id) || !later.node(id)) return [];
    const name = quotedLabel(net.graph, id);
    const is = standing(after, id);
    if (!then.node(id)) return [say`${name} is named for the first time and ${now[is]}.`];
    const had = standing(before, id);
    return had === is ? [] : [say`${name} ${was[had]} and ${now[is]}.`];
  });
  const fresh = [...about].filter((id) => !then.node(id) && later.node(id));
  const those = (kind: "step" | "label"): number => fresh.filter((id) => net.kindOf(id) === kind).length;
  const [steps, labels] = [those("step"), those("label")];
  const parts = [
    ...(steps > 0 ? [argumentsIn(steps)] : []),
    ...(labels > 0 ? [say`${count(labels)} seen or measured`] : []),
  ];
  return parts.length === 0 ? claims : [...claims, say`New in print: ${row(parts, "comma")}.`];
}
