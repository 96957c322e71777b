import type { Computation, Figure, Json, Mark, Settings } from "../../src/plugin.ts";

type Fields = { readonly [key: string]: Json };

/** For a search the quantogram with the null's 5 % line and the peak family; for a unit given the residuals. */
export function unitFitFigure(computation: Computation, settings: Settings): Figure {
  const data = fieldsOf(computation.data);
  const shown = fieldsOf(data["shown"]);
  const unit = typeof shown["unit"] === "string" ? shown["unit"] : "1";
  const size = numberOf(shown["size"]) || 1;
  return data["found"] === "given"
    ? residualFigure(data, unit, size, settings)
    : quantogramFigure(data, unit, size);
}

function quantogramFigure(data: Fields, unit: string, size: number): Figure {
  const limit = numberOf(fieldsOf(data["crit95"])["kde"]);
  const marks: Mark[] = [
    { mark: "line", points: pointsOf(data["curve"], size, 1), role: "main", label: "fit" },
    {
      mark: "rule",
      axis: "y",
      at: limit,
      label: "5 % of sets without a unit rise above this somewhere",
    },
  ];
  for (const peak of listOf(data["peaks"]).map(fieldsOf)) {
    const words = [
      peak["best"] === true ? "the best" : "",
      typeof peak["kin"] === "string" ? peak["kin"] : "",
      peak["aboveSmallest"] === true ? "above the smallest measurement" : "",
    ];
    const label = words.filter((word) => word !== "").join(", ");
    marks.push({ mark: "rule", axis: "x", at: numberOf(peak["q"]) / size, label });
  }
  return {
    title: "Search for a unit",
    x: { label: "trial unit", unit },
    y: { label: "fit (phi)", unit: "1" },
    marks,
  };
}

function residualFigure(data: Fields, unit: string, size: number, settings: Settings): Figure {
  const given = settings["unit"];
  const half = numberOf(data["q"]) / size / 2;
  return {
    title:
      given?.kind === "unit" ? `What is left after whole multiples of the ${given.value.name}` : "Residuals",
    x: { label: "measurement", unit },
    y: { label: "more or less than the nearest multiple", unit },
    marks: [
      {
        mark: "dots",
        points: pointsOf(data["residuals"], size, size),
        labels: listOf(data["multiples"]).map((n) => `${numberOf(n)} units`),
      },
      { mark: "rule", axis: "y", at: 0, label: "a whole multiple" },
      { mark: "rule", axis: "y", at: half, label: "half a unit more" },
      { mark: "rule", axis: "y", at: -half, label: "half a unit less" },
    ],
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

function pointsOf(value: Json | undefined, x: number, y: number): readonly (readonly [number, number])[] {
  return listOf(value).map((point) => {
    const [a, b] = listOf(point);
    return [numberOf(a) / x, numberOf(b) / y] as const;
  });
}
