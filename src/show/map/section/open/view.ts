import type { Id } from "../../../../base/finding.ts";
import { count, say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import type { MapView } from "../../scene.ts";
import type { Net } from "../net/net.ts";
import { directlyAbove, distancesFrom, universeOf } from "../net/reach.ts";
import { focusNodes, litBy, neighboursOf, unfoldWay } from "./focus.ts";
import { isShown, mostOpened, openingOf, unfold } from "./opening.ts";
import { pilesOf } from "./piles.ts";
import { groundOf } from "./roots.ts";
import { copyOf, show, startingWith } from "./shown.ts";
import type { Field, Growing, Shown } from "./shown.ts";
import { folds, moreOf, mostThings, sketchesOf } from "./sketch.ts";
import type { Sketch } from "./sketch.ts";

/** Most boxes that are drawn before the farthest fold again by themselves (rule 13 of the look). */
const mostDrawn = 300;
/** Most boxes, and most things among them, in the one column of a narrow screen. */
const mostNarrow = 12;
const mostThingsNarrow = 2;

/** What a view shows of a dispute. */
export interface Opened {
  readonly field: Field;
  /** All that the question is about, whatever the view leaves out of it: what ranks are told from. */
  readonly all: ReadonlySet<Id>;
  readonly sketches: readonly Sketch[];
  /** The records in focus that the map knows; none where nothing is in focus. */
  readonly focus: readonly Id[];
  readonly foldedByItself: Said | null;
}

/** Opens a map as its view asks: by itself, by hand, and along the way to what is in focus. */
export function openedBy(net: Net, view: MapView): Opened {
  const unfolded = new Set(view.unfolded);
  const ground = groundOf(net, view.question);
  const universe = withFocus(net, ground.universe, view.focus);
  const piles = pilesOf(net, universe);
  const whole: Field = { ...ground, universe, net, piles, column: null };
  const asked = view.focus === null ? [] : focusNodes(whole, view.focus);
  const centre = asked.length > 0 ? asked : view.narrow ? topOf(whole).slice(0, 1) : [];
  const field = view.narrow
    ? { ...whole, answers: [], others: [], column: centre[0] ?? null }
    : view.only
      ? alone(whole, centre)
      : whole;
  const start = view.narrow
    ? columnOf(field, centre)
    : view.only && centre.length > 0
      ? nearestOf(field, centre)
      : openingOf(field);
  if (view.focus !== null && !view.narrow) unfoldWay(field, start, view.focus);

  const far = distancesFrom(net, centre.length > 0 ? centre : topOf(field));
  const nearest = [...far.keys()].filter((id) => unfolded.has(id) || unfolded.has(moreOf(id)));
  const turn = new Map(nearest.map((id, at) => [id, at]));
  const things = unfolded.has(folds.things) ? Infinity : view.narrow ? mostThingsNarrow : mostThings;
  const at = (most: number): readonly Sketch[] => {
    const near = (id: Id): boolean => (turn.get(id) ?? Infinity) < most || most === Infinity;
    return sketchesOf(field, unfoldedIn(field, start, unfolded, near), things);
  };
  const drawn = at(Infinity);
  const common = { field, all: universe, focus: asked };
  if (drawn.length <= mostDrawn) return { ...common, sketches: drawn, foldedByItself: null };
  const kept = mostWithin(at, nearest.length);
  const foldedByItself =
    centre.length > 0
      ? say`Unfolded, this would be ${count(drawn.length)} boxes; what lies farthest from the focus is folded again.`
      : say`Unfolded, this would be ${count(drawn.length)} boxes; what lies farthest from the answers is folded again.`;
  return { ...common, sketches: kept, foldedByItself };
}

function topOf({ answers, others }: Field): readonly Id[] {
  return answers.length > 0 ? answers : others;
}

/** What is in focus is on the map with all it rests on, even where nothing that the question is about leans on it. */
function withFocus(net: Net, universe: ReadonlySet<Id>, focus: Id | null): ReadonlySet<Id> {
  if (focus === null) return universe;
  const things = new Set(net.graph.withParts(focus));
  const labels = [...net.graph.list("observations"), ...net.graph.list("measurements")].map((one) => one.id);
  const own = labels.filter((id) => net.things(id).some((thing) => things.has(thing)));
  const known = net.kindOf(focus) !== null;
  const added = known ? [focus] : own.some((id) => universe.has(id)) ? [] : own;
  return new Set([
    ...universe,
    ...universeOf(
      net,
      added.filter((id) => net.kindOf(id) !== null),
    ),
  ]);
}

/** The dispute with nothing in it but what stays in ink about a focus. */
function alone(field: Field, focus: readonly Id[]): Field {
  if (focus.length === 0) return field;
  const { net } = field;
  const universe = new Set([...litBy(net, focus)].filter((id) => field.universe.has(id)));
  const answers = field.answers.filter((id) => universe.has(id));
  const topmost = (id: Id): boolean => {
    const above = [...directlyAbove(net, id), ...(net.steps.get(id)?.against ?? [])];
    return !above.some((other) => universe.has(other));
  };
  const others = answers.length > 0 ? [] : [...universe].filter(topmost);
  return { ...field, universe, answers, others };
}

/** What lies nearest to a focus, as much as a map opens with. */
function nearestOf(field: Field, focus: readonly Id[]): Growing {
  return filled(
    field,
    startingWith(focus, field.net),
    [...distancesFrom(field.net, focus).keys()],
    mostOpened,
  );
}

/** The focus and what meets it directly. */
function columnOf(field: Field, focus: readonly Id[]): Growing {
  const [first] = focus;
  const near = first === undefined ? [] : [...neighboursOf(field.net, first)];
  return filled(field, startingWith(focus.slice(0, 1), field.net), near, mostNarrow, mostThingsNarrow);
}

/** Shows as many of some nodes as the limit leaves room for, a node with nothing between it and the rest left out. */
function filled(
  field: Field,
  start: Growing,
  wanted: readonly Id[],
  limit: number,
  things: number = mostThings,
): Growing {
  let shown = start;
  for (const id of wanted) {
    if (!field.universe.has(id) || isShown(field, shown, id)) continue;
    const tried = copyOf(shown);
    show(tried, field.net, id);
    if (sketchesOf(field, tried, things).length <= limit) shown = tried;
  }
  return shown;
}

/** What was unfolded by hand, on top of what is open by itself; what is not shown cannot be unfolded. */
function unfoldedIn(field: Field, start: Shown, unfolded: ReadonlySet<Id>, near: (id: Id) => boolean): Shown {
  const growing = copyOf(start);
  const { net } = field;
  if (unfolded.has(folds.answers)) for (const id of field.answers) show(growing, net, id);
  if (unfolded.has(folds.others)) for (const id of field.others) show(growing, net, id);
  const waiting = new Set([...unfolded].filter((id) => !id.startsWith("~") && near(id)));
  const further = [...unfolded].filter((id) => id.startsWith("~")).map((id) => id.slice(1));
  for (const claim of further) if (net.kindOf(claim) === "claim" && near(claim)) waiting.add(claim);
  for (let size = -1; size !== waiting.size;) {
    size = waiting.size;
    for (const id of waiting) {
      if (!isShown(field, growing, id)) continue;
      unfold(field, growing, id, unfolded.has(moreOf(id)));
      waiting.delete(id);
    }
  }
  return growing;
}

/** As much of what was unfolded by hand, the nearest first, as stays within the limit. */
function mostWithin(at: (most: number) => readonly Sketch[], all: number): readonly Sketch[] {
  let [fits, over] = [0, all + 1];
  while (over - fits > 1) {
    const middle = (fits + over) >> 1;
    if (at(middle).length <= mostDrawn) fits = middle;
    else over = middle;
  }
  return at(fits);
}
