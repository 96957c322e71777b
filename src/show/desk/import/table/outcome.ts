import type { Id } from "../../../../base/finding.ts";
import { coded, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { takenIn } from "../../../../link/edit/new-id.ts";
import type { ArtefactRecord } from "../../../../link/graph.ts";
import { isList } from "../../../../read/edit/written.ts";
import type { WrittenMap } from "../../../../read/edit/written.ts";
import type { Asked, RowChoice } from "./asked.ts";
import { troublesOf } from "./checked.ts";
import { measuredIn, thereAlready } from "./measured.ts";
import type { RowDraft } from "./rows.ts";
import { differencesTo, mergedInto } from "./things/merging.ts";
import type { FieldDiffers } from "./things/merging.ts";
import { thingsIn } from "./things/things.ts";
import type { ThingDraft } from "./things/things.ts";

/** A row whose artefact is there already, what can become of it, and what does. */
export interface TwinOutcome {
  readonly draft: ThingDraft;
  readonly record: ArtefactRecord;
  readonly why: "id" | "number" | "name";
  readonly choice: RowChoice;
  readonly missing: readonly FieldDiffers[];
  readonly differing: readonly FieldDiffers[];
  /** The artefact as it would be once merged. */
  readonly merged: WrittenMap;
}

/** A row, or a figure of one, that cannot come in. */
export interface RowFailure {
  readonly row: number;
  readonly column: number | null;
  readonly why: readonly Text[];
}

/** What becomes of every row of a table. */
export interface TableOutcome {
  readonly fresh: readonly RowDraft[];
  /** Measurements that are there already, with what they are called. */
  readonly there: readonly { readonly draft: RowDraft; readonly id: Id }[];
  readonly twins: readonly TwinOutcome[];
  /** Rows that are like something withheld. */
  readonly hidden: readonly number[];
  readonly failed: readonly RowFailure[];
  /** How many cells hold no figure. */
  readonly without: number;
}

/** Decides what becomes of each row: only what is read and tied without an error comes in. */
export function outcomeOf(asked: Asked): TableOutcome {
  return asked.list === "measurements" ? measurements(asked) : artefacts(asked);
}

function measurements(asked: Asked): TableOutcome {
  const { drafts, without } = measuredIn(asked);
  const idOf = thereAlready(asked.graph);
  const there: { readonly draft: RowDraft; readonly id: Id }[] = [];
  const fresh: RowDraft[] = [];
  for (const draft of drafts) {
    const id = draft.troubles.length === 0 ? idOf(draft.values) : null;
    if (id === null) fresh.push(draft);
    else there.push({ draft, id });
  }
  const { good, failed } = sorted(asked, fresh);
  return { fresh: good, there, twins: [], hidden: [], failed, without };
}

function artefacts(asked: Asked): TableOutcome {
  const { graph, choices, duplicates } = asked;
  const drafts = thingsIn(asked);
  const hidden = drafts.filter((one) => one.hidden).map(({ row }) => row);
  const open = drafts.filter((one) => !one.hidden);
  const fresh: RowDraft[] = [];
  const twins: TwinOutcome[] = [];
  const failed: RowFailure[] = [];
  for (const draft of open) {
    const record = draft.twin === null ? undefined : graph.records.get(draft.twin.id);
    if (draft.twin === null || record?.list !== "artefacts") {
      fresh.push(draft);
      continue;
    }
    const { missing, differing } = differencesTo(graph, record, draft.values);
    const choice = choices.get(draft.row) ?? { do: duplicates, take: [] };
    const merged = mergedInto(graph, record, draft.values, choice.do === "merge" ? choice.take : []);
    twins.push({ draft, record, why: draft.twin.why, choice, missing, differing, merged });
    if (choice.do === "add") fresh.push(draft);
  }
  const merging = twins.filter(({ choice }) => choice.do === "merge");
  const troubles = troublesOf(
    graph,
    "artefacts",
    merging.map(({ merged }) => merged),
  );
  merging.forEach(({ draft }, place) => {
    const why = draft.troubles.length > 0 ? draft.troubles : (troubles[place] ?? []);
    if (why.length > 0) failed.push({ row: draft.row, column: null, why });
  });
  const { good, failed: bad } = sorted(asked, fresh);
  const lost = new Set(failed.map(({ row }) => row));
  return {
    fresh: good,
    there: [],
    twins: twins.filter(({ draft }) => !lost.has(draft.row)),
    hidden,
    failed: [...failed, ...bad].toSorted((a, b) => a.row - b.row),
    without: 0,
  };
}

/** Drafts that can come in, and those that cannot, with the reasons. */
function sorted(
  { graph, list, as }: Asked,
  drafts: readonly RowDraft[],
): { readonly good: readonly RowDraft[]; readonly failed: readonly RowFailure[] } {
  const troubles = troublesOf(
    graph,
    list,
    drafts.map(({ values }) => values),
  );
  const there = takenIn(graph);
  const good: RowDraft[] = [];
  const failed: RowFailure[] = [];
  drafts.forEach((draft, place) => {
    const { id } = draft.values;
    const twice =
      typeof id === "string" && there.has(id) ? [say`Duplicate id \`${id}\`, expected another name`] : [];
    const found = [
      ...twice,
      ...(troubles[place] ?? []),
      ...(as === "table" ? beyondCells(draft.values) : []),
    ];
    const why = draft.troubles.length > 0 ? draft.troubles : found;
    if (why.length === 0) good.push(draft);
    else failed.push({ row: draft.row, column: draft.column, why });
  });
  return { good, failed: oncePerRow(failed) };
}

/** What is wrong with a row as a whole is told once, and not for each of its figures. */
function oncePerRow(failed: readonly RowFailure[]): readonly RowFailure[] {
  const told = new Map<string, RowFailure>();
  for (const one of failed) {
    const key = JSON.stringify([one.row, one.why]);
    told.set(key, told.has(key) ? { ...one, column: null } : one);
  }
  return [...told.values()];
}

/** A cell of a table holds one value. */
function beyondCells(values: WrittenMap): readonly Text[] {
  return Object.entries(values)
    .filter(([name, value]) => typeof value !== "string" && isList(value) && name !== "numbers")
    .map(
      ([name]) => say`Unexpected several values of ${coded(name)}, expected one: a table has one in a cell`,
    );
}
