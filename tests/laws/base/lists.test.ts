import fc from "fast-check";
import { expect, test } from "vitest";
import { gathered, listsBy } from "../../../src/base/lists/gathered.ts";
import { wordsBy } from "../../../src/base/lists/numbered.ts";
import { bareFields, fielded } from "../../../src/read/decode/fielded.ts";

const words = ["long", "short"] as const;

test("words by number are the map of what has one", () => {
  const told = fc.uniqueArray(fc.tuple(fc.string(), fc.integer({ min: 0, max: words.length })), {
    selector: ([key]) => key,
  });
  fc.assert(
    fc.property(told, fc.string(), (pairs, other) => {
      const keys = pairs.map(([key]) => key);
      const numberOf = new Map(keys.map((key, number) => [key, number]));
      const map = wordsBy(
        { keys, numberOf },
        words,
        Uint8Array.from(pairs, ([, place]) => place),
      );
      const plain = new Map(pairs.flatMap(([key, place]) => (place === 0 ? [] : [[key, words[place - 1]]])));
      const visited: unknown[] = [];
      map.forEach((word, key) => visited.push([key, word]));
      expect([...map]).toEqual([...plain]);
      expect([[...map.keys()], [...map.values()], visited]).toEqual([
        [...plain.keys()],
        [...plain.values()],
        [...plain],
      ]);
      expect(map.size).toBe(plain.size);
      for (const key of [...keys, other]) {
        expect([map.get(key), map.has(key)]).toEqual([plain.get(key), plain.has(key)]);
      }
    }),
    { numRuns: 50 },
  );
});

test("what is gathered by key is all there is, in the order given", () => {
  const items = fc.array(fc.array(fc.constantFrom("a", "b", "c"), { maxLength: 3 }), { maxLength: 40 });
  fc.assert(
    fc.property(items, (lists) => {
      const find = gathered<string, number>(lists.keys(), (at) => lists[at] ?? []);
      for (const key of ["a", "b", "c", "d"]) {
        const expected = lists.flatMap((list, at) => list.filter((one) => one === key).map(() => at));
        expect(find(key)).toEqual(expected);
      }
      expect([...listsBy(lists, (list) => list).keys()]).toEqual([...new Set(lists.flat())]);
    }),
    { numRuns: 50 },
  );
});

test("an object of fields has what it was given and inherits nothing more", () => {
  const pairs = fc.array(fc.tuple(fc.constantFrom("of", "from", "value", "constructor"), fc.integer()));
  fc.assert(
    fc.property(pairs, (those) => {
      const [names, values] = [those.map(([name]) => name), those.map(([, value]) => value)];
      for (const made of [bareFields(names, values), fielded(names, values)])
        expect(Object.entries(made)).toEqual(Object.entries(Object.fromEntries(those)));
      expect("constructor" in bareFields(names, values)).toBe(names.includes("constructor"));
      expect("toString" in bareFields(["__proto__"], [Object.prototype])).toBe(false);
      expect(fielded(names, values).toString).toBe(Object.prototype.toString);
    }),
    { numRuns: 50 },
  );
});
