import type { Id } from "../../../../base/finding.ts";
import { readingList } from "../../../desk/literature/reading-list.ts";
import type { Status } from "../../../desk/literature/reading-list.ts";
import { citableUnder } from "../../../withhold.ts";
import type { Sight } from "../desk.ts";

/** What became of the works of the bibliography: each work is in one of the lists by its status. */
export interface Readings {
  readonly works: number;
  readonly by: ReadonlyMap<Status | null, readonly Id[]>;
  /** Works that records were taken from, at first hand or through another work. */
  readonly drawnOn: readonly Id[];
  /** Of these, works that nobody says to have been read, and that are known through no other work. */
  readonly unread: readonly Id[];
  /** Somebody has said of at least one work what became of it. */
  readonly recorded: boolean;
}

/** What became of every work that may be cited under the lens. */
export function readingsOf({ graph, model }: Sight): Readings {
  const citable = citableUnder(model);
  const all = readingList(graph).filter(({ key }) => citable(key));
  const by = new Map<Status | null, Id[]>();
  for (const { key, status } of all) {
    const those = by.get(status);
    if (those) those.push(key);
    else by.set(status, [key]);
  }
  const drawnOn = all.filter(({ taken, secondHand }) => taken.length > 0 || secondHand > 0);
  return {
    works: all.length,
    by,
    drawnOn: drawnOn.map(({ key }) => key),
    unread: drawnOn
      .filter(({ status, taken }) => status !== "read" && taken.length > 0)
      .map(({ key }) => key),
    recorded: all.some(({ status }) => status !== null),
  };
}
