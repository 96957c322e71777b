import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { randomFrom } from "../../../src/base/outcome/random.ts";
import type { Random } from "../../../src/base/outcome/random.ts";
import { parseQuantity } from "../../../src/base/quantity/quantity-text.ts";
import { unitTable } from "../../../src/base/unit/unit-table.ts";
import { pointed } from "../../../src/show/artefacts/picture/pointing.ts";
import { figureOf, sensitivityOf } from "../../../src/show/artefacts/picture/points.ts";
import type { Point, Taken } from "../../../src/show/artefacts/picture/points.ts";
import { onPicture, printedScale, scaleOf } from "../../../src/show/artefacts/picture/scale.ts";
import { pictureFile } from "../../../src/show/artefacts/picture/file.ts";

const units = unitTable([]);

function length(text: string) {
  const read = parseQuantity(text, { units, approximate: 0.025, plusMinus: "standard" });
  if ("problem" in read) throw new Error(text);
  return read.ok;
}

const place = fc.record({ x: fc.integer({ min: 0, max: 4000 }), y: fc.integer({ min: 0, max: 4000 }) });
const far = (a: Point, b: Point): boolean => Math.hypot(a.x - b.x, a.y - b.y) > 50;

describe("figures from points", () => {
  test("a circle's diameter is found from any three points on it", () => {
    const turn = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
    fc.assert(
      fc.property(place, fc.integer({ min: 20, max: 900 }), turn, ({ x, y }, radius, start) => {
        const on = (angle: number): Point => ({
          x: x + radius * Math.cos(angle),
          y: y + radius * Math.sin(angle),
        });
        const points = [on(start), on(start + 1), on(start + 2.5)];
        expect(figureOf("diameter", points)).toBeCloseTo(2 * radius, 6);
      }),
      { numRuns: 60 },
    );
  });

  test("a rectangle's corner is a right angle, an equilateral triangle's 60°, however they lie", () => {
    const corner = [
      { x: 3, y: 4 },
      { x: 0, y: 0 },
      { x: -4, y: 3 },
    ];
    expect(figureOf("angle", corner)).toBeCloseTo(Math.PI / 2, 12);
    const triangle = [
      { x: 100, y: 0 },
      { x: 0, y: 0 },
      { x: 50, y: 100 * Math.sin(Math.PI / 3) },
    ];
    expect(figureOf("angle", triangle)).toBeCloseTo(Math.PI / 3, 12);
  });

  test("sensitivities are those of the closed forms: √2 for a distance, and for an angle by its sides", () => {
    fc.assert(
      fc.property(place, place, place, (a, b, c) => {
        fc.pre(far(a, b) && far(b, c) && far(a, c));
        expect(sensitivityOf("distance", [a, b])).toBeCloseTo(Math.SQRT2, 6);
        const angle = figureOf("angle", [a, b, c]);
        fc.pre(angle > 0.1 && angle < 3);
        const [p, q, r] = [
          figureOf("distance", [a, b]),
          figureOf("distance", [b, c]),
          figureOf("distance", [a, c]),
        ];
        // Across each side by its length at the outer points, both together at the middle one.
        const closed = Math.hypot(1 / p, 1 / q, r / (p * q));
        expect(sensitivityOf("angle", [a, b, c]) / closed).toBeCloseTo(1, 4);
      }),
      { numRuns: 60 },
    );
  });
});

/** Points as somebody would set them: off by a normal error in each coordinate, at whole pixels. */
function pointedAt(truth: readonly Point[], error: number, random: Random): readonly Point[] {
  const off = (at: number): number => Math.round(at + error * random.normal());
  return truth.map(({ x, y }) => ({ x: off(x), y: off(y) }));
}

/** How often the true value lies within two whole uncertainties, where a picture of known scale is measured again and again. */
function covered(
  taken: Taken,
  truth: readonly Point[],
  { readings, error, seed }: { readonly readings: number; readonly error: number; readonly seed: number },
): number {
  const random = randomFrom(seed);
  const metre = 240;
  const rounds = 3000;
  let within = 0;
  const bar = length("0.500 ± 0.002 m");
  for (let round = 0; round < rounds; round++) {
    // Where the grid of the picture lies is chance, and the bar itself is off by what is said of it.
    const [right, down] = [random.uniform(), random.uniform()];
    const lies = ({ x, y }: Point): Point => ({ x: x + right, y: y + down });
    const barPixels = (0.5 + 0.002 * random.normal()) * metre;
    const bars = Array.from({ length: readings }, () =>
      pointedAt(
        [
          { x: 40, y: 900 },
          { x: 40 + 0.8 * barPixels, y: 900 - 0.6 * barPixels },
        ].map(lies),
        error,
        random,
      ),
    );
    const ends = pointed("distance", bars);
    const figure = pointed(
      taken,
      Array.from({ length: readings }, () => pointedAt(truth.map(lies), error, random)),
    );
    const measured = figure && ends && onPicture(taken, figure, scaleOf(bar, ends));
    if (!measured) throw new Error("nothing measured");
    const real = figureOf(taken, truth) / (taken === "angle" ? 1 : metre);
    if (Math.abs(measured.value - real) <= 2 * measured.whole) within += 1;
  }
  return within / rounds;
}

