import { build } from "../../../../build.ts";
import type { Model, SourceFile } from "../../../../build.ts";
import { changesBetween } from "../../../../show/desk/changes/page.ts";
import type { Changes } from "../../../../show/desk/changes/told.ts";
import type { Desk } from "../../../worker/desk.ts";
import { plugins } from "../../../worker/plugins.ts";

/** Files that are others than now; null where there is none. With `whole` there are no files beside them. */
export interface Others {
  readonly files: readonly { readonly path: string; readonly text: string | null }[];
  readonly whole: boolean;
}

/** Two times of the corpus that are to be compared, and what they are known by; the later one may be now. */
export interface Handed {
  readonly of: string;
  /** Says which files they were: others have another. */
  readonly key: string;
  readonly before: Others;
  readonly after: Others | null;
}

/** The page of changes: what is compared, as far as it was handed over, and what differs. */
export interface ChangesPage {
  readonly of: string;
  readonly key: string | null;
  /** Another number whenever the files on the disk were read anew. */
  readonly reading: number;
  /** `unreadable`: one of the two times has no readable `corpus.yaml`. */
  readonly told: Changes | "unreadable" | null;
  /** Numbers that are still to be computed: until then a standing may hang on them. */
  readonly pending: number;
}

const handed = new Map<string, Handed>();
let texts: ReadonlyMap<string, string> | null = null;
let reading = 0;

/** Takes two times of the corpus that are to be compared, in the place of those of the same name. */
export function takeHanded(one: Handed): void {
  handed.set(one.of, one);
}

/** What differs between the two times known by a name, in the record as it is; runs for it are asked for in the model's worker. */
export function changesAt(desk: Desk, of: string): ChangesPage {
  if (texts !== desk.texts) {
    texts = desk.texts;
    reading += 1;
  }
  const one = handed.get(of);
  if (!one) return { of, key: null, reading, told: null, pending: 0 };
  const before = modelOf(desk, one.before);
  const after = one.after ? modelOf(desk, one.after) : desk.under({});
  if (!before || !after) return { of, key: one.key, reading, told: "unreadable", pending: 0 };
  const missing = [...before.derivations.missing, ...after.derivations.missing];
  desk.need(missing);
  const pending = new Set(missing.map((run) => run.key)).size;
  return { of, key: one.key, reading, told: changesBetween(before, after), pending };
}

function modelOf(desk: Desk, { files, whole }: Others): Model | null {
  const { files: present, ...memo } = desk.corpus();
  const others = new Map(files.map((file) => [file.path, file.text]));
  const all: readonly SourceFile[] = [
    ...(whole ? [] : present.filter((file) => !others.has(file.path))),
    ...[...others].flatMap(([path, text]) => (text === null ? [] : [{ path, text }])),
  ];
  return build(all, plugins, memo, {}).model;
}
