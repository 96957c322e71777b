import { isList } from "../../../../read/edit/written.ts";
import type { Written, WrittenMap } from "../../../../read/edit/written.ts";
import type { MapNode, Node, Step } from "../../../../read/yaml/tree.ts";

/** A record's tree as if it stood in a file of its own, with the way from a place in it back to the value there. */
export interface Placed {
  readonly node: MapNode;
  /** The value, or the map or list, that a stretch of the file is within. */
  readonly pathAt: (start: number, end: number) => readonly Step[];
}

interface Stretch {
  readonly start: number;
  readonly end: number;
  readonly path: readonly Step[];
}

/** Gives every value of a record a place of its own. */
export function placed(map: WrittenMap): Placed {
  const stretches: Stretch[] = [];
  let at = 0;
  const take = (length: number): { readonly start: number; readonly end: number } => {
    const start = at;
    at += length;
    return { start, end: at++ };
  };
  const walk = (written: Written, path: readonly Step[]): Node => {
    if (typeof written === "string") {
      const span = take(written.length);
      stretches.push({ ...span, path });
      return { is: "text", text: written, plain: written !== "", ...span };
    }
    const { start } = take(1);
    const inside = isList(written)
      ? { is: "list" as const, items: written.map((one, place) => walk(one, [...path, place])) }
      : {
          is: "map" as const,
          entries: Object.entries(written).map(([key, value]) => entry(key, value, path)),
        };
    const { end } = take(0);
    stretches.push({ start, end, path });
    return { ...inside, start, end };
  };
  const entry = (key: string, value: Written, path: readonly Step[]) => {
    const { start: keyStart, end: keyEnd } = take(key.length);
    stretches.push({ start: keyStart, end: keyEnd, path: [...path, key] });
    return { key, keyStart, keyEnd, value: walk(value, [...path, key]) };
  };
  const node = walk(map, []);
  if (node.is !== "map") throw new Error("unexpected value, expected the map of a record");
  return {
    node,
    pathAt: (start, end) => {
      const around = stretches.filter((one) => one.start <= start && end <= one.end);
      return around.toSorted((a, b) => a.end - a.start - (b.end - b.start))[0]?.path ?? [];
    },
  };
}
