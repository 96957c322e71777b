import type { Id } from "../../../../base/finding.ts";
import { formatNumber } from "../../../../base/quantity/quantity-print.ts";
import type { Derivations } from "../../../../derive/derive.ts";
import type { Graph } from "../../../../link/graph.ts";
import { labelText } from "../../../../link/names/label.ts";
import { withheldIn } from "../../../withhold.ts";
import type { Choice } from "./choice.ts";
import { say } from "../../../../base/text/said/said.ts";

/** The numbers of other derivations that one may take: none of those that lean on it. */
export function numbersFor(graph: Graph, { byId }: Derivations, id: Id): readonly Choice[] {
  const withheld = withheldIn(graph);
  const leans = (one: Id, met: ReadonlySet<Id>): boolean =>
    one === id ||
    (!met.has(one) &&
      (byId.get(one)?.used ?? []).some((other) => byId.has(other) && leans(other, new Set([...met, one]))));
  return [...byId.values()].flatMap((derived) =>
    withheld(derived.id) || leans(derived.id, new Set())
      ? []
      : Object.entries(derived.numbers).map(([name, { value }]) => ({
          value: `${derived.id}.${name}`,
          text: say`${labelText(graph, derived.id)}: ${name} ${formatNumber(value)}`,
        })),
  );
}
