import { inEnglish } from "../../../base/text/said/english.ts";
import { count, row, say } from "../../../base/text/said/said.ts";
import type { Row } from "../../../base/text/said/said.ts";
import { authorLabel, labelText } from "../../../link/names/label.ts";
import type { Graph, MeasurementRecord } from "../../../link/graph.ts";
import { apart, foundIn } from "../acceptance.ts";
import type { Rule } from "../rule.ts";
import { few } from "../../../base/text/said/rows.ts";
import { byCause, tell, whose } from "../tell.ts";

export const copiedNumber: Rule = {
  id: "copied-number",
  level: "note",
  title: say`Several sources give one figure for one dimension: perhaps one number, cited several times.`,
  doc: say`Ten citations of one number are one measurement. Where a source copies another, say so with \`repeats\`; what repeats another never counts. Marked copies are listed with what they copy.`,
  ofTheRecord: true,
  find: ({ graph, judgement }) => {
    const groups = new Map<string, MeasurementRecord[]>();
    for (const record of graph.list("measurements")) {
      const { values } = record;
      if (!judgement.counts(record.id)) continue;
      const key = `${values.of}\n${graph.dimensionName(values.dimension)}\n${values.between ?? ""}`;
      groups.set(key, [...(groups.get(key) ?? []), record]);
    }
    const figures = [...groups.values()].flatMap((group) =>
      foundIn(
        graph,
        group,
        (some) => figuresIn(some, graph),
        (same) => same.map(({ id }) => id),
      ),
    );
    const whoOf = (same: (typeof figures)[number]): Row =>
      row([...new Map(same.map(({ id }) => [authorLabel(graph, id), whose(graph, id)])).values()]);
    const dimensionOf = ([first]: (typeof figures)[number]): string =>
      graph.dimensionName(first.values.dimension);
    const side = apart(graph, "copied-number");
    const findings = byCause(
      figures,
      (same) =>
        `${dimensionOf(same)}\n${inEnglish(say`${whoOf(same)}`)}\n${side(same[0].id, ...same.map(({ id }) => id))}`,
    ).map((cause) => {
      const [same] = cause;
      const things = cause.map((one) => {
        const original = one.find(({ values }) => values.repeats === undefined) ?? one[0];
        return say`${labelText(graph, one[0].values.of)}, ${original.values.value.text},`;
      });
      const { dimension } = same[0].values;
      const where = whoOf(same);
      const names = few(things, (shown, others) => say`${shown} and ${count(others)} more,`);
      const message =
        cause.length === 1
          ? say`The ${dimension} of ${names} stands in ${where}, expected to count as one measurement.`
          : say`The ${dimension} of ${names} stand in ${where}, expected to count as one measurement each.`;
      const about = cause.flat().map(({ id }) => id);
      return tell(graph, "copied-number", "note", about, message, { path: ["value"] });
    });
    return { findings };
  },
};

/** Readings of one dimension that give one figure in several sources, or that are marked as copies of one another; copies first. */
function figuresIn(
  group: readonly MeasurementRecord[],
  graph: Graph,
): readonly (readonly [MeasurementRecord, ...MeasurementRecord[]])[] {
  const byFigure = new Map<string, MeasurementRecord[]>();
  for (const record of group) {
    const { repeats } = record.values;
    const original = group.find(
      (one) =>
        one !== record &&
        (one.id === repeats || graph.provenance(one.id).sources.some((key) => key === repeats)),
    );
    const figure = (original ?? record).values.value.text;
    byFigure.set(figure, [...(byFigure.get(figure) ?? []), record]);
  }
  const yearOf = ({ id }: MeasurementRecord): number => graph.provenance(id).year ?? Infinity;
  return [...byFigure.values()].flatMap((same) => {
    const sources = new Set(same.map(({ id }) => graph.provenance(id).sources.join(" ")));
    const marked = same.some((one) => one.values.repeats !== undefined);
    if (sources.size < 2 && !marked) return [];
    const [first, ...others] = same.toSorted(
      (a, b) =>
        Number(b.values.repeats !== undefined) - Number(a.values.repeats !== undefined) ||
        later(yearOf(a), yearOf(b)),
    );
    return first ? [[first, ...others]] : [];
  });
}

/** Later years first; equal ones, the unknown among them, stay as they are. */
function later(a: number, b: number): number {
  return a === b ? 0 : b > a ? 1 : -1;
}
