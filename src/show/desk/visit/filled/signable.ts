import type { Id } from "../../../../base/finding.ts";
import { inEnglish } from "../../../../base/text/said/english.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import { withheldIn } from "../../../../link/withheld.ts";
import type { WrittenMap } from "../../../../read/edit/written.ts";
import type { ListName } from "../../../../read/grammar/field.ts";
import type { Filled } from "./filled.ts";
import type { ReadingsTold } from "./readings.ts";
import type { Signed } from "./who.ts";

/** What was filled in and could be read, and whose it is. */
export interface Signable {
  readonly filled: Filled;
  readonly signed: Signed;
  readonly measured: readonly (readonly [key: string, told: ReadingsTold])[];
}

/** Gives ids that nothing else has, for one step. */
export type Naming = (list: ListName, words: string) => Id;

/** Whose a record is, and when. */
export function signature({ by, year, from }: Signed): WrittenMap {
  return { ...(by === null ? {} : { by }), year, ...(from === null ? {} : { from }) };
}

/** The day of a visit, as it stands in a note. */
export function visitOf({ day }: Pick<Signed, "day">): string {
  return inEnglish(say`Visit of ${day}.`);
}

/** A record without the fields in which nothing stands. */
export function withoutEmpty(record: WrittenMap): WrittenMap {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== ""));
}

/** Whether a row of a sheet, which may be anybody's, may be about a thing: an artefact of the corpus that is not withheld. */
export function isOpenThing(graph: Graph, id: Id): boolean {
  return graph.records.get(id)?.list === "artefacts" && !withheldIn(graph)(id);
}
