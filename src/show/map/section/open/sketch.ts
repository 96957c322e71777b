import type { Id } from "../../../../base/finding.ts";
import { wholeOf, wholesUnder, wholesUnderMany } from "../net/reach.ts";
import { hiddenAt, isFoldedClaim } from "./shown.ts";
import type { Field, Hidden, Shown } from "./shown.ts";

/** A box before it has words and sizes: what it shows, and what lies folded up in it. */
export interface Sketch {
  readonly id: Id;
  readonly as: "claim" | "step" | "number" | "pile" | "thing" | "fold";
  readonly records: readonly Id[];
  readonly hidden: Hidden;
  /** Of a fold beside the steps of a claim: that claim. */
  readonly of: Id | null;
  /** The outermost things that what it hides comes down to. */
  readonly downTo: readonly Id[];
}

/** Names of the folds that belong to no record; `~` and a claim's id names the fold of its further arguments. */
export const folds = { answers: "~answers", others: "~claims", things: "~things" } as const;

/** The fold that holds a claim's further arguments. */
export const moreOf = (claim: Id): Id => `~${claim}`;

/** Most things that a map shows before the rest are folded into one. */
export const mostThings = 12;

const nothing: Hidden = { under: [], against: [], rivals: [] };

/** Every box that a state of the map has, those of one kind in corpus order. */
export function sketchesOf(field: Field, shown: Shown, things: number = mostThings): readonly Sketch[] {
  const { net, piles } = field;
  const made: Sketch[] = [];
  const sketch = (id: Id, as: Sketch["as"], records: readonly Id[], more: Partial<Sketch> = {}): void => {
    made.push({ id, as, records, hidden: nothing, of: null, downTo: [], ...more });
  };
  const down = (from: readonly Id[]): readonly Id[] => [...wholesUnder(net, from)];
  for (const { id } of net.graph.list("claims")) {
    if (!shown.nodes.has(id)) continue;
    const hidden = hiddenAt(field, shown, id);
    const aside = field.column !== null && field.column !== id;
    if (isFoldedClaim(field, shown, id)) sketch(id, "claim", [id], { hidden, downTo: down(hidden.under) });
    else if (aside) sketch(id, "claim", [id], { hidden });
    else {
      sketch(id, "claim", [id], { hidden: { ...hidden, under: [] } });
      if (hidden.under.length > 0) {
        const rest = { ...nothing, under: hidden.under };
        sketch(moreOf(id), "fold", [id], { hidden: rest, of: id, downTo: down(hidden.under) });
      }
    }
  }
  for (const step of net.steps.values()) {
    if (!shown.steps.has(step.id)) continue;
    sketch(step.id, "step", [step.from], { hidden: hiddenAt(field, shown, step.id) });
  }
  for (const { id } of net.graph.list("derivations")) {
    if (!shown.nodes.has(id)) continue;
    const hidden = hiddenAt(field, shown, id);
    sketch(id, "number", [id], { hidden, downTo: down(hidden.under) });
  }
  const seen = new Set<Id>();
  for (const pile of piles.values()) {
    if (seen.has(pile.id) || !pile.members.some((member) => shown.nodes.has(member))) continue;
    seen.add(pile.id);
    const against = pile.members.flatMap((member) => hiddenAt(field, shown, member).against);
    sketch(pile.id, "pile", pile.members, { hidden: { ...nothing, against: [...new Set(against)] } });
  }
  const rest = (fold: Id, roots: readonly Id[]): void => {
    const left = roots.filter((id) => !shown.nodes.has(id) && !shown.steps.has(id));
    if (left.length > 0)
      sketch(fold, "fold", left, {
        hidden: { ...nothing, under: left },
        downTo: [...wholesUnderMany(net, left)],
      });
  };
  rest(folds.answers, field.answers);
  rest(folds.others, field.others);
  return [...made, ...thingSketches(field, made, things)];
}

/** The wholes that labels are of, or that folds come down to; too many become one fold. */
function thingSketches({ net }: Field, made: readonly Sketch[], most: number): readonly Sketch[] {
  const weights = new Map<Id, number>();
  const weigh = (thing: Id, weight: number): void => {
    weights.set(thing, (weights.get(thing) ?? 0) + weight);
  };
  for (const one of made) {
    const labels = one.as === "pile" ? one.records.flatMap((id) => net.things(id)) : [];
    for (const whole of new Set(labels.map((thing) => wholeOf(net, thing)))) weigh(whole, 1000);
    for (const whole of one.downTo) weigh(whole, 1);
  }
  const met = net.graph.list("artefacts").flatMap(({ id }) => (weights.has(id) ? [id] : []));
  const heaviest = met.toSorted((a, b) => (weights.get(b) ?? 0) - (weights.get(a) ?? 0));
  const kept = new Set(met.length <= most ? met : heaviest.slice(0, most - 1));
  const thing = (id: Id): Sketch => ({
    id,
    as: "thing",
    records: [id],
    hidden: nothing,
    of: null,
    downTo: [],
  });
  const left = met.filter((id) => !kept.has(id));
  const fold: Sketch = { ...thing(folds.things), as: "fold", records: left };
  return [...met.filter((id) => kept.has(id)).map(thing), ...(left.length > 0 ? [fold] : [])];
}
