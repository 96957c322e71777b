import { byText } from "../../../base/order.ts";
import { rowsOf } from "../../solver/program.ts";
import { circlesOf } from "../../solver/strong-components.ts";
import { disjointPaths, reaching, smallestCuts } from "./paths.ts";
import type { Ways } from "./paths.ts";

/** What is used for what, by name. */
export interface Uses {
  readonly edges: readonly (readonly [from: string, to: string])[];
  readonly roots: readonly string[];
  readonly goal: string;
}

/** How independent the lines are that lead to a goal (methods I). */
export interface Independence {
  /** As many ways from distinct roots as share nothing but the goal, each from its root up. */
  readonly paths: readonly (readonly string[])[];
  /** Roots that lead to the goal. */
  readonly rootsReaching: readonly string[];
  /** What every line passes through. */
  readonly singlePoints: readonly string[];
  /** The smallest sets without which nothing leads to the goal; none where these are larger than three. */
  readonly minimumCuts: readonly (readonly string[])[];
  /** What leans on itself. */
  readonly circles: readonly (readonly string[])[];
}

/** The independent lines to a goal: an upper bound, since what needs two things together counts each as a way of its own. */
export function independenceOf({ edges, roots, goal }: Uses): Independence {
  const names = [...new Set([goal, ...roots, ...edges.flat()])];
  const places = new Map(names.map((name, place) => [name, place]));
  const placeOf = (name: string): number => places.get(name) ?? 0;
  const next = names.map((): number[] => []);
  for (const [from, to] of edges) next[placeOf(from)]?.push(placeOf(to));
  const ways: Ways = { next, roots: roots.map(placeOf), goal: 0 };
  const named = (those: Iterable<number>): readonly string[] =>
    [...those].map((place) => names[place] ?? "").sort(byText);
  const paths = disjointPaths(ways);
  const cuts = smallestCuts(ways, paths).map(named).toSorted(bySet);
  const leading = roots.filter((root) => reaching({ ...ways, roots: [placeOf(root)] }).has(0));
  return {
    paths: paths.map((path) => path.map((place) => names[place] ?? "")).toSorted(bySet),
    rootsReaching: leading.toSorted(byText),
    singlePoints: paths.length === 1 ? cuts.flat() : [],
    minimumCuts: cuts,
    circles: circlesIn(next).map(named).toSorted(bySet),
  };
}

function bySet(a: readonly string[], b: readonly string[]): number {
  return byText(a.join("\n"), b.join("\n"));
}

function circlesIn(next: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const circles = new Map<number, number[]>();
  circlesOf(rowsOf(next)).forEach((circle, vertex) => {
    if (circle >= 0) circles.set(circle, [...(circles.get(circle) ?? []), vertex]);
  });
  return [...circles.values()];
}
