import { count, say } from "../../../base/text/said/said.ts";
import { madeBefore } from "../../../link/edit/action.ts";
import type { Action } from "../../../link/edit/action.ts";
import type { WrittenMap } from "../../../read/edit/written.ts";
import type { Graph } from "../../../link/graph.ts";
import type { GridDraft } from "./draft.ts";
import { rowsRead } from "./read.ts";
import type { RowWeighed } from "./weighed.ts";

/** The one step that writes the good rows of a grid, and the rows that it writes. */
export interface GridStep {
  readonly action: Action;
  readonly keys: readonly number[];
  /** Names of artefacts that it makes. */
  readonly made: readonly string[];
}

/**
 * The good rows of a grid as one step of the desk, new artefacts first; null where there is none. `weighed` tells which rows
 * would be lost once they stand among the others.
 */
export function stepFor(graph: Graph, draft: GridDraft, weighed: readonly RowWeighed[]): GridStep | null {
  const lost = new Set(weighed.flatMap(({ key, troubles }) => (troubles.length > 0 ? [key] : [])));
  const good = rowsRead(graph, draft).filter(({ read }) => read.troubles.length === 0 && !lost.has(read.key));
  if (good.length === 0) return null;
  const made = [...new Set(good.flatMap(({ said }) => (said.of?.is === "fresh" ? [said.of.name] : [])))];
  const records = good.map(({ said: { of, values } }): WrittenMap =>
    of?.is === "fresh" ? { ...values, of: madeBefore(made.indexOf(of.name)) } : values,
  );
  const measured = { do: "add", list: "measurements", records } as const;
  const keys = good.map(({ read }) => read.key);
  if (made.length === 0) return { action: measured, keys, made };
  const things = {
    do: "add",
    list: "artefacts",
    records: made.map((name): WrittenMap => ({ name })),
  } as const;
  const called =
    records.length === 1
      ? say`New measurement of a new artefact`
      : made.length === 1
        ? say`${count(records.length)} new measurements, with one new artefact`
        : say`${count(records.length)} new measurements, with new artefacts`;
  return { action: { do: "together", actions: [things, measured], called }, keys, made };
}
