import type { FileChange } from "../../base/text/edit.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Id } from "../../base/finding.ts";
import type { ListName } from "../../read/grammar/field.ts";
import type { Written, WrittenMap } from "../../read/edit/written.ts";
import type { Step } from "../../read/yaml/tree.ts";

/** Something a scholar does to records; it holds whatever text they now stand in. */
export type RecordAction =
  /** New records of one list; `file` only where the scholar chose one. */
  | {
      readonly do: "add";
      readonly list: ListName;
      readonly records: readonly WrittenMap[];
      readonly file?: string;
    }
  /** A record is to say `values` where it said `seen`: the fields in which the two differ are changed. */
  | { readonly do: "change"; readonly id: Id; readonly seen: WrittenMap; readonly values: WrittenMap }
  /** Records go; with `seen`, a single one, and only where it still says that. */
  | { readonly do: "take"; readonly ids: readonly Id[]; readonly seen?: WrittenMap };

/**
 * Several changes as one step, which is taken back as one; `called` names it, else its first does. A record that it adds is
 * referred to by `madeBefore`.
 */
export interface Together {
  readonly do: "together";
  readonly actions: readonly RecordAction[];
  readonly called?: Text;
}

/** Something a scholar does to the corpus, in the terms of its records. */
export type Action =
  | RecordAction
  | Together
  /** Another id, in the record and in every reference to it. */
  | { readonly do: "rename"; readonly id: Id; readonly to: Id }
  /** A setting of `corpus.yaml`. */
  | { readonly do: "setting"; readonly path: readonly Step[]; readonly value: Written | null };

/** Stands, wherever a reference goes, for the id of the n-th record (from 0) that a step adds; it has one then. */
export function madeBefore(n: number): string {
  return `\u{1}${n}\u{1}`;
}

/** A field that was changed elsewhere since it was seen: what was seen, what now stands there, and what was to stand there. */
export interface Clash {
  readonly field: string;
  readonly seen: Written | null;
  readonly theirs: Written | null;
  readonly mine: Written | null;
}

/** What an action comes to: changes of files with a name for the step, or why there are none. */
export type Prepared =
  | { readonly changes: readonly FileChange[]; readonly step: Text; readonly made: readonly Id[] }
  | { readonly clashes: readonly Clash[]; readonly gone: boolean }
  | { readonly problem: Text };
