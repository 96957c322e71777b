import { paragraph } from "../../../../base/text/said/paragraph.ts";
import { count, say } from "../../../../base/text/said/said.ts";
import type { Said, Text } from "../../../../base/text/said/said.ts";
import type { Derived } from "../../../../derive/derived/derived.ts";
import type { Standing } from "../../../../judge/judge.ts";
import { entriesOf } from "../../../numbers/entries.ts";
import type { Reported } from "../../../report/report.ts";

/** How many of the readings that a number takes do not hold or are open, and what comes of that for the number; null where all stand. */
export function beatenSaid({ graph, judgement }: Reported, derived: Derived): Text | null {
  const of = (...those: readonly Standing[]): number =>
    entriesOf(graph, judgement, derived).taken.filter(({ id }) =>
      those.includes(judgement.standings.get(id) ?? "stands"),
    ).length;
  const told = [...fallen(of("falls", "unsupported")), ...open(of("open"))];
  if (told.length === 0) return null;
  const standing = judgement.standings.get(derived.id);
  return paragraph([
    ...told,
    ...(standing === undefined || standing === "stands"
      ? []
      : [
          standing === "open"
            ? say`So it is open whether the number holds.`
            : say`So the number does not hold either.`,
        ]),
  ]);
}

function fallen(n: number): readonly Said[] {
  if (n === 0) return [];
  return n === 1
    ? [say`One of the readings that it takes does not hold.`]
    : [say`Of the readings that it takes ${count(n)} do not hold.`];
}

function open(n: number): readonly Said[] {
  if (n === 0) return [];
  return n === 1
    ? [say`One of the readings that it takes is open.`]
    : [say`Of the readings that it takes ${count(n)} are open.`];
}
