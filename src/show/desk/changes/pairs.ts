import type { Id } from "../../../base/finding.ts";
import { saysSame } from "../../../read/edit/written.ts";
import type { RecordWritten } from "./written.ts";
import { withTexts } from "./written.ts";

/** Two readings of a corpus record by record. */
export interface Pairs {
  readonly both: readonly { readonly old: RecordWritten; readonly now: RecordWritten }[];
  readonly added: readonly RecordWritten[];
  readonly taken: readonly RecordWritten[];
  /** A text as the later reading has it: ids that were given anew are the new ones. */
  readonly renamed: (text: string) => string;
}

/**
 * Finds for each record the one it was: by its id, else one of its list that says all the same under another id, else,
 * where ids are only made from what is said, one of its list and file with which it shares at least half of its fields.
 */
export function paired(olds: readonly RecordWritten[], news: readonly RecordWritten[]): Pairs {
  const both: { old: RecordWritten; now: RecordWritten }[] = [];
  const left = new Map<Id, RecordWritten[]>();
  for (const old of olds) left.set(old.id, [...(left.get(old.id) ?? []), old]);
  const added: RecordWritten[] = [];
  for (const now of news) {
    const old = left.get(now.id)?.shift();
    if (old) both.push({ old, now });
    else added.push(now);
  }
  let open = [...left.values()].flat();
  let fresh = added;
  const pair = (fits: (old: RecordWritten, now: RecordWritten) => boolean): void => {
    fresh = fresh.filter((now) => {
      const old = open.find((one) => one.list === now.list && now.list !== null && fits(one, now));
      if (!old) return true;
      both.push({ old, now });
      open = open.filter((one) => one !== old);
      return false;
    });
  };
  const names = new Map<Id, Id>();
  pair((old, now) => {
    const same = old.named && now.named && saysSame(withoutId(old), withoutId(now));
    if (same) names.set(old.id, now.id);
    return same;
  });
  const renamed = renaming(names);
  pair((old, now) => !old.named && !now.named && old.file === now.file && alike(old, now, renamed) >= 0.5);
  return {
    both: both.toSorted((a, b) => news.indexOf(a.now) - news.indexOf(b.now)),
    added: fresh,
    taken: olds.filter((one) => open.includes(one)),
    renamed,
  };
}

function withoutId({ fields }: RecordWritten): RecordWritten["fields"] {
  const { id: _, ...others } = fields;
  return others;
}

/** The share of two records' fields in which they say the same. */
function alike(old: RecordWritten, now: RecordWritten, renamed: (text: string) => string): number {
  const names = [...new Set([...Object.keys(old.fields), ...Object.keys(now.fields)])];
  const same = names.filter((name) =>
    saysSame(withTexts(old.fields[name] ?? "", renamed), now.fields[name] ?? ""),
  );
  return same.length / Math.max(1, names.length);
}

/** Tells what a text is called where it is, or begins with, an id that was given anew. */
function renaming(names: ReadonlyMap<Id, Id>): (text: string) => string {
  return (text) => {
    const space = text.search(/\s/u);
    const head = space < 0 ? text : text.slice(0, space);
    return `${names.get(head) ?? head}${text.slice(head.length)}`;
  };
}
