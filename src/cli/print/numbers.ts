import { formatNumber } from "../../base/quantity/quantity-print.ts";
import type { Model } from "../../build.ts";
import { labelOf } from "../../link/names/label.ts";
import { withheldIn } from "../../show/withhold.ts";
import { paint } from "./paint.ts";

/** The derivations with their numbers, what was left out, and what they say of which claim. */
export function numbersText(model: Model): readonly string[] {
  const out: string[] = [];
  const withheld = withheldIn(model.graph);
  for (const one of model.derivations.byId.values()) {
    if (withheld(one.id)) continue;
    out.push(`${paint.bold(labelOf(model.graph, one.id))}  ${one.id}`);
    if (one.why !== null) out.push(`    ${one.status}: ${one.why}`);
    for (const [name, { value, low, high, unit }] of Object.entries(one.numbers)) {
      const symbol = unit === "1" ? "" : ` ${unit}`;
      const interval =
        low === null && high === null
          ? ""
          : `  (${low === null ? "…" : formatNumber(low)} to ${high === null ? "…" : formatNumber(high)})`;
      out.push(`    ${name.padEnd(14)} ${formatNumber(value)}${symbol}${interval}`);
    }
    for (const { claim, bearing } of one.bearings) {
      out.push(
        `    ${bearing === "inconclusive" ? "inconclusive for" : bearing} the claim: ${labelOf(model.graph, claim)}`,
      );
    }
    for (const { id, why } of one.leftOut.filter((it) => !withheld(it.id)))
      out.push(`    left out: ${labelOf(model.graph, id)}: ${why}`);
    out.push("");
  }
  return out;
}
