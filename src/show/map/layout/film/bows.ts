import type { Bow } from "../../scene.ts";
import type { Piece } from "../places/plan.ts";
import type { BowRun, Span } from "../ways/bow-runs.ts";
import type { Heights } from "./heights.ts";

/** From the foot of a bow's room up to its crown; the word stands over it, in px. */
const crownHeight = 8;

/** The bows over rows of rivals, from corner to corner, and the dots between neighbours in conflict. */
export function bowsOf(
  joined: readonly BowRun[],
  spans: readonly Span[],
  { bottoms }: Heights,
  topOf: (piece: Piece) => number,
): readonly Bow[] {
  const bows = spans.flatMap(({ run, word }): readonly Bow[] => {
    const [first, last] = [run.pieces[0], run.pieces.at(-1)];
    if (!first || !last) return [];
    const crown = (bottoms[word.tier] ?? 0) - crownHeight;
    return [bow(run, run.pieces, [topOf(first), topOf(last)], crown)];
  });
  const dots = joined.flatMap((run) => {
    if (run.kind !== "conflict") return [];
    return run.pieces.slice(1).map((right, at) => {
      const left = run.pieces[at] ?? right;
      // The lower one's middle: both boxes stand on one edge.
      const lower = left.height < right.height ? left : right;
      const y = topOf(lower) + lower.height / 2;
      return bow(run, [left, right], [y, y], y);
    });
  });
  return [...bows, ...dots];
}

function bow(
  { id, kind }: BowRun,
  pieces: readonly Piece[],
  [from, to]: readonly [number, number],
  crown: number,
): Bow {
  const [first, last] = [pieces[0], pieces.at(-1)];
  return {
    id,
    kind,
    boxes: pieces.map(({ box }) => box.id),
    from: { x: first ? first.x + first.width : 0, y: from },
    to: { x: last?.x ?? 0, y: to },
    crown,
  };
}
