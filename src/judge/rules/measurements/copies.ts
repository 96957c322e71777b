import type { Id } from "../../../base/finding.ts";
import { authorLabel, labelOf } from "../../../link/label.ts";
import type { MeasurementRecord } from "../../../link/graph.ts";
import type { Rule } from "../../rule.ts";
import { inWords, tell } from "../../tell.ts";

export const copiedNumber: Rule = {
  id: "copied-number",
  level: "note",
  title: "Several sources give one figure for one dimension: perhaps one number, cited several times.",
  doc: "Ten citations of one number are one measurement. Where a source copies another, say so with `repeats`; what repeats another never counts. Marked copies are listed with what they copy.",
  find: ({ graph, judgement }) => {
    const groups = new Map<string, MeasurementRecord[]>();
    for (const record of graph.list("measurements")) {
      const { values } = record;
      if (!judgement.counts(record.id)) continue;
      const key = `${values.of}\n${graph.dimensionName(values.dimension)}\n${values.between ?? ""}`;
      groups.set(key, [...(groups.get(key) ?? []), record]);
    }
    const findings = [...groups.values()].flatMap((group) => {
      const copies = group.filter(
        (one) => one.values.repeats !== undefined || one.values.basis === "report" || isLater(one),
      );
      const [first] = copies;
      if (!first) return [];
      const originals = group.filter(
        (one) => !copies.includes(one) && one.values.value.text === first.values.value.text,
      );
      const all = [...copies, ...originals];
      if (all.length < 2 && first.values.repeats === undefined) return [];
      const who = inWords([...new Set(all.map((one) => authorLabel(graph, one.id)))]);
      const message = `The ${first.values.dimension} of ${labelOf(graph, first.values.of)}, ${first.values.value.text}, stands in ${who}, expected to count as one measurement.`;
      return [
        tell(
          graph,
          "copied-number",
          "note",
          all.map((one) => one.id),
          message,
          { path: ["value"] },
        ),
      ];

      /** The very same figure in a later source. */
      function isLater(one: MeasurementRecord): boolean {
        const year = graph.provenance(one.id).year;
        return group.some((other) => {
          const before = graph.provenance(other.id).year;
          const apart = other !== one && sourceOf(other.id) !== sourceOf(one.id);
          return (
            apart &&
            other.values.value.text === one.values.value.text &&
            year !== null &&
            before !== null &&
            before < year
          );
        });
      }
    });
    return { findings };

    function sourceOf(id: Id): Id | undefined {
      return graph.provenance(id).sources[0];
    }
  },
};

export const secondHand: Rule = {
  id: "second-hand",
  level: "note",
  title: "Something is known only through another source.",
  doc: "What was read in `via` was not checked in the source itself. Find that source, or cite it as what it is: cited in another.",
  find: ({ graph, judgement }) => {
    const groups = new Map<string, Id[]>();
    for (const record of graph.records.values()) {
      if (record.list === "passages" || !judgement.counts(record.id)) continue;
      const said = graph.provenance(record.id);
      const [via] = said.via;
      if (via === undefined) continue;
      const key = `${said.sources[0] ?? ""}\n${via}`;
      groups.set(key, [...(groups.get(key) ?? []), record.id]);
    }
    const findings = [...groups].map(([key, about]) => {
      const [source = "", via = ""] = key.split("\n");
      const of = source === "" ? "What is said" : labelOf(graph, source);
      const message = `${of} is known only through ${labelOf(graph, via)}, expected to be read itself.`;
      return tell(graph, "second-hand", "note", about, message, { path: ["via"] });
    });
    return { findings };
  },
};
