import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { edited } from "../../../base/text/edit.ts";
import { saysSame } from "../written.ts";
import type { WrittenMap } from "../written.ts";
import { textEdits } from "../text-edits.ts";
import type { TextChange } from "../text-change.ts";
import { clashName, clashesIn, settledValue } from "./merge.ts";
import type { Answer, RecordMerge } from "./merge.ts";
import { withComments } from "./comments.ts";
import { withLines } from "./lines.ts";
import { recordsIn } from "./reading.ts";
import type { RecordRead, ThreeTexts } from "./reading.ts";

/** Why a merge cannot be written by record. */
export interface CannotMerge {
  readonly problem: Text;
}

/**
 * The file that says what a merge of records says, its clashes settled: my text, with what the other side brings to it
 * as that side wrote it. It is read again, and given only where it says just that.
 */
export function resolvedText(
  texts: ThreeTexts,
  merges: readonly RecordMerge[],
  answers: ReadonlyMap<string, Answer>,
): { readonly text: string } | CannotMerge {
  const { path } = texts;
  let text = texts.mine;
  let problem: Text | null = null;
  const change = (of: (now: ReadonlyMap<string, RecordRead>) => TextChange | null): void => {
    const now = recordsIn(path, text);
    const wanted = now && problem === null ? of(now) : null;
    if (!wanted) return;
    const edits = textEdits({ path, text }, wanted);
    if ("problem" in edits) problem = edits.problem;
    else text = edited(text, edits);
  };
  const settled = merges.map((merge) => ({ merge, fields: settledFields(merge, answers) }));
  for (const { merge, fields } of settled) {
    const { key, mine } = merge;
    if (!mine || !fields) continue;
    for (const field of new Set([...Object.keys(mine.fields), ...Object.keys(fields)])) {
      const value = fields[field] ?? null;
      if (saysSame(mine.fields[field] ?? null, value)) continue;
      change((now) => {
        const at = now.get(key);
        if (!at) return null;
        return at.list === null
          ? { is: "setting", path: [field], value }
          : { is: "field", record: at.start, path: [field], value };
      });
    }
  }
  // Before any is taken out: a list that is never empty keeps the manner of its lines.
  const order = [...(recordsIn(path, texts.theirs)?.values() ?? [])];
  for (const one of order) {
    const brought = settled.find(({ merge, fields }) => merge.key === one.key && !merge.mine && fields);
    if (!brought) continue;
    const { list } = one;
    const before = order.slice(0, order.indexOf(one)).filter((other) => other.list === list);
    const put = list === null ? null : withLines(texts, text, one, before.map(({ key }) => key).toReversed());
    if (put !== null) text = put;
    else if (list !== null) change(() => ({ is: "add", list, records: [one.fields] }));
    else
      for (const [field, value] of Object.entries(one.fields))
        change(() => ({ is: "setting", path: [field], value }));
  }
  // From the last on, so that records of one name keep their numbers.
  for (const { merge, fields } of settled.toReversed()) {
    if (!merge.mine || fields) continue;
    change((now) => {
      const at = now.get(merge.key);
      return at ? { is: "take", record: at.start } : null;
    });
  }
  if (problem !== null) return { problem };
  text = withComments(texts, text);
  const wanted = settled.flatMap(({ merge, fields }) =>
    fields ? [{ list: (merge.mine ?? merge.theirs)?.list ?? null, fields }] : [],
  );
  return says(path, text, wanted)
    ? { text }
    : { problem: say`\`${path}\` would not say just what was chosen, expected it merged line by line` };
}

/** Whether a text says what a merge of records comes to, every clash settled in one way. */
export function saysMerged(
  path: string,
  text: string,
  merges: readonly RecordMerge[],
  answer: Answer = "mine",
): boolean {
  const answers = new Map(clashesIn(merges).map((name): [string, Answer] => [name, answer]));
  const wanted = merges.flatMap((merge) => {
    const fields = settledFields(merge, answers);
    return fields ? [{ list: (merge.mine ?? merge.theirs)?.list ?? null, fields }] : [];
  });
  return says(path, text, wanted);
}

/** What a record is to say; null where it is to go. */
function settledFields(merge: RecordMerge, answers: ReadonlyMap<string, Answer>): WrittenMap | null {
  const { mine, theirs, became } = merge;
  if (mine && theirs) {
    const fields = Object.create(null) as Record<string, WrittenMap[string]>;
    for (const name of new Set([...Object.keys(mine.fields), ...Object.keys(theirs.fields)])) {
      const one = merge.fields.find(({ field }) => field === name);
      const value = one ? settledValue(one, answers.get(clashName(merge, one))) : (mine.fields[name] ?? null);
      if (value !== null) fields[name] = value;
    }
    return fields;
  }
  const side = became === "clash" ? (answers.get(clashName(merge)) ?? "mine") : became;
  return (side === "theirs" ? theirs : mine)?.fields ?? null;
}

interface Said {
  readonly list: RecordRead["list"];
  readonly fields: WrittenMap;
}

/** Whether a file says these records and no others. */
function says(path: string, text: string, wanted: readonly Said[]): boolean {
  const read = recordsIn(path, text);
  if (!read) return false;
  const left: Said[] = [...read.values()];
  for (const one of wanted) {
    const at = left.findIndex((other) => other.list === one.list && saysSame(other.fields, one.fields));
    if (at < 0) return false;
    left.splice(at, 1);
  }
  return left.length === 0;
}
