import type { Computation, Figure, Json, Mark } from "../../src/plugin.ts";

type Fields = { readonly [key: string]: Json };

/** The gaps along the edge with their broken ends, and for each length the share of gaps longer than it. */
export function spacingFigure(computation: Computation): Figure {
  const data = fieldsOf(computation.data);
  const shown = fieldsOf(data["shown"]);
  const size = numberOf(shown["size"]) || 1;
  const other = pointsOf(data["other"], size);
  const marks: Mark[] = [
    {
      mark: "edge",
      spans: listOf(data["edge"])
        .map(fieldsOf)
        .map((span) => ({
          from: numberOf(span["from"]) / size,
          to: numberOf(span["to"]) / size,
          broken: span["broken"] === true,
        })),
    },
    { mark: "line", role: "step", points: pointsOf(data["steps"], size), label: "these gaps" },
  ];
  if (other.length > 0) marks.push({ mark: "line", role: "step", points: other, label: "the other row" });
  const median = computation.numbers["median"];
  if (median) marks.push({ mark: "rule", axis: "x", at: median.value / size, label: "median gap" });
  return {
    title: "Gaps along the edge, and the share longer than each length",
    x: { label: "length", unit: typeof shown["unit"] === "string" ? shown["unit"] : "1" },
    y: { label: "share of gaps longer", unit: "1" },
    marks,
  };
}

function fieldsOf(value: Json | undefined): Fields {
  return value !== null && typeof value === "object" && !Array.isArray(value) ? (value as Fields) : {};
}

function listOf(value: Json | undefined): readonly Json[] {
  return Array.isArray(value) ? (value as readonly Json[]) : [];
}

function numberOf(value: Json | undefined): number {
  return typeof value === "number" ? value : 0;
}

function pointsOf(value: Json | undefined, size: number): readonly (readonly [number, number])[] {
  return listOf(value).map((point) => {
    const [x, y] = listOf(point);
    return [numberOf(x) / size, numberOf(y)] as const;
  });
}
