import type { Derived } from "../../derive/derived/derived.ts";
import type { Graph } from "../../link/graph.ts";
import { labelText } from "../../link/names/label.ts";
import type { Figure, Panel, Plugin } from "../../plugin.ts";
import { withheldIn } from "../withhold.ts";

/** A derivation's figure, and whether panels were left out of it because something in them is withheld. */
export interface ShownFigure {
  readonly figure: Figure;
  readonly leftOut: boolean;
}

/** The figure of a computed number; where it read something withheld, no panel from which single values could be read. */
export function figureOf(graph: Graph, derived: Derived, plugin: Plugin | undefined): ShownFigure | null {
  const { outcome, run } = derived;
  if (plugin === undefined || run === null || outcome?.status !== "computed") return null;
  const figure = plugin.figure(outcome, run.settings, (id) => labelText(graph, id));
  const panels = readsWithheld(graph, derived) ? figure.panels.flatMap(withoutSingle) : figure.panels;
  return { figure: { ...figure, panels }, leftOut: panels.length < figure.panels.length };
}

/** A panel without anything that tells the size of a single measurement; none is left of one that shows each. */
function withoutSingle(panel: Panel): readonly Panel[] {
  if (panel.shows === "each") return [];
  return [{ ...panel, marks: panel.marks.filter((mark) => mark.mark !== "rule" || mark.each !== true) }];
}

/** Whether a derivation computed on something withheld. */
export function readsWithheld(graph: Graph, { used }: Derived): boolean {
  return used.some(withheldIn(graph));
}
