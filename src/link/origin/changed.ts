import type { Id } from "../../base/finding.ts";
import { listNames } from "../../read/grammar/kinds.ts";
import type { AnyLinked, Graph } from "../graph.ts";

/** For lists of records that only stand elsewhere than in an earlier list, that list. */
const earlier = new WeakMap<readonly AnyLinked[], readonly AnyLinked[]>();

/** What a list of records says, as an object to go by: the same for a list that says the same as one before an edit. */
export function sayingOf(records: readonly AnyLinked[]): object {
  return earlier.get(records) ?? records;
}

/** Lets a list of records stand for what an earlier one said. */
export function saysAs(records: readonly AnyLinked[], before: readonly AnyLinked[]): void {
  earlier.set(records, earlier.get(before) ?? before);
}

/** Lists that say nothing of what is measured, where it is from, or of what a number is computed on. */
const aside: readonly string[] = ["measurements", "derivations", "arguments", "positions"];

/**
 * The measurements that say something else than in an earlier graph, where each still is of the same dimension of the
 * same thing, and where nothing else differs that a selection looks at; null where more is different.
 */
export function measurementsChanged(before: Graph, now: Graph): ReadonlySet<Id> | null {
  if (before.settings !== now.settings || !sameEach(before.pluginFiles, now.pluginFiles)) return null;
  if (!sameEach([...before.sources.values()], [...now.sources.values()])) return null;
  for (const list of listNames) {
    if (!aside.includes(list) && !sayTheSame(before.list(list), now.list(list))) return null;
  }
  const [was, is] = [before.list("measurements"), now.list("measurements")];
  if (was.length !== is.length) return null;
  const changed = new Set<Id>();
  for (const [place, one] of is.entries()) {
    const other = was[place];
    if (other && saysTheSame(other, one)) continue;
    const isAlike =
      other?.id === one.id &&
      other.values.of === one.values.of &&
      other.values.dimension === one.values.dimension &&
      other.values.between === one.values.between;
    if (!isAlike) return null;
    changed.add(one.id);
  }
  return changed;
}

/** Whether two lists are of the same objects. */
export function sameEach(some: readonly object[], others: readonly object[]): boolean {
  return some.length === others.length && some.every((one, place) => one === others[place]);
}

function sayTheSame(some: readonly AnyLinked[], others: readonly AnyLinked[]): boolean {
  if (sayingOf(some) === sayingOf(others)) return true;
  return some.length === others.length && some.every((one, place) => saysTheSame(one, others[place]));
}

/** Records of a file that was read again are other objects; they may stand on other lines. */
function saysTheSame(one: AnyLinked, other: AnyLinked | undefined): boolean {
  return one === other || (one.id === other?.id && sameValue(one.values, other.values));
}

/** Whether two pieces of plain data are the same, maps and lists in the same order. */
export function sameValue(one: unknown, other: unknown): boolean {
  if (one === other || (Number.isNaN(one) && Number.isNaN(other))) return true;
  if (typeof one !== "object" || typeof other !== "object" || one === null || other === null) return false;
  if (one instanceof Map !== other instanceof Map) return false;
  const [some, others] = [entriesOf(one), entriesOf(other)];
  return (
    some.length === others.length &&
    some.every(([key, value], place) => {
      const [otherKey, otherValue] = others[place] ?? [];
      return key === otherKey && sameValue(value, otherValue);
    })
  );
}

const entriesOf = (value: object): readonly (readonly [unknown, unknown])[] =>
  value instanceof Map ? [...value] : Object.entries(value);
