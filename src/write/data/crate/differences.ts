import type { Id } from "../../../base/finding.ts";
import { canonical, objectOf } from "../../../base/json.ts";
import type { Json } from "../../../base/json.ts";
import type { Given } from "../../../show/telling/given/given.ts";
import type { Report } from "../../../show/report/schema.ts";

/** What of the whole record and what of the corpus that is given, where the two differ; null where nothing was computed or judged. */
interface Difference {
  readonly whole: Json;
  readonly given: Json;
}

/** Where what follows from the given corpus is not what follows from the whole record. */
export interface Differences {
  /** How many records of each list are not in the given corpus. */
  readonly leftOut: Readonly<Record<string, number>>;
  readonly standings: Readonly<Record<Id, Difference>>;
  readonly numbers: Readonly<Record<Id, Difference>>;
}

/** Compares what the program reports of the whole record with what it reports of the given corpus, record by record. */
export function differencesOf({ records, leftOut }: Given, whole: Report, given: Report): Differences {
  const apart = (of: (report: Report, id: Id) => Json): Readonly<Record<Id, Difference>> =>
    objectOf(
      [...records.keys()].flatMap((id) => {
        const [was, is] = [of(whole, id), of(given, id)];
        return canonical(was) === canonical(is) ? [] : [[id, { whole: was, given: is }] as const];
      }),
    );
  return {
    leftOut: objectOf(leftOut),
    standings: apart(({ standings }, id) => standings[id]?.standing ?? null),
    numbers: apart(({ numbers }, id) => {
      const one = numbers[id];
      return one === undefined ? null : { status: one.status, numbers: one.numbers, bearsOn: one.bearsOn };
    }),
  };
}
