import { constants, headOf, kindBits, kindIn, origins, tableOf } from "./tables.ts";
import type { Shape, Tables } from "./tables.ts";

/** Values that were made of tables. */
export interface Unpacked {
  readonly valueAt: (place: number) => unknown;
  /** How many places there are in a row of places. */
  readonly lengthOf: (row: number) => number;
  /** One of those places. */
  readonly placeIn: (row: number, at: number) => number;
}

/** Makes the values of tables, all at once and each once. */
export function unpacking({ strings, numbers, shapes, nodes }: Tables): Unpacked {
  /** What stands for a row is where its places begin in the nodes. */
  const made: unknown[] = [];
  const valueAt = (place: number): unknown => {
    const at = place >>> kindBits;
    switch (kindIn(place)) {
      case tableOf.strings:
        return strings[at];
      case tableOf.nodes:
        return made[at];
      case tableOf.numbers:
        return numbers[at];
      default:
        return constants[at];
    }
  };
  const itemAt = (at: number): unknown => valueAt(nodes[at] ?? 0);
  const makers = shapes.map((shape) => makerOf(shape, itemAt));
  for (let at = 0; at < nodes.length;) {
    const head = nodes[at++] ?? 0;
    const size = head >>> kindBits;
    switch (kindIn(head)) {
      case headOf.object: {
        const { make, count } = makers[size] ?? none;
        made.push(make(at));
        at += count;
        break;
      }
      case headOf.list:
        made.push(listOf(at, size, itemAt));
        at += size;
        break;
      case headOf.map:
        made.push(mapOf(at, size, itemAt));
        at += 2 * size;
        break;
      default:
        made.push(at);
        at += size;
    }
  }
  const startOf = (row: number): number => made[row >>> kindBits] as number;
  return {
    valueAt,
    lengthOf: (row) => (nodes[startOf(row) - 1] ?? 0) >>> kindBits,
    placeIn: (row, at) => nodes[startOf(row) + at] ?? 0,
  };
}

type ItemAt = (at: number) => unknown;

/** Makes the objects of one shape, whose first value stands at a place in the nodes. */
interface Maker {
  readonly count: number;
  readonly make: (at: number) => unknown;
}

const none: Maker = { count: 0, make: () => ({}) };

/**
 * Objects that one function makes have room for the fields that the first of them had, and no more; an object that is added
 * to grows by more than it needs.
 */
function makerOf([origin, ...names]: Shape, itemAt: ItemAt): Maker {
  const count = names.length;
  const prototype = origins[origin] ?? null;
  // Of a plain object that name would be another thing than a field, and a function makes none that inherit nothing.
  if (prototype === null || names.includes("__proto__")) {
    return { count, make: (at) => slowly(prototype, names, at, itemAt) };
  }
  function Made(this: Record<string, unknown>, at: number): void {
    for (let one = 0; one < count; one++) this[names[one] ?? ""] = itemAt(at + one);
  }
  Made.prototype = prototype;
  const make = Made as unknown as new (at: number) => object;
  return { count, make: (at) => new make(at) };
}

const asField = { writable: true, enumerable: true, configurable: true };

function slowly(prototype: object | null, names: readonly string[], at: number, itemAt: ItemAt): object {
  const object = Object.create(prototype) as object;
  names.forEach((name, one) => Object.defineProperty(object, name, { value: itemAt(at + one), ...asField }));
  return object;
}

function listOf(at: number, length: number, itemAt: ItemAt): readonly unknown[] {
  if (length === 1) return [itemAt(at)];
  if (length === 2) return [itemAt(at), itemAt(at + 1)];
  const list: unknown[] = [];
  for (let one = 0; one < length; one++) list.push(itemAt(at + one));
  // A list that grew has room for more than it came to hold.
  return list.slice();
}

function mapOf(at: number, size: number, itemAt: ItemAt): ReadonlyMap<unknown, unknown> {
  const map = new Map<unknown, unknown>();
  for (let one = at; one < at + 2 * size; one += 2) map.set(itemAt(one), itemAt(one + 1));
  return map;
}
