import type { MapNode } from "../yaml/tree.ts";
import { writtenOf } from "./written.ts";
import type { WrittenMap } from "./written.ts";

/** The source that a file of records names at its head, and where its key is written. */
export interface Head {
  readonly key: string;
  readonly start: number;
  readonly end: number;
}

const sourceLine =
  /^\ufeff?(?:source|"source"|'source')[ \t]*:[ \t]+(?:&\S+[ \t]+)?(?:"([^"\s]+)"|'([^'\s]+)'|([^\s"'#&]\S*))/mu;

/** The head of a file that says that all of it is from one source; null where it does not. */
export function headOf(path: string, text: string): Head | null {
  const found = /\.ya?ml$/u.test(path) && path !== "corpus.yaml" ? sourceLine.exec(text) : null;
  const key = found?.[1] ?? found?.[2] ?? found?.[3];
  if (!found || key === undefined) return null;
  const end = found.index + found[0].length - (found[3] === undefined ? 1 : 0);
  return { key, start: end - key.length, end };
}

/** A record as it is written, without what it only has from the head of its file. */
export function ownWritten({ node }: { readonly node: MapNode }): WrittenMap {
  const entries = node.entries.filter(({ key, value }) => key !== "from" || value.start >= node.start);
  return writtenOf({ ...node, entries }) as WrittenMap;
}

/** The `from` that a record has from the head of its file; null where it has one of its own, or none. */
export function headFrom({ node }: { readonly node: MapNode }): string | null {
  const head = node.entries.find(({ key, value }) => key === "from" && value.start < node.start);
  return head?.value.is === "text" ? head.value.text : null;
}
