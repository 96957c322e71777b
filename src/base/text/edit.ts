import type { Edit, Fix } from "../finding.ts";
import { byText } from "../order.ts";
import { hashOf } from "./hash.ts";
import { remembered } from "./remembered.ts";

/** Edits of one file, with the SHA-256 of the text that their offsets were counted in; null for a file that is new. */
export interface FileChange {
  readonly file: string;
  readonly madeFor: string | null;
  /** In the order of their places, none over another. */
  readonly edits: readonly Edit[];
  /** The file goes altogether. */
  readonly gone?: true;
}

/** A text after edits that were made for it; everything outside them stays byte for byte. */
export function edited(text: string, edits: readonly Edit[]): string {
  const parts: string[] = [];
  let at = 0;
  for (const { start, end, text: put } of edits.toSorted(inPlace)) {
    if (start < at || end < start || end > text.length)
      throw new Error(`unexpected edit at ${start}, expected one behind ${at} in ${text.length} units`);
    parts.push(text.slice(at, start), put);
    at = end;
  }
  return [...parts, text.slice(at)].join("");
}

/** Which of some fixes can be done together, and which must wait since they touch what another one changes. */
export interface Plan<T> {
  readonly done: readonly T[];
  readonly waiting: readonly T[];
  readonly changes: readonly FileChange[];
}

/** Plans fixes in their order: each whole or not at all, the first of two that touch; one edit asked for twice is done once. */
export function planned<T>(
  wanted: readonly { readonly for: T; readonly fix: Fix }[],
  texts: ReadonlyMap<string, string>,
): Plan<T> {
  const taken = new Map<string, Edit[]>();
  const done: T[] = [];
  const waiting: T[] = [];
  const textOf = remembered((file) => texts.get(file));
  for (const { for: one, fix } of wanted) {
    const fresh = fix.edits
      .filter((edit) => !(taken.get(edit.file) ?? []).some((it) => same(it, edit)))
      .toSorted((a, b) => byText(a.file, b.file) || inPlace(a, b))
      .filter((edit, place, all) => !isRepeat(edit, all[place - 1]));
    const fits = fresh.every((edit, place) => {
      const text = textOf(edit.file);
      const before = fresh[place - 1];
      return (
        text !== undefined &&
        edit.end <= text.length &&
        !(before?.file === edit.file && touch(before, edit)) &&
        !(taken.get(edit.file) ?? []).some((other) => touch(other, edit))
      );
    });
    if (!fits) {
      waiting.push(one);
      continue;
    }
    done.push(one);
    for (const edit of fresh) {
      const list = taken.get(edit.file);
      if (list) list.push(edit);
      else taken.set(edit.file, [edit]);
    }
  }
  const changes = [...taken]
    .toSorted(([a], [b]) => byText(a, b))
    .map(([file, edits]) => ({
      file,
      madeFor: hashOf(textOf(file) ?? ""),
      edits: edits.toSorted(inPlace),
    }));
  return { done, waiting, changes };
}

/** Edits in the order of their places. */
export function inPlace(a: Edit, b: Edit): number {
  return a.start - b.start || a.end - b.end;
}

function isRepeat(edit: Edit, before: Edit | undefined): boolean {
  return before !== undefined && before.file === edit.file && same(before, edit);
}

function same(a: Edit, b: Edit): boolean {
  return a.start === b.start && a.end === b.end && a.text === b.text;
}

/** Whether two edits of one file share a place; two put in side by side do, since their order would be a guess. */
function touch(a: Edit, b: Edit): boolean {
  if (a.start < b.end && b.start < a.end) return true;
  const insertion = a.start === a.end || b.start === b.end;
  return insertion && a.start <= b.end && b.start <= a.end;
}

/**
 * The change that makes one text another: one edit, of no more than lies between what they begin and end with alike; null
 * is no file. `known` is the SHA-256 of the text as it was, where that is known.
 */
export function changeTo(file: string, was: string | null, is: string | null, known?: string): FileChange {
  const madeFor = was === null ? null : (known ?? hashOf(was));
  if (is === null) return { file, madeFor, edits: [], gone: true };
  const { start, end, text } = differing(was ?? "", is);
  return { file, madeFor, edits: [{ file, start, end, text }] };
}

/** The stretch of a text in which another differs, and what that has in its place. */
export function differing(
  was: string,
  is: string,
): { readonly start: number; readonly end: number; readonly text: string } {
  const most = Math.min(was.length, is.length);
  // Whole stretches are compared at once: a file may have millions of signs.
  let start = 0;
  while (start < most && was.slice(start, start + stretch) === is.slice(start, start + stretch))
    start += stretch;
  start = Math.min(start, most);
  while (start < most && was[start] === is[start]) start++;
  const ending = (text: string, tail: number): string => text.slice(-tail - stretch, text.length - tail);
  let tail = 0;
  while (tail + stretch <= most - start && ending(was, tail) === ending(is, tail)) tail += stretch;
  while (tail < most - start && was[was.length - 1 - tail] === is[is.length - 1 - tail]) tail++;
  return { start, end: was.length - tail, text: is.slice(start, is.length - tail) };
}

const stretch = 1024;
