import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import type { Standing } from "../../../../judge/judge.ts";
import type { Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { claimInside, listed } from "../pieces/inlines.ts";

/** What the words for a standing mean, for those who meet them for the first time. */
export const standingsMean: Said = say`A standing is what follows from the recorded evidence and arguments, and from nothing else; it counts neither heads nor reputations. A claim stands when an argument for it holds that nothing beats; it is open where arguments meet of which neither beats the other; it falls where all that speaks for it is beaten; it is unsupported where nothing was put under it.`;

/** How a claim stands under the lens. */
export function standingIn({ model }: Sight, claim: Id): Standing {
  return model.judgement.standings.get(claim) ?? "unsupported";
}

const order: readonly Standing[] = ["stands", "open", "falls", "unsupported"];

const verbs: Readonly<Record<Standing, readonly [one: Said, several: Said]>> = {
  stands: [say`stands`, say`stand`],
  open: [say`is open`, say`are open`],
  falls: [say`falls`, say`fall`],
  unsupported: [say`is unsupported`, say`are unsupported`],
};

/** How one thing stands, in words alone. */
export const standsWords = (standing: Standing): Said => verbs[standing][0];

const ordinals: readonly Said[] = [
  say`the first`,
  say`the second`,
  say`the third`,
  say`the fourth`,
  say`the fifth`,
  say`the sixth`,
];

/** How claims stand that were just named, by their places: `the first and the third are open, and the second falls`. */
export function howTheyStand(sight: Sight, claims: readonly Id[]): Inlines {
  const [only] = claims;
  const named = (claim: Id, place: number): Inlines => {
    const ordinal = ordinals[place];
    return claims.length > ordinals.length || ordinal === undefined
      ? [say`the claim `, ...claimInside(sight, claim)]
      : [ordinal];
  };
  if (claims.length === 1 && only !== undefined) return [say`it `, verbs[standingIn(sight, only)][0]];
  const clauses = order.flatMap((standing): readonly Inlines[] => {
    const those = claims.flatMap((claim, place) =>
      standingIn(sight, claim) === standing ? [named(claim, place)] : [],
    );
    const [one, several] = verbs[standing];
    return those.length === 0 ? [] : [[...listed(those), " ", those.length === 1 ? one : several]];
  });
  return clauses.flatMap((clause, place): Inlines => (place === 0 ? clause : ["; ", ...clause]));
}
