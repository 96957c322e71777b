import type { Id } from "../../../base/finding.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { layOut } from "../../map/layout/layout.ts";
import type { MapPage, MapView, Scene, Section } from "../../map/scene.ts";
import { distancesFrom } from "../../map/section/net/reach.ts";
import { drawnBy } from "../../map/section/section.ts";
import type { Drawn } from "../../map/section/section.ts";
import { statesOf } from "../../map/states.ts";
import type { Reported } from "../../report/report.ts";
import { withheldIn } from "../../withhold.ts";
import type { Picture } from "../blocks/picture.ts";

/** A part of the map as it fits on some paper. */
export interface MapPart {
  readonly picture: Extract<Picture, { readonly is: "map" }>;
  /** How many records that were asked for lie too far off to be drawn. */
  readonly left: number;
}

/** The model that a map is laid out from, of all years, and the one under the lens, which says how things stand. */
export interface MapModels {
  readonly whole: Reported;
  readonly model: Reported;
  /** Puts what is written on the map into the reader's language; into English unless told otherwise. */
  readonly told?: (text: Text) => string;
}

/** How well a scene can be read on some paper. */
type Reads = (scene: Scene) => "whole" | "short" | "not";

/** The least of a question's map that tells anything: its answers, the arguments for them, and their premises. */
const premises = 2;

/** The map of a question with all its answers, as far down as it can be read; null where not even their premises have room. */
export function questionPicture(models: MapModels, question: Id, reads: Reads): MapPart | null {
  const drawn = drawnFor(models, { question, focus: null, narrow: false });
  if (drawn === null) return null;
  const range = { from: Infinity, to: premises };
  return widest(drawn, "whole", range, reads) ?? widest(drawn, "short", range, reads);
}

/**
 * The map around a record, so many steps of reasoning far, or as far as it can be read with all its words; what does not
 * fit is laid out anew with less, at last in one column. Null where the map has nothing of it.
 */
export function aroundPicture(
  models: MapModels,
  focus: Id,
  steps: number | null,
  reads: Reads,
): MapPart | null {
  const drawn = drawnFor(models, { question: null, focus, narrow: false });
  if (drawn === null) return null;
  const from = steps === null ? Infinity : 2 * steps;
  const found = widest(drawn, "whole", { from, to: premises }, reads);
  if (found !== null) return found;
  const column = drawnFor(models, { question: null, focus, narrow: true });
  if (column === null) return null;
  const section = within(column, () => true);
  const left = Math.max(0, recordsIn(within(drawn, () => true)) - recordsIn(section));
  return partOf(column, section, layOut(section, { told: column.told }), left);
}

/** A view of the map before it has its places. */
interface View {
  readonly drawn: Drawn;
  readonly states: MapPage["states"];
  readonly told: (text: Text) => string;
  /** How many steps each record lies from the middle; a claim is two from its premises. */
  readonly far: (box: Id) => number;
}

function drawnFor(
  { whole, model, told = inEnglish }: MapModels,
  { question, focus, narrow }: Pick<MapView, "question" | "focus" | "narrow">,
): View | null {
  const withheld = withheldIn(model.graph);
  if ([question, focus].some((id) => id !== null && withheld(id))) return null;
  const drawn = drawnBy(whole, { question, focus, narrow, unfolded: [], only: focus !== null }, told);
  const centre = focus === null ? drawn.field.answers : drawn.focus;
  if (centre.length === 0) return null;
  const distances = distancesFrom(drawn.field.net, centre);
  const states = statesOf(drawn, model, null, null);
  return { drawn, states, told, far: (box) => distances.get(box) ?? Infinity };
}

/** As much of a view as can be read in that way: the whole first, then less and less of what lies farthest off. */
function widest(
  view: View,
  way: "whole" | "short",
  { from, to }: { readonly from: number; readonly to: number },
  reads: Reads,
): MapPart | null {
  const { drawn, far, told } = view;
  const distances = new Set(drawn.section.boxes.flatMap(({ id, records }) => [id, ...records].map(far)));
  const less = [...distances].filter((one) => one < from && one >= to).sort((a, b) => b - a);
  const all = within(view, (id) => far(id) <= from);
  for (const most of [from, ...less]) {
    const section = most === from ? all : within(view, (id) => far(id) <= most);
    const scene = layOut(section, { told });
    if (reads(scene) === way) return partOf(view, section, scene, recordsIn(all) - recordsIn(section));
  }
  return null;
}

function partOf({ states }: View, section: Section, scene: Scene, left: number): MapPart {
  const shown = Object.fromEntries(
    section.boxes.flatMap(({ id }) => {
      const state = states[id];
      return state === undefined ? [] : [[id, state] as const];
    }),
  );
  const beaten = section.attacks
    .filter(({ from }) => !["stands", "open"].includes(states[from]?.standing ?? ""))
    .map(({ id }) => id);
  return { picture: { is: "map", map: { scene, states: shown, beaten } }, left };
}

function recordsIn(section: Section): number {
  return new Set(section.boxes.flatMap((box) => box.records)).size;
}

/** A section without what is not in print yet and what lies too far off. */
function within({ drawn: { section }, states }: View, isNear: (id: Id) => boolean): Section {
  return sectionWith(
    section,
    section.boxes.filter((box) => states[box.id]?.later !== true && [box.id, ...box.records].some(isNear)),
  );
}

/** A section with some of its boxes alone; the things that labels among them are of stay with them. */
export function sectionWith(section: Section, boxes: Section["boxes"]): Section {
  const kept = new Set(boxes.map((box) => box.id));
  const under = new Set(section.lines.filter(({ to }) => kept.has(to.box)).map(({ from }) => from.box));
  for (const box of section.boxes) if (box.look.as === "thing" && under.has(box.id)) kept.add(box.id);
  const all = (ids: readonly Id[]): boolean => ids.every((id) => kept.has(id));
  return {
    boxes: section.boxes.filter((box) => kept.has(box.id)),
    lines: section.lines.filter(({ from, to }) => all([from.box, to.box])),
    attacks: section.attacks.filter(({ from, to }) => all([from, to])),
    rivals: section.rivals
      .map((one) => ({ ...one, boxes: one.boxes.filter((id) => kept.has(id)) }))
      .filter((one) => one.boxes.length > 1),
    conflicts: section.conflicts.filter((one) => all(one.boxes)),
  };
}
