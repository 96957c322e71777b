import { plugins } from "../plugins.ts";
import type { Standing } from "../../../judge/judge.ts";
import type { VisitAsked } from "../../../show/desk/visit/asked.ts";
import { visitSheet } from "../../../show/desk/visit/sheet/sheet.ts";
import type { VisitSheet } from "../../../show/desk/visit/sheet/sheet.ts";
import { visitsIn } from "../../../show/desk/visit/sheet/visits.ts";
import type { Visits } from "../../../show/desk/visit/sheet/visits.ts";
import { named } from "../../../show/judged/standpoints/named.ts";
import type { Named } from "../../../show/judged/standpoints/named.ts";
import { listedUnder } from "../../../show/withhold.ts";
import type { Desk } from "../desk.ts";

/** The page of a visit: its sheet, or from what to choose one, and how the claims stand now. */
export interface VisitPage {
  readonly asked: VisitAsked;
  /** Null where none is asked for, or there is none of that name. */
  readonly sheet: VisitSheet | null;
  /** Null where one is asked for. */
  readonly visits: Visits | null;
  readonly standings: readonly (Named & { readonly standing: Standing })[];
  /** Numbers are still to be computed: standings may change yet. */
  readonly pending: number;
}

/** A visit is to the things as they are now, whatever year or outcome is looked at. */
export function visitAt(desk: Desk, asked: VisitAsked): VisitPage {
  const model = desk.under({});
  const { graph, judgement, derivations } = model;
  if (asked.examination === null && asked.keeper === null)
    return { asked, sheet: null, visits: visitsIn(graph), standings: [], pending: 0 };
  const pending = derivations.missing.length;
  desk.need(derivations.missing);
  const planning = pending > 0 ? null : desk.plans.make(model);
  if (planning) desk.need(planning.missing);
  const plan = planning?.plan ?? desk.plans.made(model);
  const listed = listedUnder(model);
  return {
    asked,
    sheet: visitSheet(model, asked, plan && { plan, plugins }),
    visits: null,
    standings: graph
      .list("claims")
      .filter(({ id }) => listed(id))
      .flatMap(({ id }) => {
        const standing = judgement.standings.get(id);
        return standing === undefined ? [] : [{ ...named(graph, id), standing }];
      }),
    pending,
  };
}
