import type { ComputeMemo, Run } from "../../../derive/run.ts";
import type { Plugin } from "../../../plugin.ts";
import { yearsOf } from "../../map/changes.ts";
import type { Reported } from "../../report/report.ts";
import { historyOf } from "./history.ts";
import type { History } from "./history.ts";

/** The dispute publication by publication, as far as it is computed. */
export interface HistoryPage {
  /** Years in which sources came into print, whatever the year that is looked back from. */
  readonly years: readonly number[];
  readonly steps: History;
  /** How many numbers of earlier years are still to be computed. */
  readonly pending: number;
}

/** Gives the page of a model, and the runs it still asks for; a page that asks for none is kept with its model. */
export function rememberedHistories(): (
  model: Reported,
  plugins: readonly Plugin[],
  memo: ComputeMemo,
) => { readonly page: HistoryPage; readonly missing: readonly Run[] } {
  const known = new WeakMap<Reported, HistoryPage>();
  return (model, plugins, memo) => {
    const before = known.get(model);
    if (before) return { page: before, missing: [] };
    const { graph, lens, judgement } = model;
    const { history, missing } = historyOf({ graph, plugins, memo, lens }, judgement);
    const page = { years: yearsOf(model), steps: history, pending: missing.length };
    if (missing.length === 0) known.set(model, page);
    return { page, missing };
  };
}
