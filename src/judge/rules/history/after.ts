import type { Id } from "../../../base/finding.ts";
import { yearText } from "../../../base/date/year.ts";
import { ofThings } from "../../../derive/lens.ts";
import type { AnyLinked } from "../../../link/graph.ts";
import { labelOf } from "../../../link/label.ts";
import type { Rule, View } from "../../rule.ts";
import { inWords, tell } from "../../tell.ts";
import { eventsOf, wholesOf } from "../measurements/compare.ts";

/** Observations and measurements that were taken, not repeated: whose year is when somebody looked. */
function looked(
  { graph, judgement }: View,
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
function afterEvents(
  view: View,
  { id, level }: Pick<Rule, "id" | "level">,
  lists: readonly string[],
  kinds: readonly string[],
  befalls: (thing: Id) => readonly Id[],
  says: (thing: string, event: number, names: string) => string,
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
    const few = about.slice(0, 2).map((one) => `“${labelOf(graph, one)}”`);
    const names = about.length > 2 ? [...few, `${about.length - 2} more`] : few;
    return tell(graph, id, level, about, says(labelOf(graph, thing), event, inWords(names)));
  });
  return { findings };
}

export const alteredBeforeObserved: Rule = {
  id: "altered-before-observed",
  level: "note",
  title: "A thing was observed after a restoration, conservation or sampling of it.",
  doc: "What was seen may be the work of the restorer: cleaning removes traces, consolidants hide them. Look for an observation from before, or say what the treatment could not have changed.",
  find: (view) =>
    afterEvents(
      view,
      alteredBeforeObserved,
      ["observations"],
      ["restoration", "conservation", "sampling"],
      (thing) => [thing],
      (thing, event, names) => `${names} was seen on ${thing} after it was treated in ${yearText(event)}.`,
    ),
};

export const measuredAfterLoss: Rule = {
  id: "measured-after-loss",
  level: "warning",
  title: "Something was observed or measured after the thing was lost.",
  doc: "Either the date is wrong, or it was taken from a drawing, a cast or a report: then say so in `basis`. A loss is of the whole thing named; the loss of a part is a record of that part.",
  find: (view) =>
    afterEvents(
      view,
      measuredAfterLoss,
      ["observations", "measurements"],
      ["loss"],
      (thing) => wholesOf(thing, view.graph),
      (thing, event, names) =>
        `${names} is dated after ${thing} was lost in ${yearText(event)}, expected an earlier year or another basis.`,
    ),
};
