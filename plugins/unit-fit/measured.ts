import { kindWords, refuse, row, say, type Json, type Measured, type Refusal } from "../../src/plugin.ts";
import type { Item } from "./given/item-fits.ts";
import { refuseLengths, type Length } from "./lengths.ts";

/** Refuses measurements of several kinds, and values that are missing or not above 0. */
export function refuseMeasured(measured: readonly Measured[]): Refusal | null {
  const kinds = new Set(measured.map((one) => one.quantity.kind));
  if (kinds.size > 1) {
    return refuse(
      "mixed-dimensions",
      say`Unexpected values of several kinds (${row(
        [...kinds].map((kind) => kindWords[kind]),
        "comma",
      )}), expected one kind.`,
    );
  }
  return refuseLengths(measured.map((one) => one.quantity.value));
}

/**
 * A measurement as the quantogram sees it. A value of which no more is known than its last digit is taken at its
 * face: the search keeps away from such small units, and the sets drawn are rounded alike.
 */
export function lengthOf({ quantity, artefact }: Measured): Length {
  const { form, value, low, high, digit } = quantity;
  const u = quantity.u ?? 0;
  const width = form === "range" && low !== null && high !== null ? high - low : 0;
  const atFace = form === "value" && u <= (digit / Math.sqrt(12)) * (1 + 1e-6);
  return { value, sd: width > 0 || atFace ? 0 : u, width, recordedTo: digit, artefact };
}

/** A measurement as the item-by-item test sees it. */
export function itemOf({ quantity }: Measured): Item {
  const { form, value, low, high, u } = quantity;
  if (form === "range" && low !== null && high !== null) return { kind: "range", low, high };
  return form === "value" || form === "approximate"
    ? { kind: "value", value, sd: u ?? 0 }
    : { kind: "bound" };
}

/** What each measurement is of, and its 95 % reach: for drawing it by itself. */
export function itemsNamed(measured: readonly Measured[]): Json {
  return measured.map(({ artefact, dimension, quantity }) => ({
    artefact,
    dimension,
    reach: 1.96 * (quantity.u ?? 0),
  }));
}
