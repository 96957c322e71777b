import cytoscape from "cytoscape";
import { stageOn } from "../../src/app/map/stage/stage.ts";
import type { BoxState, Scene } from "../../src/show/map/scene.ts";

/** What one run measured, in ms: until the first picture, and every frame of a pan and of a zoom. */
export interface Measured {
  readonly first: number;
  readonly frames: readonly number[];
}

/** How much of a run is measured, and how it moves. */
const frames = 60;
const [across, nearer] = [14, 1.05];

/** The zoom both begin at. */
const zoom = 0.72;

const frame = (): Promise<number> => new Promise((resolve) => requestAnimationFrame(resolve));
const rest = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));
const turned = (step: number): 1 | -1 => (step % 30 < 15 ? 1 : -1);

/** The map of the app on this page: stage, gestures and picture. */
async function ours(scene: Scene, states: Readonly<Record<string, BoxState>>): Promise<Measured> {
  const seat = cleared();
  const canvas = seat.appendChild(document.createElement("canvas"));
  const host = seat.appendChild(document.createElement("div"));
  canvas.className = host.className = "full";
  await frame();
  const begun = performance.now();
  const nothing = (): void => undefined;
  const stage = stageOn(canvas, host, {
    select: nothing,
    tap: nothing,
    open: nothing,
    moved: nothing,
    drew: nothing,
  });
  stage.show({ scene, states, beaten: [], current: null, marks: null }, { at: null });
  await frame();
  await frame();
  const first = performance.now() - begun;
  await rest(400);
  const pan = await measured((step) => stage.shift((turned(step) * across) / 1280, 0));
  // Without the glide of the buttons: every frame shows another distance.
  const wheel = (step: number): boolean =>
    host.dispatchEvent(
      new WheelEvent("wheel", {
        deltaY: -turned(step) * Math.log(nearer) * 250,
        clientX: 640,
        clientY: 400,
        ctrlKey: true,
        bubbles: true,
        cancelable: true,
      }),
    );
  const zooming = await measured(wheel);
  stage.end();
  return { first, frames: [...pan, ...zooming] };
}

/** The graph library alone: plain rectangles in the same places, straight lines. */
async function peer({ boxes, routes, attacks }: Scene): Promise<Measured> {
  const host = cleared().appendChild(document.createElement("div"));
  host.className = "full";
  await frame();
  const begun = performance.now();
  const ids = new Set(boxes.map((box) => box.id));
  const graph = cytoscape({
    container: host,
    elements: [
      ...boxes.map(({ id, x, y, width, height }) => ({
        data: { id, width, height },
        position: { x: x + width / 2, y: y + height / 2 },
      })),
      ...[...routes, ...attacks]
        .filter(({ from, to }) => from !== to && ids.has(from) && ids.has(to))
        .map(({ from, to }, at) => ({ data: { id: `line ${at}`, source: from, target: to } })),
    ],
    style: [
      { selector: "node", style: { shape: "rectangle", width: "data(width)", height: "data(height)" } },
      { selector: "edge", style: { "curve-style": "straight", width: 1.5 } },
    ] as cytoscape.StylesheetStyle[],
    layout: { name: "preset", fit: false },
    zoom,
    pan: { x: 104, y: 28 },
  });
  await frame();
  await frame();
  const first = performance.now() - begun;
  await rest(400);
  const pan = await measured((step) => graph.panBy({ x: -turned(step) * across, y: 0 }));
  const zooming = await measured((step) =>
    graph.zoom({
      level: graph.zoom() * nearer ** turned(step),
      renderedPosition: { x: 640, y: 400 },
    }),
  );
  graph.destroy();
  return { first, frames: [...pan, ...zooming] };
}

/** How long each frame took while something moved in every one. */
async function measured(move: (step: number) => unknown): Promise<readonly number[]> {
  const found: number[] = [];
  let last = await frame();
  for (let step = 0; step < frames; step++) {
    move(step);
    const now = await frame();
    found.push(now - last);
    last = now;
  }
  return found;
}

function cleared(): HTMLElement {
  const seat = document.createElement("div");
  document.body.replaceChildren(seat);
  return seat;
}

Object.assign(window, { ours, peer });
