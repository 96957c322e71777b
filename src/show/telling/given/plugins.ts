import type { Graph } from "../../../link/graph.ts";
import { withheldIn } from "../../../link/withheld.ts";
import type { PluginFile } from "../../../read/source-file.ts";

/**
 * The plug-ins that came with the corpus, without which its numbers could not be computed again. They are handed on as they are,
 * unless their text has the id of something withheld in it.
 */
export function pluginsGiven(graph: Graph): readonly PluginFile[] {
  const withheld = withheldIn(graph);
  const ids = [...graph.records.keys(), ...graph.sources.keys(), ...graph.settings.withhold].filter(withheld);
  return graph.pluginFiles.filter(({ text }) => !ids.some((id) => text.includes(id)));
}
