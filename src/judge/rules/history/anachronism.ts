import { parseEdtf } from "../../../base/date/edtf.ts";
import type { Finding, Id } from "../../../base/finding.ts";
import { yearText } from "../../../base/date/year.ts";
import { labelOf } from "../../../link/label.ts";
import type { Rule, View } from "../../rule.ts";
import { inWords, tell } from "../../tell.ts";

export const anachronism: Rule = {
  id: "anachronism",
  level: "warning",
  title: "Something is dated before it could be.",
  doc: "A record dated after its source was in print, an event in the history of a thing before the thing was made, or relations that put something before itself. One of the dates is wrong, or belongs to another edition.",
  find: (view) => ({ findings: [...afterPrint(view), ...beforeMaking(view), ...circles(view)] }),
};

function afterPrint({ graph, judgement }: View): readonly Finding[] {
  return [...graph.records.values()].flatMap((record) => {
    if (!("year" in record.values) || record.values.year === undefined || !judgement.counts(record.id))
      return [];
    const { sources } = graph.provenance(record.id);
    const years = sources.flatMap((key) => graph.sources.get(key)?.year ?? []);
    const latest = Math.max(...years, -Infinity);
    if (years.length === 0 || record.values.year <= latest) return [];
    const message = `“${labelOf(graph, record.id)}” is dated ${yearText(record.values.year)}, after ${inWords(sources.map((key) => labelOf(graph, key)))} was in print, expected ${yearText(latest)} or earlier.`;
    return [tell(graph, "anachronism", "warning", [record.id, ...sources], message, { path: ["year"] })];
  });
}

function beforeMaking({ graph, judgement }: View): readonly Finding[] {
  return graph.list("artefacts").flatMap((record) => {
    if (!judgement.counts(record.id)) return [];
    const made = (record.values.date ?? []).flatMap(({ is }) => {
      const span = parseEdtf(is);
      return "ok" in span && span.ok.low !== null ? [span.ok.low] : [];
    });
    if (made.length === 0) return [];
    const earliest = Math.min(...made);
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

/** Relations of earlier to later that lead from something back to itself. */
function circles({ graph, judgement }: View): readonly Finding[] {
  const relations = graph
    .list("relations")
    .filter((one) => judgement.counts(one.id) && one.values.earlier !== undefined);
  const later = new Map<string, { readonly to: string; readonly by: Id }[]>();
  for (const { id, values } of relations) {
    const from = values.earlier ?? "";
    later.set(from, [...(later.get(from) ?? []), { to: values.later ?? "", by: id }]);
  }
  const told = new Set<string>();
  return relations.flatMap(({ values }) => {
    const circle = wayBack(values.earlier ?? "", later);
    const key = circle === null ? "" : [...circle].sort().join("\n");
    if (circle === null || told.has(key)) return [];
    told.add(key);
    const message = `${inWords(circle.map((id) => `“${labelOf(graph, id)}”`))} cannot all be true, expected an order that ends.`;
    return [tell(graph, "anachronism", "warning", circle, message)];
  });
}

function wayBack(
  start: string,
  later: ReadonlyMap<string, readonly { readonly to: string; readonly by: Id }[]>,
): readonly Id[] | null {
  const before = new Map<string, { readonly from: string; readonly by: Id }>();
  const waiting = [start];
  for (let at = waiting.shift(); at !== undefined; at = waiting.shift()) {
    for (const { to, by } of later.get(at) ?? []) {
      if (to === start) {
        const way = [by];
        for (let step = before.get(at); step; step = before.get(step.from)) way.unshift(step.by);
        return way;
      }
      if (before.has(to)) continue;
      before.set(to, { from: at, by });
      waiting.push(to);
    }
  }
  return null;
}
