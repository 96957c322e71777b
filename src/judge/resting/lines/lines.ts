import type { Id } from "../../../base/finding.ts";
import { ofThings } from "../../../derive/lens.ts";
import type { Graph } from "../../../link/graph.ts";
import { evaluationOf } from "../../explain/evaluation.ts";
import type { Evaluation } from "../../explain/evaluation.ts";
import type { Judgement } from "../../judge.ts";
import { independenceOf } from "./independence.ts";

/** The lines that lead to a claim that stands. */
export interface Lines {
  /** As many as share nothing but the claim, each from the thing or the report up. */
  readonly paths: readonly (readonly Id[])[];
  /** Things and reports from which anything leads to it. */
  readonly roots: readonly Id[];
  /** What every line passes through. */
  readonly singlePoints: readonly Id[];
  /** Claims that hold each other up in a circle among what argues for it. */
  readonly circles: readonly (readonly Id[])[];
  /** Pairs of sources on different lines that have an author in common. */
  readonly sameAuthor: readonly (readonly [source: Id, other: Id, scholar: Id])[];
}

/**
 * The independent lines to a claim, along what stands: premises to conclusions, and below them where each was said and
 * of which thing. A root is the thing itself, else the report it is known from; what repeats another comes from that.
 */
export function linesTo(graph: Graph, judgement: Judgement, claim: Id): Lines | null {
  if (judgement.standings.get(claim) !== "stands") return null;
  const edges: (readonly [Id, Id])[] = [];
  const roots = new Set<Id>();
  const evaluation = evaluationOf(judgement);
  // What is met while these are gone through is gone through in its turn.
  const met = new Set<Id>([claim]);
  for (const at of met) {
    const used = usedFor(evaluation, at);
    for (const one of used) {
      edges.push([one, at]);
      met.add(one);
    }
    if (used.length > 0 || graph.records.get(at)?.list === "claims") continue;
    const origin = originOf(graph, at);
    roots.add(origin[0] ?? at);
    [...origin, at].forEach((one, place, chain) => {
      const before = chain[place - 1];
      if (before !== undefined) edges.push([before, one]);
    });
  }
  const { paths, rootsReaching, singlePoints, circles } = independenceOf({
    edges,
    roots: [...roots],
    goal: claim,
  });
  return { paths, roots: rootsReaching, singlePoints, circles, sameAuthor: sameAuthorOf(graph, paths) };
}

/** What is used for a claim or a number, as far as it stands: premises of working arguments, inputs of the number. */
function usedFor(evaluation: Evaluation, id: Id): readonly Id[] {
  const stands = (one: Id): boolean => evaluation.standingOf(one) === "stands";
  const working = evaluation.argumentsFor(id).filter((argument) => stands(argument.id));
  const premises = working.flatMap((argument) => {
    const needs = evaluation.needsOf(argument.id);
    return needs.length === 0 && argument.from !== argument.id ? [argument.from] : needs;
  });
  const inputs = working.length === 0 && !evaluation.argument(id) ? evaluation.needsOf(id) : [];
  return [...new Set([...premises, ...inputs])].filter((one) => stands(one) && !evaluation.argument(one));
}

/** Where a piece of evidence came from, the first first: the thing or what it copies, the reports, that which was read. */
function originOf(graph: Graph, id: Id): readonly Id[] {
  const record = graph.records.get(id);
  if (!record) return [];
  const { sources, via } = graph.provenance(id);
  const copied = record.list === "measurements" ? record.values.repeats : undefined;
  const first =
    copied === undefined
      ? ofThings(record)
      : [...(graph.records.has(copied) ? originOf(graph, copied).slice(0, 1) : []), copied];
  return [...new Set([...first, ...sources, ...via])].filter((one) => one !== id);
}

/** Sources that stand on different lines and have an author in common: one may copy the other. */
function sameAuthorOf(graph: Graph, paths: readonly (readonly Id[])[]): Lines["sameAuthor"] {
  const found = new Map<string, readonly [Id, Id, Id]>();
  paths.forEach((path, place) => {
    const sources = path.filter((id) => graph.sources.has(id));
    for (const other of paths
      .slice(place + 1)
      .flat()
      .filter((id) => graph.sources.has(id))) {
      for (const source of sources) {
        const shared = graph.authorsOf(source).find((scholar) => graph.authorsOf(other).includes(scholar));
        if (shared !== undefined && source !== other)
          found.set(`${source}\n${other}`, [source, other, shared]);
      }
    }
  });
  return [...found.values()];
}
