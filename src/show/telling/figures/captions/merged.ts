import type { Id } from "../../../../base/finding.ts";
import { row, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import { labelText } from "../../../../link/names/label.ts";
import { takingOf } from "../../../artefacts/taken.ts";
import type { Reported } from "../../../report/report.ts";

/** The dimensions of things that are drawn as the mean of several readings, with the readings: a mean of two that do not agree is what nobody measured. */
export function mergedSaid(model: Reported, things: readonly Id[]): readonly Text[] {
  const { graph } = model;
  const readingOf = (id: Id): readonly Text[] => {
    const record = graph.records.get(id);
    if (record?.list !== "measurements") return [];
    const { text } = record.values.value;
    const [source] = graph.provenance(id).sources;
    return [source === undefined ? text : say`${text} (${labelText(graph, source)})`];
  };
  return things.flatMap((thing) =>
    takingOf(model, thing, false)
      .taken.filter(({ dimension, ids }) => ids.length > 1 && sidesOf(graph, thing).includes(dimension))
      .map(
        ({ dimension, ids }) =>
          say`Drawn by the mean of several readings, ${dimension} of ${labelText(graph, thing)}: ${row(ids.flatMap(readingOf))}.`,
      ),
  );
}

/** The dimensions that a thing is drawn by, in their own names. */
function sidesOf(graph: Graph, thing: Id): readonly string[] {
  const record = graph.records.get(thing);
  if (record?.list !== "artefacts") return [];
  const { circle = [], rectangle = [], profile = [] } = record.values.shape ?? {};
  return [...circle, ...rectangle, ...profile].map((name) => graph.dimensionName(name));
}
