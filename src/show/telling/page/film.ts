import type { Id } from "../../../base/finding.ts";
import { inEnglish } from "../../../base/text/said/english.ts";
import { layOut } from "../../map/layout/layout.ts";
import type { MapPage, Scene, Section } from "../../map/scene.ts";
import { drawnBy } from "../../map/section/section.ts";
import { statesOf } from "../../map/states.ts";
import type { Reported } from "../../report/report.ts";
import type { Stage } from "./course.ts";

/** The map of a question, folded, with how each of its boxes stands at each stage; nothing in it moves. */
export interface Film {
  readonly scene: Scene;
  readonly stages: readonly Pick<MapPage, "states" | "beaten">[];
}

/** Lays the map of a question out once and says how it stands at each stage; null where there is nothing on it. */
export function filmOf(whole: Reported, question: Id, stages: readonly Stage[]): Film | null {
  const view = { question, unfolded: [], focus: null, only: false, narrow: false };
  const drawn = drawnBy(whole, view, inEnglish);
  const end = stages.at(-1);
  const last = end === undefined ? {} : statesOf(drawn, end.model, null, null);
  const section = within(drawn.section, (box) => last[box]?.later !== true);
  if (section.boxes.length === 0) return null;
  const scene = layOut(section, { told: inEnglish });
  return {
    scene,
    stages: stages.map(({ model }) => {
      const states = statesOf(drawn, model, null, null);
      const falls = (id: Id): boolean => !["stands", "open"].includes(states[id]?.standing ?? "");
      return { states, beaten: section.attacks.filter(({ from }) => falls(from)).map(({ id }) => id) };
    }),
  };
}

/** A section without what is not in print even at the end. */
function within(section: Section, isThere: (box: Id) => boolean): Section {
  const all = (boxes: readonly Id[]): boolean => boxes.every(isThere);
  return {
    boxes: section.boxes.filter(({ id }) => isThere(id)),
    lines: section.lines.filter(({ from, to }) => all([from.box, to.box])),
    attacks: section.attacks.filter(({ from, to }) => all([from, to])),
    rivals: section.rivals
      .map((one) => ({ ...one, boxes: one.boxes.filter(isThere) }))
      .filter((one) => one.boxes.length > 1),
    conflicts: section.conflicts.filter((one) => all(one.boxes)),
  };
}
