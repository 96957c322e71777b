import type { Id } from "../../../base/finding.ts";
import { byText } from "../../../base/order.ts";
import type { Judgement } from "../../../judge/judge.ts";
import { linesTo } from "../../../judge/resting/lines/lines.ts";
import type { LossSets } from "../../../judge/resting/loss-sets.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Report } from "../../report/schema.ts";
import { withheldIn } from "../../withhold.ts";

type Told = Pick<Report["standings"][string], "lossSets" | "lossSetsUpTo" | "lines">;

/** The loss sets and the lines of a claim as the machine-readable result has them, where they were asked for. */
export function restingReport(
  model: {
    readonly graph: Graph;
    readonly judgement: Judgement;
    readonly lossSets?: ReadonlyMap<Id, LossSets> | null;
  },
  id: Id,
): Told {
  const found = model.lossSets?.get(id);
  const lines = found ? linesTo(model.graph, model.judgement, id) : null;
  if (!found || !lines) return {};
  const withheld = withheldIn(model.graph);
  const those = (ids: readonly Id[]): (Id | null)[] => ids.map((one) => (withheld(one) ? null : one));
  // Where nothing tells, a place in an order would tell of a name.
  const set = (ids: readonly Id[]): (Id | null)[] => {
    const shown = ids.filter((one) => !withheld(one));
    return [...shown, ...ids.slice(shown.length).map(() => null)];
  };
  return {
    lossSets: distinctly(found.sets.map(set)),
    lossSetsUpTo: found.upTo,
    lines: {
      count: lines.paths.length,
      paths: lines.paths.map(those),
      through: those(lines.singlePoints),
      circles: lines.circles.map(those),
    },
  };
}

/** Sets that differ only in what is withheld are told once, the smaller first. */
function distinctly(sets: readonly (Id | null)[][]): (Id | null)[][] {
  const told = new Map(sets.map((set) => [set.map((one) => one ?? "\uffff").join("\n"), set]));
  return [...told]
    .sort(([a, one], [b, other]) => one.length - other.length || byText(a, b))
    .map(([, set]) => set);
}
