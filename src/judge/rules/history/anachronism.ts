import { parseEdtf } from "../../../base/date/edtf.ts";
import type { Finding, Id } from "../../../base/finding.ts";
import { yearText } from "../../../base/date/year.ts";
import { labelOf } from "../../../link/label.ts";
import type { Rule, View } from "../rule.ts";
import { inWords, tell } from "../tell.ts";

export const anachronism: Rule = {
  id: "anachronism",
  level: "warning",
  title: "Something is dated before it could be.",
  doc: "A record dated after its source was in print, an event in the history of a thing before the thing was made, or relations that put something before itself. One of the dates is wrong, or belongs to another edition.",
  find: (view) => ({
    findings: [...afterPrint(view), ...beforeMaking(view), ...circles(view), ...againstDates(view)],
  }),
};

function afterPrint({ graph, judgement }: View): readonly Finding[] {
  return [...graph.records.values()].flatMap((record) => {
    if (!("year" in record.values) || record.values.year === undefined || !judgement.counts(record.id))
      return [];
    const { sources } = graph.provenance(record.id);
    const years = sources.flatMap((key) => graph.sources.get(key)?.year ?? []);
    const latest = Math.max(...years, -Infinity);
    if (years.length < Math.max(1, sources.length) || record.values.year <= latest) return [];
    const message = `“${labelOf(graph, record.id)}” is dated ${yearText(record.values.year)}, after ${inWords(sources.map((key) => labelOf(graph, key)))} was in print, expected ${yearText(latest)} or earlier.`;
    return [tell(graph, "anachronism", "warning", [record.id, ...sources], message, { path: ["year"] })];
  });
}

function beforeMaking({ graph, judgement }: View): readonly Finding[] {
  return graph.list("artefacts").flatMap((record) => {
    const earliest = madeWhen(graph, record.id).low;
    if (!judgement.counts(record.id) || earliest === null) return [];
    return (record.values.history ?? []).flatMap((event, place) => {
      const when = parseEdtf(event.when);
      const latest = "ok" in when ? when.ok.high : null;
      if (latest === null || latest >= earliest) return [];
      const message = `${labelOf(graph, record.id)}: “${event.what}” is dated ${event.when}, before the thing was made, expected ${yearText(earliest)} or later.`;
      return [
        tell(graph, "anachronism", "warning", [record.id], message, { path: ["history", place, "when"] }),
      ];
    });
  });
}

/** When a thing may have been made: from the first year that any date given of it allows to the last. */
function madeWhen(
  graph: View["graph"],
  id: Id,
): { readonly low: number | null; readonly high: number | null } {
  const record = graph.records.get(id);
  const dates = record?.list === "artefacts" ? (record.values.date ?? []) : [];
  const spans = dates.flatMap(({ is }) => {
    const span = parseEdtf(is);
    return "ok" in span ? [span.ok] : [];
  });
  const lows = spans.flatMap(({ low }) => low ?? []);
  const highs = spans.flatMap(({ high }) => high ?? []);
  return {
    low: lows.length > 0 && lows.length === spans.length ? Math.min(...lows) : null,
    high: highs.length > 0 && highs.length === spans.length ? Math.max(...highs) : null,
  };
}

/** Relations that put a thing before another that is dated wholly before it. */
function againstDates({ graph, judgement }: View): readonly Finding[] {
  return graph.list("relations").flatMap(({ id, values }) => {
    const { earlier, later } = values;
    if (!judgement.counts(id) || earlier === undefined || later === undefined) return [];
    const { low } = madeWhen(graph, earlier);
    const { high } = madeWhen(graph, later);
    if (low === null || high === null || low <= high) return [];
    const message = `“${labelOf(graph, id)}” puts ${labelOf(graph, earlier)}, of ${yearText(low)} or later, before ${labelOf(graph, later)}, of ${yearText(high)} or earlier, expected dates in that order.`;
    return [tell(graph, "anachronism", "warning", [id, earlier, later], message)];
  });
}

/** Relations of earlier to later that lead from something back to itself, things of one time taken as one. */
function circles({ graph, judgement }: View): readonly Finding[] {
  const relations = graph.list("relations").filter((one) => judgement.counts(one.id));
  const later = new Map<string, { readonly to: string; readonly by: Id }[]>();
  const leads = (from: string, to: string, by: Id): void => {
    later.set(from, [...(later.get(from) ?? []), { to, by }]);
  };
  for (const { id, values } of relations) {
    if (values.earlier !== undefined && values.later !== undefined) leads(values.earlier, values.later, id);
    const [one, other] = values["same-time"] ?? [];
    if (one === undefined || other === undefined) continue;
    leads(one, other, id);
    leads(other, one, id);
  }
  const told = new Set<string>();
  return relations.flatMap(({ id, values }) => {
    if (values.earlier === undefined || values.later === undefined) return [];
    const way = values.later === values.earlier ? [] : wayTo(values.earlier, values.later, later);
    const circle = way === null ? null : [id, ...way];
    const key = circle === null ? "" : [...circle].sort().join("\n");
    if (circle === null || told.has(key)) return [];
    told.add(key);
    const message = `${inWords(circle.map((id) => `“${labelOf(graph, id)}”`))} cannot all be true, expected an order that ends.`;
    return [tell(graph, "anachronism", "warning", circle, message)];
  });
}

/** Relations to follow from one thing to another, the fewest there are; null when none lead there. */
function wayTo(
  end: string,
  start: string,
  later: ReadonlyMap<string, readonly { readonly to: string; readonly by: Id }[]>,
): readonly Id[] | null {
  const before = new Map<string, { readonly from: string; readonly by: Id }>();
  const waiting = [start];
  for (let at = waiting.shift(); at !== undefined; at = waiting.shift()) {
    for (const { to, by } of later.get(at) ?? []) {
      if (to === end) {
        const way = [by];
        for (let step = before.get(at); step; step = before.get(step.from)) way.unshift(step.by);
        return way;
      }
      if (to === start || before.has(to)) continue;
      before.set(to, { from: at, by });
      waiting.push(to);
    }
  }
  return null;
}
