import type { PlacedBox, Point, Scene, Section } from "../../src/show/map/scene.ts";
import { stretchesOf, type Drawn } from "./scene/drawn.ts";
import { looseEnds, undrawn } from "./scene/ends.ts";
import { crowdedGutters, scatteredBeams, tooLong, wordsMet } from "./scene/room.ts";

/** What is wrong with a scene of a section, in words; each law is written from the rules of the map, not from the layout. */
export function faultsOf(section: Section, scene: Scene): readonly string[] {
  const byId = new Map(scene.boxes.map((box) => [box.id, box]));
  const boxOf = (id: string): PlacedBox => {
    const box = byId.get(id);
    if (!box) throw new Error(`No box ${id}`);
    return box;
  };
  const stretches = [...scene.routes, ...scene.attacks].flatMap(stretchesOf);
  const drawn: Drawn = { section, scene, stretches, boxOf };
  return [
    ...boxesMeet(scene),
    ...slanted(scene),
    ...linesMeetBoxes(drawn),
    ...linesShare(drawn),
    ...descending(scene),
    ...looseEnds(drawn),
    ...undrawn(drawn),
    ...crowdedGutters(drawn),
    ...tooLong(drawn),
    ...wordsMet(drawn),
    ...scatteredBeams(drawn),
    ...outside(scene),
  ];
}

function boxesMeet({ boxes }: Scene): readonly string[] {
  const sorted = boxes.toSorted((a, b) => a.x - b.x);
  return sorted.flatMap((box, at) => {
    const faults: string[] = [];
    for (const other of sorted.slice(at + 1)) {
      if (other.x >= box.x + box.width) break;
      if (other.y < box.y + box.height && box.y < other.y + other.height)
        faults.push(`${box.id} meets ${other.id}`);
    }
    return faults;
  });
}

function slanted({ routes, attacks }: Scene): readonly string[] {
  return [...routes, ...attacks].flatMap(({ line, points }) =>
    points.slice(1).every((b, at) => (b.x === points[at]!.x) !== (b.y === points[at]!.y)) && points.length > 1
      ? []
      : [`${line} has a stretch that is neither level nor upright`],
  );
}

/** No line is nearer than 6 px to a box that is not its own, nor within its own. */
function linesMeetBoxes({ scene, stretches }: Drawn): readonly string[] {
  const cells = new Map<string, PlacedBox[]>();
  const size = 400;
  const each = (from: Point, to: Point, visit: (key: string) => void): void => {
    for (let x = Math.floor(from.x / size); x <= Math.floor(to.x / size); x++) {
      for (let y = Math.floor(from.y / size); y <= Math.floor(to.y / size); y++) visit(`${x} ${y}`);
    }
  };
  for (const box of scene.boxes) {
    const [from, to] = [
      { x: box.x - 6, y: box.y - 6 },
      { x: box.x + box.width + 6, y: box.y + box.height + 6 },
    ];
    each(from, to, (key) => cells.set(key, [...(cells.get(key) ?? []), box]));
  }
  const faults = new Set<string>();
  for (const { route, upright, at, from, to } of stretches) {
    const [low, high] = upright
      ? [
          { x: at, y: from },
          { x: at, y: to },
        ]
      : [
          { x: from, y: at },
          { x: to, y: at },
        ];
    each(low, high, (key) => {
      for (const box of cells.get(key) ?? []) {
        const own = box.id === route.from || box.id === route.to;
        const grow = own ? -0.01 : 5.99;
        const meets =
          low.x < box.x + box.width + grow &&
          high.x > box.x - grow &&
          low.y < box.y + box.height + grow &&
          high.y > box.y - grow;
        if (meets) faults.add(`${route.line} from ${route.from} to ${route.to} meets ${box.id}`);
      }
    });
  }
  return [...faults];
}

/** No two lines run over each other. */
function linesShare({ stretches }: Drawn): readonly string[] {
  const sorted = stretches.toSorted((a, b) => Number(a.upright) - Number(b.upright) || a.at - b.at);
  return sorted.flatMap((one, at) => {
    const faults: string[] = [];
    for (let next = at + 1; next < sorted.length; next++) {
      const other = sorted[next]!;
      if (other.upright !== one.upright || other.at > one.at + 0.1) break;
      if (other.route === one.route || other.from >= one.to || one.from >= other.to) continue;
      faults.push(`${one.route.line} runs over ${other.route.line}`);
    }
    return faults;
  });
}

function descending({ routes }: Scene): readonly string[] {
  return routes.flatMap(({ line, points }) =>
    points.slice(1).every((point, at) => point.y <= points[at]!.y) ? [] : [`${line} goes down`],
  );
}

function outside({ width, height, boxes, routes, attacks }: Scene): readonly string[] {
  const isIn = ({ x, y }: Point): boolean => x >= 0 && x <= width && y >= 0 && y <= height;
  const corners = boxes.flatMap((box) => [box, { x: box.x + box.width, y: box.y + box.height }]);
  const points = [...routes, ...attacks].flatMap((route) => route.points);
  return [...corners, ...points].every(isIn) ? [] : ["something lies outside of the scene"];
}
