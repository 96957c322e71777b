import type { Edit } from "../../../../base/finding.ts";
import type { Format } from "../formats.ts";
import type { CannotWrite, Field, Fresh } from "./field.ts";
import { hands } from "./hands.ts";

/** A change of one text, without the name of its file. */
export type Splice = Omit<Edit, "file">;

/** What is to be written into an entry: fields that get these texts, and fields that go where nothing is written into them. */
export interface Wanted {
  readonly write: readonly Fresh[];
  readonly drop: readonly string[];
}

/** The edits by which an entry, from `start` to `end` of a text, comes to say what is wanted; each other byte of it stays. */
export function fieldEdits(
  format: Format,
  text: string,
  extent: { readonly start: number; readonly end: number },
  wanted: readonly Wanted[],
): readonly Splice[] | CannotWrite {
  const hand = hands[format];
  const there = hand.fields(text, extent.start, extent.end);
  const edits: Splice[] = [];
  const fresh: Fresh[] = [];
  for (const { write, drop } of wanted) {
    const used = new Set<Field>();
    for (const one of write) {
      const field = there.find(
        (other) => other.name === one.name && !used.has(other) && drop.includes(other.name),
      );
      if (!field) {
        fresh.push(one);
        continue;
      }
      used.add(field);
      const put = hand.set(
        one.bare === true && field.is === "quotes" ? { ...field, is: "bare" } : field,
        one.text,
      );
      if (typeof put !== "string") return put;
      edits.push({ start: field.start, end: field.end, text: put });
    }
    for (const field of there)
      if (drop.includes(field.name) && !used.has(field)) edits.push({ ...field.whole, text: "" });
  }
  if (fresh.length > 0) {
    const added = hand.add(text, extent, fresh);
    if ("problem" in added) return added;
    edits.push(added);
  }
  return edits;
}
