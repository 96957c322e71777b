import type { Id } from "../../../../base/finding.ts";
import type { Net } from "./net.ts";

/** What a node of the map rests on directly: a claim on its steps, a step on its premises, a number on its inputs. */
export function directlyBelow(net: Net, id: Id): readonly Id[] {
  switch (net.kindOf(id)) {
    case "claim":
      return net.pro(id).map((step) => step.id);
    case "step":
      return net.steps.get(id)?.because ?? [];
    case "number":
      return net.inputs(id);
    default:
      return [];
  }
}

/** What rests on a node directly. */
export function directlyAbove(net: Net, id: Id): readonly Id[] {
  const step = net.steps.get(id);
  if (step) return step.therefore === null ? [] : [step.therefore];
  return [...net.usedIn(id).map((one) => one.id), ...net.feeds(id)];
}

/** Everything that a relation leads to from some nodes, they among it. */
export function reached(from: Iterable<Id>, next: (id: Id) => readonly Id[]): ReadonlySet<Id> {
  const found = new Set(from);
  for (const id of found) for (const other of next(id)) found.add(other);
  return found;
}

/** All that the question is about: what its answers rest on, what is against any of that, and rivals, all the way down. */
export function universeOf(net: Net, from: Iterable<Id>): ReadonlySet<Id> {
  return reached(from, (id) => [
    ...directlyBelow(net, id),
    ...net.contra(id).map((step) => step.id),
    ...(net.kindOf(id) === "claim" ? net.rivals(id) : []),
  ]);
}

/** A step leads up to what it is against, too. */
function upwards(net: Net, id: Id): readonly Id[] {
  const step = net.steps.get(id);
  return step && step.against.length > 0
    ? step.against
    : [...directlyAbove(net, id), ...(net.kindOf(id) === "claim" ? net.rivals(id) : [])];
}

/** The nearest way within some nodes from one of them up to one of the roots, the root first; empty where there is none. */
export function wayTo(net: Net, within: ReadonlySet<Id>, roots: ReadonlySet<Id>, to: Id): readonly Id[] {
  const before = new Map<Id, Id | null>([[to, null]]);
  for (const [id] of before) {
    if (roots.has(id)) {
      const way: Id[] = [];
      for (let at: Id | null = id; at !== null; at = before.get(at) ?? null) way.push(at);
      return way;
    }
    for (const next of upwards(net, id)) if (within.has(next) && !before.has(next)) before.set(next, id);
  }
  return [];
}

/** How many steps each node lies from the nearest of some nodes, whichever way the lines run. */
export function distancesFrom(net: Net, from: Iterable<Id>): ReadonlyMap<Id, number> {
  const distances = new Map<Id, number>();
  for (const id of from) distances.set(id, 0);
  for (const [id, distance] of distances) {
    const step = net.steps.get(id);
    const near = [
      ...directlyBelow(net, id),
      ...directlyAbove(net, id),
      ...(step?.against ?? []),
      ...net.contra(id).map((one) => one.id),
    ];
    for (const next of near) if (!distances.has(next)) distances.set(next, distance + 1);
  }
  return distances;
}

/** The outermost whole of a thing. */
export function wholeOf(net: Net, thing: Id): Id {
  let at = thing;
  for (let whole = net.graph.wholeOf.get(at); whole !== undefined; whole = net.graph.wholeOf.get(at))
    at = whole;
  return at;
}

/** What was found under nodes one by one, and how many nodes were gone through for that. */
interface Found {
  readonly under: Map<Id, ReadonlySet<Id>>;
  spent: number;
}
const founds = new WeakMap<Net, Found>();

/** So many nodes are gone through one root at a time; where more hang together, the rest are taken at once each time. */
const mostSpent = 2_000_000;

/** The wholes of all the things that many nodes rest on, of which most are asked for again and again. */
export function wholesUnderMany(net: Net, from: readonly Id[]): ReadonlySet<Id> {
  const found = founds.get(net) ?? { under: new Map(), spent: 0 };
  founds.set(net, found);
  const wholes = new Set<Id>();
  const others: Id[] = [];
  for (const id of from) {
    let under = found.under.get(id);
    if (!under && found.spent < mostSpent) {
      const nodes = reached([id], (one) => directlyBelow(net, one));
      under = wholesOf(net, nodes);
      found.spent += nodes.size;
      found.under.set(id, under);
    }
    if (under) for (const whole of under) wholes.add(whole);
    else others.push(id);
  }
  if (others.length > 0) for (const whole of wholesUnder(net, others)) wholes.add(whole);
  return wholes;
}

/** The wholes of all the things that some nodes rest on. */
export function wholesUnder(net: Net, from: Iterable<Id>): ReadonlySet<Id> {
  return wholesOf(
    net,
    reached(from, (one) => directlyBelow(net, one)),
  );
}

function wholesOf(net: Net, nodes: ReadonlySet<Id>): ReadonlySet<Id> {
  const wholes = new Set<Id>();
  for (const id of nodes) for (const thing of net.things(id)) wholes.add(wholeOf(net, thing));
  return wholes;
}
