import type { Piece } from "../../pages/pieces.ts";
import { words } from "../../pages/pieces.ts";
import type { Accepted, ComponentPage } from "./component.ts";
import type { FitLine, Named } from "./named.ts";
import type { StandpointsPage } from "./page.ts";

/** How many standpoints there are, and of what that number is the product. */
export function countInWords({ count, exact, components }: StandpointsPage): string {
  if (components.length === 0) return "One coherent standpoint: nothing is open.";
  if (count === "1" && exact) return "One coherent standpoint.";
  const factors = components.filter((one) => one.count !== "1" || !one.exact);
  const product = factors
    .map((one) => `${one.exact ? "" : "at least "}${inThousands(one.count)}`)
    .join(" × ");
  const from = factors.length > 1 ? `: ${product}` : "";
  return `${exact ? "" : "At least "}${inThousands(count)} coherent standpoints${from}.`;
}

/** A number in digits, parted by thousands. */
export function inThousands(digits: string): string {
  return digits.replace(/\B(?=(\d{3})+$)/g, "\u202f");
}

/** What a contradiction is about, records leading to their sheets. */
export function aboutInWords({ kind, between }: ComponentPage["about"][number]): readonly Piece[] {
  const link = ({ id, text }: Named): Piece => ({ text, to: id, lang: null });
  const joined = (by: string): readonly Piece[] =>
    between.flatMap((one, place) => (place > 0 ? [words(by), link(one)] : [link(one)]));
  switch (kind) {
    case "rivals":
    case "evidence":
      return joined(" or ");
    case "for-and-against":
      return [words("For and against: "), ...joined("; ")];
    case "attack":
      return joined(" against ");
    case "against-itself":
      return [...joined(", "), words(" speaks against itself")];
    case "withheld":
      return [words("Something that the corpus withholds")];
  }
}

/** In how many ways a component can be decided. */
export function waysInWords({ count, exact, undecided, ways }: ComponentPage): string {
  if (count === "1" && exact) {
    return undecided
      ? "No way to decide it is coherent: it stays open in every standpoint."
      : "Only one way to decide it is coherent.";
  }
  const number = `${exact ? "" : "At least "}${inThousands(count)} ways to decide it`;
  return ways.length > 0 ? `${number}.` : `${number}, too many to lay out.`;
}

/** In how many standpoints a claim holds. */
export const acceptedInWords: Readonly<Record<Accepted, string>> = {
  all: "holds in all",
  some: "holds in some",
  none: "holds in none",
  "some or all": "holds in some; whether in all is not known",
  "some or none": "holds not in all; whether in any is not known",
  "not known": "whether it holds in all, or in any, is not known",
};

/** The one position of a scholar that does not fit, and how its claim stands there instead. */
export function misfitInWords({ stance, claim, standing }: NonNullable<FitLine["but"]>): readonly Piece[] {
  const there = {
    stands: ", which stands there",
    falls: ", which falls there",
    open: ", which is open there",
    unsupported: ", which is unsupported there",
  } as const;
  const link: Piece = { text: `“${claim.text}”`, to: claim.id, lang: null };
  return [words(`${stance} `), link, words(standing === null ? "" : there[standing])];
}

/** How many claims are the same in every standpoint. */
export function settledInWords({ standing, claims }: StandpointsPage["settled"][number]): string {
  const n = claims.length;
  const verb = n === 1 ? "is" : "are";
  const words = {
    stands: n === 1 ? "stands" : "stand",
    falls: n === 1 ? "falls" : "fall",
    open: `${verb} open`,
    unsupported: `${verb} unsupported`,
  };
  return `${n === 1 ? "one claim" : `${n} claims`} ${words[standing]}`;
}
