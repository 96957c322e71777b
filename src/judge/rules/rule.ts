import type { Finding, Id, Level } from "../../base/finding.ts";
import type { Derivations } from "../../derive/derive.ts";
import type { Lens } from "../../derive/lens.ts";
import type { ComputeMemo, Run } from "../../derive/run.ts";
import type { Graph } from "../../link/graph.ts";
import type { Plugin } from "../../plugin.ts";
import type { Footing } from "../footing.ts";
import type { Judgement } from "../judge.ts";

/** What a rule looks at: the graph, its numbers and its standings, and what is needed to ask what if. */
export interface View {
  readonly graph: Graph;
  readonly plugins: readonly Plugin[];
  readonly memo: ComputeMemo;
  readonly lens: Lens;
  readonly derivations: Derivations;
  readonly judgement: Judgement;
  readonly footings: ReadonlyMap<Id, Footing>;
  readonly restsOn: ReadonlyMap<Id, readonly Id[]>;
}

/** A rule of format.md 6: what it says, what to do about it, and where it finds something to say. */
export interface Rule {
  readonly id: string;
  readonly level: Level;
  /** One line: what the finding says. */
  readonly title: string;
  /** What it means and what a scholar does about it; printed by `explain`. */
  readonly doc: string;
  /** Findings, and runs that it would need and the memo does not have. */
  readonly find: (view: View) => Found;
}

/** What a rule found, and the runs it would need to find more. */
export interface Found {
  readonly findings: readonly Finding[];
  readonly missing?: readonly Run[];
}
