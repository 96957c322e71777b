import { constants, headOf, kindBits, origins, tableOf } from "./tables.ts";
import type { Shape, Tables } from "./tables.ts";

/** Tables that are being written. */
export interface Packing {
  /** The place of a value; one that says the same as another has the same. */
  readonly put: (value: unknown) => number;
  /** The place of a value that is no other one's, whatever they say. */
  readonly putApart: (value: object) => number;
  /** The place of a row of places. */
  readonly putRow: (places: readonly number[]) => number;
  readonly tables: () => Tables;
}

/** Begins tables of plain values: texts, numbers, truth values, lists, maps, and objects of fields. */
export function packing(): Packing {
  const [strings, numbers, shapes] = [listed<string>(), listed<number>(), listed<Shape>(JSON.stringify)];
  const nodes: number[] = [];
  const places = new Map<string, number>();
  /** Most of what says the same is the same object. */
  const known = new Map<object, number>();
  let count = 0;

  const shapeOf = (value: object): number => {
    const origin = origins.indexOf(Object.getPrototypeOf(value) as object | null);
    if (origin < 0) throw new Error("Unexpected object with a prototype of its own, expected plain data");
    return shapes.placeOf([origin, ...Object.keys(value)]);
  };
  const nodeOf = (value: object): readonly number[] => {
    if (Array.isArray(value)) return [headed(headOf.list, value.length), ...value.map(put)];
    if (value instanceof Map) {
      const pairs = [...(value as ReadonlyMap<unknown, unknown>)].flat();
      return [headed(headOf.map, value.size), ...pairs.map(put)];
    }
    return [headed(headOf.object, shapeOf(value)), ...Object.values(value).map(put)];
  };
  const append = (node: readonly number[]): number => {
    for (const one of node) nodes.push(one);
    return headed(tableOf.nodes, count++);
  };
  const placeOf = (value: object): number => {
    const node = nodeOf(value);
    const said = node.join(" ");
    const place = places.get(said) ?? append(node);
    places.set(said, place);
    known.set(value, place);
    return place;
  };
  function put(value: unknown): number {
    if (typeof value === "string") return headed(tableOf.strings, strings.placeOf(value));
    if (typeof value === "number") return headed(tableOf.numbers, numbers.placeOf(value));
    if (typeof value === "object" && value !== null) return known.get(value) ?? placeOf(value);
    const place = constants.indexOf(value);
    if (place < 0) throw new Error(`Unexpected ${typeof value}, expected plain data`);
    return headed(tableOf.constants, place);
  }
  return {
    put,
    putApart: (value) => append(nodeOf(value)),
    putRow: (those) => append([headed(headOf.row, those.length), ...those]),
    tables: () => ({
      strings: strings.all,
      numbers: Float64Array.from(numbers.all),
      shapes: shapes.all,
      nodes: Uint32Array.from(nodes),
    }),
  };
}

const headed = (kind: number, place: number): number => ((place << kindBits) | kind) >>> 0;

/** A list in which everything stands once, by what `nameOf` calls it. */
function listed<T>(nameOf: (one: T) => unknown = (one) => (Object.is(one, -0) ? "-0" : one)) {
  const all: T[] = [];
  const places = new Map<unknown, number>();
  const placeOf = (one: T): number => {
    const name = nameOf(one);
    const place = places.get(name) ?? all.push(one) - 1;
    places.set(name, place);
    return place;
  };
  return { all, placeOf };
}
