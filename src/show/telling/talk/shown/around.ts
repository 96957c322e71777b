import type { Id } from "../../../../base/finding.ts";
import { count, say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import { labelText } from "../../../../link/names/label.ts";
import { textWidth } from "../../../map/letters/letters.ts";
import { layOut } from "../../../map/layout/layout.ts";
import type { Box, MapPage, Scene, Section } from "../../../map/scene.ts";
import { directlyAbove, directlyBelow, distancesFrom, reached } from "../../../map/section/net/reach.ts";
import { drawnBy } from "../../../map/section/section.ts";
import type { Drawn } from "../../../map/section/section.ts";
import { statesOf } from "../../../map/states.ts";
import { sectionWith } from "../../figures/map.ts";
import { mapScales, mapRoom } from "../layout/room.ts";
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

/** As many steps as can be read; before a step is given up, what lies beside the straight way up and down from the middle is. */
function laidWithin(
  { field, focus, section }: Drawn,
  states: MapPage["states"],
  steps: number,
  { told }: Setting,
  width: number,
): Laid {
  const distances = distancesFrom(field.net, focus);
  const near = (most: number) => (id: Id) => (distances.get(id) ?? Infinity) <= most;
  const upwards = (id: Id) => [...directlyAbove(field.net, id), ...(field.net.steps.get(id)?.against ?? [])];
  const straight = new Set([
    ...reached(focus, upwards),
    ...reached(focus, (id) => directlyBelow(field.net, id)),
  ]);
  const asked = sectionWithin(section, states, near(2 * steps));
  for (let most = 2 * steps; ; most--) {
    for (const isNear of [near(most), (id: Id) => near(most)(id) && straight.has(id)]) {
      const part = sectionWithin(section, states, isNear);
      const left = recordsIn(asked) - recordsIn(part);
      for (const scale of mapScales) {
        const scene = layOut(roomy(part, scale), { told });
        const isRead = Math.min(width / scene.width, mapRoom.height / scene.height) >= scale;
        if (isRead || (most <= 1 && scale === mapScales.at(-1))) return { scene, section: part, left };
      }
    }
  }
}

/** A section whose boxes have room for what they say in letters of 13 px, labels in one line and claims in two, when it is drawn at that scale. */
function roomy(section: Section, scale: number): Section {
  const boxes = section.boxes.map((box) => {
    const wanted = wordsWidth(box);
    return wanted === 0 ? box : { ...box, width: Math.max(box.width, (wanted + wordsRim) / scale) };
  });
  return { ...section, boxes };
}

/** How wide the words of a box are, in px of the screen; 0 where none are in it. */
function wordsWidth({ look }: Box): number {
  const [top] = look.as === "pile" ? look.labels : [];
  if (top !== undefined) return textWidth(top.value, "sans", 13);
  // A line breaks between words, so that two of them hold a little less than twice a line.
  if (look.as === "claim") return textWidth(look.short.lines.join(" "), "serif", 13) * 0.62;
  return 0;
}

/** What of a box's width is not free for its words, in px: its edges, the line of its standing, the string of a label. */
const wordsRim = 30;

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
