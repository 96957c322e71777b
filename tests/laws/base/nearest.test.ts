import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { editDistance, nearest, nearestAmong } from "../../../src/base/nearest.ts";
import { slipAmong, slipFor } from "../../../src/base/text/slip.ts";

/** The whole matrix of optimal string alignment, cell by cell (Boytsov 2011, section 2). */
function distance(a: string, b: string): number {
  const cells = Array.from({ length: a.length + 1 }, (_, row) =>
    Array.from({ length: b.length + 1 }, (_, column) => (row === 0 ? column : column === 0 ? row : 0)),
  );
  const at = (row: number, column: number): number => cells[row]?.[column] ?? 0;
  for (let row = 1; row <= a.length; row++) {
    for (let column = 1; column <= b.length; column++) {
      const ways = [
        at(row - 1, column) + 1,
        at(row, column - 1) + 1,
        at(row - 1, column - 1) + (a[row - 1] === b[column - 1] ? 0 : 1),
      ];
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1])
        ways.push(at(row - 2, column - 2) + 1);
      const line = cells[row];
      if (line) line[column] = Math.min(...ways);
    }
  }
  return at(a.length, b.length);
}

const word = fc.string({ unit: fc.constantFrom("a", "b", "c", "d", "-", "1"), maxLength: 12 });

describe("nearest names", () => {
  test("the distance is that of the whole matrix, as far as the limit", () => {
    fc.assert(
      fc.property(word, word, fc.nat(6), (a, b, limit) => {
        expect(editDistance(a, b, limit)).toBe(Math.min(distance(a, b), limit + 1));
      }),
      { numRuns: 5000 },
    );
  });

  test("the first few are those of a list of all, by distance and then by text", () => {
    fc.assert(
      fc.property(word, fc.array(word, { maxLength: 20 }), (wanted, names) => {
        const limit = Math.max(1, Math.floor(wanted.length / 3));
        const all = [...new Set(names)]
          .map((name) => ({ name, far: distance(wanted, name) }))
          .filter(({ far }) => far <= limit)
          .sort((a, b) => a.far - b.far || (a.name < b.name ? -1 : 1));
        expect(nearest(wanted, names)).toEqual(all.slice(0, 3).map(({ name }) => name));
        expect(nearestAmong(names)(wanted)).toEqual(nearest(wanted, names));
      }),
      { numRuns: 2000 },
    );
  });

  test.each([
    ["ring-alpah", ["ring-alpha", "ring-beta"], "ring-alpha"],
    ["RingAlpha", ["ring-alpha"], "ring-alpha"],
    ["postten", ["post-ten", "post-nine"], "post-ten"],
    ["ring-a/post-12", ["ring-a/post-13"], null],
    ["ring-a", ["ring-b"], null],
    ["hall-one", ["hail-one", "hull-one"], null],
    ["hall-one", ["hall-one-two"], null],
  ])("%s among %j can only be %s", (wanted, names, meant) => {
    expect(slipFor(wanted, names)).toBe(meant);
    expect(slipAmong(names)(wanted)).toBe(meant);
  });
});
