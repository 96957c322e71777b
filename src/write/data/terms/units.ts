import type { QuantityKind } from "../../../base/quantity.ts";
import type { Known } from "./known.ts";

/** A unit as open data names it: by QUDT, with its UCUM code. */
export interface OpenUnit {
  readonly unit: Known;
  readonly ucum: string;
  readonly label: string;
  /** How many of it are one unit of the SI of its kind. */
  readonly perSI: number;
}

/** The unit in which the quantities of a kind are written (QUDT 3, UCUM): that of the SI, but degrees for angles. */
export const openUnits: Readonly<Record<QuantityKind, OpenUnit>> = {
  length: { unit: "unit:M", ucum: "m", label: "metre", perSI: 1 },
  mass: { unit: "unit:KiloGM", ucum: "kg", label: "kilogram", perSI: 1 },
  angle: { unit: "unit:DEG", ucum: "deg", label: "degree", perSI: 180 / Math.PI },
  time: { unit: "unit:SEC", ucum: "s", label: "second", perSI: 1 },
  area: { unit: "unit:M2", ucum: "m2", label: "square metre", perSI: 1 },
  volume: { unit: "unit:M3", ucum: "m3", label: "cubic metre", perSI: 1 },
  count: { unit: "unit:NUM", ucum: "{#}", label: "number of things", perSI: 1 },
  number: { unit: "unit:UNITLESS", ucum: "1", label: "pure number", perSI: 1 },
};

/** A number as `xsd:decimal` has it, which knows no powers of ten: twelve figures, so that 25.4 mm are 0.0254 m. */
export function decimal(value: number): string {
  const [digits = "0", power = "0"] = value.toExponential(11).split("e");
  const sign = digits.startsWith("-") ? "-" : "";
  const figures = digits.replace(/[-.]/g, "");
  const point = Number(power) + 1;
  const whole = point > 0 ? figures.slice(0, point).padEnd(point, "0") : "0";
  const part = (point > 0 ? figures.slice(point) : "0".repeat(-point) + figures).replace(/0+$/, "");
  const text = `${whole.replace(/^0+(?=\d)/, "")}${part === "" ? "" : `.${part}`}`;
  return text === "0" ? "0" : sign + text;
}

/** Getty AAT concepts of dimensions, by our English names of them. */
export const gettyDimensions: Readonly<Record<string, Known>> = {
  length: "aat:300055645",
  width: "aat:300055647",
  height: "aat:300055644",
  depth: "aat:300072633",
  thickness: "aat:300055646",
  diameter: "aat:300055624",
  weight: "aat:300056240",
};
