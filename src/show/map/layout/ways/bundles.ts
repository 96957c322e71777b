import { footX } from "./knots.ts";
import type { Foot, Knot } from "./wire.ts";

/** Lines that are cut and share a letter: one line, or several that end far from the same side of one box. */
export interface Bundle {
  readonly knots: readonly Knot[];
  /** The end where all share one mark; null where there is one line alone. */
  readonly shared: "from" | "to" | null;
}

/** From so many lines on they share the mark at their common end. */
const least = 3;

/** Bundles what is cut, the most crowded ends first; each line is in one. */
export function bundlesOf(cut: readonly Knot[]): readonly Bundle[] {
  const ends = new Map<string, { readonly side: "from" | "to"; readonly knots: Knot[] }>();
  for (const knot of cut) {
    if (knot.kind !== "line" && knot.kind !== "attack") continue;
    for (const side of ["from", "to"] as const) {
      const { piece, at } = knot[side];
      const key = JSON.stringify([side, knot.kind, knot.joins, piece.box.id, at]);
      const end = ends.get(key) ?? { side, knots: [] };
      end.knots.push(knot);
      ends.set(key, end);
    }
  }
  const bundled = new Set<Knot>();
  const bundles: Bundle[] = [];
  for (const { side, knots } of [...ends.values()].sort((a, b) => b.knots.length - a.knots.length)) {
    const open = knots.filter((knot) => !bundled.has(knot));
    if (open.length < least) continue;
    for (const knot of open) bundled.add(knot);
    bundles.push({ knots: nearestFirst(open), shared: side });
  }
  const alone = cut.filter((knot) => !bundled.has(knot));
  return [...bundles, ...alone.map((knot): Bundle => ({ knots: [knot], shared: null }))];
}

function nearestFirst(knots: readonly Knot[]): readonly Knot[] {
  const length = ({ from, to }: Knot): number => Math.abs(footX(from) - footX(to));
  return knots.toSorted((a, b) => length(a) - length(b));
}

/** Where the mark of an end stands: over which row, and about at which x. */
export function spotOf(foot: Foot): { readonly slot: number; readonly x: number } {
  const { piece, at } = foot;
  return { slot: at === "bottom" ? piece.row - 1 : piece.row, x: footX(foot) };
}

/** Bundles in the order in which their marks are met, from the top down and from the left. */
export function inOrderOfPlace(bundles: readonly Bundle[]): readonly Bundle[] {
  const met = bundles.map((bundle) => {
    const spots = bundle.knots.flatMap(({ from, to }) => [spotOf(from), spotOf(to)]);
    spots.sort((a, b) => b.slot - a.slot || a.x - b.x);
    return { bundle, slot: spots[0]?.slot ?? 0, x: spots[0]?.x ?? 0 };
  });
  return met.sort((a, b) => b.slot - a.slot || a.x - b.x).map(({ bundle }) => bundle);
}
