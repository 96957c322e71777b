import type { Id } from "../../base/finding.ts";
import type { DerivationRecord, Graph } from "../../link/graph.ts";
import { derivationsTaken } from "../../link/inputs.ts";

/**
 * Has derivations done in turn, those first whose numbers another takes: so a row of them may be of any length. What
 * waits for itself comes last, when all else that it waits for is done.
 */
export function inTurn(
  graph: Graph,
  isDone: (id: Id) => boolean,
  derive: (derivation: DerivationRecord) => void,
): (derivation: DerivationRecord) => void {
  const first = (derivation: DerivationRecord): readonly DerivationRecord[] =>
    derivationsTaken(derivation).flatMap((id) => {
      const record = graph.records.get(id);
      return record?.list === "derivations" && !isDone(id) ? [record] : [];
    });
  return (derivation) => {
    const waiting = [derivation];
    const entered = new Set<Id>();
    const circling: DerivationRecord[] = [];
    for (let last = waiting.at(-1); last !== undefined; last = waiting.at(-1)) {
      const waitsFor = isDone(last.id) ? [] : first(last);
      const before = entered.has(last.id) ? [] : waitsFor.filter(({ id }) => !entered.has(id));
      entered.add(last.id);
      waiting.push(...before);
      if (before.length > 0) continue;
      if (waitsFor.length === 0) derive(last);
      else circling.push(last);
      waiting.pop();
    }
    circling.forEach(derive);
  };
}

/** A circle told from the one of its derivations that the corpus has first. */
export function fromFirst(graph: Graph, circle: readonly Id[]): readonly Id[] {
  const places = new Map(graph.list("derivations").map(({ id }, place) => [id, place]));
  const [first] = circle.toSorted((a, b) => (places.get(a) ?? 0) - (places.get(b) ?? 0));
  const start = circle.findIndex((id) => id === first);
  return [...circle.slice(start), ...circle.slice(0, start)];
}
