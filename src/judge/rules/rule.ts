import type { Finding, Id, Level } from "../../base/finding.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Run } from "../../derive/run.ts";
import type { Footing } from "../footing.ts";
import type { Judged } from "../resting/judged.ts";

/** What a rule looks at: the corpus as it is judged, with what its claims rest on. */
export interface View extends Judged {
  readonly footings: ReadonlyMap<Id, Footing>;
  readonly restsOn: ReadonlyMap<Id, readonly Id[]>;
}

/** A rule of format.md 6: what it says, what to do about it, and where it finds something to say. */
export interface Rule {
  readonly id: string;
  readonly level: Level;
  /** One line: what the finding says. */
  readonly title: Text;
  /** What it means and what a scholar does about it; printed by `explain`. */
  readonly doc: Text;
  /** It tells how the record is kept, and so nothing of what is only supposed. */
  readonly ofTheRecord?: true;
  /** Findings, and runs that it would need and the memo does not have. */
  readonly find: (view: View) => Found;
  /** The same in slices, of a rule that takes long. */
  readonly finding?: (view: View) => Generator<void, Found>;
}

/** What a rule found, and the runs it would need to find more. */
export interface Found {
  readonly findings: readonly Finding[];
  readonly missing?: readonly Run[];
}
