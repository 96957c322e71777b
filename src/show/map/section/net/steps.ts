import type { Id } from "../../../../base/finding.ts";
import type { Graph } from "../../../../link/graph.ts";
import { withheldIn } from "../../../withhold.ts";

/** One step from premises to a claim or against something, as it is recorded; nothing withheld is named in it. */
export interface Step {
  readonly id: Id;
  /** The record whose sheet tells of it: an argument, the number that bears on a claim, or a position. */
  readonly from: Id;
  readonly how: "argument" | "bearing" | "testimony";
  readonly because: readonly Id[];
  readonly therefore: Id | null;
  readonly against: readonly Id[];
  readonly scheme: string | null;
  /** Astronomical year since when it is in print; null for the corpus's own reasoning. */
  readonly year: number | null;
}

/** All steps in corpus order: arguments, numbers that bear on claims, and scholars' words where testimony counts. */
export function stepsOf(graph: Graph): readonly Step[] {
  const withheld = withheldIn(graph);
  const shown = (ids: readonly Id[]): readonly Id[] => [...new Set(ids)].filter((id) => !withheld(id));
  const year = (id: Id): number | null => graph.provenance(id).year;
  const made: Step[] = graph.list("arguments").map(({ id, values }) => ({
    id,
    from: id,
    how: "argument",
    because: shown(values.because),
    therefore: values.therefore ?? null,
    against: shown(values.against ?? []),
    scheme: values.scheme ?? null,
    year: year(id),
  }));
  for (const { id, values } of graph.list("derivations")) {
    for (const entry of distinctClaims(values["bears-on"] ?? [])) {
      // A number that can only dispute stands against the claim; any other stands under it and says in a word which.
      const supports = entry.supports !== undefined;
      made.push({
        id: `${id}>${entry.claim}`,
        from: id,
        how: "bearing",
        because: [id],
        therefore: supports ? entry.claim : null,
        against: supports ? [] : [entry.claim],
        scheme: null,
        year: year(id),
      });
    }
  }
  if (graph.settings.testimony) made.push(...testimony(graph));
  const gone = (step: Step): boolean =>
    withheld(step.id) || (step.therefore === null ? step.against.length === 0 : withheld(step.therefore));
  return made.filter((step) => !gone(step));
}

interface Entry {
  readonly claim: Id;
  readonly supports?: unknown;
}

/** Several entries for one claim make one argument, for they share its name. */
function distinctClaims(entries: readonly Entry[]): readonly Entry[] {
  const byClaim = new Map<Id, Entry>();
  for (const entry of entries)
    if (byClaim.get(entry.claim)?.supports === undefined) byClaim.set(entry.claim, entry);
  return [...byClaim.values()];
}

function testimony(graph: Graph): readonly Step[] {
  return graph.list("positions").flatMap(({ id, values }): readonly Step[] => {
    if (values.stance !== "holds" && values.stance !== "rejects") return [];
    const holds = values.stance === "holds";
    return [
      {
        id: `${id}>${values.claim}`,
        from: id,
        how: "testimony",
        because: [id],
        therefore: holds ? values.claim : null,
        against: holds ? [] : [values.claim],
        scheme: null,
        year: values.year ?? graph.provenance(id).year,
      },
    ];
  });
}
