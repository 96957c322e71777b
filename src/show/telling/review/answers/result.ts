import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import { numberLines, titleOf } from "../../../numbers/value.ts";
import type { Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { listed, words } from "../pieces/inlines.ts";
import { printedNames, printedNumber } from "../pieces/printed.ts";

/** The anchor of a computed number's own heading. */
export const numberAnchor = (id: Id): string => `number-${id}`;

/** A computed number by its title, with the numbers that matter most; none where it was not computed. */
export function resultOf(sight: Sight, id: Id): Inlines {
  const { graph, model, plugins } = sight;
  const record = graph.records.get(id);
  const derived = model.derivations.byId.get(id);
  if (record?.list !== "derivations" || derived === undefined) return [];
  const plugin = plugins.find((one) => one.id === record.values.plugin);
  const title = titleOf(graph, record);
  const named = record.values.short ?? title;
  const name: Inlines = [
    {
      is: "link",
      to: numberAnchor(id),
      of: [typeof named === "string" ? words(named, sight.language, true) : named],
    },
  ];
  if (derived.status !== "computed") return [...name, say`, which gives no number`];
  const names = printedNames(record, derived, plugin);
  const told = numberLines(derived, plugin).filter((line) => names.includes(line.name));
  const numbers = listed(told.map((line) => printedNumber(derived, line)));
  return numbers.length === 0 ? name : [...name, " (", ...numbers, ")"];
}
