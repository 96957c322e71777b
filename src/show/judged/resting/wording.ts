import type { Id } from "../../../base/finding.ts";
import { counted, countedFirst } from "../../../base/text/counted.ts";
import type { LossSets } from "../../../judge/resting/loss-sets.ts";
import { words } from "../../pages/pieces.ts";
import type { Piece } from "../../pages/pieces.ts";

type Told = Pick<LossSets, "sets" | "upTo" | "candidates" | "stopped" | "missing">;

/** How many losses it takes: the size of the smallest set. */
export function gistOf({ sets, upTo }: Told): string {
  const least = sets[0]?.length ?? 0;
  if (least === 1) return "A single loss is enough to end it.";
  if (least === 2) return "No single loss ends it; two together do.";
  if (least === 3) return "No loss of one or two ends it; three together do.";
  if (upTo >= 3) return "No loss of three or fewer ends it.";
  return upTo === 2 ? "No loss of one or two ends it." : upTo === 1 ? "No single loss ends it." : "";
}

/** Why larger sets are not told, or that they wait. */
export function notLookedFor({ upTo, candidates, stopped, missing }: Told): string | null {
  const larger = upTo <= 1 ? "two or three" : "three";
  if (stopped === "candidates")
    return `It could hang on ${candidates} things, sources and scholars: too many to look for sets of ${larger}.`;
  if (stopped === "trials") return `There are too many sets of ${larger} to try them all.`;
  if (stopped === "numbers")
    return `Sets of ${larger} are not looked for: too many numbers would have to be computed anew.`;
  return missing.length > 0 ? "Larger sets wait for numbers that are still being computed." : null;
}

/** Losses that go together: one of each list. */
export function setInWords(choice: readonly (readonly Piece[])[]): readonly Piece[] {
  const single = choice.every((list) => list.length === 1);
  return choice.flatMap((list, place) => {
    const last = place === choice.length - 1;
    const between = place === 0 ? "" : single ? (last ? " and " : ", ") : ", together with ";
    return [...(between === "" ? [] : [words(between)]), ...oneOf(list)];
  });
}

function oneOf(list: readonly Piece[]): readonly Piece[] {
  if (list.length === 1) return list;
  return [words(list.length === 2 ? "either " : "one of "), ...listed(list, "or")];
}

function listed(pieces: readonly Piece[], by: "and" | "or"): readonly Piece[] {
  return pieces.flatMap((piece, place) => {
    if (place === 0) return [piece];
    return [words(place === pieces.length - 1 ? ` ${by} ` : ", "), piece];
  });
}

/** How many lines lead to a claim, and through what a single one passes. */
export function linesInWords(lines: number, through: readonly Piece[]): readonly Piece[] {
  if (lines === 0) return [words("No line leads to it from a thing or a report.")];
  if (lines > 1) return [words(`${countedFirst(lines)} lines lead to it that share nothing.`)];
  if (through.length === 0) return [words("One line leads to it.")];
  return [words("One line leads to it: everything passes through "), ...listed(through, "and"), words(".")];
}

/** Where fewer losses end a claim than there are lines: the number of lines is only the most there can be. */
export function yetInWords({ sets }: Told, lines: number, link: (id: Id) => Piece): readonly Piece[] | null {
  const least = sets[0]?.length ?? Infinity;
  if (lines < 2 || least >= lines) return null;
  if (least > 1)
    return [
      words(`Yet ${counted(least)} losses together end it: a step on the way needs several lines at once.`),
    ];
  const alone = sets.filter((set) => set.length === 1).flat();
  const told = alone.slice(0, 3).map(link);
  return [words("Yet the loss of "), ...listed(told, "or"), words(" alone ends it.")];
}
