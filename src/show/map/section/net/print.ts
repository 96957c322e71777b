import type { Id } from "../../../../base/finding.ts";
import type { Reported } from "../../../report/report.ts";
import type { Net } from "./net.ts";

/** What is in print under a model's lens. */
export interface Print {
  readonly node: (id: Id) => boolean;
  readonly thing: (id: Id) => boolean;
}

/** Tells what of a dispute is in print: the corpus's own reasoning as far as anything that it leans on is. */
export function printIn(net: Net, { graph, judgement, lens }: Reported): Print {
  if (lens.asOf === undefined && (lens.without ?? []).length === 0)
    return { node: () => true, thing: () => true };
  const { counts, listed } = judgement;
  const known = new Map<Id, boolean>();
  const node = (id: Id): boolean => {
    const had = known.get(id);
    if (had !== undefined) return had;
    // Set first, so that what leans on itself ends somewhere.
    known.set(id, false);
    const found = inPrint(id);
    known.set(id, found);
    return found;
  };
  const inPrint = (id: Id): boolean => {
    const step = net.steps.get(id);
    if (step) {
      const ends = step.therefore === null ? step.against : [step.therefore];
      return counts(step.from) && ends.some(node) && (step.because.length === 0 || step.because.some(node));
    }
    if (!counts(id)) return false;
    const inputs = net.inputs(id);
    if (inputs.length > 0) return inputs.some(node);
    return net.kindOf(id) === "claim" ? listed(id) : true;
  };
  const seen = new Map<Id, boolean>();
  for (const one of [...graph.list("observations"), ...graph.list("measurements")]) {
    for (const thing of one.list === "observations" ? one.values.of : [one.values.of]) {
      for (let at: Id | undefined = thing; at !== undefined; at = graph.wholeOf.get(at))
        seen.set(at, seen.get(at) === true || counts(one.id));
    }
  }
  return { node, thing: (id) => seen.get(id) !== false };
}
