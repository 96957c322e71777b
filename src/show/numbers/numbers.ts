import type { Id } from "../../base/finding.ts";
import type { Bearing } from "../../derive/bearing.ts";
import type { Derived } from "../../derive/derive.ts";
import type { Standing } from "../../judge/judge.ts";
import { labelOf, withoutStop } from "../../link/label.ts";
import type { DerivationRecord } from "../../link/graph.ts";
import type { Plugin } from "../../plugin.ts";
import { claimText } from "../pages/question.ts";
import type { Reported } from "../report/report.ts";
import { withheldIn } from "../withhold.ts";
import { whyWords } from "./number.ts";
import { mainNames, numberLines } from "./value.ts";
import type { NumberLine } from "./value.ts";

/** A derivation in the list of numbers. */
export interface NumberRow {
  readonly id: Id;
  readonly text: string;
  readonly method: string;
  readonly status: Derived["status"];
  readonly why: string | null;
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
  const claimsOf = ({ values }: DerivationRecord): readonly Id[] => [
    ...new Set((values["bears-on"] ?? []).map((entry) => entry.claim).filter((claim) => !withheld(claim))),
  ];
  const row = (record: DerivationRecord, claim: Id | null): readonly NumberRow[] => {
    const derived = derivations.byId.get(record.id);
    if (derived === undefined) return [];
    const plugin = plugins.find((one) => one.id === record.values.plugin);
    const names = mainNames(record, derived, plugin);
    return [
      {
        id: record.id,
        text: withoutStop(record.values.text ?? labelOf(graph, record.id)),
        method: plugin?.title ?? record.values.plugin,
        status: derived.status,
        why: whyWords(graph, derived),
        main: numberLines(derived, plugin).filter((line) => names.includes(line.name)),
        says: derived.bearings.find((one) => one.claim === claim)?.bearing ?? null,
      },
    ];
  };
  const answers = graph.list("questions").flatMap(({ values }) => values.answers);
  const claims = [...new Set([...answers, ...graph.list("claims").map(({ id }) => id)])];
  const groups = claims.map((claim) => ({
    claim: { id: claim, text: claimText(graph, claim), standing: judgement.standings.get(claim) ?? null },
    rows: records
      .filter((record) => claimsOf(record).includes(claim))
      .flatMap((record) => row(record, claim)),
  }));
  const loose = records
    .filter((record) => claimsOf(record).length === 0)
    .flatMap((record) => row(record, null));
  return [...groups, { claim: null, rows: loose }].filter((group) => group.rows.length > 0);
}
