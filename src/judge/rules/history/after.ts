import type { Id } from "../../../base/finding.ts";
import { count, row, say } from "../../../base/text/said/said.ts";
import type { Hole, Said, Text } from "../../../base/text/said/said.ts";
import { ofThings } from "../../../derive/lens.ts";
import type { AnyLinked } from "../../../link/graph.ts";
import { labelText } from "../../../link/names/label.ts";
import type { Rule, View } from "../rule.ts";
import { quotedLabel, tell } from "../tell.ts";
import { eventsOf } from "../measurements/compare.ts";

/** Observations and measurements that were taken, not repeated: whose year is when somebody looked. */
export function looked(
  { graph, judgement }: Pick<View, "graph" | "judgement">,
  lists: readonly string[],
): readonly (AnyLinked & { readonly year: number })[] {
  return [...graph.records.values()].flatMap((record) => {
    if (record.list !== "observations" && record.list !== "measurements") return [];
    if (!lists.includes(record.list) || !judgement.counts(record.id) || record.values.basis === "report")
      return [];
    if (record.list === "observations" && record.values.present === "not-reported") return [];
    const year = record.values.year ?? graph.provenance(record.id).year;
    return year === null ? [] : [{ ...record, year }];
  });
}

/** Records grouped by the thing and the event before them, one finding for each event. */
export function afterEvents(
  view: View,
  { id, level }: Pick<Rule, "id" | "level">,
  lists: readonly string[],
  kinds: readonly string[],
  befalls: (thing: Id) => readonly Id[],
  says: (thing: Text, event: number, names: Hole) => Said,
): ReturnType<Rule["find"]> {
  const { graph } = view;
  const groups = new Map<string, { readonly thing: Id; readonly event: number; readonly about: Id[] }>();
  for (const record of looked(view, lists)) {
    for (const thing of ofThings(record)) {
      const before = eventsOf(befalls(thing), graph, kinds)
        .flatMap(({ high }) => high ?? [])
        .filter((year) => year < record.year);
      if (before.length === 0) continue;
      const event = Math.max(...before);
      const key = `${thing}\n${event}`;
      const group = groups.get(key) ?? { thing, event, about: [] };
      if (!group.about.includes(record.id)) group.about.push(record.id);
      groups.set(key, group);
    }
  }
  const findings = [...groups.values()].map(({ thing, event, about }) => {
    const two = about.slice(0, 2).map((one) => quotedLabel(graph, one));
    const names = about.length > 2 ? say`${row(two, "comma")} and ${count(about.length - 2)} more` : row(two);
    return tell(graph, id, level, about, says(labelText(graph, thing), event, names));
  });
  return { findings };
}
