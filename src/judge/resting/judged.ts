import type { Derivations } from "../../derive/derive.ts";
import type { Lens } from "../../derive/lens.ts";
import type { ComputeMemo } from "../../derive/run.ts";
import type { Graph } from "../../link/graph.ts";
import type { Plugin } from "../../plugin.ts";
import type { Judgement } from "../judge.ts";

/** A corpus as it is judged, with what is needed to ask what a loss would change. */
export interface Judged {
  readonly graph: Graph;
  readonly plugins: readonly Plugin[];
  readonly memo: ComputeMemo;
  readonly lens: Lens;
  readonly derivations: Derivations;
  readonly judgement: Judgement;
}
