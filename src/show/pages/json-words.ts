import type { Graph } from "../../link/graph.ts";
import { withheldIn } from "../withhold.ts";
import { joined, linkTo, words } from "./pieces.ts";
import type { FieldRow, Piece } from "./pieces.ts";

/** A free map in words, a row for each of its keys: `values: of inner ring, outer ring; dimension diameter`. */
export function jsonRows(graph: Graph, value: unknown): readonly FieldRow[] {
  if (!isMap(value)) return [{ label: null, pieces: jsonPieces(graph, value) }];
  return Object.entries(value).map(([key, one]) => ({
    label: key.replace(/-/g, " "),
    pieces: jsonPieces(graph, one),
  }));
}

/** Maps and lists in words, with names of records leading to them. */
export function jsonPieces(graph: Graph, value: unknown): readonly Piece[] {
  if (Array.isArray(value)) {
    const nested = value.some(Array.isArray);
    return joined(
      value.map((one: unknown) => jsonPieces(graph, one)),
      nested ? "; " : ", ",
    );
  }
  if (isMap(value)) {
    return joined(
      Object.entries(value).map(([key, one]) => [
        words(`${key.replace(/-/g, " ")} `),
        ...jsonPieces(graph, one),
      ]),
      "; ",
    );
  }
  const text = value === true ? "yes" : value === false ? "no" : String(value);
  if (withheldIn(graph)(text)) return [];
  if (graph.records.has(text) || graph.sources.has(text)) return [linkTo(graph, text)];
  return [words(text)];
}

function isMap(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
