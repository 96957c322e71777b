import type { Position } from "cytoscape";
import type { Id } from "../../../base/finding.ts";
import type { PlacedBox, Scene } from "../../../show/map/scene.ts";
import { dark, light, print } from "../../../write/pen/palette.ts";
import { drawnOn } from "../arguing/gesture.ts";
import type { Pulled } from "../arguing/marks.ts";
import { sheetOn } from "./canvas.ts";
import { tapsOn, wheelOn } from "./gestures.ts";
import { fill, graphIn } from "./graph.ts";
import { lettersReady, paint } from "./paint.ts";
import type { Drawn } from "./paint.ts";
import { around, kept, limit, opening, openingAt, whole, zoomed } from "./viewport.ts";
import { boxAlong } from "./ways.ts";
import type { Going } from "./ways.ts";

/** What the stage tells: a box was taken (or none), tapped at a place within it, opened; the view moved. */
export interface StageEvents {
  readonly select: (id: Id | null) => void;
  readonly tap: (id: Id, at: Position) => void;
  readonly open: (id: Id) => void;
  readonly moved: () => void;
  /** A line was drawn by hand from a box's upper edge, or from its side, to another box. */
  readonly drew: (from: PlacedBox, by: Pulled["by"], to: PlacedBox) => void;
}

