import type { Id } from "../../base/finding.ts";
import type { Json } from "../../base/json.ts";
import type { Chronicle, InputDeclaration, LeftOut, Observed, Recorded } from "../../plugin.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Sight } from "../prepare/select.ts";
import { chronicleOf } from "./dates/chronicle.ts";
import type { GivenBy } from "./dates/chronicle.ts";
import { entersAsObservations, selectObservations } from "./observations.ts";

/** What enters an input otherwise than as a quantity, the evidence that says it, and what is left out. */
export interface RecordedEntry {
  readonly entering: readonly Observed[] | Chronicle;
  readonly used: readonly Id[];
  readonly leftOut: readonly LeftOut[];
}

/** Selects the observations or dates of an input; null for one of measurements, `why` where nothing is so called. */
export function recordedFor(
  input: InputDeclaration,
  selection: Json,
  sight: Sight,
  givenBy: GivenBy,
): RecordedEntry | { readonly why: Text } | null {
  if (input.kind === "dates") {
    const found = chronicleOf(selection, sight, givenBy);
    return "why" in found ? found : { ...found, entering: found.chronicle };
  }
  if (!entersAsObservations(input, selection, sight.graph)) return null;
  const { observed, leftOut } = selectObservations(selection, sight, input.ofSource);
  return { entering: observed, used: observed.map((one) => one.id), leftOut };
}

/** What no input took, each with the last reason met: one may take what another leaves. */
export function leftOutOf(
  entries: ReadonlyMap<string, RecordedEntry>,
  used: readonly Id[],
): readonly LeftOut[] {
  const taken = new Set(used);
  const reasons = new Map<Id, LeftOut>();
  for (const one of [...entries.values()].flatMap((entry) => entry.leftOut)) {
    if (!taken.has(one.id)) reasons.set(one.id, one);
  }
  return [...reasons.values()];
}

/** How much an input got. */
export function sizeOf({ entering }: RecordedEntry): number {
  return isChronicle(entering) ? entering.statements.length : entering.length;
}

/** What the inputs got as a plug-in sees it; nothing where none has observations or dates. */
export function recordedIn(entries: ReadonlyMap<string, RecordedEntry>): { readonly recorded?: Recorded } {
  if (entries.size === 0) return {};
  const observations: Record<string, readonly Observed[]> = {};
  const dates: Record<string, Chronicle> = {};
  for (const [name, { entering }] of entries) {
    if (isChronicle(entering)) dates[name] = entering;
    else observations[name] = entering;
  }
  return { recorded: { observations, dates } };
}

function isChronicle(entering: RecordedEntry["entering"]): entering is Chronicle {
  return "statements" in entering;
}
