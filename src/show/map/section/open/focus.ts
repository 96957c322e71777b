import type { Id } from "../../../../base/finding.ts";
import type { Net } from "../net/net.ts";
import { directlyAbove, directlyBelow, reached, wayTo, wholeOf } from "../net/reach.ts";
import { show } from "./shown.ts";
import type { Field, Growing } from "./shown.ts";

/** Most records of a thing, scholar or source to which the way is unfolded. */
const mostWays = 8;

/** The records of the map that a focus means: itself, the labels of a thing, the answers of a question, or all that somebody said. */
export function focusNodes({ net, universe }: Pick<Field, "net" | "universe">, focus: Id): readonly Id[] {
  if (universe.has(focus)) return [focus];
  const { graph } = net;
  const record = graph.records.get(focus);
  const nodes = [...universe];
  if (record?.list === "questions") return record.values.answers.filter((id) => universe.has(id));
  if (record?.list === "artefacts") {
    const things = new Set(graph.withParts(focus));
    return nodes.filter((id) => net.things(id).some((thing) => things.has(thing)));
  }
  return nodes.filter((id) => {
    const from = net.steps.get(id)?.from ?? id;
    const said = graph.provenance(from);
    const passages = (graph.records.get(from)?.values as { from?: readonly { key: Id }[] } | undefined)?.from;
    return (
      [...said.sources, ...said.via, ...said.scholars].includes(focus) ||
      passages?.some((citation) => citation.key === focus) === true
    );
  });
}

/** Shows the way from the top down to what is in focus, where it is folded away. */
export function unfoldWay(field: Field, growing: Growing, focus: Id): void {
  const { net, universe, answers, others } = field;
  const roots = new Set([...answers, ...others]);
  for (const target of focusNodes(field, focus).slice(0, mostWays)) {
    const way = wayTo(net, universe, roots, target);
    for (const id of way) show(growing, net, id);
    if (way.length === 0) show(growing, net, target);
  }
}

/** What stays in ink about a focus: what it rests on, what rests on it, and what attacks either with its premises. */
export function litBy(net: Net, focus: readonly Id[]): ReadonlySet<Id> {
  const below = reached(focus, (id) => directlyBelow(net, id));
  const above = reached(focus, (id) => [...directlyAbove(net, id), ...(net.steps.get(id)?.against ?? [])]);
  const either = new Set([...below, ...above]);
  const lit = new Set(either);
  for (const id of either)
    for (const step of net.contra(id)) for (const one of [step.id, ...step.because]) lit.add(one);
  return lit;
}

/** The wholes and parts that stay in ink: those that lit labels are of. */
export function litThings(net: Net, lit: Iterable<Id>): ReadonlySet<Id> {
  const things = new Set<Id>();
  for (const id of lit)
    for (const thing of net.things(id)) {
      things.add(thing);
      things.add(wholeOf(net, thing));
    }
  return things;
}

/** What meets a focus directly: the steps for and against it with their premises, what it serves, and its rivals. */
export function neighboursOf(net: Net, focus: Id): ReadonlySet<Id> {
  const steps = [...net.pro(focus), ...net.usedIn(focus), ...net.contra(focus)];
  const own = net.steps.get(focus);
  const near = [
    focus,
    ...[own, ...steps].flatMap((step) =>
      step ? [step.id, ...(step.therefore === null ? step.against : [step.therefore]), ...step.because] : [],
    ),
    ...directlyBelow(net, focus),
    ...directlyAbove(net, focus),
  ];
  return new Set(near);
}
