import type { Id } from "../../base/finding.ts";
import type { Judgement } from "../../judge/judge.ts";
import type { Graph } from "../../link/graph.ts";
import { listedUnder, withheldIn } from "../withhold.ts";

/** Claims that belong to one question: its answers first, then the claims that bear on them; null for the rest. */
export interface Group {
  readonly question: Id | null;
  readonly claims: readonly Id[];
}

const known = new WeakMap<Judgement, { readonly graph: Graph; readonly groups: readonly Group[] }>();

/** The claims of a corpus by question, rivals side by side; a claim stands with the first question it bears on. */
export function claimsByQuestion(graph: Graph, judgement: Judgement): readonly Group[] {
  const before = known.get(judgement);
  if (before?.graph === graph) return before.groups;
  const groups = groupsIn(graph, judgement);
  known.set(judgement, { graph, groups });
  return groups;
}

function groupsIn(graph: Graph, judgement: Judgement): readonly Group[] {
  const withheld = withheldIn(graph);
  // A claim may be named in print before the source that words it: then it is listed, and nothing is under it yet.
  const shown = listedUnder({ graph, judgement });
  const questions = graph.list("questions").filter(({ id }) => !withheld(id));
  // An answer stands with each question it answers, however much it bears on another.
  const placed = new Set(questions.flatMap(({ values }) => values.answers));
  const groups = questions.flatMap(({ id, values }): readonly Group[] => {
    const below = bearingOn(graph, judgement, values.answers, placed);
    const claims = [...new Set(values.answers), ...rivalsTogether(graph, below)].filter(shown);
    return claims.length > 0 ? [{ question: id, claims }] : [];
  });
  const rest = graph.list("claims").flatMap(({ id }) => (placed.has(id) || !shown(id) ? [] : [id]));
  return rest.length > 0 ? [...groups, { question: null, claims: rivalsTogether(graph, rest) }] : groups;
}

/** Claims not yet placed that are premises on the way to others, or to what is against them; nearest first. */
function bearingOn(
  graph: Graph,
  { compiled }: Judgement,
  answers: readonly Id[],
  placed: Set<Id>,
): readonly Id[] {
  const found: Id[] = [];
  const seen = new Set<Id>(answers);
  const waiting = [...answers];
  for (const next of waiting) {
    const places = [...(compiled.pro.get(next) ?? []), ...(compiled.contra.get(next) ?? [])];
    for (const place of places) {
      const argument = compiled.arguments[place];
      if (!argument) continue;
      for (const id of [argument.id, ...argument.because]) reach(id);
    }
    for (const rival of graph.rivalsOf(next)) reach(rival);
  }
  return found;

  function reach(id: Id): void {
    if (seen.has(id)) return;
    seen.add(id);
    waiting.push(id);
    if (graph.records.get(id)?.list !== "claims" || placed.has(id)) return;
    placed.add(id);
    found.push(id);
  }
}

/** The same claims, each followed by those of its rivals that are among them. */
export function rivalsTogether(graph: Graph, claims: readonly Id[]): readonly Id[] {
  const left = new Set(claims);
  const ordered: Id[] = [];
  const put = (claim: Id): void => {
    if (!left.delete(claim)) return;
    ordered.push(claim);
    for (const rival of graph.rivalsOf(claim)) put(rival);
  };
  claims.forEach(put);
  return ordered;
}
