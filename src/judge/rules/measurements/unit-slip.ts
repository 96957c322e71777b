import type { Id } from "../../../base/finding.ts";
import { parseQuantity } from "../../../base/quantity/quantity-text.ts";
import { count, first, say } from "../../../base/text/said/said.ts";
import { labelText } from "../../../link/names/label.ts";
import type { Graph } from "../../../link/graph.ts";
import type { MeasurementRecord } from "../../../link/graph.ts";
import { apart } from "../acceptance.ts";
import type { Rule } from "../rule.ts";
import { chained } from "../../../base/text/said/rows.ts";
import { byCause, tell } from "../tell.ts";

const common = ["mm", "cm", "m", "in", "ft", "g", "kg"];
const near = (a: number, b: number): boolean => Math.abs(a - b) <= 0.01 * Math.abs(b);

export const unitSlip: Rule = {
  id: "unit-slip",
  level: "warning",
  title: say`A recorded value agrees with its quotation only in another unit.`,
  doc: say`No figure of the quoted passage agrees with the value within 1 %, but one does when its unit is changed into another. Look at the passage again: inches and centimetres change places most often. Nothing is changed for you, since the quotation may have the slip as well as the record.`,
  ofTheRecord: true,
  find: ({ graph, judgement }) => {
    const slips = graph.list("measurements").flatMap((record) => {
      const passage = judgement.counts(record.id) ? passageOf(record, graph) : null;
      const slip = passage === null ? null : slipIn(record, passage.quote, graph);
      return slip === null || passage === null ? [] : [{ record, passage, ...slip }];
    });
    const side = apart(graph, "unit-slip");
    const findings = byCause(slips, ({ passage, record }) => `${passage.id}\n${side(record.id)}`).map(
      (group) => {
        const told = group.map(({ record, figure, meant }) => {
          const { dimension, of, value } = record.values;
          return say`the ${dimension} of ${labelText(graph, of)} is recorded as ${value.text}, where the quotation has ${figure}, expected perhaps ${meant}`;
        });
        const others = told.length > 4 ? told.length - 3 : 0;
        const sentences = [
          ...(others > 0 ? told.slice(0, 3) : told),
          ...(others > 0 ? [say`the ${count(others)} more of that quotation`] : []),
        ];
        const message = first(say`${chained(sentences, (before, next) => say`${before}; ${next}`)}.`);
        const about = group.map(({ record }) => record.id);
        return tell(graph, "unit-slip", "warning", about, message, { path: ["value"] });
      },
    );
    return { findings };
  },
};

/** The quotation that a measurement is taken from. */
function passageOf(
  record: MeasurementRecord,
  graph: Graph,
): { readonly id: Id; readonly quote: string } | null {
  for (const citation of record.values.from ?? []) {
    const passage = graph.records.get(citation.key);
    if (passage?.list === "passages" && passage.values.quote !== undefined)
      return { id: passage.id, quote: passage.values.quote };
  }
  return null;
}

/** A figure of the quotation that agrees with the value after its unit is changed, where none agrees as it stands. */
function slipIn(
  record: MeasurementRecord,
  quote: string,
  graph: Graph,
): { figure: string; meant: string } | null {
  const { value } = record.values;
  const { units } = graph.settings.quantities;
  const own = [
    ...graph.settings.units.map((unit) => unit.name),
    ...graph.list("measurements").map((one) => one.values.value.unit),
  ];
  const others = [...new Set([...common, ...own])]
    .flatMap((name) => units.find(name) ?? [])
    .filter((unit) => unit.kind === value.kind);
  let slip: { figure: string; meant: string } | null = null;
  for (const match of quote.matchAll(/(\d+(?:[.,]\d+)?)\s*([\p{L}′″°]+)?/gu)) {
    const number = (match[1] ?? "").replace(",", ".");
    const written =
      match[2] === undefined ? null : parseQuantity(`${number} ${match[2]}`, graph.settings.quantities);
    const inOwn = written && "ok" in written ? written.ok : null;
    if (inOwn && inOwn.kind !== value.kind && inOwn.kind !== "count" && inOwn.kind !== "number") continue;
    const printed = inOwn?.kind === value.kind;
    const size = printed ? inOwn.unitSize : value.unitSize;
    const figure = Number(number) * size;
    if (near(figure, value.value)) return null;
    const other = others.find((unit) => unit.size !== size && near(Number(number) * unit.size, value.value));
    if (other) slip ??= { figure: match[0].trim(), meant: `${number} ${printed ? inOwn.unit : value.unit}` };
  }
  return slip;
}
