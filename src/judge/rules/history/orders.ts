import type { Finding } from "../../../base/finding.ts";
import { count, row, say } from "../../../base/text/said/said.ts";
import type { Hole, Said as Sentence } from "../../../base/text/said/said.ts";
import { eventsIn } from "../../../derive/recorded/dates/events.ts";
import { impossibleOrders } from "../../dates/impossible.ts";
import type { ImpossibleOrder } from "../../dates/impossible.ts";
import { datesSaid } from "../../dates/statements.ts";
import type { Said } from "../../../derive/recorded/dates/said.ts";
import type { View } from "../rule.ts";
import { chained } from "../../../base/text/said/rows.ts";
import { tell } from "../tell.ts";
import { orderWords, statementWords } from "./order-words.ts";
import type { Telling } from "./order-words.ts";

/** Orders in time that cannot be: those told of one sort of record that share a cause are one finding. */
export function orderFindings({ graph, judgement, lens }: View): readonly Finding[] {
  const events = eventsIn(graph);
  const said = datesSaid(graph, judgement, events, lens.asOf);
  const telling = { graph, judgement, events };
  return familiesOf(impossibleOrders(said, graph.rivalsOf)).map(({ first, same, near, by }) => {
    const all = [first, ...same, ...near];
    const about = [...new Set(all.flatMap(({ statements }) => statements.map((one) => one.record)))];
    const sentences = [
      orderWords(telling, first),
      ...(same.length > 0 ? [say`The same holds of ${leadsInWords(telling, same)}.`] : []),
      ...(near.length > 0 && by !== null ? [misfit(telling, near, by)] : []),
    ];
    const message = say`${chained(sentences, (before, next) => say`${before} ${next}`)}`;
    const place = first.lead.place;
    const path = place === null ? {} : { path: ["history", place, "when"] };
    return tell(graph, "anachronism", "warning", about, message, path);
  });
}

function misfit(telling: Telling, near: readonly ImpossibleOrder[], by: Said): Sentence {
  const [leads, other] = [leadsInWords(telling, near), statementWords(telling, by)];
  return near.length === 1
    ? say`${leads} does not fit ${other} either.`
    : say`${leads} do not fit ${other} either.`;
}

function leadsInWords(telling: Telling, orders: readonly ImpossibleOrder[]): Hole {
  const named = orders.slice(0, 3).map(({ lead }) => statementWords(telling, lead));
  const others = orders.length - named.length;
  return others > 0 ? say`${row(named, "comma")} and ${count(others)} more` : row(named);
}

/** Impossible orders of one cause: of the same things as the first, or against the same date of one. */
interface Family {
  readonly first: ImpossibleOrder;
  readonly same: ImpossibleOrder[];
  readonly near: ImpossibleOrder[];
  /** The date that those nearly the same have in common with the first. */
  by: Said | null;
}

function familiesOf(orders: readonly ImpossibleOrder[]): readonly Family[] {
  const found: Family[] = [];
  for (const order of orders) {
    const alike = found.filter(({ first }) => first.lead.kind === order.lead.kind);
    const same = alike.find(({ first }) => restsOnSame(first, order));
    const near = alike.find((one) => datesShared(one, order).length > 0);
    if (same) same.same.push(order);
    else if (near) {
      near.by = datesShared(near, order)[0] ?? null;
      near.near.push(order);
    } else found.push({ first: order, same: [], near: [], by: null });
  }
  return found;
}

function restsOnSame(one: ImpossibleOrder, other: ImpossibleOrder): boolean {
  const [rest, others] = [restOf(one), restOf(other)];
  return rest.length > 0 && rest.length === others.length && rest.every((it) => others.includes(it));
}

/** Dates that an order goes against as the first of a family does; that of the family's others, where it has any. */
function datesShared({ first, by }: Family, order: ImpossibleOrder): readonly Said[] {
  return restOf(first).filter(
    (one) => one.kind === "date" && restOf(order).includes(one) && (by === null || by === one),
  );
}

function restOf({ lead, statements }: ImpossibleOrder): readonly Said[] {
  return statements.filter((one) => one !== lead);
}
