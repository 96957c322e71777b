import type { PlacedBox, Point, Route } from "../../../src/show/map/scene.ts";
import { isMark, type Drawn } from "./drawn.ts";

/** Support leaves tops and reaches bottoms, at its port; attacks leave sides and end 6 px before sides. */
export function looseEnds({ section, scene, boxOf }: Drawn): readonly string[] {
  const lines = new Map(section.lines.map((line) => [line.id, line]));
  const supports = scene.routes.flatMap((route) => {
    const [from, to] = [boxOf(route.from), boxOf(route.to)];
    const [first, last] = [route.points[0]!, route.points.at(-1)!];
    // A stub that several lines share may meet the edge between their ports.
    const line = route.kind || route.also ? undefined : lines.get(route.line);
    const good =
      first.y === from.y &&
      last.y === to.y + to.height &&
      isAtPort(from, "top", line?.from.port, first.x) &&
      isAtPort(to, "bottom", line?.to.port, last.x);
    return good ? [] : [`${route.line} hangs loose`];
  });
  const attacks = scene.attacks.flatMap((route) => {
    const [from, to] = [boxOf(route.from), boxOf(route.to)];
    const [first, last] = [route.points[0]!, route.points.at(-1)!];
    const leaves = isMark(from) ? first.y === from.y + from.height : isBeside(from, first, 0);
    const reaches = isMark(to) ? last.y === to.y + to.height : isBeside(to, last, 6);
    return leaves && reaches ? [] : [`attack ${route.line} hangs loose`];
  });
  return [...supports, ...attacks];
}

function isAtPort(box: PlacedBox, edge: "top" | "bottom", name: string | undefined, x: number): boolean {
  const port = isMark(box) ? undefined : box.ports.find((one) => one.edge === edge && one.name === name);
  const [from, to] = port ? [box.x + port.from, box.x + port.to] : [box.x, box.x + box.width];
  return x >= from && x <= to;
}

function isBeside(box: PlacedBox, { x, y }: Point, off: number): boolean {
  const isOut = Math.abs(x - (box.x - off)) < 1e-9 || Math.abs(x - (box.x + box.width + off)) < 1e-9;
  return isOut && y > box.y && y < box.y + box.height;
}

/** Every line and attack is drawn whole, or at each end up to a mark that names the other. */
export function undrawn({ section, scene, boxOf }: Drawn): readonly string[] {
  const supports = scene.routes.filter(({ kind }) => kind === undefined);
  const ends = section.lines.map(({ id, from, to, circle }) => ({ id, from: from.box, to: to.box, circle }));
  const check = (routes: readonly Route[], wanted: readonly (typeof ends)[number][]): readonly string[] => {
    const found = new Map<string, Route[]>();
    for (const route of routes) {
      for (const id of [route.line, ...(route.also ?? [])]) found.set(id, [...(found.get(id) ?? []), route]);
    }
    return wanted.flatMap((line) => {
      const own = found.get(line.id) ?? [];
      const whole = own.length === 1 && own[0]!.from === line.from && own[0]!.to === line.to && !line.circle;
      return whole || isMarked(own, line, boxOf) ? [] : [`${line.id} is not drawn`];
    });
  };
  return [
    ...check(supports, ends),
    ...check(
      scene.attacks,
      section.attacks.map((attack) => ({ ...attack, circle: false })),
    ),
  ];
}

function isMarked(
  routes: readonly Route[],
  line: { readonly from: string; readonly to: string; readonly circle: boolean },
  boxOf: Drawn["boxOf"],
): boolean {
  const lower = routes.find((route) => route.from === line.from && isMark(boxOf(route.to)));
  const upper = routes.find((route) => route.to === line.to && isMark(boxOf(route.from)));
  if (routes.length !== 2 || !lower || !upper) return false;
  const [there, here] = [boxOf(lower.to).look, boxOf(upper.from).look];
  if (there.as !== "mark" || here.as !== "mark") return false;
  const prefix = line.circle ? "circle: " : "";
  const names = (mark: typeof here, route: Route, end: "from" | "to"): boolean => {
    const words = mark.words.lines.join(" ");
    const more = route.also?.length ?? 0;
    if (more === 0) return mark.to === line[end] && words === prefix + boxOf(line[end]).title;
    return words === `${prefix}${boxOf(mark.to).title} +${more}`;
  };
  return there.letter === here.letter && names(there, lower, "to") && names(here, upper, "from");
}
