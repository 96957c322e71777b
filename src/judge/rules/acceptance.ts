import type { Finding, Id, Level } from "../../base/finding.ts";
import type { Graph } from "../../link/graph.ts";
import { withheldIn } from "../../link/withheld.ts";
import type { Acceptance } from "../../read/settings/settings.ts";

/** A finding at the level the scholar gave its rule, or null when it is off; errors stay errors. */
export function levelled(finding: Finding, levels: ReadonlyMap<string, Level | "off">): Finding | null {
  const level = levels.get(finding.rule);
  if (level === undefined || finding.level === "error") return finding;
  return level === "off" ? null : { ...finding, level };
}

/** Whether an acceptance is of a finding: the same rule, and about all that the acceptance names. */
export function covers({ rule, about }: Acceptance, finding: Finding): boolean {
  return rule === finding.rule && about.every((id) => finding.about.includes(id));
}

/**
 * Tells apart what may share no finding though it shares its cause: what different acceptances of a rule name, so that
 * a list never takes in what one of them does not; and what is withheld, so that it hides nothing else.
 */
export function apart(graph: Graph, rule: string): (id: Id, ...beside: readonly Id[]) => string {
  const those = graph.settings.accept.filter((one) => one.rule === rule);
  const withheld = withheldIn(graph);
  return (id, ...beside) =>
    `${those.findIndex(({ about }) => about.includes(id))}${[id, ...beside].some(withheld) ? " withheld" : ""}`;
}

/**
 * What is found among the records of a group that are not withheld, which may then be told; and in the whole of it,
 * where that takes in something withheld.
 */
export function foundIn<T extends { readonly id: Id }, F>(
  graph: Graph,
  group: readonly T[],
  find: (some: readonly T[]) => readonly F[],
  idsOf: (found: F) => readonly Id[],
): readonly F[] {
  const withheld = withheldIn(graph);
  const open = group.filter(({ id }) => !withheld(id));
  if (open.length === group.length) return find(group);
  return [...find(open), ...find(group).filter((one) => idsOf(one).some(withheld))];
}

/** A finding with the scholar's reason for living with it; errors stay errors. */
export function accepted(finding: Finding, acceptances: readonly Acceptance[]): Finding {
  const why = acceptances.find((one) => covers(one, finding))?.why;
  return why === undefined || finding.level === "error" ? finding : { ...finding, accepted: why };
}
