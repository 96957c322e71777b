import type { Id } from "../../../base/finding.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { unsupposed } from "../../../derive/lens.ts";
import type { Lens } from "../../../derive/lens.ts";
import type { Standing } from "../../../judge/judge.ts";
import { labelText, withoutStop } from "../../../link/names/label.ts";
import { suppositionText } from "../../../link/suppose/supposition.ts";
import { listedUnder } from "../../withhold.ts";
import type { Reported } from "../../report/report.ts";

/** A claim whose standing is another under a supposition than in the record. */
export interface SupposedChange {
  readonly id: Id;
  readonly text: Text;
  readonly was: Standing;
  readonly is: Standing;
}

/** What every page under a supposition says first: what is supposed, and what that changes. */
export type SupposedTold =
  | {
      readonly known: true;
      readonly examination: { readonly id: Id; readonly text: Text };
      /** The supposed outcome's own record. */
      readonly outcome: { readonly id: Id; readonly text: Text };
      /** Answers of questions first, then the other claims in corpus order. */
      readonly changed: readonly SupposedChange[];
      /** Some number is still to be computed, with the supposition or without it. */
      readonly pending: boolean;
    }
  /** The corpus has no such outcome, and nothing is supposed. */
  | { readonly known: false; readonly written: string };

/** A lens with its supposition alone: the whole dispute, whatever year is looked at. */
export function ofAllYears({ suppose }: Lens): Lens {
  return suppose === undefined ? {} : { suppose };
}

/** What to say of the supposition of a model's lens, beside the same model without it; null where nothing is supposed. */
export function supposedTold(model: Reported, under: (lens: Lens) => Reported): SupposedTold | null {
  const { graph, lens } = model;
  if (lens.suppose === undefined) return null;
  if (graph.supposed === null) return { known: false, written: suppositionText(lens.suppose) };
  const { examination, outcome, records } = graph.supposed;
  const before = under(unsupposed(lens));
  const observed = graph.list("observations").find((one) => records.has(one.id));
  return {
    known: true,
    examination: { id: examination.id, text: withoutEnd(examination.method) },
    outcome: { id: observed?.id ?? examination.id, text: outcome.text },
    changed: changesUnder(model, before),
    pending: [model, before].some((one) => one.derivations.missing.length > 0),
  };
}

/** The claims that stand otherwise, answers first. */
export function changesUnder(model: Reported, before: Reported): readonly SupposedChange[] {
  const { graph, judgement } = model;
  const listed = listedUnder(model);
  const answers = graph.list("questions").flatMap((one) => one.values.answers);
  const claims = [...new Set([...answers, ...graph.list("claims").map((one) => one.id)])];
  return claims.filter(listed).flatMap((id) => {
    const was = before.judgement.standings.get(id);
    const is = judgement.standings.get(id);
    if (was === undefined || is === undefined || was === is) return [];
    return [{ id, text: labelText(graph, id), was, is }];
  });
}

/** A method without the stop of a sentence; a suggested one has none. */
function withoutEnd(method: Text): Text {
  return typeof method === "string" ? withoutStop(method) : method;
}
