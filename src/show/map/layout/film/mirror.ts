import type { Look, PlacedBox, Point, Port, Route, Scene } from "../../scene.ts";

/** A scene turned round, as it is read from right to left: places, ports and parts, but no text. */
export function mirrored(scene: Scene): Scene {
  const across = (point: Point): Point => ({ x: scene.width - point.x, y: point.y });
  const route = (one: Route): Route => ({ ...one, points: one.points.map(across) });
  const box = (one: PlacedBox): PlacedBox => ({
    ...one,
    x: scene.width - one.x - one.width,
    ports: one.ports.map((port) => turned(port, one.width)),
    look: turnedLook(one.look, one.width),
  });
  return {
    ...scene,
    boxes: scene.boxes.map(box),
    routes: scene.routes.map(route),
    attacks: scene.attacks.map(route),
    bows: scene.bows.map((bow) => ({ ...bow, from: across(bow.from), to: across(bow.to) })),
  };
}

function turned(port: Port, width: number): Port {
  return { ...port, from: width - port.to, to: width - port.from };
}

function turnedLook(look: Look, width: number): Look {
  if (look.as !== "thing") return look;
  return { ...look, parts: look.parts.map((part) => ({ ...part, x: width - part.x - part.width })) };
}
