import type { Id } from "../../../base/finding.ts";
import type { Standing } from "../../../judge/judge.ts";
import type { Reported } from "../../report/report.ts";
import { claimText, printYears } from "../../pages/question.ts";
import { acceptedIn, componentPage } from "./component.ts";
import type { Accepted, ComponentPage } from "./component.ts";
import { standpointsIn, tellableIn } from "./found.ts";
import { fitLine, named } from "./named.ts";
import type { FitLine, Named } from "./named.ts";

/** The page of all coherent standpoints. */
export interface StandpointsPage {
  /** How many there are, in digits; at least so many where not `exact`. */
  readonly count: string;
  readonly exact: boolean;
  readonly components: readonly ComponentPage[];
  /** Claims that hang on several of these, with their places counted from 0. */
  readonly joint: readonly (Named & { readonly on: readonly number[]; readonly holds: Accepted })[];
  /** Claims that stand, fall or are unsupported in every standpoint. */
  readonly settled: readonly { readonly standing: Standing; readonly claims: readonly Named[] }[];
  /** Scholars whom one standpoint fits as a whole. */
  readonly fits: readonly FitLine[];
  readonly unknown: readonly Named[];
  /** Scholars who hold or reject any claim by the year looked at. */
  readonly scholars: number;
  readonly years: readonly number[];
}

/** The coherent standpoints under the model's lens: nothing withheld is among them. */
export function standpointsPage(model: Reported): StandpointsPage {
  const { graph } = model;
  const found = standpointsIn(model);
  const tellable = tellableIn(model);
  return {
    count: String(found.count),
    exact: found.exact,
    components: found.components.map((one) => componentPage(graph, one, tellable)),
    joint: found.joint.map(({ claim, on, ...is }) => ({
      id: claim,
      text: claimText(graph, claim),
      on,
      holds: acceptedIn(is),
    })),
    settled: settledIn(model, tellable),
    fits: found.fits.map((fit) => fitLine(graph, fit)),
    unknown: found.unknown.map((id) => named(graph, id)),
    scholars: found.scholars,
    years: printYears(graph),
  };
}

function settledIn(
  { graph, judgement: { standings, counts } }: Reported,
  tellable: (id: Id) => boolean,
): StandpointsPage["settled"] {
  const claims = graph.list("claims").filter(({ id }) => counts(id) && tellable(id));
  return (["stands", "falls", "unsupported"] as const).map((standing) => ({
    standing,
    claims: claims
      .filter(({ id }) => standings.get(id) === standing)
      .map(({ id }) => ({ id, text: claimText(graph, id) })),
  }));
}
