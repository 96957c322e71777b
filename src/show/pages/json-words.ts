import type { Graph } from "../../link/graph.ts";
import { say } from "../../base/text/said/said.ts";
import { fieldName } from "../../read/grammar/field-words.ts";
import { withheldIn } from "../withhold.ts";
import { between, joined, linkTo, rowOf, words } from "./pieces.ts";
import type { FieldRow, Piece } from "./pieces.ts";

/** A free map in words, a row for each of its keys: `values: of inner ring, outer ring; dimension diameter`. */
export function jsonRows(graph: Graph, value: unknown): readonly FieldRow[] {
  if (!isMap(value)) return [rowOf(jsonPieces(graph, value))];
  return Object.entries(value).map(([key, one]) => rowOf(jsonPieces(graph, one), fieldName(key)));
}

/** Maps and lists in words, with names of records leading to them. */
export function jsonPieces(graph: Graph, value: unknown): readonly Piece[] {
  if (Array.isArray(value)) {
    const nested = value.some(Array.isArray);
    return joined(
      value.map((one: unknown) => jsonPieces(graph, one)),
      nested ? between.semicolon : between.comma,
    );
  }
  if (isMap(value)) {
    return joined(
      Object.entries(value).map(([key, one]) => [words(say`${fieldName(key)} `), ...jsonPieces(graph, one)]),
      between.semicolon,
    );
  }
  if (typeof value === "boolean") return [words(value ? say`yes` : say`no`)];
  const text = String(value);
  if (withheldIn(graph)(text)) return [];
  if (graph.records.has(text) || graph.sources.has(text)) return [linkTo(graph, text)];
  return [words(text)];
}

function isMap(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
