import { plugins as own } from "../../../plugins/index.ts";
import type { Plugin } from "../../plugin.ts";
import type { Declared } from "../../host/guest/guest.ts";
import { standInFor } from "../../host/guest/stand-in.ts";

/** The program's own plug-ins, and those of the corpus that its user allowed. */
export let plugins: readonly Plugin[] = own;

let guests: readonly Declared[] = [];

/** Takes the plug-ins of the corpus that are allowed now, as they declared themselves; false where they are those before. */
export function takeGuests(next: readonly Declared[]): boolean {
  if (JSON.stringify(next) === JSON.stringify(guests)) return false;
  guests = next;
  plugins = [...own, ...next.map(standInFor)];
  return true;
}

/** The guest of that name; null for one of the program's own plug-ins. */
export function guestNamed(name: string): Declared | null {
  return guests.find((one) => one.name === name) ?? null;
}
