import { say } from "../../base/text/said/said.ts";
import type { Said } from "../../base/text/said/said.ts";
import type { Examination } from "../../link/suppose/examination.ts";
import type { Place } from "./places.ts";

/** What is to be borne in mind before anybody is asked for leave; the tool decides nothing. */
export type Caution =
  /** It uses something up: `asks` is what a keeper will want to know. */
  | { readonly kind: "destructive"; readonly asks: readonly Said[] }
  /** Consent or a permit is named, and is the beginning of the asking. */
  | { readonly kind: "permission"; readonly permits: readonly string[] }
  /** A thing is where it was found, or nobody says where it is kept. */
  | { readonly kind: "in-the-ground"; readonly says: Said };

/** What keepers of collections ask before they let anything be sampled (common practice). */
export const keeperAsks: readonly Said[] = [
  say`What is taken, from which spot, and how much of it?`,
  say`Would other material do, or what another laboratory has left?`,
  say`Which way that uses nothing up was tried first, and what did it show?`,
  say`Who takes it, and where were they trained?`,
  say`What comes back: the remainder, the data, the report?`,
  say`Whose consent is needed besides: an owner's, a community's?`,
];

const ground = say`Scheduled or protected ground: local law and licensed archaeologists decide whether and how anything is touched.`;

/** The cautions of an examination, what uses something up first. */
export function cautionsOf(examination: Examination, places: readonly Place[]): readonly Caution[] {
  const permits = permitsOf(examination, places);
  const inTheGround = places.some((one) => one.heldAt === null);
  return [
    ...(examination.destructive ? [{ kind: "destructive" as const, asks: keeperAsks }] : []),
    ...(permits.length > 0 ? [{ kind: "permission" as const, permits }] : []),
    ...(inTheGround ? [{ kind: "in-the-ground" as const, says: ground }] : []),
  ];
}

/** The permissions an examination takes: its own first, then those of the things it looks at. */
export function permitsOf(examination: Examination, places: readonly Place[]): readonly string[] {
  const own = examination.permit === null ? [] : [examination.permit];
  return [...new Set([...own, ...places.flatMap((one) => one.permit ?? [])])];
}
