import type { Id } from "../../../base/finding.ts";
import type { Graph } from "../../../link/graph.ts";
import { rowsOf } from "../../solver/program.ts";
import { circlesOf } from "../../solver/strong-components.ts";
import type { Evaluation } from "../evaluation.ts";
import { residueOf } from "./residue.ts";
import type { Residue } from "./residue.ts";
import { settling } from "./settle.ts";
import type { Outcome } from "./settle.ts";

/** How far the search for what would settle it goes: rules looked at in all. */
export const settlingEffort = 6_000_000;

/** Records each of which decides the others, round and round: a strongly connected part of what is open. */
export interface Circle {
  readonly members: readonly Id[];
  /** It hangs on no other contradiction. */
  readonly deepest: boolean;
}

/** A record of a circle, and what would become of the goal if it held, and if it did not. */
export interface Settler {
  readonly id: Id;
  readonly held: Outcome;
  readonly fell: Outcome;
}

/** The contradiction that something open hangs on. */
export interface Core {
  /** The deepest first, then the nearest. */
  readonly circles: readonly Circle[];
  /** Members that would decide it alone: those that do either way first, evidence before claims before arguments, then by id. */
  readonly settlers: readonly Settler[];
  /** Members that were not tried, the effort having run out. */
  readonly untried: number;
}

/** The strongly connected parts below something open, and which single member would settle it. */
export function coreOf(graph: Graph, evaluation: Evaluation, id: Id, effort = settlingEffort): Core {
  const { compiled, values, rulesFor } = evaluation;
  const { ids } = compiled;
  const goal = compiled.atoms.get(id);
  if (goal === undefined) throw new Error("coreOf: nothing of that name is judged");
  const residue = residueOf(compiled.program, values, goal, rulesFor);
  const idOf = (atom: number): Id => ids[residue.atoms[atom] ?? -1] ?? "";
  const named = (atom: number): boolean => !idOf(atom).startsWith("silence: ");
  const groups = circleGroups(residue);
  const candidates = groups.flatMap((group) => group.atoms).filter((atom) => atom !== 0 && named(atom));
  const affordable = Math.max(1, Math.floor(effort / (2 * (residue.rules.length + residue.atoms.length))));
  const settles = settling(residue);
  const settlers = candidates
    .slice(0, affordable)
    .map((atom): Settler => ({ id: idOf(atom), ...settles(atom) }))
    .filter(({ held, fell }) => held !== "open" || fell !== "open");
  return {
    circles: groups.map(({ atoms, deepest }) => ({ members: atoms.filter(named).map(idOf), deepest })),
    settlers: settlers.toSorted((a, b) => rank(graph, a) - rank(graph, b) || (a.id < b.id ? -1 : 1)),
    untried: Math.max(0, candidates.length - affordable),
  };
}

interface Group {
  readonly atoms: number[];
  readonly deepest: boolean;
}

function circleGroups({ atoms, leansOn }: Residue): readonly Group[] {
  const circle = circlesOf(rowsOf(leansOn));
  const groups = new Map<number, { atoms: number[]; deepest: boolean }>();
  atoms.forEach((_, atom) => {
    const at = circle[atom] ?? -1;
    if (at < 0) return;
    const group = groups.get(at) ?? { atoms: [], deepest: true };
    groups.set(at, group);
    group.atoms.push(atom);
    if (leansOn[atom]?.some((other) => circle[other] !== at)) group.deepest = false;
  });
  return [...groups.values()].sort((a, b) => Number(b.deepest) - Number(a.deepest));
}

const kinds = ["observations", "measurements", "relations", "derivations", "positions", "claims"];

/** Deciding both ways comes first; then what can be looked at again comes before what can only be argued. */
function rank(graph: Graph, { id, held, fell }: Settler): number {
  const kind = kinds.indexOf(graph.records.get(id)?.list ?? "");
  const both = held !== "open" && fell !== "open";
  return (both ? 0 : 100) + (kind < 0 ? kinds.length : kind < 4 ? 0 : kind);
}
