import type { Id } from "../../../base/finding.ts";
import type { Reported } from "../../report/report.ts";
import type { MapView, Section } from "../scene.ts";
import { boxOfSketch } from "./boxes/boxes.ts";
import type { Making } from "./boxes/boxes.ts";
import { inOneColumn, levelled } from "./boxes/rows.ts";
import { netOf } from "./net/net.ts";
import type { Net } from "./net/net.ts";
import { ranksOf } from "./net/ranks.ts";
import { openedBy } from "./open/view.ts";
import type { Opened } from "./open/view.ts";
import { attacksOf, clashesOf, conflictsOf, linesOf, rivalsOf } from "./ties.ts";

/** A section with what it was made from. */
export interface Drawn extends Opened {
  readonly section: Section;
}

/** The dispute as boxes and lines: from the model without any lens, so that nothing moves when the year moves. */
export function sectionOf(whole: Reported, view: MapView, told?: Net["told"]): Section {
  return drawnBy(whole, view, told).section;
}

/** The section that a view shows, with what lies under it. */
export function drawnBy(whole: Reported, view: MapView, told?: Net["told"]): Drawn {
  const net = netOf(whole, told);
  const opened = openedBy(net, view);
  const { field, sketches } = opened;
  const answers = net.graph
    .list("questions")
    .filter(({ id }) => view.question === null || id === view.question)
    .flatMap(({ values }) => values.answers);
  const ranks = ranksOf(net, opened.all, answers);
  const ids = new Set(sketches.map((one) => one.id));
  const boxOf = (node: Id): Id | null => {
    const box = field.piles.get(node)?.id ?? node;
    return ids.has(box) ? box : null;
  };
  const clashes = clashesOf(whole).filter((pair) => pair.every((id) => boxOf(id) !== null));
  const making: Making = {
    whole,
    field,
    ranks,
    sketches,
    unfolded: new Set(view.unfolded),
    narrow: view.narrow,
    answers,
    boxOf,
    conflicts: (members) => clashes.some((pair) => pair.every((id) => members.includes(id))),
  };
  const drawn = new Set(sketches.flatMap((one) => (one.as === "fold" ? [] : [one.id, ...one.records])));
  const made = sketches.map((sketch) => boxOfSketch(making, sketch, drawn));
  const boxes = levelled(view.narrow ? inOneColumn(made) : made);
  const tying = { field, ranks, sketches, boxes: new Map(boxes.map((box) => [box.id, box])), boxOf };
  const section: Section = {
    boxes,
    lines: linesOf(tying),
    attacks: attacksOf(tying),
    rivals: rivalsOf(tying),
    conflicts: conflictsOf(clashes, tying),
  };
  return { ...opened, section };
}
