import { count, say } from "../../../base/text/said/said.ts";
import type { Said } from "../../../base/text/said/said.ts";
import type { Standing } from "../../../judge/judge.ts";
import { quoted } from "../../../base/text/said/rows.ts";
import type { Piece } from "../../pages/pieces.ts";
import { words } from "../../pages/pieces.ts";
import type { Accepted, ComponentPage } from "./component.ts";
import type { FitLine, Named } from "./named.ts";
import type { StandpointsPage } from "./page.ts";

/** A product of more numbers than that is not read as one. */
const mostFactors = 24;

/** How many standpoints there are, and of what that number is the product. */
export function countInWords({ count: digits, exact, components }: StandpointsPage): Said {
  if (components.length === 0) return say`One coherent standpoint: nothing is open.`;
  if (digits === "1" && exact) return say`One coherent standpoint.`;
  const number = inThousands(digits);
  const factors = components.filter((one) => one.count !== "1" || !one.exact);
  if (factors.length < 2)
    return exact ? say`${number} coherent standpoints.` : say`At least ${number} coherent standpoints.`;
  const product = productOf(factors);
  return exact
    ? say`${number} coherent standpoints: ${product}.`
    : say`At least ${number} coherent standpoints: ${product}.`;
}

function productOf(factors: readonly ComponentPage[]): Said {
  if (factors.length > mostFactors) return say`the product of the ways of ${count(factors.length)} parts`;
  const [one = say``, ...others] = factors.map((part) =>
    part.exact ? say`${inThousands(part.count)}` : say`at least ${inThousands(part.count)}`,
  );
  return others.reduce((before, next) => say`${before} × ${next}`, one);
}

/** Of more digits than that only the first are read, and how many there are. */
const mostDigits = 15;

/** A number in digits, parted by thousands; a larger one by its power of ten, rounded down. */
export function inThousands(digits: string): string {
  if (digits.length > mostDigits) {
    const power = String(digits.length - 1).replace(/\d/g, (digit) => "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(Number(digit)));
    return `≈ ${digits.charAt(0)}.${digits.charAt(1)} × 10${power}`.replace(/ /g, "\u00a0");
  }
  return digits.replace(/\B(?=(\d{3})+$)/g, "\u202f");
}

/** What a contradiction is about, records leading to their sheets. */
export function aboutInWords({ kind, between }: ComponentPage["about"][number]): readonly Piece[] {
  const link = ({ id, text }: Named): Piece => ({ ...words(text), to: id });
  const joined = (by: Said): readonly Piece[] =>
    between.flatMap((one, place) => (place > 0 ? [words(by), link(one)] : [link(one)]));
  switch (kind) {
    case "rivals":
    case "evidence":
      return joined(say` or `);
    case "for-and-against":
      return [words(say`For and against: `), ...joined(say`; `)];
    case "attack":
      return joined(say` against `);
    case "against-itself":
      return [...joined(say`, `), words(say` speaks against itself`)];
    case "withheld":
      return [words(say`Something that the corpus withholds`)];
  }
}

/** In how many ways a component can be decided. */
export function waysInWords({ count: digits, exact, undecided, ways }: ComponentPage): Said {
  if (digits === "1" && exact) {
    return undecided
      ? say`No way to decide it is coherent: it stays open in every standpoint.`
      : say`Only one way to decide it is coherent.`;
  }
  const number = inThousands(digits);
  if (ways.length > 0)
    return exact ? say`${number} ways to decide it.` : say`At least ${number} ways to decide it.`;
  return exact
    ? say`${number} ways to decide it, too many to lay out.`
    : say`At least ${number} ways to decide it, too many to lay out.`;
}

/** In how many standpoints a claim holds. */
export const acceptedInWords: Readonly<Record<Accepted, Said>> = {
  all: say`holds in all`,
  some: say`holds in some`,
  none: say`holds in none`,
  "some or all": say`holds in some; whether in all is not known`,
  "some or none": say`holds not in all; whether in any is not known`,
  "not known": say`whether it holds in all, or in any, is not known`,
};

const stances = { holds: say`holds `, rejects: say`rejects ` } as const;

const there: Readonly<Record<Standing, Said>> = {
  stands: say`, which stands there`,
  falls: say`, which falls there`,
  open: say`, which is open there`,
  unsupported: say`, which is unsupported there`,
};

/** The one position of a scholar that does not fit, and how its claim stands there instead. */
export function misfitInWords({ stance, claim, standing }: NonNullable<FitLine["but"]>): readonly Piece[] {
  const link: Piece = { ...words(say`${quoted(claim.text)}`), to: claim.id };
  return [words(stances[stance]), link, words(standing === null ? "" : there[standing])];
}

/** How many claims are the same in every standpoint. */
export function settledInWords({ standing, claims }: StandpointsPage["settled"][number]): Said {
  const n = claims.length;
  switch (standing) {
    case "stands":
      return n === 1 ? say`one claim stands` : say`${count(n)} claims stand`;
    case "falls":
      return n === 1 ? say`one claim falls` : say`${count(n)} claims fall`;
    case "open":
      return n === 1 ? say`one claim is open` : say`${count(n)} claims are open`;
    case "unsupported":
      return n === 1 ? say`one claim is unsupported` : say`${count(n)} claims are unsupported`;
  }
}