describe("the true value lies within two standard uncertainties about 95 times in 100", () => {
  const line = [
    { x: 100.4, y: 120.7 },
    { x: 610.2, y: 433.1 },
  ];
  const straight = [0, 200, 400].map((x) => ({ x, y: 300 }));
  const arc = [0.2, 1.1, 2.3].map((angle) => ({
    x: 500 + 160 * Math.cos(angle),
    y: 300 + 160 * Math.sin(angle),
  }));
  test.each([
    ["distance", line, 4, 1.5],
    ["distance", line, 8, 0.8],
    ["distance", line, 1, 0.5],
    ["diameter", arc, 5, 0.8],
    ["angle", arc, 4, 1],
    ["angle", straight, 5, 1],
  ] as const)("%s, %# ", (taken, truth, readings, error) => {
    const share = covered(taken, truth, { readings, error, seed: 7 });
    expect(share).toBeGreaterThan(0.935);
    // A set pixel either way is more than a good eye needs: a single reading is safe rather than sharp.
    expect(share).toBeLessThan(readings === 1 ? 0.9999 : 0.985);
  });
});

describe("pointing", () => {
  const shifted = (by: number): readonly Point[] => [
    { x: 0, y: 0 },
    { x: 300 + by, y: 0 },
  ];

  test("one reading is good to a pixel either way at both ends: √(2/3) pixel", () => {
    expect(pointed("distance", [shifted(0)])?.u).toBeCloseTo(Math.sqrt(2 / 3), 6);
    expect(pointed("distance", [shifted(0)], 3)?.u).toBeCloseTo(3 * Math.sqrt(2 / 3), 6);
  });

  test("two that lie far apart count as far as they do; the same point four times is still on a grid", () => {
    expect(pointed("distance", [shifted(0), shifted(12)])).toMatchObject({ by: "spread", mean: 306 });
    expect(pointed("distance", [shifted(0), shifted(12)])?.u).toBeCloseTo(12 / Math.SQRT2, 6);
    const same = pointed("distance", [shifted(0), shifted(0), shifted(0), shifted(0)]);
    expect(same?.by).toBe("repeats");
    expect(same?.u).toBeCloseTo(Math.sqrt(1 / 6), 6);
  });

  test("four readings by hand: 298, 300, 301, 305", () => {
    // s² = 26/3, s²/4 · 3 = 6.5.
    const found = pointed("distance", [shifted(-2), shifted(0), shifted(1), shifted(5)]);
    expect(found?.mean).toBe(301);
    expect(found?.u).toBeCloseTo(Math.sqrt(6.5), 6);
    expect(pointed("distance", [shifted(-2), shifted(0), shifted(1), shifted(5)], 9)).toMatchObject({
      by: "points",
    });
  });

  test("three points in a line turn by 180°, which is no better known than any other angle", () => {
    const line = (bend: number): readonly Point[] => [
      { x: 0, y: 0 },
      { x: 200, y: 0 },
      { x: 400, y: bend },
    ];
    // Across by √(1/200² + 1/200² + (400/200²)²) = √6/200 to the pixel, and each coordinate good to 1/√3 pixel.
    const one = pointed("angle", [line(0)]);
    expect(one?.mean).toBeCloseTo(Math.PI, 9);
    expect(one?.u).toBeCloseTo(Math.sqrt(2) / 200, 6);
    // Some a little to one side, some to the other: 180° on the whole, not less by the fold.
    const both = [-2, 2, -2, 2].map(line);
    for (const readings of [both, both.toReversed()])
      expect(pointed("angle", readings)?.mean).toBeCloseTo(Math.PI, 6);
    const less = pointed("angle", [line(-2), line(2), line(4), line(4)]);
    expect(less?.mean).toBeCloseTo(Math.PI - 0.01, 4);
    expect(pointed("angle", [line(4), line(4), line(2), line(-2)])?.mean).toBeCloseTo(less?.mean ?? 0, 9);
  });

  test("points that give no figure give none", () => {
    const inLine = [0, 1, 2].map((at) => ({ x: at, y: at }));
    expect(pointed("diameter", [inLine])).toBeNull();
    expect(pointed("distance", [])).toBeNull();
  });
});

