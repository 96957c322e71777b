import type { Unit } from "../../base/unit/unit.ts";
import type { Graph } from "../../link/graph.ts";
import { withheldIn } from "../../link/withheld.ts";

/**
 * Other sizes that go by a name of a unit: units of the corpus that share one with it, and the built-in unit that it hides.
 * What comes from a source that is withheld is not among them.
 */
export function variantsOf(graph: Graph, name: string): readonly Unit[] {
  const { units, quantities } = graph.settings;
  const own = units.find((one) => one.name === name);
  if (own === undefined) return [];
  const withheld = withheldIn(graph);
  const names = new Set(own.names.map(plain));
  const alike = units.filter(
    (one) => one !== own && one.names.some((other) => names.has(plain(other))) && !one.from.some(withheld),
  );
  const hidden = quantities.units.hidden.flatMap(({ builtIn, by }) => (by.name === name ? [builtIn] : []));
  return [...alike, ...hidden].filter((one) => one.kind === own.kind && one.size !== own.size);
}

function plain(name: string): string {
  return name
    .normalize("NFC")
    .toLowerCase()
    .replace(/[\s–_-]+/gu, " ");
}
