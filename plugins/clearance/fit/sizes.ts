import type { Quantity } from "../../../src/plugin.ts";
import type { Size } from "./dimension.ts";

/** A measured quantity as the size of a part: a range is even over its reach, all else normal; shared errors are in it. */
export function sizeOf(quantity: Quantity): Size {
  const { form, value, low, high, shared } = quantity;
  const width = form === "range" && low !== null && high !== null ? high - low : 0;
  const own = width > 0 ? 0 : (quantity.u ?? 0);
  return {
    value,
    width,
    u: Math.hypot(own, ...shared.map(({ relative }) => relative * value)),
    open: form === "at-least" ? "more" : form === "at-most" ? "less" : null,
  };
}

/** The covariance of two quantities: of the errors that name the same cause (GUM 5.2). */
export function commonTo(one: Quantity, other: Quantity): number {
  return one.shared.reduce((sum, cause) => {
    const same = other.shared.find((shared) => shared.with === cause.with);
    return same === undefined ? sum : sum + cause.relative * one.value * same.relative * other.value;
  }, 0);
}
