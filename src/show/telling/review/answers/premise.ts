import type { Id } from "../../../../base/finding.ts";
import { row, say } from "../../../../base/text/said/said.ts";
import type { Said, Text } from "../../../../base/text/said/said.ts";
import type { Linked, MeasurementRecord } from "../../../../link/graph.ts";
import { labelText, withoutStop } from "../../../../link/names/label.ts";
import type { Citing, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { standingIn, standsWords } from "../dispute/standings.ts";
import { familiesOf, stanceOn, stanceVerb } from "../dispute/stances.ts";
import { asideFor, citesFor } from "../pieces/cites.ts";
import { claimInside, listed, words } from "../pieces/inlines.ts";
import { resultOf } from "./result.ts";

/**
 * What an argument leans on, as parts of a sentence: measurements of one dimension that are told in one place are told
 * together, and what was cited in the sentence already is not cited again.
 */
export function premisesOf(sight: Sight, ids: readonly Id[], cited: Citing["cites"]): readonly Inlines[] {
  const groups = new Map<string, Id[]>();
  for (const id of ids) {
    const record = sight.graph.records.get(id);
    const key = record?.list === "measurements" ? togetherBy(sight, record) : id;
    groups.set(key, [...(groups.get(key) ?? []), id]);
  }
  return [...groups.values()]
    .map((group) =>
      group.length > 1 ? sizesOf(sight, group, cited) : premiseOf(sight, group[0] ?? "", cited),
    )
    .filter((one) => one.length > 0);
}

/** What measurements that are told together have in common. */
function togetherBy(sight: Sight, { id, values }: MeasurementRecord): string {
  const place = citesFor(sight, id).map((one) => `${one.id} ${one.at ?? ""}`);
  const standing = sight.model.judgement.standings.get(id) ?? "";
  const dimension = sight.graph.dimensionName(values.dimension);
  return [dimension, values.state ?? "complete", values.via?.key ?? "", standing, ...place].join("\n");
}

/** Measurements of one dimension: `the gap of post 1 (1.62 m) and post 2 (1.70 m)`. */
function sizesOf(sight: Sight, ids: readonly Id[], cited: Citing["cites"]): Inlines {
  const { graph, model } = sight;
  const [first = ""] = ids;
  const records = ids.flatMap((id) => {
    const record = graph.records.get(id);
    return record?.list === "measurements" ? [record] : [];
  });
  const sizes = records.map(({ values }): Inlines => {
    const { of, value, between } = values;
    const size = between === undefined ? value.text : `${between}: ${value.text}`;
    return [say`${labelText(graph, of)} (${size})`];
  });
  const standing = model.judgement.standings.get(first) ?? "stands";
  const each: Inlines = standing === "stands" ? [] : [say`, each of which `, standsWords(standing)];
  const dimension = records[0]?.values.dimension ?? "";
  return [say`the ${dimension} of `, ...listed(sizes), ...asideFor(sight, first, cited), ...each];
}

/** One thing that an argument leans on, as a part of a sentence. */
export function premiseOf(sight: Sight, id: Id, cited: Citing["cites"]): Inlines {
  const { graph } = sight;
  const record = graph.records.get(id);
  const end = (): Inlines => [...asideFor(sight, id, cited), ...doubted(sight, id)];
  switch (record?.list) {
    case "observations":
      return [say`the observation `, words(withoutStop(record.values.text), sight.language, true), ...end()];
    case "measurements":
      return [measured(sight, record), ...end()];
    case "relations":
      return [orderOf(sight, record), ...end()];
    case "derivations":
      return [say`the computed result `, ...resultOf(sight, id), ...doubted(sight, id)];
    case "positions": {
      const { who, stance, claim } = record.values;
      const takes = stanceVerb(stance, "now", who.length > 1);
      return [
        say`what is said by `,
        ...familiesOf(sight, who),
        say`, who `,
        takes,
        ...stanceOn(sight, stance, claim),
        ...end(),
      ];
    }
    case "claims":
      if (!sight.model.judgement.counts(id)) return [];
      return [say`the claim `, ...claimInside(sight, id), say`, which `, standsWords(standingIn(sight, id))];
    default:
      return [];
  }
}

/** What is said of an order in time: `the order in time by which A came before B`. */
function orderOf({ graph }: Sight, { values }: Linked<"relations">): Said {
  const name = (it: string): Text => (graph.records.has(it) ? labelText(graph, it) : it);
  const same = values["same-time"];
  if (same) return say`the order in time by which ${row(same.map(name))} are of one time`;
  return say`the order in time by which ${name(values.earlier ?? "")} came before ${name(values.later ?? "")}`;
}

/** A measurement as it is written, with its state: `the diameter of the inner ring, about 25 ft`. */
function measured({ graph }: Sight, { values }: MeasurementRecord): Text {
  const { of, dimension, value, between, state } = values;
  const size = say`the ${dimension} of ${labelText(graph, of)}, ${value.text}`;
  const placed = between === undefined ? size : say`${size}, ${between}`;
  return state === undefined || state === "complete" ? placed : stateIn(placed, state);
}

function stateIn(size: Said, state: "preserved" | "reconstructed"): Said {
  return state === "preserved" ? say`${size} as preserved` : say`${size} as reconstructed`;
}

/** Evidence that does not hold, or may not, says so. */
export function doubted(sight: Sight, id: Id): Inlines {
  const standing = sight.model.judgement.standings.get(id);
  if (standing === undefined || standing === "stands") return [];
  return [say`, which `, standsWords(standing)];
}
