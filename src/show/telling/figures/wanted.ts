import type { Id } from "../../../base/finding.ts";
import { nearest } from "../../../base/nearest.ts";
import { coded, row, say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import type { Graph } from "../../../link/graph.ts";
import { portable } from "../../../read/source-file.ts";
import type { Reported } from "../../report/report.ts";
import { shownUnder, withheldIn } from "../../withhold.ts";

/** A figure that is asked for; its name is that of its file, without the ending. */
export type Wanted =
  | { readonly is: "computed"; readonly name: string; readonly id: Id }
  /** Things side by side at one scale; of one alone, its parts with it. */
  | { readonly is: "drawing"; readonly name: string; readonly ids: readonly Id[] }
  /** The map of a question. */
  | { readonly is: "question"; readonly name: string; readonly id: Id }
  /** The map around a record, so many steps of reasoning far; null: all of it. */
  | { readonly is: "around"; readonly name: string; readonly id: Id; readonly steps: number | null }
  | { readonly is: "image"; readonly name: string; readonly id: Id };

/** Figures by what they are asked for as: `ring-unit`, `ring-a/post-07+ring-a/post-08`, `map:what-was-it`, `around:antler-marks:2`. */
export function wantedFigures(
  model: Reported,
  asked: readonly string[],
): readonly Wanted[] | { readonly refused: Text } {
  if (asked.length === 0) return allComputed(model);
  const found: Wanted[] = [];
  for (const one of asked) {
    const wanted = wantedIn(model.graph, one);
    if ("refused" in wanted) return wanted;
    if (!found.some(({ name }) => name === wanted.name)) found.push(wanted);
  }
  return found;
}

/** Every number that was computed and may be shown. */
function allComputed(model: Reported): readonly Wanted[] {
  const shown = shownUnder(model);
  return model.graph
    .list("derivations")
    .filter(({ id }) => shown(id) && model.derivations.byId.get(id)?.status === "computed")
    .map(({ id }) => ({ is: "computed", name: nameOf(id), id }));
}

function wantedIn(graph: Graph, asked: string): Wanted | { readonly refused: Text } {
  const [first = "", second, third, ...more] = asked.split(":");
  if (second === undefined) {
    const ids = first.split("+");
    const unknown = ids.find((id) => !isKnown(graph, id));
    if (unknown !== undefined) return notKnown(graph, unknown, null);
    const [id = ""] = ids;
    return ids.length > 1 ? beside(graph, ids) : figureOfRecord(graph, id);
  }
  if (!isKnown(graph, second) || more.length > 0)
    return notKnown(graph, more.length > 0 ? asked : second, null);
  if (first === "map") {
    if (third !== undefined || graph.records.get(second)?.list !== "questions")
      return notKnown(graph, second, "questions");
    return { is: "question", name: nameOf(`map-${second}`), id: second };
  }
  if (first !== "around")
    return {
      refused: say`Unknown figure \`${asked}\`, expected an id, \`${"map:QUESTION"}\` or \`${"around:ID:STEPS"}\``,
    };
  if (third !== undefined && !/^[1-9]$/.test(third))
    return { refused: say`Unexpected number of steps \`${third}\`, expected one from 1 to 9` };
  const steps = third === undefined ? null : Number(third);
  return { is: "around", name: nameOf([first, second, third ?? ""].join("-")), id: second, steps };
}

/** The figure that a record by itself stands for. */
function figureOfRecord(graph: Graph, id: Id): Wanted | { readonly refused: Text } {
  switch (graph.records.get(id)?.list) {
    case "derivations":
      return { is: "computed", name: nameOf(id), id };
    case "artefacts":
      return { is: "drawing", name: nameOf(id), ids: [id] };
    case "questions":
      return { is: "question", name: nameOf(`map-${id}`), id };
    case "images":
      return { is: "image", name: nameOf(id), id };
    default:
      return { is: "around", name: nameOf(`around-${id}`), id, steps: null };
  }
}

function beside(graph: Graph, ids: readonly Id[]): Wanted | { readonly refused: Text } {
  const other = ids.find((id) => graph.records.get(id)?.list !== "artefacts");
  if (other !== undefined) return notKnown(graph, other, "artefacts");
  return { is: "drawing", name: nameOf(ids.join("-")), ids };
}

function isKnown(graph: Graph, id: Id): boolean {
  return (graph.records.has(id) || graph.sources.has(id)) && !withheldIn(graph)(id);
}

function notKnown(
  graph: Graph,
  id: string,
  list: "questions" | "artefacts" | null,
): { readonly refused: Text } {
  const withheld = withheldIn(graph);
  const all = list === null ? [...graph.records.keys()] : graph.list(list).map((one) => one.id);
  const names = all.filter((one) => !withheld(one));
  const near = nearest(id, names);
  const hint = near.length > 0 ? near : names.slice(0, 5);
  return hint.length > 0
    ? { refused: say`Unknown figure \`${id}\`, expected ${row(hint.map(coded), "or")}` }
    : { refused: say`Unknown figure \`${id}\`, expected something that the corpus names` };
}

/** A name for a file: letters, digits and hyphens. */
function nameOf(id: string): string {
  return portable(id.replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-|-$/g, ""));
}
