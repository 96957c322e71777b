import type { Id } from "../../../../base/finding.ts";
import { circlesOf } from "../../../../judge/solver/strong-components.ts";
import { rowsOf } from "../../../../judge/solver/program.ts";
import type { Net } from "./net.ts";

/** The height of every node above the things, by the record alone. */
export interface Ranks {
  readonly rowOf: (id: Id) => number;
  /** Whether one node leads back to another on the same circle of support. */
  readonly circle: (from: Id, to: Id) => boolean;
  /** The lowest row of the band of answers. */
  readonly top: number;
}

/** How far a beam hangs under its conclusion, and stands over its premises when it is against something. */
const under = 0.25;
const over = 0.5;
/** Numbers lie between the labels and the lowest beams: one on another a little higher. */
const computed = 0.5;
const computedSpan = 0.1;
/** A beam against something that leans on evidence alone. */
const lowest = 0.65;

/** Ranks of a dispute (rule 1 of the look): circles condensed, a claim one above the highest claim among its premises. */
export function ranksOf(net: Net, nodes: ReadonlySet<Id>, answers: readonly Id[]): Ranks {
  const claims = [...nodes].filter((id) => net.kindOf(id) === "claim");
  const numbers = [...nodes].filter((id) => net.kindOf(id) === "number");
  const premises = (claim: Id): readonly Id[] =>
    net
      .pro(claim)
      .flatMap((step) => step.because.filter((id) => nodes.has(id) && net.kindOf(id) === "claim"));
  const inputs = (number: Id): readonly Id[] =>
    net.inputs(number).filter((id) => nodes.has(id) && net.kindOf(id) === "number");
  const claimed = condensed(claims, premises);
  const leaning = condensed(numbers, inputs);

  const rank = raised(
    net,
    claims,
    claimed,
    claimed.depths(() => 0),
  );
  const isAnswer = new Set(answers);
  const crowned = claimed.above((claim) => isAnswer.has(claim));
  const top = 1 + Math.max(0, ...claims.filter((id) => !crowned.has(id)).map((id) => rank.get(id) ?? 1));
  const crown = condensed(
    claims.filter((id) => crowned.has(id)),
    (claim) => premises(claim).filter((id) => crowned.has(id)),
  ).depths(() => 0);

  const depths = leaning.depths(() => 0);
  const deepest = Math.max(0, ...depths.values());
  const rowOf = (id: Id): number => {
    switch (net.kindOf(id)) {
      case "claim":
        return crowned.has(id) ? top + (crown.get(id) ?? 0) : (rank.get(id) ?? 1);
      case "number":
        return computed + (computedSpan * (depths.get(id) ?? 0)) / (deepest + 1);
      case "step":
        return stepRow(id);
      default:
        return 0;
    }
  };
  const stepRow = (id: Id): number => {
    const step = net.steps.get(id);
    if (!step) return 0;
    if (step.therefore !== null) return rowOf(step.therefore) - under;
    const highest = Math.max(0, ...step.because.map(rowOf));
    return highest < 1 ? lowest : highest + over;
  };
  return { rowOf, top, circle: (from, to) => claimed.together(from, to) || leaning.together(from, to) };
}

interface Condensed {
  readonly together: (a: Id, b: Id) => boolean;
  /** The longest way down from each node, its circle counting once; `least` of a node is where it starts. */
  readonly depths: (least: (id: Id) => number) => Map<Id, number>;
  /** The nodes that are so themselves, and all that rests on one of them. */
  readonly above: (so: (id: Id) => boolean) => ReadonlySet<Id>;
}

/** A graph with each of its circles taken as one node. */
function condensed(ids: readonly Id[], below: (id: Id) => readonly Id[]): Condensed {
  const place = new Map(ids.map((id, at) => [id, at]));
  const rows = ids.map((id) => below(id).flatMap((other) => place.get(other) ?? []));
  const circles = circlesOf(rowsOf(rows));
  const groupOf = (at: number): number => ((circles[at] ?? -1) < 0 ? at : ids.length + (circles[at] ?? 0));
  const members = new Map<number, number[]>();
  ids.forEach((_, at) => members.set(groupOf(at), [...(members.get(groupOf(at)) ?? []), at]));
  const group = (id: Id): number => groupOf(place.get(id) ?? 0);
  const outside = (key: number): readonly number[] =>
    (members.get(key) ?? []).flatMap((at) => (rows[at] ?? []).map(groupOf)).filter((other) => other !== key);
  const order = downwardOrder([...members.keys()], outside);
  return {
    together: (a, b) => place.has(a) && place.has(b) && group(a) === group(b) && group(a) >= ids.length,
    depths: (least) => {
      const depths = new Map<number, number>();
      for (const key of order) {
        const own = (members.get(key) ?? []).map((at) => least(ids[at] ?? ""));
        depths.set(key, Math.max(0, ...own, ...outside(key).map((other) => (depths.get(other) ?? 0) + 1)));
      }
      return new Map(ids.map((id) => [id, depths.get(group(id)) ?? 0]));
    },
    above: (so) => {
      const found = new Set<number>();
      for (const key of order) {
        const own = (members.get(key) ?? []).some((at) => so(ids[at] ?? ""));
        if (own || outside(key).some((other) => found.has(other))) found.add(key);
      }
      return new Set(ids.filter((id) => found.has(group(id))));
    },
  };
}

/** Every group after all that it rests on. */
function downwardOrder(
  keys: readonly number[],
  below: (key: number) => readonly number[],
): readonly number[] {
  const order: number[] = [];
  const seen = new Set<number>();
  for (const start of keys) {
    const path: { readonly key: number; readonly next: number[] }[] = [];
    const enter = (key: number): void => {
      if (seen.has(key)) return;
      seen.add(key);
      path.push({ key, next: [...below(key)] });
    };
    enter(start);
    for (let at = path.at(-1); at !== undefined; at = path.at(-1)) {
      const next = at.next.pop();
      if (next !== undefined) enter(next);
      else {
        order.push(at.key);
        path.pop();
      }
    }
  }
  return order;
}

/** A claim that nothing supports stands one rank below what it is used for. */
function raised(
  net: Net,
  claims: readonly Id[],
  claimed: Condensed,
  depths: ReadonlyMap<Id, number>,
): ReadonlyMap<Id, number> {
  return new Map(
    claims.map((claim) => {
      const own = 1 + (depths.get(claim) ?? 0);
      if (net.pro(claim).length > 0) return [claim, own];
      const uses = net.usedIn(claim).flatMap((step) => step.therefore ?? []);
      const heights = uses
        .filter((use) => depths.has(use) && !claimed.together(use, claim))
        .map((use) => depths.get(use) ?? 0);
      return [claim, heights.length > 0 ? Math.max(own, Math.min(...heights)) : own];
    }),
  );
}
