import { say } from "../../../../base/text/said/said.ts";
import type { Hole, Said } from "../../../../base/text/said/said.ts";
import type { SearchLog } from "../../../desk/literature/search-log.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import { line, words } from "../pieces/inlines.ts";
import type { Readings } from "./readings.ts";

/** The flow of records from the searches to what was read, in the order of PRISMA 2020. */
export function flowTable(log: SearchLog, readings: Readings): Block {
  return {
    is: "table",
    caption: [say`The flow of records, from the searches to the works that this review draws on.`],
    head: [say`Stage`, say`Number`].map(line),
    rows: [...(log.searches.length > 0 ? searched(log) : []), ...followed(readings)],
    figures: [1],
  };
}

type Row = readonly Inlines[];

const row = (stage: Said, n: Hole): Row => [[stage], [say`${n}`]];

/** From what was found to what was kept; a sum that lacks a number is at least what it comes to. */
function searched({ searches, flow, places }: SearchLog): readonly Row[] {
  const known = (of: "found" | "screened" | "kept"): boolean => searches.every((one) => one[of] !== null);
  const sum = (of: "found" | "screened" | "kept"): Hole =>
    known(of) ? String(flow[of]) : say`at least ${String(flow[of])}`;
  const foundAt = places.map((where): Row => {
    const those = searches.filter((one) => one.where === where);
    const n = those.reduce((all, one) => all + (one.found ?? 0), 0);
    return [["– ", words(where, null)], [those.some((one) => one.found === null) ? "–" : String(n)]];
  });
  const before = known("found") && known("screened") ? flow.found - flow.screened : 0;
  return [
    row(say`Records identified`, sum("found")),
    ...(places.length > 1 ? foundAt : []),
    ...(before > 0 ? [row(say`Records set aside before screening`, String(before))] : []),
    row(say`Records screened`, sum("screened")),
    row(say`Records left out on screening`, String(flow.leftOut)),
    ...flow.reasons.map(({ why, n }): Row => [["– ", words(why, null)], [String(n)]]),
    row(say`Records kept`, sum("kept")),
  ];
}

/** From the works of the bibliography to those that are drawn on. */
function followed({ works, by, drawnOn, recorded }: Readings): readonly Row[] {
  const n = (status: Parameters<Readings["by"]["get"]>[0]): number => by.get(status)?.length ?? 0;
  const some = (stage: Said, of: number): readonly Row[] => (of > 0 ? [row(stage, String(of))] : []);
  return [
    row(say`Works in the bibliography`, String(works)),
    ...(recorded
      ? [
          row(say`– sought and read`, String(n("read") + n("nothing-in-it"))),
          ...some(say`– sought and not found`, n("not-found")),
          ...some(say`– still to be read`, n("to-read")),
          ...some(say`– of which it is not recorded whether they were read`, n(null)),
          ...some(say`Works read that have nothing to the purpose`, n("nothing-in-it")),
        ]
      : []),
    row(say`Works that the review draws on`, String(drawnOn.length)),
  ];
}
