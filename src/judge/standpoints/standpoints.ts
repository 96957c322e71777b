import type { Id } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
import type { Judgement } from "../judge.ts";
import { openParts } from "../solver/standpoints.ts";
import { wellFounded } from "../solver/well-founded.ts";
import type { Joint, Standpoints } from "./component.ts";
import { commitmentsByClaim, commitmentsOf } from "./scholars/fit.ts";
import { decided } from "./decided.ts";
import type { Setting } from "./decided.ts";
import { wholeFits } from "./scholars/whole.ts";

export type { Alternative, Component, Joint, Standpoints } from "./component.ts";

/**
 * How far to look: ways laid out of one component, and visits of rules and atoms that finding them may cost; to ask for
 * each claim instead may cost a quarter of that.
 */
export interface Reach {
  readonly limit?: number;
  readonly effort?: number;
}

/**
 * The coherent standpoints of a judged corpus: each part of what is open is searched alone and taken apart into free
 * choices, whose product is never laid out. Only what is `tellable` is named; everything counts.
 */
export function standpointsOf(
  graph: Graph,
  judgement: Judgement,
  tellable: (id: Id) => boolean = () => true,
  { limit = 1000, effort = 24_000_000 }: Reach = {},
): Standpoints {
  const { compiled, counts } = judgement;
  const names = [...compiled.atoms.keys()];
  const commitments = commitmentsOf(graph, counts, tellable);
  const setting: Setting = {
    graph,
    compiled,
    nameOf: (atom) => names[atom] ?? "",
    tellable,
    commitmentsTo: commitmentsByClaim(commitments),
    limit,
    effort,
  };
  const parts = openParts(compiled.program, wellFounded(compiled.program));
  const found = parts.map((part) => decided(part, setting));
  const components = found.flatMap((one) => one.components);
  let before = 0;
  const joint = found.flatMap((one): readonly Joint[] => {
    const first = before;
    before += one.components.length;
    return one.joint.map((claim) => ({ ...claim, on: claim.on.map((place) => first + place) }));
  });
  return {
    count: components.reduce((product, { count }) => product * count, 1n),
    exact: components.every((one) => one.exact),
    components,
    joint,
    scholars: commitments.size,
    ...wholeFits(judgement, commitments, found),
  };
}
