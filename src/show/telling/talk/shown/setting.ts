import type { Id } from "../../../../base/finding.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Plugin } from "../../../../plugin.ts";
import type { Reported } from "../../../report/report.ts";
import { shownUnder, withheldIn } from "../../../withhold.ts";
import type { Part, Remark } from "../slides.ts";

/** What the parts of a slide are made from. */
export interface Setting {
  /** The corpus under the lens of the step. */
  readonly model: Reported;
  /** The corpus whole, whatever year the step is about: the map is drawn from it. */
  readonly whole: Reported;
  readonly plugins: readonly Plugin[];
  /** Puts what is written on a map into the reader's language: its room is measured. */
  readonly told: (text: Text) => string;
}

/** Parts of a slide, and the records that they tell of: their sources are cited on it. */
export interface Told {
  readonly parts: readonly Part[];
  readonly about: readonly Id[];
}

/** Why a record is not shown, in a remark; null where it is. */
export function leftOut(model: Reported, id: Id): Remark | null {
  const { graph } = model;
  if (withheldIn(graph)(id)) return remark(say`Something here is withheld.`, "left-out");
  if (shownUnder(model)(id) || graph.sources.has(id)) return null;
  return remark(say`Something here was not yet in print.`, "left-out");
}

/** A remark. */
export function remark(text: Text, tells: Remark["tells"] = "plain"): Remark {
  return { is: "remark", tells, text };
}

/** The same remark stands once. */
export function onceEach(parts: readonly Part[]): readonly Part[] {
  const seen = new Set<string>();
  return parts.filter((part) => {
    const key = JSON.stringify(part);
    const isNew = part.is !== "remark" || !seen.has(key);
    seen.add(key);
    return isNew;
  });
}
