import { arabicInputs } from "../arabic/desk/inputs.ts";
import { told } from "../reader/told.ts";

/** Names of what methods compute on that are other words than a file's. */
const names: Readonly<Record<string, string>> = told({} as Readonly<Record<string, string>>, arabicInputs);

/** What an input of a method is called, by its name in a file. */
export function inputName(name: string): string {
  return Object.hasOwn(names, name) ? (names[name] ?? name) : name.replace(/-/g, " ");
}