/** A box's place on the screen, in px from the stage's top left corner. */
export interface Spot {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The map as it can be moved about: graph, view and picture together. */
export interface Stage {
  /** Shows a scene; `open` frames it anew, about a box or as a whole, else what was in sight stays where it is. */
  readonly show: (drawn: Drawn, open: { readonly at: Id | null } | null) => void;
  readonly along: (from: Id, going: Going) => Id | null;
  readonly reveal: (id: Id) => void;
  readonly zoom: (factor: number) => void;
  readonly whole: () => void;
  /** Moves the view by shares of its width and height. */
  readonly shift: (across: number, down: number) => void;
  readonly spot: (id: Id) => Spot | null;
  readonly end: () => void;
}

/** Builds the stage on a canvas and the host of the graph above it. */
export function stageOn(canvas: HTMLCanvasElement, host: HTMLElement, events: StageEvents): Stage {
  // Before the graph listens to the same place.
  const unwheel = wheelOn(host, {
    by: (move) => panBy(move),
    zoom: (factor, about) => drawn && go(zoomed(graph, drawn.scene, factor, about), false),
  });
  const undraw = drawnOn(host, {
    toScene: ({ clientX, clientY }) => {
      const { left, top } = host.getBoundingClientRect();
      const pan = graph.pan();
      return { x: (clientX - left - pan.x) / graph.zoom(), y: (clientY - top - pan.y) / graph.zoom() };
    },
    boxAt: ({ x, y }) =>
      drawn?.scene.boxes.find(
        (box) => x >= box.x && y >= box.y && x <= box.x + box.width && y <= box.y + box.height,
      ),
    zoom: () => graph.zoom(),
    pulled: (line) => {
      pulled = line;
      sheet.ask();
    },
    done: events.drew,
    pressed: (box, at, times) => {
      if (times === 2) events.open(box.id);
      else events.tap(box.id, { x: at.x - box.x, y: at.y - box.y });
    },
  });
  const graph = graphIn(host);
  let pulled: Pulled | null = null;
  let drawn: Drawn | null = null;
  let boxes: ReadonlyMap<Id, PlacedBox> = new Map();
  let filled: Drawn["scene"] | null = null;
  let opened: { readonly at: Id | null } | null = null;

  const still = matchMedia("(prefers-reduced-motion: reduce)");
  const colours = [matchMedia("(prefers-color-scheme: dark)"), matchMedia("print")] as const;
  const [inDark, onPaper] = colours;

  const sheet = sheetOn(
    canvas,
    (context, size) => {
      if (!drawn) return;
      const palette = onPaper.matches ? print : inDark.matches ? dark : light;
      paint(context, drawn, { size, palette, zoom: graph.zoom(), pan: graph.pan(), pulled });
    },
    () => {
      graph.resize();
      if (!drawn) return;
      limit(graph, drawn.scene);
      // An argument taken in hand makes room for itself: what is looked at stays where it is.
      if (drawn.marks) opened = null;
      if (opened) frame(opened.at);
      else graph.pan(kept(graph, drawn.scene, graph.zoom(), graph.pan()));
      if (drawn.marks && drawn.current !== null) reveal(drawn.current);
    },
  );
  const recolour = (): void => sheet.now();
  for (const one of colours) one.addEventListener("change", recolour);

  graph.on("viewport", () => {
    sheet.ask();
    events.moved();
  });
  graph.on("dragpan pinchzoom", () => {
    opened = null;
    if (drawn) graph.pan(kept(graph, drawn.scene, graph.zoom(), graph.pan()));
  });
  tapsOn(graph, host, events);

  function panBy({ x, y }: Position): boolean {
    if (!drawn) return false;
    const before = graph.pan();
    const pan = kept(graph, drawn.scene, graph.zoom(), { x: before.x + x, y: before.y + y });
    if (Math.abs(pan.x - before.x) < 0.5 && Math.abs(pan.y - before.y) < 0.5) return false;
    opened = null;
    graph.stop().pan(pan);
    return true;
  }

  function go(view: { readonly zoom: number; readonly pan: Position }, smooth: boolean): void {
    opened = null;
    graph.stop();
    if (smooth && !still.matches) graph.animate({ ...view, duration: 160, easing: "ease-out" });
    else graph.viewport(view);
  }

  /** Opens the view: about a box, or as much of the section as can be read. */
  function frame(at: Id | null): void {
    if (!drawn || graph.width() === 0) return;
    const { scene } = drawn;
    const box = at === null ? undefined : boxes.get(at);
    const wide = { ...scene, answers: answersOf(scene) };
    go(box ? openingAt(graph, scene, middleOf(box)) : opening(graph, wide), false);
    opened = { at };
  }

  function show(next: Drawn, open: { readonly at: Id | null } | null): void {
    const before = drawn;
    const anchor = before && !open ? inSight(before, next) : null;
    const was = anchor === null ? null : spot(anchor);
    drawn = next;
    boxes = new Map(next.scene.boxes.map((box) => [box.id, box]));
    limit(graph, next.scene);
    if (open) frame(open.at);
    const is = anchor === null ? null : spot(anchor);
    if (was && is && (was.left !== is.left || was.top !== is.top))
      graph.panBy({ x: was.left - is.left, y: was.top - is.top });
    sheet.ask();
    void lettersReady(next.scene).then(sheet.ask);
    if (filled !== next.scene) fill(graph, next.scene);
    filled = next.scene;
    events.moved();
  }

  /** The box that stays where it is when the scene changes: the one taken, else the one nearest the middle. */
  function inSight(before: Drawn, next: Drawn): Id | null {
    const still = new Set(next.scene.boxes.map((box) => box.id));
    if (next.current !== null && still.has(next.current) && boxes.has(next.current)) return next.current;
    const { x1, x2, y1, y2 } = graph.extent();
    const far = (box: PlacedBox): number => {
      const { x, y } = middleOf(box);
      return Math.hypot(x - (x1 + x2) / 2, y - (y1 + y2) / 2);
    };
    const near = before.scene.boxes.filter((box) => still.has(box.id));
    return (
      near.reduce<PlacedBox | null>((best, box) => (best && far(best) <= far(box) ? best : box), null)?.id ??
      null
    );
  }

  function spot(id: Id): Spot | null {
    const box = boxes.get(id);
    if (!box) return null;
    const zoom = graph.zoom();
    const pan = graph.pan();
    return {
      left: box.x * zoom + pan.x,
      top: box.y * zoom + pan.y,
      width: box.width * zoom,
      height: box.height * zoom,
    };
  }

  function reveal(id: Id): void {
    const at = spot(id);
    const box = boxes.get(id);
    if (!at || !box || !drawn) return;
    const room = 48;
    const seen =
      at.left >= room &&
      at.top >= room &&
      at.left + at.width <= graph.width() - room &&
      at.top + at.height <= graph.height() - room;
    if (!seen) go(around(graph, drawn.scene, middleOf(box), graph.zoom()), true);
  }

  return {
    show,
    along: (from, going) => boxAlong(graph, from, going),
    reveal,
    zoom: (factor) => drawn && go(zoomed(graph, drawn.scene, factor), true),
    whole: () => drawn && go(whole(graph, drawn.scene), true),
    shift: (across, down) => void panBy({ x: -across * graph.width(), y: -down * graph.height() }),
    spot,
    end: () => {
      for (const one of colours) one.removeEventListener("change", recolour);
      unwheel();
      undraw();
      sheet.end();
      graph.destroy();
    },
  };
}

/** Where along the ground the answers begin and end; the whole ground where there are none. */
function answersOf(scene: Scene): readonly [number, number] {
  const answers = scene.boxes.filter((box) => box.look.as === "answer");
  if (answers.length === 0) return [0, scene.width];
  return [Math.min(...answers.map((box) => box.x)), Math.max(...answers.map((box) => box.x + box.width))];
}

const middleOf = (box: PlacedBox): Position => ({ x: box.x + box.width / 2, y: box.y + box.height / 2 });
