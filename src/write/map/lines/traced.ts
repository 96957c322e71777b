import type { Bow, PlacedBox, Route, Scene } from "../../../show/map/scene.ts";
import type { Frame } from "../sight.ts";

/** A route with what drawing it needs to know each time. */
export interface Traced {
  readonly route: Route;
  readonly from: PlacedBox | null;
  readonly to: PlacedBox | null;
  /** What its ends cannot both be, where it is cut between rivals or measurements in conflict. */
  readonly collision: "rivals" | "conflict" | null;
  /** The rectangle it lies in. */
  readonly within: Frame;
}

/** A scene as the pens go over it: found once, however often it is drawn. */
export interface TracedScene {
  readonly boxes: ReadonlyMap<string, PlacedBox>;
  readonly things: readonly PlacedBox[];
  readonly routes: readonly Traced[];
  readonly attacks: readonly Traced[];
  /** The box at which each mark stands, by the mark's id. */
  readonly marked: ReadonlyMap<string, PlacedBox>;
  /** How far it is to the next box of the row on either side, for answers and things, in px. */
  readonly gaps: ReadonlyMap<string, Gaps>;
}

/** Free room beside a box, in px; Infinity at the end of a row. */
export interface Gaps {
  readonly left: number;
  readonly right: number;
}

const known = new WeakMap<Scene, TracedScene>();

/** What drawing a scene needs to know of it. */
export function traced(scene: Scene): TracedScene {
  const found = known.get(scene) ?? trace(scene);
  known.set(scene, found);
  return found;
}

function trace(scene: Scene): TracedScene {
  const boxes = new Map(scene.boxes.map((box) => [box.id, box]));
  const of = (route: Route): Traced => {
    const [from, to] = [boxes.get(route.from) ?? null, boxes.get(route.to) ?? null];
    const marks = [from, to].flatMap((box) => (box?.look.as === "mark" ? [box.look.collision] : []));
    const collision = marks.find((kind) => kind !== null) ?? null;
    return { route, from, to, collision, within: around(route.points) };
  };
  return {
    boxes,
    things: scene.boxes.filter(({ look }) => look.as === "thing").sort((a, b) => a.x - b.x),
    routes: scene.routes.map(of),
    marked: markedIn([...scene.routes, ...scene.attacks], boxes),
    attacks: scene.attacks.map(of),
    gaps: new Map([...gapsIn(scene, "thing"), ...gapsIn(scene, "answer")]),
  };
}

function markedIn(
  routes: readonly Route[],
  boxes: ReadonlyMap<string, PlacedBox>,
): ReadonlyMap<string, PlacedBox> {
  return new Map(
    routes.flatMap(({ from, to }): readonly (readonly [string, PlacedBox])[] => {
      const [low, high] = [boxes.get(from), boxes.get(to)];
      if (!low || !high) return [];
      return low.look.as === "mark" ? [[from, high]] : high.look.as === "mark" ? [[to, low]] : [];
    }),
  );
}

function gapsIn(scene: Scene, kind: "thing" | "answer"): readonly (readonly [string, Gaps])[] {
  const row = scene.boxes.filter(({ look }) => look.as === kind).sort((a, b) => a.x - b.x);
  return row.map((box, at) => {
    const [before, after] = [row[at - 1], row[at + 1]];
    const left = before === undefined ? Infinity : box.x - before.x - before.width;
    return [box.id, { left, right: after === undefined ? Infinity : after.x - box.x - box.width }];
  });
}

/** The rectangle a bow lies in. */
export function aroundBow({ from, to, crown }: Bow): Frame {
  return around([from, to, { x: from.x, y: crown }]);
}

function around(points: Route["points"]): Frame {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
}
