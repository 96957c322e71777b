import type { Id } from "../../../../base/finding.ts";
import { sketchesOf } from "./sketch.ts";
import { copyOf, mostSteps, show, startingWith } from "./shown.ts";
import type { Field, Growing, Shown } from "./shown.ts";

/** Most boxes of a map that nobody has unfolded anything of (rule 13 of the look). */
export const mostOpened = 40;
/** Most answers that stand at the top of a map as it opens. */
const mostRoots = 20;

/**
 * A map as it opens: answers, then the steps for them in turn, the earliest first, with the premises one rank down,
 * then what is against any of it, then rivals; each as long as the boxes stay within the limit.
 */
export function openingOf(field: Field, limit: number = mostOpened): Growing {
  const { net, universe } = field;
  const all = field.answers.length > 0 ? field.answers : field.others;
  const roots = all.slice(0, all.length > mostRoots ? mostRoots - 1 : mostRoots);
  let shown = startingWith(roots, net);
  const tryWith = (id: Id): void => {
    if (!universe.has(id) || shown.steps.has(id) || shown.nodes.has(id)) return;
    const tried = copyOf(shown);
    show(tried, net, id);
    if (sketchesOf(field, tried).length <= limit) shown = tried;
  };
  for (let turn = 0; turn < mostSteps; turn++) {
    for (const root of roots) {
      const step = net.pro(root)[turn];
      if (step) tryWith(step.id);
    }
  }
  for (const id of [...shown.nodes, ...shown.steps]) for (const step of net.contra(id)) tryWith(step.id);
  const claims = [...shown.nodes].filter((id) => net.kindOf(id) === "claim");
  for (const claim of claims) net.rivals(claim).forEach(tryWith);
  return shown;
}

/** Unfolds a claim, a step, a number or a pile in place: the first steps for it, or its inputs, and what is against it. */
export function unfold(field: Field, growing: Growing, id: Id, every: boolean): void {
  const { net, universe } = field;
  const members = field.piles.get(id)?.members ?? [id];
  const steps = net.pro(id).map((step) => step.id);
  const wanted = [
    ...(every ? steps : steps.slice(0, mostSteps)),
    ...net.inputs(id),
    ...members.flatMap((member) => net.contra(member).map((step) => step.id)),
    ...(net.kindOf(id) === "claim" ? net.rivals(id) : []),
  ];
  for (const one of wanted) if (universe.has(one)) show(growing, net, one);
}

/** Whether something is shown, as itself or in its pile. */
export function isShown(field: Field, shown: Shown, id: Id): boolean {
  const members = field.piles.get(id)?.members ?? [id];
  return shown.steps.has(id) || members.some((member) => shown.nodes.has(member));
}
