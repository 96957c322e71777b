import type { Fields, ListName } from "../../grammar/field.ts";
import { everywhere, kindOf } from "../../grammar/kinds.ts";
import type { Table } from "../hand/order.ts";
import type { Site } from "../site/site.ts";

/**
 * The fields of a record of a list, in their order: that of the grammar's table, but for the fields that every record
 * may have, which stand where they mostly stand in the records that are there (`short` behind `text`), else at the end.
 */
export function tableOf(list: ListName, records: Site | null): Table {
  const { fields } = kindOf(list);
  const names = Object.keys(fields);
  for (const name of Object.keys(everywhere)) {
    const before = records ? mostlyBehind(records, name) : null;
    const place = before === null ? -1 : names.indexOf(before);
    names.splice(place < 0 ? names.length : place + 1, 0, name);
  }
  const all: Fields = { ...fields, ...everywhere };
  return { fields: Object.fromEntries(names.flatMap((name) => (all[name] ? [[name, all[name]]] : []))) };
}

/** The field behind which another stands in most records that have it; null where that differs, or where it stands last. */
function mostlyBehind(records: Site, name: string): string | null {
  const befores = records.parts.flatMap(({ value: { parts } }) => {
    const place = parts.findIndex(({ key }) => key === name);
    if (place < 0) return [];
    return [place === parts.length - 1 ? null : (parts[place - 1]?.key ?? null)];
  });
  const best = [...new Set(befores)].find(
    (one) => befores.filter((other) => other === one).length * 2 > befores.length,
  );
  return befores.length > 1 ? (best ?? null) : null;
}
