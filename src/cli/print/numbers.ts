import { formatComputed } from "../../base/quantity/quantity-print.ts";
import { inEnglish } from "../../base/text/said/english.ts";
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
    if (one.why !== null) out.push(`    ${one.status}: ${inEnglish(one.why)}`);
    for (const [name, { value, low, high, unit, kind }] of Object.entries(one.numbers)) {
      const end = (one: number | null): string => (one === null ? "…" : formatComputed(one, kind));
      const symbol = unit === "1" ? "" : ` ${unit}`;
      const interval = low === null && high === null ? "" : `  (${end(low)} to ${end(high)})`;
      out.push(`    ${name.padEnd(14)} ${end(value)}${symbol}${interval}`);
    }
    for (const { claim, bearing } of one.bearings) {
      out.push(
        `    ${bearing === "inconclusive" ? "inconclusive for" : bearing} the claim: ${labelOf(model.graph, claim)}`,
      );
    }
    for (const { id, why } of one.leftOut.filter((it) => !withheld(it.id)))
      out.push(`    left out: ${labelOf(model.graph, id)}: ${inEnglish(why)}`);
    out.push("");
  }
  return out;
}
