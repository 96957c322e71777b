/** How long one part of the work took at each size, in milliseconds. */
export interface Curve {
  readonly name: string;
  readonly at: readonly (readonly [records: number, ms: number])[];
}

const [width, height] = [720, 460];
const [left, right, top, bottom] = [72, 560, 56, 404];
const [ink, soft, hair] = ["#13181b", "#4d585c", "#c9d3d4"];
/** Standing apart by what is between strokes, since colours are for standings. */
const dashes = ["", "7 3", "2 3", "9 3 2 3", "1 5"];

/**
 * Milliseconds per thousand records over the number of records, both on scales of powers of ten: what grows with the number
 * of records is level, and the soft line rises as n log n does.
 */
export function growthPlot(curves: readonly Curve[]): string {
  const each = curves.map(({ name, at }) => ({
    name,
    at: at.map(([n, ms]) => [n, (1000 * ms) / n] as const),
  }));
  const all = each.flatMap(({ at }) => at);
  const sizes = [...new Set(all.map(([n]) => n))].sort((a, b) => a - b);
  const heights = all.map(([, ms]) => ms);
  const low = 10 ** Math.floor(Math.log10(Math.min(...heights)));
  const high = 10 ** Math.ceil(Math.log10(Math.max(...heights) * 1.1));
  const [least = 1, most = 10] = [sizes[0], sizes.at(-1)];
  const x = (n: number): number => between(left, right, Math.log(n / least) / Math.log(most / least));
  const y = (ms: number): number => between(bottom, top, Math.log(ms / low) / Math.log(high / low));
  const path = (at: readonly (readonly [number, number])[]): string =>
    at.map(([n, ms], place) => `${place === 0 ? "M" : "L"}${round(x(n))} ${round(y(ms))}`).join("");
  const decades = Array.from(
    { length: Math.round(Math.log10(high / low)) + 1 },
    (_, place) => low * 10 ** place,
  );
  const from = inTheGap(
    each.map(({ at }) => at[0]?.[1] ?? low),
    low,
    high,
  );
  const likeSorting = sizes.map((n) => [n, (from * Math.log(n)) / Math.log(least)] as const);
  const ends = apart([likeSorting, ...each.map(({ at }) => at)].map((at) => y(at.at(-1)?.[1] ?? low)));
  return `${[
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" font-family="'Source Sans 3', sans-serif" font-size="13" fill="${ink}">`,
    `<title>Growth from ${words(least)} to ${words(most)} records</title>`,
    `<rect width="${width}" height="${height}" fill="#ffffff"/>`,
    `<text x="${left}" y="28" font-size="15" font-weight="600">Milliseconds of the processor per thousand records</text>`,
    ...decades.map(
      (ms) =>
        `<path d="M${left} ${round(y(ms))}H${right}" stroke="${hair}"/><text x="${left - 8}" y="${round(y(ms) + 4)}" text-anchor="end" fill="${soft}">${words(ms)}</text>`,
    ),
    ...sizes.map(
      (n) =>
        `<path d="M${round(x(n))} ${bottom}v5" stroke="${soft}"/><text x="${round(x(n))}" y="${bottom + 20}" text-anchor="middle" fill="${soft}">${words(n)}</text>`,
    ),
    `<text x="${(left + right) / 2}" y="${bottom + 42}" text-anchor="middle">Records</text>`,
    `<path d="${path(likeSorting)}" fill="none" stroke="${hair}" stroke-width="4"/>`,
    `<text x="${right + 10}" y="${round((ends[0] ?? 0) + 4)}" fill="${soft}">as n log n grows</text>`,
    ...each.map(
      ({ name, at }, place) =>
        `<path d="${path(at)}" fill="none" stroke="${ink}" stroke-width="1.5" stroke-dasharray="${dashes[place % dashes.length] ?? ""}"/><text x="${right + 10}" y="${round((ends[place + 1] ?? 0) + 4)}">${name}</text>`,
    ),
    "</svg>",
  ].join("\n")}\n`;
}

function between(a: number, b: number, share: number): number {
  return a + (b - a) * share;
}

/** A height in the widest space between those that are taken. */
function inTheGap(taken: readonly number[], low: number, high: number): number {
  const sorted = [low, ...taken, high].sort((a, b) => a - b);
  const gaps = sorted.slice(1).map((above, place) => [sorted[place] ?? low, above] as const);
  const [from, to] = gaps.reduce((one, other) => (other[1] / other[0] > one[1] / one[0] ? other : one));
  return from * (to / from) ** 0.4;
}

/** Heights moved as far down as keeps each 16 units from the one above. */
function apart(heights: readonly number[]): readonly number[] {
  const order = heights.map((at, place) => ({ at, place })).sort((a, b) => a.at - b.at);
  const moved = [...heights];
  let next = -Infinity;
  for (const { at, place } of order) {
    next = Math.max(at, next);
    moved[place] = next;
    next += 16;
  }
  return moved;
}

function round(at: number): number {
  return Math.round(at * 10) / 10;
}

function words(figure: number): string {
  return String(figure).replace(/\B(?=(?:\d{3})+$)/gu, ",");
}
