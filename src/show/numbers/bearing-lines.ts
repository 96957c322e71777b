import type { Id } from "../../base/finding.ts";
import type { Json } from "../../base/json.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Bearing } from "../../derive/bearing.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import type { Judgement, Standing } from "../../judge/judge.ts";
import type { DerivationRecord, Graph } from "../../link/graph.ts";
import { claimText } from "../pages/question.ts";
import { listedUnder } from "../withhold.ts";
import { mapsIn, namesIn, numberLines, valueWords } from "./value.ts";
import type { Plugin } from "../../plugin.ts";

/** What a number says of one claim, and what it was asked. */
export interface BearingLine {
  readonly claim: Id;
  readonly text: string;
  readonly standing: Standing | null;
  /** Null while there is no number. */
  readonly says: Bearing | null;
  /** `p < 0.01 and k within 1.9..2.1`; alternatives are joined by `or`. Null where it is not asked. */
  readonly supportsWhen: string | null;
  readonly disputesWhen: string | null;
  /** The numbers asked about as they came out. */
  readonly found: readonly { readonly name: string; readonly value: Text }[];
  readonly strength: "weak" | "ordinary" | "strong";
  /** A large p was asked to support it, which it never does. */
  readonly largeP: boolean;
  /** What is wrong with the entry, if anything. */
  readonly trouble: Text | null;
}

/** What a derivation bears on, in the order of its record; claims that are withheld, or not in print yet, are not named. */
export function bearingLines(
  graph: Graph,
  judgement: Judgement,
  record: DerivationRecord,
  derived: Derived,
  plugin: Plugin | undefined,
): readonly BearingLine[] {
  const listed = listedUnder({ graph, judgement });
  const lines = numberLines(derived, plugin);
  return (record.values["bears-on"] ?? []).flatMap((entry, place): readonly BearingLine[] => {
    if (!listed(entry.claim)) return [];
    const bearing = derived.bearings[place];
    const asked = [...new Set([...namesIn(entry.supports), ...namesIn(entry.disputes)])];
    return [
      {
        claim: entry.claim,
        text: claimText(graph, entry.claim),
        standing: judgement.standings.get(entry.claim) ?? null,
        says: bearing?.bearing ?? null,
        supportsWhen: conditionWords(entry.supports),
        disputesWhen: conditionWords(entry.disputes),
        found: lines
          .filter((line) => asked.includes(line.name))
          .map((line) => ({ name: line.name, value: valueWords(line) })),
        strength: entry.strength ?? "ordinary",
        largeP: bearing?.trouble === "supports-by-large-p",
        trouble: bearing?.trouble === "unreadable" ? bearing.why : null,
      },
    ];
  });
}

function conditionWords(condition: Json | undefined): string | null {
  const maps = mapsIn(condition).map((map) =>
    Object.entries(map)
      .map(([name, asks]) => `${name} ${typeof asks === "string" ? asks.trim() : "?"}`)
      .join(" and "),
  );
  return maps.length === 0 ? null : maps.join(", or ");
}
