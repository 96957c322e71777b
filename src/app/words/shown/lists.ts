import { arabicLists } from "../arabic/shown/lists.ts";
import { told } from "../reader/told.ts";

const lists: Readonly<Record<string, string>> = told({} as Readonly<Record<string, string>>, arabicLists);

/** Records of one kind, by the name of their list in the format, or of sources. */
export function listWords(name: string): string {
  return Object.hasOwn(lists, name) ? (lists[name] ?? name) : name;
}
