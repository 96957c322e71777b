import type { Id } from "../../base/finding.ts";
import { comparedIn } from "../../judge/rules/measurements/ties/compared.ts";
import type { Compared } from "../../judge/rules/measurements/ties/compared.ts";
import { partsByWhole, takingOf, tiesOf } from "../../judge/rules/measurements/ties/tied.ts";
import type { Graph } from "../../link/graph.ts";
import { sumWords } from "../../link/ties/tie.ts";
import { differenceWords, valueWords } from "./si-words.ts";
import type { SIUnit } from "./si-words.ts";

/** What a dimension should equal by other dimensions of the thing, and whether it does. */
export interface TieLine {
  /** The sum in words: `π × diameter`. */
  readonly sum: string;
  /** What it comes to, in SI ± 1 s; a bound has its sign. */
  readonly expected: string;
  readonly disagrees: boolean;
  /** How much more or less the dimension is. */
  readonly by: string;
  readonly more: boolean;
  /** How many times what is allowed that is; null where nothing at all is allowed. */
  readonly times: number | null;
  /** Only a bound stands on one of the sides. */
  readonly bounded: boolean;
}

/** The ties of a dimension that can be told of, by the measurements it is taken from. */
export type Ties = (thing: Id, taken: readonly Id[], unit: SIUnit) => readonly TieLine[];

/** What is tied of some things, as far as it may be shown. */
export function tiesFor(graph: Graph, things: readonly Id[], shown: (id: Id) => boolean): Ties {
  const taking = takingOf(graph, shown);
  const parts = partsByWhole(graph);
  const all = things
    .flatMap((thing) => tiesOf(graph, thing, parts.get(thing) ?? []))
    .flatMap((tied) => comparedIn(graph, tied, taking) ?? []);
  return (thing, taken, unit) =>
    all
      .filter(({ whole }) => whole.thing === thing && whole.ids.some((id) => taken.includes(id)))
      .map((one) => lineOf(one, unit));
}

function lineOf({ tied, whole, expected, by, allowed, disagrees }: Compared, unit: SIUnit): TieLine {
  const sign = expected.open === null ? "" : expected.open === "more" ? "≥ " : "≤ ";
  const { form } = whole.measured.quantity;
  return {
    sum: sumWords(tied.tie),
    expected: sign + valueWords(expected.value, expected.open === null ? expected.u : null, unit),
    disagrees,
    by: differenceWords(Math.abs(by), unit),
    more: by > 0,
    times: allowed > 0 ? Math.abs(by) / allowed : null,
    bounded: expected.open !== null || form === "at-least" || form === "at-most",
  };
}
