import type { Finding } from "../../../base/finding.ts";
import { yearWords } from "../../../base/date/year-words.ts";
import { count, say } from "../../../base/text/said/said.ts";
import { apart } from "../acceptance.ts";
import type { Rule, View } from "../rule.ts";
import { few } from "../../../base/text/said/rows.ts";
import { byCause, labels, quotedLabel, tell } from "../tell.ts";
import { orderFindings } from "./orders.ts";

export const anachronism: Rule = {
  id: "anachronism",
  level: "warning",
  title: say`Something is dated before it could be.`,
  doc: say`A record dated after its source was in print, an event in the history of a thing before the thing was made, or relations and dates that cannot all be true. Of an impossible order the fewest statements are named that cannot be true together: one of them is wrong, or belongs to another edition; up to 24 such orders are told at once. A thing with several dates may be of any of them. What a claim says of dates counts while the claim stands or is open, and never together with a rival's: that rivals differ is the dispute, not a mistake; a relation counts until it falls. A range from radiocarbon holds at the level of its calibration, commonly 95 %: of three such ranges that do not depend on one another, one lies outside in one case of seven (1 - 0.95³), so look there first.`,
  find: (view) => ({
    findings: [...afterPrint(view), ...orderFindings(view)],
  }),
};

function afterPrint({ graph, judgement }: View): readonly Finding[] {
  const late = [...graph.records.values()].flatMap((record) => {
    if (!("year" in record.values) || record.values.year === undefined || !judgement.counts(record.id))
      return [];
    const { year } = record.values;
    const { sources } = graph.provenance(record.id);
    const years = sources.flatMap((key) => graph.sources.get(key)?.year ?? []);
    const latest = Math.max(...years, -Infinity);
    if (years.length < Math.max(1, sources.length) || year <= latest) return [];
    return [{ id: record.id, year, sources, latest }];
  });
  const side = apart(graph, "anachronism");
  return byCause(late, ({ id, sources }) => [...sources, side(id)].join("\n")).map((group) => {
    const [{ sources, latest }] = group;
    const names = few(
      group.map(({ id, year }, place) => {
        const [name, when] = [quotedLabel(graph, id), yearWords(year)];
        return place === 0 ? say`${name} is dated ${when}` : say`${name} ${when}`;
      }),
      (shown, others) => say`${shown} and ${count(others)} more are dated so`,
    );
    const message = say`${names}, after ${labels(graph, sources)} was in print, expected ${yearWords(latest)} or earlier.`;
    return tell(graph, "anachronism", "warning", [...group.map(({ id }) => id), ...sources], message, {
      path: ["year"],
    });
  });
}
