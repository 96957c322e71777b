import type { PlacedBox, Point } from "../../../show/map/scene.ts";
import { rolesOf } from "../../../show/map/arguing/roles.ts";
import { mirrored } from "../../words/reader/language.ts";
import { aboutBox } from "./boxes.ts";
import type { Pulled } from "./marks.ts";

/** How near to an edge a line is drawn from it and not the map moved, in px on the screen. */
const near = 9;
/** How far the hand moves before it draws, in px on the screen. */
const slack = 4;

/** What drawing by hand asks of the stage, and tells it. */
export interface Hands {
  /** A place of the window in px of the scene. */
  readonly toScene: (event: MouseEvent) => Point;
  readonly boxAt: (at: Point) => PlacedBox | undefined;
  readonly zoom: () => number;
  /** The line as it is drawn; null once it is no more. */
  readonly pulled: (line: Pulled | null) => void;
  readonly done: (from: PlacedBox, by: Pulled["by"], to: PlacedBox) => void;
  /** It was a press and no drawing: the first of two, or the second. */
  readonly pressed: (box: PlacedBox, at: Point, times: number) => void;
}

/**
 * Lines drawn with the mouse: from a box's upper edge up to a conclusion, from its side, or from a beam, to what it is
 * against. Anywhere else the mouse moves the map; so it is heard ahead of the graph.
 */
export function drawnOn(host: HTMLElement, hands: Hands): () => void {
  const start = (event: MouseEvent): { readonly box: PlacedBox; readonly by: Pulled["by"] } | null => {
    const at = hands.toScene(event);
    const box = hands.boxAt(at);
    const by = box ? edgeAt(box, at, near / hands.zoom()) : null;
    return box && by ? { box, by } : null;
  };
  const onHover = (event: MouseEvent): void => {
    if (event.buttons === 0) host.classList.toggle("on-edge", start(event) !== null);
  };
  const onDown = (event: MouseEvent): void => {
    const begun = event.button === 0 ? start(event) : null;
    if (begun === null) return;
    event.stopImmediatePropagation();
    event.preventDefault();
    const first = hands.toScene(event);
    const from = fromEdge(begun.box, begun.by, first);
    let drawing = false;
    const end = (): void => {
      window.removeEventListener("mousemove", onMove, true);
      window.removeEventListener("mouseup", onUp, true);
      window.removeEventListener("keydown", onKey, true);
      hands.pulled(null);
    };
    const onMove = (moved: MouseEvent): void => {
      const to = hands.toScene(moved);
      drawing ||= Math.hypot(to.x - first.x, to.y - first.y) * hands.zoom() > slack;
      if (drawing) hands.pulled({ from, to, by: begun.by });
    };
    const onUp = (up: MouseEvent): void => {
      const to = hands.boxAt(hands.toScene(up));
      end();
      if (!drawing) hands.pressed(begun.box, first, event.detail);
      else if (to && to.id !== begun.box.id) hands.done(begun.box, begun.by, to);
    };
    const onKey = (key: KeyboardEvent): void => {
      if (key.key !== "Escape") return;
      key.stopImmediatePropagation();
      end();
    };
    window.addEventListener("mousemove", onMove, true);
    window.addEventListener("mouseup", onUp, true);
    window.addEventListener("keydown", onKey, true);
  };
  host.addEventListener("mousemove", onHover, { passive: true });
  host.addEventListener("mousedown", onDown, true);
  return () => {
    host.removeEventListener("mousemove", onHover);
    host.removeEventListener("mousedown", onDown, true);
  };
}

/** From which edge of a box a line can be drawn at a place within it; null where none can. */
function edgeAt(box: PlacedBox, at: Point, within: number): Pulled["by"] | null {
  const about = aboutBox(box);
  if (about === null) return null;
  if (box.look.as === "beam") {
    const inner = mirrored ? box.x + box.width - at.x : at.x - box.x;
    return inner <= box.look.length ? "side" : null;
  }
  if (!rolesOf(about.list).premise) return null;
  if (at.y - box.y <= within) return "top";
  return at.x - box.x <= within || box.x + box.width - at.x <= within ? "side" : null;
}

/** Where a line leaves its box. */
function fromEdge(box: PlacedBox, by: Pulled["by"], at: Point): Point {
  if (by === "top") return { x: at.x, y: box.y };
  const y = box.y + box.height / 2;
  return { x: at.x - box.x <= box.width / 2 ? box.x : box.x + box.width, y };
}
