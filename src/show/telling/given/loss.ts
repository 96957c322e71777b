import type { AnyLinked, ArtefactRecord, ClaimRecord, Linked } from "../../../link/graph.ts";
import type { ListName } from "../../../read/grammar/field.ts";

/** Records of which it matters who said them and where: without that they would be taken for the compilers' own. */
const saidBySomebody: ReadonlySet<ListName> = new Set([
  "positions",
  "observations",
  "measurements",
  "relations",
  "arguments",
]);

/**
 * A record after some of its references were lost; null where it would now say another thing: what was read second-hand would
 * pass for first-hand, a copied number for a new one, somebody's words for another's.
 */
export function withoutLoss(before: AnyLinked, after: AnyLinked): AnyLinked | null {
  if (after === before) return after;
  const had = before.values as Fields;
  const has = after.values as Fields;
  const lost = (field: string): boolean => had[field] !== undefined && has[field] === undefined;
  const fewer = (field: string): boolean => countOf(had[field]) > countOf(has[field]);
  if (lost("via") || lost("repeats")) return null;
  if (lost("by") && after.list !== "searches") return null;
  if (lost("from") && saidBySomebody.has(after.list)) return null;
  if (fewer("of") && (after.list === "observations" || after.list === "images")) return null;
  if (before.list === "talks" && after.list === "talks") return withoutSteps(before, after);
  if (before.list === "claims" && after.list === "claims") return withoutDates(before, after);
  if (before.list === "artefacts" && after.list === "artefacts") return withoutDatings(before, after);
  return after;
}

type Fields = Readonly<Record<string, unknown>>;

const countOf = (value: unknown): number => (Array.isArray(value) ? value.length : 0);

/** The words of a step that would show something are about that. */
function withoutSteps(before: Linked<"talks">, after: Linked<"talks">): AnyLinked | null {
  const steps = after.values.steps.filter(
    (one, place) => one.show !== undefined || before.values.steps[place]?.show === undefined,
  );
  return steps.length === 0 ? null : { ...after, values: { ...after.values, steps } };
}

function withoutDates(before: ClaimRecord, after: ClaimRecord): AnyLinked {
  const { dates, ...values } = after.values;
  const whole = dates?.filter(
    (one, place) => Object.keys(one).length === Object.keys(before.values.dates?.[place] ?? {}).length,
  );
  return {
    ...after,
    values: whole === undefined || whole.length === 0 ? values : { ...values, dates: whole },
  };
}

/** A dating goes with whoever gave it, and what happened to a thing with the source that alone tells of it. */
function withoutDatings(before: ArtefactRecord, after: ArtefactRecord): AnyLinked {
  const { date, history, ...values } = after.values;
  const dates = date?.filter((one, place) => keeps(before.values.date?.[place], one));
  const events = history?.filter((one, place) => keeps(before.values.history?.[place], one));
  return {
    ...after,
    values: {
      ...values,
      ...(dates !== undefined && dates.length > 0 ? { date: dates } : {}),
      ...(events !== undefined && events.length > 0 ? { history: events } : {}),
    },
  };
}

/** Whether an entry still has all that it had a say of. */
function keeps(before: object | undefined, after: object): boolean {
  return Object.keys(before ?? {}).every((name) => name in after);
}
