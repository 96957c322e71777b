import type { KeyboardEvent, RefObject } from "react";
import type { Id } from "../../../base/finding.ts";
import type { MapPage } from "../../../show/map/scene.ts";
import { singleKeysWork, useActions } from "../../parts/actions.tsx";
import type { Action } from "../../parts/actions.tsx";
import { mapWords } from "../../words/shown/map.ts";
import { mirrored } from "../../words/reader/language.ts";
import type { MapDoes } from "./does.ts";
import type { Stage } from "../stage/stage.ts";
import type { Going } from "../stage/ways.ts";

/** How much nearer or farther one key press or one press of a button goes. */
export const stepOfZoom = 1.25;

const goings: Readonly<Record<string, Going>> = {
  ArrowUp: "up",
  ArrowDown: "down",
  ArrowLeft: "left",
  ArrowRight: "right",
  Home: "first",
  End: "last",
  "[": "attack on",
  "]": "attack from",
};

/** Keys that do something with the current box. */
const ofBox: ReadonlySet<string> = new Set(["Enter", " ", "f", "o", "[", "]", "Escape"]);

interface Hand {
  readonly page: MapPage;
  readonly current: Id | null;
  readonly stageRef: RefObject<Stage | null>;
  /** The map itself, within the frame whose keys are heard. */
  readonly whole: RefObject<HTMLElement | null>;
  readonly take: (id: Id | null) => void;
  readonly open: (id: Id) => void;
  readonly fold: (id: Id) => void;
  /** Says that a key leads nowhere from here. */
  readonly stay: (going: Going) => void;
  readonly does: MapDoes;
}

/** Hears the keys of the map while it has the focus, and declares them for the keyboard map. */
export function useMapKeys(hand: Hand): (event: KeyboardEvent) => void {
  useActions(mapWords.title, [{ name: mapWords.into, key: "m", run: () => hand.whole.current?.focus() }]);
  useActions(mapWords.title, () =>
    mapWords.keys.map(([name, key]): Action => {
      const idle = key.length > 1 && goings[key] === undefined && !ofBox.has(key);
      const run = (): void => {
        hand.whole.current?.focus();
        pressed(key, hand);
      };
      const able = !idle && (hand.current !== null || !ofBox.has(key));
      return { name, key, run: able ? run : null, own: true };
    }),
  );
  return (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key.length === 1 && event.key !== " " && !singleKeysWork()) return;
    const beside = event.target !== hand.whole.current;
    // Beside the map Enter and Space press the button that has the focus; all other keys are still the map's.
    if (beside && (event.key === "Enter" || event.key === " ")) return;
    if (!pressed(event.key, hand)) return;
    if (beside) hand.whole.current?.focus({ preventScroll: true });
    event.preventDefault();
  };
}

/** Does what a key means; says whether it means anything here. */
function pressed(key: string, { page, current, stageRef, take, open, fold, stay, does }: Hand): boolean {
  const going = goings[key];
  if (going !== undefined) {
    const to = current === null ? firstBox(page) : (stageRef.current?.along(current, going) ?? null);
    if (to === null) stay(going);
    else take(to);
    return true;
  }
  const zoom = { "+": stepOfZoom, "=": stepOfZoom, "-": 1 / stepOfZoom }[key];
  if (zoom !== undefined) stageRef.current?.zoom(zoom);
  else if (key === "0") stageRef.current?.whole();
  else if (key === "Escape") take(null);
  else return current !== null && pressedOn(key, current);
  return true;

  function pressedOn(what: string, id: Id): boolean {
    const box = page.scene.boxes.find((one) => one.id === id);
    const [record] = box?.records ?? [];
    if (what === "Enter" && box?.look.as === "mark") take(box.look.to);
    else if (what === "Enter") (box?.look.as === "fold" ? fold : open)(id);
    else if (what === " ") {
      if (box?.folded !== null || page.view.unfolded.includes(id)) fold(id);
    } else if (what === "f" && record !== undefined) does.focus(record);
    else if (what === "o" && record !== undefined) does.only(record);
    else return false;
    return true;
  }
}

/** Where the arrow keys begin: at the focus, else at the first answer, else at the highest box. */
function firstBox({ scene, view }: MapPage): Id | null {
  const focus = scene.boxes.find((box) => view.focus !== null && box.records.includes(view.focus));
  const answers = scene.boxes.filter((box) => box.look.as === "answer");
  const foremost = answers.toSorted((one, other) => (mirrored ? other.x - one.x : one.x - other.x))[0];
  return (focus ?? foremost ?? scene.boxes[0])?.id ?? null;
}
