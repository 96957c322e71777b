import type { Id } from "../../base/finding.ts";
import type { Model } from "../solver/standpoint-search.ts";
import type { Alternative } from "./component.ts";
import type { Kinds } from "./kinds.ts";
import { fitOf, misfitsIn } from "./scholars/fit.ts";
import type { Commitment } from "./scholars/fit.ts";
import { toldApart } from "./told/apart.ts";
import type { Fate, Fates } from "./told/apart.ts";

/** What becomes of each of the named things in a model; what it neither holds nor leaves open falls. */
export function fatesIn(
  { holds, open }: Model,
  atoms: readonly number[],
  nameOf: (local: number) => Id,
): Fates {
  const fates = new Map(atoms.map((atom): [Id, Fate] => [nameOf(atom), "falls"]));
  for (const atom of holds) fates.set(nameOf(atom), "stands");
  for (const atom of open) fates.set(nameOf(atom), "open");
  return fates;
}

/**
 * The ways as they may be told, those that look the same as one, each with the scholars it fits; the ways that fit
 * most scholars come first.
 */
export function alternativesOf(
  all: readonly Fates[],
  kinds: Kinds,
  commitments: ReadonlyMap<Id, readonly Commitment[]>,
): readonly Alternative[] {
  const members = [...kinds.claims, ...kinds.evidence, ...kinds.arguments];
  const different = new Map<string, { readonly fates: Fates; ways: number }>();
  for (const whole of all) {
    const fates = new Map(members.map((id) => [id, whole.get(id) ?? "falls"]));
    const look = [...fates.values()].join(" ");
    const known = different.get(look);
    if (known) known.ways++;
    else different.set(look, { fates, ways: 1 });
  }
  const told = [...different.values()];
  const apart = toldApart(
    told.map((one) => one.fates),
    [kinds.claims, kinds.evidence, kinds.arguments],
    { left: 5_000_000 },
  );
  const alternatives = told.map(({ fates, ways }, place): Alternative => {
    const fits = [...commitments].flatMap(([scholar, own]) => {
      return (
        fitOf(
          scholar,
          own.length,
          misfitsIn(own, (claim) => fates.get(claim) ?? "falls"),
        ) ?? []
      );
    });
    const wholly = fits.filter((one) => one.but === null);
    const nearly = fits.filter((one) => one.but !== null);
    return { fates, ways, toldBy: apart[place] ?? [], fits: [...wholly, ...nearly] };
  });
  const wholly = (one: Alternative): number => one.fits.filter((fit) => fit.but === null).length;
  return alternatives.toSorted((a, b) => wholly(b) - wholly(a) || b.fits.length - a.fits.length);
}
