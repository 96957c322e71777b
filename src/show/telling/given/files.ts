import type { Id } from "../../../base/finding.ts";
import type { Quantity } from "../../../base/quantity.ts";
import { parseQuantity } from "../../../base/quantity/quantity-text.ts";
import { edited } from "../../../base/text/edit.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import type { AnyLinked, Graph } from "../../../link/graph.ts";
import { textEdits } from "../../../read/edit/text-edits.ts";
import type { TextChange } from "../../../read/edit/text-change.ts";
import type { ListName } from "../../../read/grammar/field.ts";
import { everywhere, kindOf } from "../../../read/grammar/kinds.ts";
import type { SourceFile } from "../../../read/source-file.ts";
import { writtenValues } from "./written.ts";

/** So many records stand in one file: a person can still look through it. */
const most = 1000;

/** What stands at the head of every file that is given. */
const head =
  "# Written by Variorum from the records that may be given out; README.md beside this folder says what is left out.\n";

/** The records of a list that are given, as files: one, or several where there are many. */
export function filesOf(
  graph: Graph,
  list: ListName,
  records: ReadonlyMap<Id, AnyLinked>,
): readonly SourceFile[] {
  const given = graph.list(list).flatMap(({ id }) => records.get(id) ?? []);
  const count = Math.ceil(given.length / most);
  const digits = String(count).length;
  return Array.from({ length: count }, (_, place) => {
    const name = count === 1 ? list : `${list}-${String(place + 1).padStart(digits, "0")}`;
    const those = given.slice(place * most, (place + 1) * most);
    const fields = { ...kindOf(list).fields, ...everywhere };
    const written = those.map(({ values }) => writtenValues(values, fields, (one) => textOf(graph, one)));
    return fileWith(`${name}.yaml`, { is: "add", list, records: written });
  });
}

/** A new file with what a change puts into it, as a person would type it. */
export function fileWith(path: string, change: TextChange): SourceFile {
  const edits = textEdits({ path, text: head }, change);
  if ("problem" in edits) throw new Error(inEnglish(edits.problem));
  return { path, text: edited(head, edits) };
}

/** A quantity as it was written; one from a table with decimal commas has points. */
function textOf({ settings }: Graph, { text, value }: Quantity): string {
  const same = (one: string): boolean => {
    const read = parseQuantity(one, settings.quantities);
    return "ok" in read && read.ok.value === value;
  };
  if (settings.decimal === "point" || same(text)) return text;
  const pointed = text.replace(/[.,]/gu, (sign) => (sign === "," ? "." : ","));
  return same(pointed) ? pointed : text;
}
