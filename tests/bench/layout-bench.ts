import ELK, { type ElkExtendedEdge, type ElkNode } from "elkjs/lib/elk.bundled.js";
import { median } from "../../src/base/numeric/sample.ts";
import { layOut } from "../../src/show/map/layout/layout.ts";
import type { Point, Scene, Section } from "../../src/show/map/scene.ts";
import { sectionOf } from "../oracle/random-section.ts";

/** One line of the bench: our figure, the peer's in the same run, their ratio and what it is to reach. */
export interface BenchRow {
  readonly goal: string;
  readonly what: string;
  readonly ours: number;
  readonly peer: number;
  readonly ratio: number;
  readonly goalRatio: number;
  readonly unit: string;
}

/** Nodes of the section, and how often both are laid out, one after the other. */
const nodes = 2000;
const runs = 3;

/** A dispute in six ranks: each claim leans on one to three records mostly right below, one line in ten leads further, some attacks. */
const shape = { seed: 7, ranks: 6, attacks: 10, rivals: 0, circles: 0, long: 10, scatter: 0.005 };

/** The section of 2,000 nodes against elkjs's layered layout of the same nodes and lines: time, and crossings of what is drawn. */
export default async function layoutBench(): Promise<readonly BenchRow[]> {
  const section = sectionOf({ ...shape, boxes: nodes });
  const elk = new ELK();
  const [ours, peer]: [number[], number[]] = [[], []];
  let scene = layOut(section);
  let drawn: ElkNode | null = null;
  for (let run = 0; run < runs; run++) {
    let start = performance.now();
    scene = layOut(section);
    ours.push(performance.now() - start);
    const graph = graphOf(section);
    start = performance.now();
    drawn = await elk.layout(graph);
    peer.push(performance.now() - start);
  }
  const own = crossingsOf([...scene.routes, ...scene.attacks].map(({ points }) => points));
  const edges = drawn?.edges ?? [];
  const others = crossingsOf(edges.map(pointsOf));
  const whole = wholeIn(section, scene);
  const sameLines = crossingsOf(edges.filter(({ id }) => whole.has(id)).map(pointsOf));
  const count = section.lines.length + section.attacks.length;
  const what = `section of ${section.boxes.length} nodes and ${count} lines`;
  return [
    row(`${what}: time`, median(ours), median(peer), 0.15, "ms"),
    row(`${what}: crossings`, own, others, 1.2, ""),
    row(`${what}: crossings without the ${count - whole.size} cut here`, own, sameLines, 1.2, ""),
  ];
}

/** What the scene draws from end to end, by the names of the peer's edges. */
function wholeIn({ lines, attacks }: Section, scene: Scene): ReadonlySet<string> {
  const routes = new Set(
    [...scene.routes, ...scene.attacks].map(({ line, from, to }) => `${line} ${from} ${to}`),
  );
  return new Set([
    ...lines
      .filter(({ id, from, to }) => routes.has(`${id} ${from.box} ${to.box}`))
      .map(({ id }) => `line ${id}`),
    ...attacks
      .filter(({ id, from, to }) => routes.has(`${id} ${from} ${to}`))
      .map(({ id }) => `attack ${id}`),
  ]);
}

function row(what: string, ours: number, peer: number, goalRatio: number, unit: string): BenchRow {
  return { goal: "7", what: `${what} (elkjs layered)`, ours, peer, ratio: ours / peer, goalRatio, unit };
}

function graphOf({ boxes, lines, attacks }: Section): ElkNode {
  const ends = [
    ...lines.map(({ id, from, to }) => ({ id: `line ${id}`, from: from.box, to: to.box })),
    ...attacks.map(({ id, from, to }) => ({ id: `attack ${id}`, from, to })),
  ];
  return {
    id: "section",
    layoutOptions: { "elk.algorithm": "layered", "elk.direction": "UP", "elk.edgeRouting": "ORTHOGONAL" },
    children: boxes.map(({ id, width, height }) => ({ id, width, height })),
    edges: ends.map(({ id, from, to }) => ({ id, sources: [from], targets: [to] })),
  };
}

function pointsOf({ sections = [] }: ElkExtendedEdge): readonly Point[] {
  return sections.flatMap(({ startPoint, bendPoints = [], endPoint }) => [
    startPoint,
    ...bendPoints,
    endPoint,
  ]);
}

interface Stretch {
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

/** How often level stretches of polylines cross upright ones: each properly, not where they touch. */
function crossingsOf(ways: readonly (readonly Point[])[]): number {
  const levels: Stretch[] = [];
  const uprights: Stretch[] = [];
  for (const points of ways) {
    for (const [n, b] of points.slice(1).entries()) {
      const a = points[n]!;
      const isUpright = Math.abs(a.x - b.x) < Math.abs(a.y - b.y);
      const [at, from, to] = isUpright ? [a.x, a.y, b.y] : [a.y, a.x, b.x];
      (isUpright ? uprights : levels).push({ at, from: Math.min(from, to), to: Math.max(from, to) });
    }
  }
  uprights.sort((a, b) => a.at - b.at);
  let count = 0;
  for (const level of levels) {
    for (let next = firstAfter(uprights, level.from); (uprights[next]?.at ?? Infinity) < level.to; next++) {
      const { from, to } = uprights[next]!;
      if (from < level.at && level.at < to) count++;
    }
  }
  return count;
}

function firstAfter(sorted: readonly Stretch[], x: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const half = (low + high) >> 1;
    if (sorted[half]!.at <= x) low = half + 1;
    else high = half;
  }
  return low;
}
