import type { Engine } from "citeproc";
import type { Runs } from "./runs.ts";

/** An entry by the processor's key of its item. */
export interface KeyedEntry {
  readonly key: string;
  readonly runs: Runs;
}

/** The bibliography of one processor, of which only what changed is written again. */
export interface Bibliography {
  /** Other items, in this order where the style sorts none before another. */
  readonly take: (keys: readonly string[]) => void;
  /** Null where the style has no bibliography. */
  readonly entries: () => readonly KeyedEntry[] | null;
  readonly alone: (key: string) => Runs | null;
}

/**
 * An entry is written again when its item is another, when the processor told its disambiguation apart anew, or when
 * another entry comes before it: a name that is repeated is printed as a dash. Where a style `numbers` its entries, all
 * are written again when the order is another.
 */
export function bibliographyOf(
  engine: Engine,
  numbers: boolean,
  runsOf: (key: string, marks: string) => Runs,
): Bibliography {
  const written = new Map<string, { readonly runs: Runs; readonly after: string | null }>();
  const stale = new Set<string>();
  let numbered: readonly string[] = [];

  const entriesOf = (keys: readonly string[] | null): readonly (readonly [string, string])[] | null => {
    const only = keys?.map((value) => ({ field: "id", value }));
    const made = only ? engine.makeBibliography({ include: only }) : engine.makeBibliography();
    if (!made) return null;
    const [{ entry_ids: ids }, texts] = made;
    return texts.map((text, place) => [ids[place]?.[0] ?? "", text] as const);
  };

  return {
    take: (keys) => {
      engine.tmp.taintedItemIDs = {};
      engine.updateItems(keys);
      for (const key of Object.keys(engine.tmp.taintedItemIDs)) stale.add(key);
      const kept = new Set(keys);
      for (const key of written.keys()) if (!kept.has(key)) written.delete(key);
    },
    entries: () => {
      const order = engine.registry.getSortedIds();
      const before = new Map(order.map((key, place) => [key, order[place - 1] ?? null]));
      const moved = numbers && order.join() !== numbered.join();
      const due = order.filter((key) => {
        const one = written.get(key);
        return moved || one === undefined || stale.has(key) || one.after !== before.get(key);
      });
      const few = due.length * 4 < order.length;
      const context = few ? [...new Set(due.flatMap((key) => [before.get(key) ?? key, key]))] : null;
      const made = due.length === 0 ? [] : entriesOf(context);
      if (!made) return null;
      const wanted = new Set(due);
      for (const [key, text] of made)
        if (wanted.has(key)) written.set(key, { runs: runsOf(key, text), after: before.get(key) ?? null });
      stale.clear();
      numbered = order;
      return order.flatMap((key) => {
        const one = written.get(key);
        return one ? [{ key, runs: one.runs }] : [];
      });
    },
    alone: (key) => {
      const [entry] = entriesOf([key]) ?? [];
      return entry ? runsOf(key, entry[1]) : null;
    },
  };
}
