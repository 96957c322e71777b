import type { Id } from "../../../../base/finding.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import { leavesIn } from "../../../../read/decode/leaf.ts";
import { takenIn } from "../../../../link/edit/new-id.ts";

/** What speaks against another id for a record, as the command line would say it; null where nothing does. */
export function troubleWithName(graph: Graph, id: Id, to: string): Text | null {
  const name = to.trim();
  if (name === id) return null;
  let trouble: Text | null = null;
  leavesIn(graph.settings.quantities).id(name, (said) => {
    trouble = said;
    return null;
  });
  if (trouble !== null) return trouble;
  return takenIn(graph).has(name) ? say`Duplicate id \`${name}\`, expected another name` : null;
}
