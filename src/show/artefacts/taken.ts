import type { Id } from "../../base/finding.ts";
import type { Text } from "../../base/text/said/said.ts";
import { select } from "../../derive/prepare/select.ts";
import type { Measured } from "../../plugin.ts";
import type { Reported } from "../report/report.ts";
import { shownUnder } from "../withhold.ts";

/** The one value of a dimension of a thing that a derivation would take, and the readings it was made of. */
export interface Taken {
  readonly thing: Id;
  readonly dimension: string;
  readonly between: string | null;
  readonly value: Measured;
  readonly ids: readonly Id[];
}

/** What a derivation takes of things and what it leaves out, with the reasons (format.md 4). */
export interface Taking {
  readonly taken: readonly Taken[];
  readonly leftOut: ReadonlyMap<Id, Text>;
}

/** What a derivation would take of a thing and its parts that names no preference; nothing withheld enters. */
export function takingOf(model: Reported, thing: Id, parts: boolean, supplied = false): Taking {
  const { graph } = model;
  const input = {
    of: thing,
    parts: String(parts),
    ...(supplied ? { state: "reconstructed" } : {}),
  };
  const { selected, leftOut } = select(input, { graph, counts: shownUnder(model), choices: [] });
  return {
    taken: selected.map(({ measured, ids }) => {
      const first = graph.records.get(ids[0] ?? measured.id);
      return {
        thing: measured.artefact,
        dimension: measured.dimension,
        between: first?.list === "measurements" ? (first.values.between ?? null) : null,
        value: measured,
        ids,
      };
    }),
    leftOut: new Map(leftOut.map((one) => [one.id, one.why])),
  };
}
