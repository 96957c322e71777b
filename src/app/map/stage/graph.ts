import cytoscape from "cytoscape";
import type { Core, ElementDefinition } from "cytoscape";
import type { Id } from "../../../base/finding.ts";
import type { Route, Scene } from "../../../show/map/scene.ts";

/** How an edge of the graph leads: from what supports, or from what attacks. */
export type Way = "support" | "attack";

/** The graph of a scene: boxes as nodes in their places, lines and attacks as edges; nothing of it is seen. */
export function graphIn(host: HTMLElement | null): Core {
  keepStylesOut();
  const graph = cytoscape({
    ...(host ? { container: host } : { headless: true, styleEnabled: false }),
    // The pictures are drawn on a canvas of our own: these stay empty, and small.
    pixelRatio: 1,
    boxSelectionEnabled: false,
    autoungrabify: true,
    selectionType: "single",
    style: [
      {
        selector: "node",
        style: {
          shape: "rectangle",
          width: "data(width)",
          height: "data(height)",
          opacity: 0,
          "overlay-opacity": 0,
        },
      },
      { selector: "edge", style: { display: "none" } },
      { selector: "core", style: { "active-bg-opacity": 0 } },
    ] as cytoscape.StylesheetStyle[],
    layout: { name: "preset" },
  });
  keepUndrawn(graph);
  return graph;
}

/**
 * Has the library draw none of its elements. They cannot be seen, since the picture is ours, and yet it keeps images of
 * them all and puts these together anew in each frame, which takes several times as long as the picture. Where a later
 * version draws by other names, it does so again, to no other harm.
 */
function keepUndrawn(graph: Core): void {
  const renderer = (graph as Core & { renderer: () => Record<string, unknown> }).renderer();
  for (const name of ["drawLayeredElements", "drawCachedElements", "drawCachedNodes"])
    if (typeof renderer[name] === "function") renderer[name] = () => undefined;
}

/** The library writes a style element into the page unless one is there, which the policy refuses; map.css has its rule. */
function keepStylesOut(): void {
  const name = "__________cytoscape_stylesheet";
  if (typeof document === "undefined" || document.getElementById(name)) return;
  const kept = document.createElement("meta");
  kept.id = name;
  document.head.append(kept);
}

/** Puts a scene into the graph; what is there already stays and goes to its place. */
export function fill(graph: Core, scene: Scene): void {
  graph.batch(() => {
    const boxes = new Map(scene.boxes.map((box) => [box.id, box]));
    graph.edges().remove();
    for (const node of graph.nodes().toArray()) {
      const box = boxes.get(node.id());
      if (!box) graph.remove(node);
      else {
        node.data({ width: box.width, height: box.height, row: box.row });
        node.position({ x: box.x + box.width / 2, y: box.y + box.height / 2 });
        boxes.delete(box.id);
      }
    }
    graph.add([
      ...[...boxes.values()].map((box): ElementDefinition => ({
        group: "nodes",
        data: { id: box.id, width: box.width, height: box.height, row: box.row },
        position: { x: box.x + box.width / 2, y: box.y + box.height / 2 },
        pannable: true,
      })),
      ...tiesOf(scene).map((tie): ElementDefinition => ({
        group: "edges",
        data: { id: nameOf(tie), ...tie },
      })),
    ]);
  });
}

/** A way from box to box: what supports or attacks, and what is supported or attacked. */
export interface Tie {
  readonly source: Id;
  readonly target: Id;
  readonly way: Way;
}

/** Lines and attacks as ties, each once; where a line is cut, its mark stands for the box it names. */
export function tiesOf(scene: Scene): readonly Tie[] {
  const beyond = new Map<Id, Id>();
  for (const { id, look } of scene.boxes) if (look.as === "mark") beyond.set(id, look.to);
  const known = new Set(scene.boxes.map((box) => box.id));
  const found = new Map<string, Tie>();
  const add = (route: Route, way: Way): void => {
    const source = beyond.get(route.from) ?? route.from;
    const target = beyond.get(route.to) ?? route.to;
    if (source === target || !known.has(source) || !known.has(target)) return;
    const tie = { source, target, way };
    found.set(nameOf(tie), tie);
  };
  // Stubs of rivals and of measurements in conflict are no lines.
  for (const route of scene.routes) if (route.kind === undefined) add(route, "support");
  for (const route of scene.attacks) add(route, "attack");
  return [...found.values()];
}

/** Ids of edges and nodes share one space; a line break is in no record's id. */
const nameOf = ({ source, target, way }: Tie): string => `${way}\n${source}\n${target}`;
