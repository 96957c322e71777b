import type { Id } from "../../../../base/finding.ts";
import { count, say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import { labelText } from "../../../../link/names/label.ts";
import { layOut } from "../../../map/layout/layout.ts";
import type { MapPage, Scene, Section } from "../../../map/scene.ts";
import { distancesFrom } from "../../../map/section/net/reach.ts";
import { drawnBy } from "../../../map/section/section.ts";
import type { Drawn } from "../../../map/section/section.ts";
import { statesOf } from "../../../map/states.ts";
import { sectionWith } from "../../figures/map.ts";
import { leastMapScale, mapRoom } from "../layout/room.ts";
import { leftOut, remark } from "./setting.ts";
import type { Setting, Told } from "./setting.ts";

/** The part of the map around a record: as many steps of reasoning as were asked for, and can be read on a slide. */
export function aroundTold(setting: Setting, id: Id, steps: number): Told {
  const { model, whole, told } = setting;
  const without = leftOut(model, id);
  if (without !== null) return { parts: [without], about: [] };
  const view = { question: null, unfolded: [], focus: id, only: true, narrow: false };
  const drawn = drawnBy(whole, view, told);
  if (drawn.focus.length === 0)
    return { parts: [remark(say`The map has nothing about ${labelText(model.graph, id)}.`)], about: [] };
  const states = statesOf(drawn, model, null, null);
  const at = (width: number) => pictureOf(laidWithin(drawn, states, steps, setting, width), states);
  const alt = say`Part of the map: ${labelText(model.graph, id)}, with what it rests on and what rests on it`;
  const { about, ...wide } = at(mapRoom.width);
  const { picture, beside } = at(mapRoom.upright);
  return {
    parts: [{ is: "pictured", of: [id], alt, ...wide, upright: { picture, beside } }],
    about,
  };
}

/** The part of the map that was laid out, with how each of its boxes stands. */
function pictureOf({ scene, section, left }: Laid, states: MapPage["states"]) {
  const map = {
    scene,
    states: Object.fromEntries(section.boxes.map((box) => [box.id, states[box.id]] as const).flatMap(known)),
    beaten: section.attacks
      .filter(({ from }) => !["stands", "open"].includes(states[from]?.standing ?? ""))
      .map((attack) => attack.id),
  };
  return {
    picture: { is: "map", map } as const,
    beside: leftWords(left).map((text) => remark(text, "left-out")),
    about: section.boxes.flatMap((box) => box.records),
  };
}

/** How many records are not drawn, where any are not. */
function leftWords(left: number): readonly Said[] {
  if (left === 0) return [];
  return [
    left === 1
      ? say`One record further on is left out.`
      : say`${count(left)} records further on are left out.`,
  ];
}

const known = <T>([id, state]: readonly [Id, T | undefined]): readonly (readonly [Id, T])[] =>
  state === undefined ? [] : [[id, state]];

interface Laid {
  readonly scene: Scene;
  readonly section: Section;
  /** How many records that were asked for are not drawn, since they would be too small to read. */
  readonly left: number;
}

function laidWithin(
  drawn: Drawn,
  states: MapPage["states"],
  steps: number,
  { told }: Setting,
  width: number,
): Laid {
  const distances = distancesFrom(drawn.field.net, drawn.focus);
  const within = (most: number): Section =>
    sectionWithin(drawn.section, states, (id) => (distances.get(id) ?? Infinity) <= most);
  const asked = within(2 * steps);
  for (let most = 2 * steps; ; most--) {
    const section = within(most);
    const scene = layOut(section, { told });
    const scale = Math.min(width / scene.width, mapRoom.height / scene.height);
    if (scale < leastMapScale && most > 1) continue;
    return { scene, section, left: recordsIn(asked) - recordsIn(section) };
  }
}

function recordsIn({ boxes }: Section): number {
  return new Set(boxes.flatMap((box) => box.records)).size;
}

/** A section with the boxes near enough alone, none of them folded, and with the things that those are of. */
function sectionWithin(section: Section, states: MapPage["states"], isNear: (id: Id) => boolean): Section {
  const isShown = (id: Id): boolean => states[id]?.later !== true;
  return sectionWith(
    section,
    section.boxes.filter(
      (box) => isShown(box.id) && box.look.as !== "fold" && [box.id, ...box.records].some(isNear),
    ),
  );
}