describe("scales", () => {
  test("a product's uncertainties add as squares of shares, its own apart from what is common", () => {
    const ends = { mean: 100, u: 1, readings: [100], by: "points" as const };
    const figure = { mean: 400, u: 2, readings: [400], by: "points" as const };
    const measured = onPicture("distance", figure, scaleOf(length("20.0 ± 0.2 cm"), ends));
    expect(measured?.value).toBeCloseTo(0.8, 12);
    expect(measured?.own).toBeCloseTo(0.004, 12);
    expect(measured?.shared).toBeCloseTo(Math.SQRT2 / 100, 12);
    expect(measured?.whole).toBeCloseTo(Math.hypot(0.004, 0.8 * 0.01 * Math.SQRT2), 12);
  });

  test("a length that is a bound, or ends in one place, are no scale", () => {
    const ends = { mean: 100, u: 1, readings: [100], by: "points" as const };
    expect(scaleOf(length("≥ 20 cm"), ends)).toBeNull();
    expect(scaleOf(length("20 kg"), ends)).toBeNull();
    expect(scaleOf(length("20 cm"), { ...ends, mean: 0 })).toBeNull();
    expect(scaleOf(length("20 cm"), { ...ends, mean: 0.5 })).toBeNull();
    // A bar of two pixels, each end good to one: its reciprocal has no ± worth the name.
    expect(scaleOf(length("20 cm"), { ...ends, mean: 2, u: Math.sqrt(2 / 3) })).toBeNull();
  });

  test("1:150 at 300 to the inch: a pixel is 12.7 mm", () => {
    expect(printedScale(150, 300, 0.01)?.perPixel).toBeCloseTo(0.0127, 12);
    expect(printedScale(0, 300, 0.01)).toBeNull();
  });
});

describe("what a file says of itself", () => {
  const ascii = (text: string): readonly number[] => [...text].map((one) => one.charCodeAt(0));
  /** Big-endian, in so many bytes. */
  const whole = (value: number, bytes: number): readonly number[] =>
    Array.from({ length: bytes }, (_, at) => (value >>> (8 * (bytes - 1 - at))) & 255);
  const png = (perMetre: number, unit: number): Uint8Array => {
    const head = [0x89, ascii("PNG\r\n\u001a\n"), whole(13, 4), ascii("IHDR"), Array<number>(17).fill(0)];
    const density = [whole(9, 4), ascii("pHYs"), whole(perMetre, 4), whole(perMetre, 4), unit, whole(0, 4)];
    return Uint8Array.from([...head, ...density].flat());
  };
  const jpeg = (density: number, unit: number, tag: number): Uint8Array => {
    const directory = [whole(1, 2), whole(tag, 2), whole(4, 2), whole(1, 4), whole(26, 4)].flat();
    const said = [ascii("Exif"), 0, 0, ascii("MM"), whole(42, 2), whole(8, 4), directory].flat();
    const jfif = [ascii("JFIF"), 0, 1, 2, unit, whole(density, 2), whole(density, 2), 0, 0].flat();
    const head = [0xff, 0xd8, 0xff, 0xe0, whole(jfif.length + 2, 2), jfif].flat();
    return Uint8Array.from([head, 0xff, 0xe1, whole(said.length + 2, 2), said, 0xff, 0xda, 0, 2].flat());
  };

  test("a PNG of 11811 to the metre is 300 to the inch; without a unit it says nothing", () => {
    expect(pictureFile(png(11811, 1)).perInch).toBeCloseTo(300, 1);
    expect(pictureFile(png(11811, 0)).perInch).toBeNull();
  });

  test("a JPEG says its density and whether it has a place; 72 is what programs write unasked", () => {
    expect(pictureFile(jpeg(300, 1, 0x8825))).toEqual({ perInch: 300, hasPlace: true });
    expect(pictureFile(jpeg(72, 1, 0x8769))).toEqual({ perInch: null, hasPlace: false });
    expect(pictureFile(jpeg(100, 2, 0x8769)).perInch).toBeCloseTo(254, 9);
  });

  test("nothing is read beyond the end of a broken file", () => {
    const files = [png(11811, 1), jpeg(300, 1, 0x8825)];
    fc.assert(
      fc.property(fc.constantFrom(...files), fc.nat(80), fc.nat(255), (bytes, at, sign) => {
        const broken = bytes.slice(0, at + 1);
        broken[Math.floor(at / 2)] = sign;
        expect(typeof pictureFile(broken).hasPlace).toBe("boolean");
      }),
      { numRuns: 100 },
    );
    expect(pictureFile(new Uint8Array(0))).toEqual({ perInch: null, hasPlace: false });
  });
});
