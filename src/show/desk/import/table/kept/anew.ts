import { cellIn } from "../../../../../read/edit/table/cells.ts";
import { parted } from "../../../../../read/edit/table/parted.ts";
import type { WrittenMap } from "../../../../../read/edit/written.ts";
import { everywhere, kindOf } from "../../../../../read/grammar/kinds.ts";
import type { Asked } from "../asked.ts";
import type { RowDraft } from "../rows.ts";
import { signed } from "./sign.ts";

/** A table written anew: one line for each record, the fields in their usual order, a quantity parted. */
export function writtenAnew(asked: Asked, drafts: readonly RowDraft[]): string {
  const { list, graph } = asked;
  const rows = drafts.map(({ values }) => textsOf(asked, values));
  const order = [
    ...Object.keys(kindOf(list).fields).flatMap((name) =>
      name === "value" ? ["value", "uncertainty", "unit"] : [name],
    ),
    ...Object.keys(everywhere),
  ];
  const all = [...new Set(rows.flatMap((row) => [...row.keys()]))];
  const rank = (name: string): number => {
    const place = order.indexOf(name.startsWith("numbers.") ? "numbers" : name);
    return place < 0 ? order.length : place;
  };
  const names = all.toSorted((a, b) => rank(a) - rank(b));
  const separator = graph.settings.decimal === "comma" ? ";" : ",";
  const line = (cells: readonly string[]): string =>
    `${cells.map((cell) => cellIn(cell, separator, false)).join(separator)}\n`;
  return [line(names), ...rows.map((row) => line(names.map((name) => row.get(name) ?? "")))].join("");
}

function textsOf(asked: Asked, values: WrittenMap): ReadonlyMap<string, string> {
  const texts = new Map<string, string>();
  for (const [name, value] of Object.entries(values)) {
    if (name === "value" && typeof value === "string") {
      const { value: figure, uncertainty, unit } = parted(value, { uncertainty: true, unit: true });
      texts.set("value", signed(asked, "value", figure));
      if (uncertainty !== null) texts.set("uncertainty", signed(asked, "value", uncertainty));
      if (unit !== null) texts.set("unit", unit);
    } else if (typeof value === "string") texts.set(name, signed(asked, name, value));
    else if (name === "numbers")
      for (const [register, number] of Object.entries(value))
        texts.set(`numbers.${register}`, typeof number === "string" ? number : "");
  }
  return texts;
}
