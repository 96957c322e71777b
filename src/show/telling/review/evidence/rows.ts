import type { Id } from "../../../../base/finding.ts";
import { yearWords } from "../../../../base/date/year-words.ts";
import { byText } from "../../../../base/order.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Said, Text } from "../../../../base/text/said/said.ts";
import type { MeasurementRecord, ObservationRecord } from "../../../../link/graph.ts";
import { labelText } from "../../../../link/names/label.ts";
import { choiceName } from "../../../../read/grammar/field-words.ts";
import type { Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { familiesOf } from "../dispute/stances.ts";
import { citesFor, citesOf } from "../pieces/cites.ts";
import { listed, words } from "../pieces/inlines.ts";
import { inSeries, ofSeries, spanOf } from "./series.ts";
import type { Series } from "./series.ts";
import { stateOf } from "./state.ts";
import type { Evidence } from "./state.ts";

/** Evidence as rows: of what, what, as recorded, state, basis, year, source; in the order of the things, seen before measured. Many equal readings are one row. */
export function rowsFor(
  sight: Sight,
  things: readonly Id[],
  evidence: readonly Evidence[],
): readonly (readonly Inlines[])[] {
  const place = (one: Evidence): number => Math.min(...thingsOf(one).map((id) => order(things, id)));
  const key = (one: Evidence): string =>
    one.list === "measurements" ? `2${sight.graph.dimensionName(one.values.dimension)}` : "1";
  const inOrder = evidence.toSorted(
    (a, b) => place(a) - place(b) || byText(key(a), key(b)) || yearOf(sight, a) - yearOf(sight, b),
  );
  return inSeries(sight, inOrder).map((one) =>
    "readings" in one ? seriesRow(sight, one) : rowFor(sight, one[0]),
  );
}

/** The row of a series: as that of its first reading, but for what it is of and what was read. */
function seriesRow(sight: Sight, series: Series): readonly Inlines[] {
  const [first] = series.readings;
  const [, , , ...rest] = rowFor(sight, first);
  return [[ofSeries(sight, series)], [first.values.dimension], [spanOf(series)], ...rest];
}

const order = (things: readonly Id[], id: Id): number => {
  const at = things.indexOf(id);
  return at < 0 ? things.length : at;
};

const thingsOf = ({ values }: Evidence): readonly Id[] =>
  typeof values.of === "string" ? [values.of] : values.of;

function yearOf({ graph }: Sight, { id, values }: Evidence): number {
  return values.year ?? graph.provenance(id).year ?? Infinity;
}

function rowFor(sight: Sight, one: Evidence): readonly Inlines[] {
  const { graph, withheld } = sight;
  const of = listed(
    thingsOf(one)
      .filter((id) => !withheld(id))
      .map((id) => [labelText(graph, id)]),
  );
  const year = yearOf(sight, one);
  const { basis } = one.values;
  const told: readonly [Inlines, Inlines, Text | null] =
    one.list === "measurements"
      ? [[measuredAs(one)], [one.values.value.text], stateOf(one)]
      : [
          [one.values.feature ?? say`observation`],
          [words(one.values.text, sight.language)],
          seen[one.values.present ?? "true"],
        ];
  const [what, recorded, state] = told;
  return [
    of,
    what,
    recorded,
    stateCell(sight, one.id, state),
    basis === undefined ? [] : [choiceName(basis)],
    year === Infinity ? [] : [yearWords(year)],
    sourceCell(sight, one.id),
  ];
}

function measuredAs({ values }: MeasurementRecord): Text {
  const { dimension, between } = values;
  return between === undefined ? dimension : say`${dimension}, ${between}`;
}

const seen: Readonly<Record<NonNullable<ObservationRecord["values"]["present"]>, Said | null>> = {
  true: null,
  false: say`looked for and not there`,
  unclear: say`looked for, cannot be told`,
  "not-reported": say`passed over in silence`,
};

/** The state, and how the evidence stands where it does not hold. */
function stateCell({ model }: Sight, id: Id, state: Text | null): Inlines {
  const standing = model.judgement.standings.get(id);
  const told: Inlines = state === null ? [] : [state];
  if (standing === undefined || standing === "stands") return told;
  return [...told, ...(state === null ? [] : ["; "]), { is: "standing", standing }];
}

/** Where it is said and in what it was read; whose it is, where that is somebody else than the source's authors. */
function sourceCell(sight: Sight, id: Id): Inlines {
  const { graph } = sight;
  const record = graph.records.get(id);
  const cites = citesFor(sight, id);
  const via =
    record && "via" in record.values && record.values.via ? citesOf(sight, [record.values.via]) : [];
  const { scholars, sources } = graph.provenance(id);
  const authors = sources.flatMap((key) => graph.authorsOf(key));
  const by = scholars.filter((one) => !authors.includes(one));
  const source: Inlines = cites.length === 0 ? [] : [{ is: "citing", manner: "sentence", cites }];
  const read: Inlines =
    via.length === 0 ? [] : [say`, as reported by `, { is: "citing", manner: "sentence", cites: via }];
  const who = familiesOf(sight, by);
  return [...who, ...(who.length > 0 && source.length > 0 ? [", "] : []), ...source, ...read];
}
