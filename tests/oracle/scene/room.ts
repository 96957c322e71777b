import type { PlacedBox } from "../../../src/show/map/scene.ts";
import { isMark, type Drawn } from "./drawn.ts";

/** Between two boxes of a row run at most four lines for each 40 px, 8 px apart. */
export function crowdedGutters({ section, scene, stretches }: Drawn): readonly string[] {
  const uprights = stretches.filter(({ upright }) => upright).sort((a, b) => a.at - b.at);
  const known = new Set(section.boxes.map(({ id }) => id));
  const rows = new Map<number, PlacedBox[]>();
  for (const box of scene.boxes)
    if (known.has(box.id)) rows.set(box.row, [...(rows.get(box.row) ?? []), box]);
  return [...rows.values()].flatMap((row) => {
    const sorted = row.toSorted((a, b) => a.x - b.x);
    const top = Math.min(...row.map(({ y }) => y));
    const bottom = Math.max(...row.map(({ y, height }) => y + height));
    const across = uprights.filter(({ from, to }) => from <= top && to >= bottom);
    return sorted.slice(1).flatMap((right, at) => {
      const left = sorted[at]!;
      const gap = right.x - left.x - left.width;
      const within = across
        .filter((one) => one.at > left.x + left.width && one.at < right.x)
        .map((one) => one.at);
      const close = within.slice(1).some((x, n) => x - within[n]! < 7.99);
      const faults =
        within.length > Math.max(4, gap / 10) || close ? [`too many lines left of ${right.id}`] : [];
      return gap < 39.99 ? [...faults, `${right.id} stands too close`] : faults;
    });
  });
}

/** What is wider than a screen is cut. */
export function tooLong({ scene, boxOf }: Drawn): readonly string[] {
  return [...scene.routes, ...scene.attacks].flatMap(({ line, from, to, points }) => {
    const xs = points.map(({ x }) => x);
    const isWhole = !isMark(boxOf(from)) && !isMark(boxOf(to));
    return isWhole && Math.max(...xs) - Math.min(...xs) > 1050 ? [`${line} is too long`] : [];
  });
}

/** No line runs under the words of a bow, nor through the dotted tail of a claim that hangs. */
export function wordsMet({ section, scene, stretches }: Drawn): readonly string[] {
  const carried = new Set(section.lines.map(({ to }) => to.box));
  const tails = scene.boxes.flatMap(({ id, look, x, y, width, height }) => {
    const hangs = (look.as === "claim" || look.as === "answer") && look.hangs && !carried.has(id);
    return hangs ? [{ id, x: x + width / 2 - 2, y: y + height + 1, width: 4, height: 39 }] : [];
  });
  const words = scene.bows.flatMap(({ id, kind, from, to, crown }) =>
    kind === "rivals" ? [{ id, x: (from.x + to.x) / 2 - 24, y: crown - 18, width: 48, height: 18 }] : [],
  );
  return [...tails, ...words].flatMap((frame) => {
    const met = stretches.some(({ upright, at, from, to }) => {
      const [x0, x1, y0, y1] = upright ? [at, at, from, to] : [from, to, at, at];
      return x1 > frame.x && x0 < frame.x + frame.width && y1 > frame.y && y0 < frame.y + frame.height;
    });
    return met ? [`a line runs under what belongs to ${frame.id}`] : [];
  });
}

/** Beams that bear one thing stand side by side: no other's between them. */
export function scatteredBeams({ section, scene }: Drawn): readonly string[] {
  const borne = new Map<string, string[]>();
  const known = new Set(section.boxes.filter(({ look }) => look.as === "beam").map(({ id }) => id));
  for (const { from, to, circle } of section.lines) {
    if (!circle && known.has(from.box)) borne.set(from.box, [...(borne.get(from.box) ?? []), to.box]);
  }
  const rows = new Map<number, PlacedBox[]>();
  for (const box of scene.boxes.toSorted((a, b) => a.x - b.x)) {
    if (borne.get(box.id)?.length === 1) rows.set(box.row, [...(rows.get(box.row) ?? []), box]);
  }
  return [...rows.values()].flatMap((row) => {
    const order = row.map(({ id }) => borne.get(id)![0]!);
    const runs = order.filter((id, at) => id !== order[at - 1]);
    return runs.length > new Set(runs).size ? [`beams in row ${row[0]!.row} are scattered`] : [];
  });
}
