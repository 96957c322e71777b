import type { Id } from "../../../base/finding.ts";
import { comparable, conflict } from "../../../judge/rules/measurements/compare.ts";
import type { MeasurementRecord } from "../../../link/graph.ts";
import type { Reported } from "../../report/report.ts";
import { withheldIn } from "../../withhold.ts";
import type { Attack, Box, Line, Rivals } from "../scene.ts";
import type { Ranks } from "./net/ranks.ts";
import { wholeOf } from "./net/reach.ts";
import type { Field } from "./open/shown.ts";
import { folds } from "./open/sketch.ts";
import type { Sketch } from "./open/sketch.ts";

/** Most lines from parts of one thing to one pile; a pile of more parts has one line, from the whole. */
const mostPartLines = 3;

/** What lines are drawn between. */
export interface Tying {
  readonly field: Field;
  readonly ranks: Ranks;
  readonly sketches: readonly Sketch[];
  readonly boxes: ReadonlyMap<Id, Box>;
  readonly boxOf: (node: Id) => Id | null;
}

/** Lines of support, each once: from things to labels, to numbers, to beams, to claims, and past what is folded. */
export function linesOf({ field, ranks, sketches, boxes, boxOf }: Tying): readonly Line[] {
  const { net } = field;
  const lines = new Map<Id, Line>();
  const port = (box: Id, name: Id): Id => {
    const { ports = [] } = boxes.get(box) ?? {};
    return ports.some((one) => one.name === name) ? name : box;
  };
  const tie = (from: Id | null, to: Id | null, circle = false, fromPort?: Id): void => {
    if (from === null || to === null || from === to) return;
    const start = fromPort === undefined ? port(from, to) : port(from, fromPort);
    const id = start === from ? `${from}|${to}` : `${start}|${from}|${to}`;
    if (!lines.has(id))
      lines.set(id, { id, from: { box: from, port: start }, to: { box: to, port: port(to, from) }, circle });
  };
  const thingBox = (whole: Id): Id => (boxes.has(whole) ? whole : folds.things);
  for (const one of sketches) {
    for (const whole of one.downTo) tie(thingBox(whole), one.id);
    if (one.as === "pile") {
      const things = new Set(one.records.flatMap((label) => net.things(label)));
      for (const [whole, parts] of byWhole(field, things))
        for (const part of parts.length > mostPartLines ? [whole] : parts)
          tie(thingBox(whole), one.id, false, part);
    } else if (one.as === "number") {
      for (const input of net.inputs(one.id)) tie(boxOf(input), one.id, ranks.circle(input, one.id));
    } else if (one.as === "step") {
      const step = net.steps.get(one.id);
      const { therefore = null, because = [] } = step ?? {};
      for (const premise of because)
        tie(boxOf(premise), one.id, therefore !== null && ranks.circle(premise, therefore));
      if (therefore !== null) tie(one.id, boxOf(therefore));
    } else if (one.of !== null) tie(one.id, one.of);
  }
  return [...lines.values()];
}

/** Things under the outermost whole of each. */
function byWhole({ net }: Field, things: Iterable<Id>): ReadonlyMap<Id, readonly Id[]> {
  const found = new Map<Id, Id[]>();
  for (const thing of things) {
    const whole = wholeOf(net, thing);
    found.set(whole, [...(found.get(whole) ?? []), thing]);
  }
  return found;
}

/** Attacks of the beams that are drawn on what is drawn. */
export function attacksOf({ field, sketches, boxOf }: Tying): readonly Attack[] {
  return sketches.flatMap(({ as, id }) => {
    const step = as === "step" ? field.net.steps.get(id) : undefined;
    const targets = new Set((step?.against ?? []).flatMap((target) => boxOf(target) ?? []));
    return [...targets].map((to) => ({ id: `${id}!${to}`, from: id, to }));
  });
}

/** One bow for each row of claims that cannot both be right: those of a question, then others that all exclude one another. */
export function rivalsOf({ field, boxes }: Tying): readonly Rivals[] {
  const { net } = field;
  const isRival = (a: Id, b: Id): boolean => net.rivals(a).includes(b);
  const shown = net.claims.filter((id) => boxes.has(id));
  const told = new Set<string>();
  const found: Rivals[] = [];
  const tell = (id: Id, claims: readonly Id[]): void => {
    const fresh = claims.some((a) => claims.some((b) => a !== b && !told.has(`${a}\n${b}`)));
    if (claims.length < 2 || !fresh) return;
    for (const a of claims) for (const b of claims) told.add(`${a}\n${b}`);
    found.push({ id, boxes: claims });
  };
  const withheld = withheldIn(net.graph);
  for (const { id, values } of net.graph.list("questions")) {
    if (values.exclusive === false || withheld(id)) continue;
    tell(
      id,
      [...new Set(values.answers)].filter((claim) => boxes.has(claim)),
    );
  }
  for (const claim of shown) {
    for (const other of net.rivals(claim)) {
      if (!boxes.has(other) || told.has(`${claim}\n${other}`)) continue;
      const group = [claim, other];
      for (const third of shown)
        if (!group.includes(third) && group.every((one) => isRival(one, third))) group.push(third);
      tell(`${claim}<>${other}`, group);
    }
  }
  return found;
}

/** Pairs of measurements that differ by more than both allow. */
export function clashesOf(whole: Reported): readonly (readonly [Id, Id])[] {
  const pairs: (readonly [Id, Id])[] = [];
  for (const group of comparable(whole)) {
    group.forEach((one: MeasurementRecord, at) => {
      for (const other of group.slice(at + 1))
        if (conflict(one, other, whole.graph)) pairs.push([one.id, other.id]);
    });
  }
  return pairs;
}

/** Conflicts between piles that are drawn apart, each pair of piles once. */
export function conflictsOf(
  clashes: readonly (readonly [Id, Id])[],
  { boxOf }: Pick<Tying, "boxOf">,
): readonly Rivals[] {
  const found = new Map<Id, Rivals>();
  for (const [one, other] of clashes) {
    const [a, b] = [boxOf(one), boxOf(other)];
    if (a === null || b === null || a === b) continue;
    const id = `${a}<>${b}`;
    if (!found.has(id) && !found.has(`${b}<>${a}`)) found.set(id, { id, boxes: [a, b] });
  }
  return [...found.values()];
}
