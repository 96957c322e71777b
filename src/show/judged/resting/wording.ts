import type { Id } from "../../../base/finding.ts";
import { count, countInWords, first, say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";
import type { LossSets } from "../../../judge/resting/loss-sets.ts";
import { words } from "../../pages/pieces.ts";
import type { Piece } from "../../pages/pieces.ts";

type Told = Pick<LossSets, "sets" | "upTo" | "candidates" | "stopped" | "missing">;

/** How many losses it takes: the size of the smallest set; null where nothing was looked for. */
export function gistOf({ sets, upTo }: Told): Said | null {
  const least = sets[0]?.length ?? 0;
  if (least === 1) return say`A single loss is enough to end it.`;
  if (least === 2) return say`No single loss ends it; two together do.`;
  if (least === 3) return say`No loss of one or two ends it; three together do.`;
  if (upTo >= 3) return say`No loss of three or fewer ends it.`;
  if (upTo === 2) return say`No loss of one or two ends it.`;
  return upTo === 1 ? say`No single loss ends it.` : null;
}

/** Why larger sets are not told, or that they wait. */
export function notLookedFor({ upTo, candidates, stopped, missing }: Told): Said | null {
  const pairs = upTo <= 1;
  if (stopped === "candidates")
    return pairs
      ? say`It could hang on ${count(candidates)} things, sources and scholars: too many to look for sets of two or three.`
      : say`It could hang on ${count(candidates)} things, sources and scholars: too many to look for sets of three.`;
  if (stopped === "trials")
    return pairs
      ? say`There are too many sets of two or three to try them all.`
      : say`There are too many sets of three to try them all.`;
  if (stopped === "numbers")
    return pairs
      ? say`Sets of two or three are not looked for: too many numbers would have to be computed anew.`
      : say`Sets of three are not looked for: too many numbers would have to be computed anew.`;
  return missing.length > 0 ? say`Larger sets wait for numbers that are still being computed.` : null;
}

/** Losses that go together: one of each list. */
export function setInWords(choice: readonly (readonly Piece[])[]): readonly Piece[] {
  const single = choice.every((list) => list.length === 1);
  return choice.flatMap((list, place) => {
    if (place === 0) return oneOf(list);
    const last = place === choice.length - 1;
    const between = single ? (last ? say` and ` : say`, `) : say`, together with `;
    return [words(between), ...oneOf(list)];
  });
}

function oneOf(list: readonly Piece[]): readonly Piece[] {
  if (list.length === 1) return list;
  return [words(list.length === 2 ? say`either ` : say`one of `), ...listed(list, "or")];
}

function listed(pieces: readonly Piece[], by: "and" | "or"): readonly Piece[] {
  return pieces.flatMap((piece, place) => {
    if (place === 0) return [piece];
    if (place < pieces.length - 1) return [words(say`, `), piece];
    return [words(by === "and" ? say` and ` : say` or `), piece];
  });
}

/** How many lines lead to a claim, and through what a single one passes. */
export function linesInWords(lines: number, through: readonly Piece[]): readonly Piece[] {
  if (lines === 0) return [words(say`No line leads to it from a thing or a report.`)];
  if (lines > 1) return [words(first(say`${countInWords(lines)} lines lead to it that share nothing.`))];
  if (through.length === 0) return [words(say`One line leads to it.`)];
  return [
    words(say`One line leads to it: everything passes through `),
    ...listed(through, "and"),
    words("."),
  ];
}

/** Where fewer losses end a claim than there are lines: the number of lines is only the most there can be. */
export function yetInWords({ sets }: Told, lines: number, link: (id: Id) => Piece): readonly Piece[] | null {
  const least = sets[0]?.length ?? Infinity;
  if (lines < 2 || least >= lines) return null;
  if (least > 1)
    return [
      words(
        say`Yet ${countInWords(least)} losses together end it: a step on the way needs several lines at once.`,
      ),
    ];
  const alone = sets.filter((set) => set.length === 1).flat();
  const told = alone.slice(0, 3).map(link);
  return [words(say`Yet the loss of `), ...listed(told, "or"), words(say` alone ends it.`)];
}
