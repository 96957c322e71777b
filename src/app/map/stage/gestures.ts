import type { Core, NodeSingular, Position } from "cytoscape";

/** What wheel and hover do on the map. */
export interface Moves {
  /** Moves the view; says whether there was anywhere to go. */
  readonly by: (move: Position) => boolean;
  readonly zoom: (factor: number, about: Position) => void;
}

/** Lines of a wheel that counts in lines, in px. */
const line = 16;

/** The wheel pans, with Ctrl it zooms at the pointer; ahead of the graph, whose own wheel would zoom. */
export function wheelOn(host: HTMLElement, moves: Moves): () => void {
  const onWheel = (event: WheelEvent): void => {
    event.stopImmediatePropagation();
    const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? line : 1;
    if (event.ctrlKey || event.metaKey) {
      const box = host.getBoundingClientRect();
      const turned = Math.max(-100, Math.min(100, event.deltaY * unit));
      moves.zoom(Math.exp(-turned / 250), { x: event.clientX - box.left, y: event.clientY - box.top });
      event.preventDefault();
      return;
    }
    const sideways = event.shiftKey && event.deltaX === 0;
    const [across, down] = sideways ? [event.deltaY, 0] : [event.deltaX, event.deltaY];
    // At the end of the map the page scrolls on.
    if (moves.by({ x: -across * unit, y: -down * unit })) event.preventDefault();
  };
  host.addEventListener("wheel", onWheel, { capture: true, passive: false });
  return () => host.removeEventListener("wheel", onWheel, { capture: true });
}

/** Marks the place while the pointer is on something that can be taken, and tells of taps on boxes. */
export function tapsOn(
  graph: Core,
  host: HTMLElement,
  on: {
    readonly select: (id: string | null) => void;
    readonly tap: (id: string, at: Position) => void;
    readonly open: (id: string) => void;
  },
): void {
  graph.on("mouseover", "node", () => host.classList.add("on-box"));
  graph.on("mouseout", "node", () => host.classList.remove("on-box"));
  graph.on("tap", (event) => {
    const target = event.target as Core | NodeSingular;
    if (target === graph) on.select(null);
    else {
      const node = target as NodeSingular;
      // The second of two taps opens the sheet: it is no tap of its own.
      if ((event.originalEvent as MouseEvent | undefined)?.detail === 2) return;
      const middle = node.position();
      on.tap(node.id(), {
        x: event.position.x - middle.x + node.width() / 2,
        y: event.position.y - middle.y + node.height() / 2,
      });
    }
  });
  graph.on("dbltap", "node", (event) => on.open((event.target as NodeSingular).id()));
}
