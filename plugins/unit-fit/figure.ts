import type { Computation, Figure, Json, Mark, Settings } from "../../src/plugin.ts";

type Fields = { readonly [key: string]: Json };

/** The quantogram with the null's 5 % line, the unit and its peak family; residuals beside it for a unit given. */
export function unitFitFigure(computation: Computation, settings: Settings): Figure {
  const data = fieldsOf(computation.data);
  const unit = settings["unit"];
  const peaks = listOf(data["peaks"]).map(fieldsOf);
  const marks: Mark[] = [
    { mark: "line", points: pointsOf(data["curve"]), role: "main", label: "fit" },
    {
      mark: "rule",
      axis: "y",
      at: numberOf(data["crit95"]),
      label:
        data["kind"] === "given"
          ? "5 % at a unit given"
          : "5 % of sets without a unit rise above this somewhere",
    },
    ...peaks.map((peak, place): Mark => ({
      mark: "rule",
      axis: "x",
      at: numberOf(peak["q"]),
      label: labelOf(peak, place),
    })),
  ];
  return {
    title: unit?.kind === "unit" ? `Fit to the ${unit.value.name}` : "Search for a unit",
    x: { label: "trial unit", unit: "m" },
    y: { label: "fit", unit: "1" },
    marks,
  };
}

function labelOf(peak: Fields, place: number): string {
  const kin = peak["kin"];
  return typeof kin === "string" && kin !== "" ? kin : place === 0 ? "the unit" : "";
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

function pointsOf(value: Json | undefined): readonly (readonly [number, number])[] {
  return listOf(value).map((point) => {
    const [x, y] = listOf(point);
    return [numberOf(x), numberOf(y)] as const;
  });
}
