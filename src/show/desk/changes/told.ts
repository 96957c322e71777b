import type { Id } from "../../../base/finding.ts";
import type { Standing } from "../../../judge/judge.ts";
import type { Reported } from "../../report/report.ts";
import type { FieldChange } from "./fields.ts";
import type { FileChanged } from "./files.ts";

/** A corpus at one time, judged: what is compared with another time. */
export interface Compared extends Reported {
  readonly files: ReadonlyMap<string, string>;
}

/** A record that is another than it was. */
export interface RecordChange {
  /** Where its sheet is; null for one that has none now. */
  readonly id: Id | null;
  readonly kind: string;
  readonly text: string;
  /** `unread`: it is there, and cannot be read as it now stands. */
  readonly how: "added" | "changed" | "taken" | "unread";
  /** The file it stood in, where that is another now. */
  readonly from: string | null;
  readonly file: string;
  readonly fields: readonly FieldChange[];
}

/** A claim whose standing is another than it was. */
export interface StandingChange {
  readonly id: Id;
  readonly text: string;
  readonly was: Standing;
  readonly is: Standing;
}

/** What became of a corpus between two times, by record. */
export interface Changes {
  readonly records: readonly RecordChange[];
  readonly standings: readonly StandingChange[];
  /** Files that differ though none of their records does. */
  readonly files: readonly FileChanged[];
}
