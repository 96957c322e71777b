import type { Id } from "../../base/finding.ts";
import { apart, comparable } from "../../judge/rules/measurements/compare.ts";
import type { MeasurementRecord } from "../../link/graph.ts";
import type { Text } from "../../base/text/said/said.ts";
import { authorOrCorpus, labelText } from "../../link/names/label.ts";
import type { Reported } from "../report/report.ts";
import { shownUnder, withheldIn } from "../withhold.ts";
import type { Reading } from "./reading.ts";
import { inOrder, readingOf } from "./reading.ts";
import { differenceWords, siUnitFor, siWords } from "./si-words.ts";
import type { SIUnit } from "./si-words.ts";
import { takingOf } from "./taken.ts";
import type { Taken, Taking } from "./taken.ts";
import { tiesFor } from "./ties.ts";
import type { TieLine, Ties } from "./ties.ts";

/** Two readings that differ by more than their uncertainties allow. */
export interface Clash {
  readonly ids: readonly [Id, Id];
  readonly who: readonly [Text, Text];
  /** The difference in words, and how many times what is allowed it is; null where nothing at all is allowed. */
  readonly by: string;
  readonly times: number | null;
}

/** One dimension of one thing between the same landmarks, with all its readings side by side. */
export interface Dimension {
  readonly name: string;
  readonly between: string | null;
  /** How it is taken, where the settings say so. */
  readonly how: string | null;
  readonly readings: readonly Reading[];
  /** The worst first. */
  readonly clashes: readonly Clash[];
  /** What it should equal by other dimensions. */
  readonly ties: readonly TieLine[];
  /** What a derivation would take: the value in SI, of how many readings; null where it takes none. */
  readonly taken: { readonly si: string; readonly readings: number } | null;
}

/** The dimensions of one thing: of the artefact itself, or of one of its parts. */
export interface Measured {
  readonly thing: Id;
  readonly name: Text;
  readonly dimensions: readonly Dimension[];
}

/** The dimensions of a thing and of each of its parts that has any, the thing itself first. */
export function dimensionsOf(model: Reported, id: Id): readonly Measured[] {
  const { graph } = model;
  const withheld = withheldIn(graph);
  const shown = shownUnder(model);
  const things = graph.withParts(id).filter((one) => !withheld(one));
  const taking = takingOf(model, id, true);
  const clashes = clashesIn(model, new Set(things));
  const ties = tiesFor(graph, things, shown);
  const groups = new Map<Id, Map<string, MeasurementRecord[]>>(things.map((thing) => [thing, new Map()]));
  for (const record of graph.list("measurements")) {
    const own = groups.get(record.values.of);
    if (!own || !shown(record.id)) continue;
    const key = `${graph.dimensionName(record.values.dimension)}\n${record.values.between ?? ""}`;
    own.set(key, [...(own.get(key) ?? []), record]);
  }
  return [...groups].flatMap(([thing, own]) => {
    const dimensions = [...own.values()].map((group) => dimensionOf(model, group, { taking, clashes, ties }));
    return dimensions.length > 0 ? [{ thing, name: labelText(graph, thing), dimensions }] : [];
  });
}

/** What is known of all the dimensions together. */
interface Beside {
  readonly taking: Taking;
  readonly clashes: readonly Found[];
  readonly ties: Ties;
}

function dimensionOf(
  model: Reported,
  group: readonly MeasurementRecord[],
  { taking, clashes, ties }: Beside,
): Dimension {
  const { graph } = model;
  const [first] = group;
  if (!first) throw new Error("dimensionOf: no reading");
  const name = graph.dimensionName(first.values.dimension);
  const unit = siUnitFor(
    graph.dimensionKind(name) ?? first.values.value.kind,
    group.map((one) => one.values.value.value),
  );
  const taken = taking.taken.find((one) => one.ids.some((id) => group.some((record) => record.id === id)));
  const own = clashes.filter(({ a }) => group.includes(a)).map((found) => clashOf(model, found, unit));
  const clashing = new Set(own.flatMap((one) => one.ids));
  return {
    name,
    between: first.values.between ?? null,
    how: graph.settings.dimensions.find((one) => one.name === name)?.taken ?? null,
    readings: inOrder(graph, group).map(({ record, original }) =>
      readingOf(model, record, {
        unit,
        original,
        entered: taken?.ids ?? [],
        leftOut: taking.leftOut.get(record.id) ?? null,
        clashing: clashing.has(record.id),
      }),
    ),
    clashes: own,
    ties: ties(first.values.of, taken?.ids ?? [], unit),
    taken: taken === undefined ? null : takenWords(taken, unit),
  };
}

function takenWords({ value, ids }: Taken, unit: SIUnit): Dimension["taken"] {
  return { si: siWords(value.quantity, unit), readings: ids.length };
}

interface Found {
  readonly a: MeasurementRecord;
  readonly b: MeasurementRecord;
  readonly by: number;
  readonly allowed: number;
}

/** Every pair of readings of these things that the rule `conflicting-measurements` would tell. */
function clashesIn(model: Reported, things: ReadonlySet<Id>): readonly Found[] {
  const { graph } = model;
  const withheld = withheldIn(graph);
  const found = comparable(model).flatMap((group) => {
    const own = group.filter((one) => things.has(one.values.of) && !withheld(one.id));
    return own.flatMap((a, at) =>
      own.slice(at + 1).flatMap((b) => {
        const told = apart(a, b, graph);
        return told !== null && told.by > told.allowed ? [{ a, b, ...told }] : [];
      }),
    );
  });
  // Where nothing at all is allowed, the larger difference is the worse.
  const times = ({ by, allowed }: Found): number => (allowed > 0 ? by / allowed : Infinity);
  return found.sort((one, other) =>
    times(one) === times(other) ? other.by - one.by : times(other) - times(one),
  );
}

function clashOf({ graph }: Reported, { a, b, by, allowed }: Found, unit: SIUnit): Clash {
  return {
    ids: [a.id, b.id],
    who: [authorOrCorpus(graph, a.id), authorOrCorpus(graph, b.id)],
    by: differenceWords(by, unit),
    times: allowed > 0 ? by / allowed : null,
  };
}
