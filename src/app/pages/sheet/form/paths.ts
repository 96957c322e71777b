import { pathOf } from "../../../address.ts";

/** The path of the form that changes a record. */
export const editPath = (id: string): string => pathOf("edit", id);

/** The path of the form of a new record, with what is known of it already. */
export function newPath(list: string, presets: Readonly<Record<string, string>> = {}): string {
  return formPath({ list, id: null, presets: Object.entries(presets) });
}

/** The path of a form, by what it is a form of. */
export function formPath({
  list,
  id,
  presets,
}: {
  readonly list: string;
  readonly id: string | null;
  readonly presets: readonly (readonly [name: string, value: string])[];
}): string {
  if (id !== null) return editPath(id);
  const query = new URLSearchParams(presets.map(([name, value]) => [name, value])).toString();
  return query === "" ? `/new/${list}` : `/new/${list}?${query}`;
}
