import { constants, headOf, kindBits, kindIn, origins, tableOf } from "./tables.ts";
import type { Shape, Tables } from "./tables.ts";

const asField = { writable: true, enumerable: true, configurable: true };

/** Finds the values of tables by their places; all are made at once, each once. */
export function unpacking({ strings, numbers, shapes, nodes }: Tables): (place: number) => unknown {
  const made: unknown[] = [];
  const valueAt = (place: number): unknown => {
    const at = place >>> kindBits;
    switch (kindIn(place)) {
      case tableOf.constants:
        return constants[at];
      case tableOf.strings:
        return strings[at];
      case tableOf.numbers:
        return numbers[at];
      default:
        return made[at];
    }
  };
  const listAt = (at: number, length: number): unknown => {
    if (length === 1) return [valueAt(nodes[at] ?? 0)];
    const list: unknown[] = [];
    for (let one = 0; one < length; one++) list.push(valueAt(nodes[at + one] ?? 0));
    // A list that grew has room for more than it came to hold.
    return list.slice();
  };
  const mapAt = (at: number, size: number): unknown => {
    const map = new Map<unknown, unknown>();
    for (let one = at; one < at + 2 * size; one += 2)
      map.set(valueAt(nodes[one] ?? 0), valueAt(nodes[one + 1] ?? 0));
    return map;
  };
  const objectAt = (at: number, [origin, ...names]: Shape): unknown => {
    const object = Object.create(origins[origin] ?? null) as Record<string, unknown>;
    let place = at;
    for (const name of names) {
      const value = valueAt(nodes[place++] ?? 0);
      // Of a plain object that name would be another thing than a field.
      if (name === "__proto__") Object.defineProperty(object, name, { value, ...asField });
      else object[name] = value;
    }
    return object;
  };
  for (let at = 0; at < nodes.length;) {
    const head = nodes[at++] ?? 0;
    const size = head >>> kindBits;
    const kind = kindIn(head);
    const shape = kind === headOf.object ? shapes[size] : undefined;
    made.push(shape ? objectAt(at, shape) : kind === headOf.map ? mapAt(at, size) : listAt(at, size));
    at += shape ? shape.length - 1 : kind === headOf.map ? 2 * size : size;
  }
  return valueAt;
}
