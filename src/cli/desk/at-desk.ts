import { inEnglish } from "../../base/text/said/english.ts";
import { openDesk } from "../../host/desk/desk.ts";
import type { Desk } from "../../host/desk/desk.ts";
import { CannotWrite } from "../../host/desk/refusal.ts";
import { Stop } from "../fault.ts";

/** Does something at the desk of a corpus; what is refused is told in a line, and so is what of the desk could not be used. */
export function atDesk<T>(folder: string, one: (desk: Desk) => T): T {
  try {
    const desk = openDesk(folder);
    try {
      return one(desk);
    } finally {
      const { troubles = [] } = desk.state();
      process.stderr.write(troubles.map((trouble) => `${inEnglish(trouble)}\n`).join(""));
    }
  } catch (error) {
    if (error instanceof CannotWrite) throw new Stop(error.message);
    throw error;
  }
}
