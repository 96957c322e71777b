import type { Text } from "../../base/text/said/said.ts";
import type { ListName } from "../grammar/field.ts";
import type { Step } from "../yaml/tree.ts";
import type { Written, WrittenMap } from "./written.ts";

/** One change to one file of a corpus, in terms of what it holds. */
export type TextChange =
  /** A field of a record gets another value, or is taken out (null); `record` is where the record's node begins. */
  | {
      readonly is: "field";
      readonly record: number;
      readonly path: readonly Step[];
      readonly value: Written | null;
    }
  /** The same of `corpus.yaml`, which is one map. */
  | { readonly is: "setting"; readonly path: readonly Step[]; readonly value: Written | null }
  /** Records of one list come in, in that order: behind the record that begins at `after`, else at the list's end. */
  | {
      readonly is: "add";
      readonly list: ListName;
      readonly records: readonly WrittenMap[];
      readonly after?: number;
    }
  /** A record goes, with the comments that speak of it alone. */
  | { readonly is: "take"; readonly record: number };

/** Why a file cannot be changed so, as a message of the program's one grammar. */
export interface CannotChange {
  readonly problem: Text;
}
