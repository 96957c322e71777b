import type { Id } from "../../base/finding.ts";
import type { Text } from "../../base/text/said/said.ts";
import { bearingOn } from "../../derive/bearing.ts";
import type { Bearing } from "../../derive/bearing.ts";
import type { Derived } from "../../derive/derived/derived.ts";
import type { Standing } from "../../judge/judge.ts";
import type { DerivationRecord } from "../../link/graph.ts";
import type { Plugin } from "../../plugin.ts";
import { claimText } from "../pages/question.ts";
import type { Reported } from "../report/report.ts";
import { listedUnder, withheldIn } from "../withhold.ts";
import { mainNames, numberLines, titleOf } from "./value.ts";
import type { NumberLine } from "./value.ts";
import { whyWords } from "./why.ts";

/** A derivation in the list of numbers. */
export interface NumberRow {
  readonly id: Id;
  readonly text: Text;
  readonly method: Text;
  readonly status: Derived["status"];
  readonly why: Text | null;
  readonly main: readonly NumberLine[];
  /** What it says of the claim of its group; null where there is no number or no claim. */
  readonly says: Bearing | null;
}

/** The numbers that bear on one claim; those that bear on none come last, under no claim. */
export interface NumberGroup {
  readonly claim: { readonly id: Id; readonly text: string; readonly standing: Standing | null } | null;
  readonly rows: readonly NumberRow[];
}

/** All derivations by the claims they bear on, claims of questions first, in the order of the corpus. */
export function numbersPage(model: Reported, plugins: readonly Plugin[]): readonly NumberGroup[] {
  const { graph, derivations, judgement } = model;
  const withheld = withheldIn(graph);
  const records = graph.list("derivations").filter(({ id }) => derivations.byId.has(id) && !withheld(id));
  const listed = listedUnder(model);
  const loose: DerivationRecord[] = [];
  const byClaim = new Map<Id, DerivationRecord[]>();
  for (const record of records) {
    const bearsOn = new Set((record.values["bears-on"] ?? []).map((entry) => entry.claim).filter(listed));
    if (bearsOn.size === 0) loose.push(record);
    for (const claim of bearsOn) byClaim.set(claim, [...(byClaim.get(claim) ?? []), record]);
  }
  const row = (record: DerivationRecord, claim: Id | null): readonly NumberRow[] => {
    const derived = derivations.byId.get(record.id);
    if (derived === undefined) return [];
    const plugin = plugins.find((one) => one.id === record.values.plugin);
    const names = mainNames(record, derived, plugin);
    return [
      {
        id: record.id,
        text: titleOf(graph, record),
        method: plugin?.title ?? record.values.plugin,
        status: derived.status,
        why: whyWords(graph, derived),
        main: numberLines(derived, plugin).filter((line) => names.includes(line.name)),
        says: claim === null ? null : bearingOn(derived.bearings, claim),
      },
    ];
  };
  const answers = graph.list("questions").flatMap(({ values }) => values.answers);
  const claims = [...new Set([...answers, ...graph.list("claims").map(({ id }) => id)])];
  const groups = claims
    .filter((claim) => byClaim.has(claim))
    .map((claim) => ({
      claim: { id: claim, text: claimText(graph, claim), standing: judgement.standings.get(claim) ?? null },
      rows: (byClaim.get(claim) ?? []).flatMap((record) => row(record, claim)),
    }));
  const without = { claim: null, rows: loose.flatMap((record) => row(record, null)) };
  return [...groups, without].filter((group) => group.rows.length > 0);
}
