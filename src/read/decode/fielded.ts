import { bare } from "./bare.ts";

/** Makes an object of fields by their names; a name that stands twice has the last value. */
export type Fielding = (names: readonly string[], values: readonly unknown[]) => Record<string, unknown>;

/**
 * Objects of fields with room for as many as they have, which a literal that is added to has not: it keeps room for four,
 * and a list of its own for more. Objects from one constructor come to be as large as its first ones are, so there is one
 * for each number of fields.
 */
export function fieldedFrom(origin: object): Fielding {
  const makers: (new () => Record<string, unknown>)[] = [];
  return (names, values) => {
    const object = new (makers[names.length] ??= makerOf(origin))();
    names.forEach((name, place) => (object[name] = values[place]));
    return object;
  };
}

function makerOf(origin: object): new () => Record<string, unknown> {
  function Fielded(): void {}
  Fielded.prototype = origin;
  return Fielded as unknown as new () => Record<string, unknown>;
}

/** What records say inherits from nothing. */
export const bareFields: Fielding = fieldedFrom(bare);

/** Plain objects of fields; `__proto__` is no name of one. */
export const fielded: Fielding = fieldedFrom(Object.prototype);
