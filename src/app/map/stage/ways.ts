import type { Core, NodeCollection, NodeSingular } from "cytoscape";
import type { Id } from "../../../base/finding.ts";
import { mirrored } from "../../words/reader/language.ts";
import type { Way } from "./graph.ts";

/** Where a key leads from a box. */
export type Going = "up" | "down" | "left" | "right" | "first" | "last" | "attack on" | "attack from";

/** The box that a key leads to, or null where there is none that way. */
export function boxAlong(graph: Core, from: Id, going: Going): Id | null {
  const node = graph.getElementById(from);
  if (node.empty() || !node.isNode()) return null;
  const one = node as NodeSingular;
  switch (going) {
    case "up":
      return nearest(one, above(one, "support"));
    case "down":
      return nearest(one, below(one, "support"));
    case "attack on":
      return nearest(one, below(one, "attack"));
    case "attack from":
      return nearest(one, above(one, "attack"));
    default:
      return inRow(graph, one, going);
  }
}

const above = (node: NodeSingular, way: Way): NodeCollection =>
  node.outgoers(`edge[way = "${way}"]`).targets();
const below = (node: NodeSingular, way: Way): NodeCollection =>
  node.incomers(`edge[way = "${way}"]`).sources();

/** Of several boxes the one whose middle is nearest along the ground; the first by id where two are as near. */
function nearest(node: NodeSingular, others: NodeCollection): Id | null {
  const { x } = node.position();
  let best: Id | null = null;
  let least = Infinity;
  for (const other of others.toArray()) {
    const far = Math.abs(other.position().x - x);
    if (far < least || (far === least && best !== null && other.id() < best)) {
      best = other.id();
      least = far;
    }
  }
  return best;
}

function inRow(graph: Core, node: NodeSingular, going: Going): Id | null {
  const row = graph
    .nodes(`[row = ${Number(node.data("row"))}]`)
    .toArray()
    .sort((one, other) => one.position().x - other.position().x);
  const at = row.findIndex((one) => one.id() === node.id());
  const first = mirrored ? row.length - 1 : 0;
  const last = row.length - 1 - first;
  const to = going === "left" ? at - 1 : going === "right" ? at + 1 : going === "first" ? first : last;
  return to === at ? null : (row[to]?.id() ?? null);
}
