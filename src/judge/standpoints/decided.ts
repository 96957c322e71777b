import type { Id } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
import type { Compiled } from "../compile.ts";
import type { Part } from "../solver/standpoints.ts";
import { alternativesOf, fatesIn } from "./alternatives.ts";
import type { Component, Joint } from "./component.ts";
import { kindsIn } from "./kinds.ts";
import { fitOf } from "./scholars/fit.ts";
import type { Commitment, CommitmentsTo, Fit } from "./scholars/fit.ts";
import { leastAmong, leastByAsking } from "./scholars/least.ts";
import type { Least } from "./scholars/least.ts";
import { contradictionIn } from "./told/contradiction.ts";
import type { Fates } from "./told/apart.ts";
import { askingOf } from "./ways/accepted.ts";
import type { Acceptance, Asking } from "./ways/accepted.ts";
import { factorsOf } from "./ways/factors.ts";
import type { Factor } from "./ways/factors.ts";
import { waysOf } from "./ways/ways.ts";

/** What the parts of one corpus have in common. */
export interface Setting {
  readonly graph: Graph;
  readonly compiled: Compiled;
  readonly nameOf: (atom: number) => Id;
  readonly tellable: (id: Id) => boolean;
  readonly commitmentsTo: CommitmentsTo;
  readonly limit: number;
  readonly effort: number;
}

/** A part of what is open that shares no rule with the rest, taken apart. */
export interface Decided {
  readonly components: readonly Component[];
  /** Claims that hang on several of these components, the places counted among them. */
  readonly joint: readonly Joint[];
  /** How little of what each scholar is committed to in the part need be given up. */
  readonly least: ReadonlyMap<Id, Least>;
}

/** Finds the ways to decide a part; of what is too much to lay out the solver is asked for each claim. */
export function decided(part: Part, setting: Setting): Decided {
  const { graph, compiled, tellable, commitmentsTo, limit, effort } = setting;
  const nameOf = (local: number): Id => setting.nameOf(part.atoms[local] ?? -1);
  const kindsOf = (atoms: readonly number[]) => kindsIn(atoms.map(nameOf).filter(tellable), graph, compiled);
  const ways = waysOf(part, limit, { left: effort, empty: false });
  const { factors, shared } = factorsOf(part, ways, limit, effort);
  const { claims } = kindsOf([...part.atoms.keys()]);
  const commitments = commitmentsTo(claims);
  const all = ways.whole ? ways.models.map((model) => fatesIn(model, [...part.atoms.keys()], nameOf)) : null;
  const asks = [...commitments.values()].reduce((sum, own) => sum + 2 * (1 + own.length), claims.length);
  const purse = { left: effort / 4, empty: false };
  const share = Math.ceil(effort / Math.max(1, asks));
  const asking = askingOf(part, (atom) => setting.nameOf(atom), limit, purse, share);

  const components = factors.map((factor): Component => {
    const kinds = kindsOf(factor.atoms);
    const own = commitmentsTo(kinds.claims);
    const about = factor.roots.map((root) => contradictionIn(root.map(nameOf), compiled, graph, tellable));
    const base = { about, ...kinds, count: factor.count, exact: factor.exact };
    return factor.ways === null
      ? { ...base, alternatives: [], ...asked(kinds.claims, own, asking) }
      : { ...base, ...laidOut(factor, factor.ways) };

    function laidOut(one: Factor, models: NonNullable<Factor["ways"]>) {
      const fates = models.map((model) => fatesIn(model, one.atoms, nameOf));
      return {
        alternatives: alternativesOf(fates, kinds, own),
        accepted: new Map(kinds.claims.map((id) => [id, acceptedIn(id, fates)])),
        fits: [],
        unknown: [],
      };
    }
  });
  const joint = kindsOf([...shared.keys()]).claims;
  const places = new Map([...shared].map(([atom, on]) => [nameOf(atom), on]));
  return {
    components,
    joint: joint.map((claim) => ({
      claim,
      on: places.get(claim) ?? [],
      ...(all ? acceptedIn(claim, all) : asking.accepted(claim)),
    })),
    least: new Map(
      [...commitments].map(([scholar, own]) => [
        scholar,
        all ? leastAmong(own, all) : leastByAsking(own, asking.together),
      ]),
    ),
  };
}

function acceptedIn(claim: Id, all: readonly Fates[]): Acceptance {
  const holds = all.map((fates) => fates.get(claim) === "stands");
  return { inAll: !holds.includes(false), inSome: holds.includes(true) };
}

/** Of more ways than are laid out: what holds in all and in some of them, and whom one of them fits. */
function asked(
  claims: readonly Id[],
  commitments: ReadonlyMap<Id, readonly Commitment[]>,
  { accepted, together }: Asking,
): Pick<Component, "accepted" | "fits" | "unknown"> {
  const least = [...commitments].map(([scholar, own]) => ({
    scholar,
    positions: own.length,
    misfits: leastByAsking(own, together).misfits,
  }));
  const fits = least.flatMap(({ scholar, positions, misfits }): readonly Fit[] => {
    const fit = misfits && fitOf(scholar, positions, misfits);
    return fit ? [fit] : [];
  });
  return {
    accepted: new Map(claims.map((id) => [id, accepted(id)])),
    fits,
    unknown: least.flatMap(({ scholar, misfits }) => (misfits === null ? [scholar] : [])),
  };
}
