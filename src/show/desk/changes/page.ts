import { ownTexts } from "../../../link/edit/theirs.ts";
import type { Graph } from "../../../link/graph.ts";
import { labelOf } from "../../../link/names/label.ts";
import { saysSame } from "../../../read/edit/written.ts";
import { kindOf } from "../../../read/grammar/kinds.ts";
import { settingsChanges, sourceChanges } from "./beside.ts";
import { fieldChanges } from "./fields.ts";
import type { FieldChange, Reading } from "./fields.ts";
import { filesChanged, unreadFiles } from "./files.ts";
import { hiddenIn, withholding } from "./hidden.ts";
import type { Hidden } from "./hidden.ts";
import { paired } from "./pairs.ts";
import type { Changes, Compared, RecordChange, StandingChange } from "./told.ts";
import { recordsWritten, textsIn, withTexts } from "./written.ts";
import type { RecordWritten } from "./written.ts";

/** Compares two times of a corpus; nothing that either of them withholds is told. */
export function changesBetween(was: Compared, is: Compared): Changes {
  const before = { ...was, graph: withholding(was.graph, [is.graph]) };
  const after = { ...is, graph: withholding(is.graph, [was.graph]) };
  const [old, now] = [before.graph, after.graph];
  const hidden = hiddenIn(old, now);
  const { both, added, taken, renamed } = paired(recordsWritten(old), recordsWritten(now));
  const reading = (graph: Graph, record: RecordWritten): Reading => ({ graph, record, hidden });
  const shown = (record: RecordWritten): boolean => !hides(record, hidden);
  const others = both.filter(({ old, now }) => isOther(old, now, renamed));
  const unread = unreadFiles(ownTexts(now, after.files), new Set(taken.map((one) => one.file)));
  const records = [
    ...others.flatMap((pair) => {
      if (!shown(pair.old) || !shown(pair.now)) return [];
      const fields = fieldChanges(reading(old, pair.old), reading(now, pair.now), renamed);
      const moved = pair.old.file === pair.now.file ? null : pair.old.file;
      const lost = pair.old.known !== null && pair.now.known === null;
      if (fields.length === 0 && moved === null && !lost) return [];
      const one = lost ? told(old, pair.old, "unread", fields) : told(now, pair.now, "changed", fields);
      return [{ ...one, file: pair.now.file, from: moved }];
    }),
    ...added.filter(shown).map((one) => told(now, one, "added", fieldChanges(null, reading(now, one)))),
    ...taken
      .filter((one) => shown(one) && !unread.some(({ file }) => file === one.file))
      .map((one) => told(old, one, "taken", fieldChanges(reading(old, one), null))),
    ...sourceChanges(before, after, hidden),
    ...settingsChanges(old, now, hidden),
  ];
  const recorded = [
    ...others.flatMap((pair) => [pair.old.file, pair.now.file]),
    ...[...added, ...taken, ...records].map((one) => one.file),
  ];
  return {
    records,
    standings: standingChanges(before, after, hidden),
    files: [
      ...unread,
      ...filesChanged(before.files, after.files, [...recorded, ...unread.map(({ file }) => file)]),
    ],
  };
}

/** Whether a record stands elsewhere, says something else, or can no longer be read. */
function isOther(old: RecordWritten, now: RecordWritten, renamed: (text: string) => string): boolean {
  return (
    old.file !== now.file ||
    (old.named && old.id !== now.id) ||
    (old.known === null) !== (now.known === null) ||
    !saysSame(withTexts(old.fields, renamed), now.fields)
  );
}

/** Whether a record stays out of every output; one that could not be read does when it names what does. */
function hides(record: RecordWritten, hidden: Hidden): boolean {
  return hidden.names(record.id) || (record.known === null && textsIn(record.fields).some(hidden.names));
}

function told(
  graph: Graph,
  record: RecordWritten,
  how: RecordChange["how"],
  fields: readonly FieldChange[],
): RecordChange {
  return {
    id: how === "taken" || how === "unread" || record.known === null ? null : record.id,
    kind: record.list === null ? "record" : kindOf(record.list).singular,
    text: record.known ? labelOf(graph, record.id) : record.id === "" ? record.file : record.id,
    how,
    from: null,
    file: record.file,
    fields,
  };
}

function standingChanges(before: Compared, after: Compared, hidden: Hidden): readonly StandingChange[] {
  return after.graph.list("claims").flatMap(({ id }): readonly StandingChange[] => {
    const was = before.judgement.standings.get(id);
    const is = after.judgement.standings.get(id);
    if (was === undefined || is === undefined || was === is || hidden.names(id)) return [];
    return [{ id, text: labelOf(after.graph, id), was, is }];
  });
}
