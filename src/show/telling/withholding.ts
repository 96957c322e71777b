import { say } from "../../base/text/said/said.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Graph } from "../../link/graph.ts";
import { placeWithheld } from "../../link/withheld.ts";

/** What is kept out of everything that is told of a corpus, in sentences that name none of it; nothing where nothing is. */
export function withholdingSaid(graph: Graph): readonly Text[] {
  const artefacts = graph.list("artefacts");
  const places = artefacts.some(
    ({ id, values }) =>
      values.coordinates !== undefined || (placeWithheld(graph, id) && values["found-at"] !== undefined),
  );
  const pictures = graph.list("images").some(({ values }) => values.publish !== true);
  return [
    ...(graph.settings.withhold.length > 0
      ? [say`Some records are withheld: what stands follows from them too, and nothing here names them.`]
      : []),
    ...(places ? [say`Exact places of finds are withheld.`] : []),
    ...(pictures ? [say`Pictures that may not be published are left out.`] : []),
  ];
}
