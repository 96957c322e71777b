import type { Id } from "../../../../base/finding.ts";
import { inEnglish } from "../../../../base/text/said/english.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Graph } from "../../../../link/graph.ts";
import { examinationOf } from "../../../../link/suppose/examination.ts";
import type { WrittenMap } from "../../../../read/edit/written.ts";
import { hasSeen } from "./already.ts";
import { signature, visitOf, withoutEmpty } from "./signable.ts";
import type { Naming, Signable } from "./signable.ts";

/**
 * The outcomes that were found, written down as they were supposed (format.md 7): one observation for each, and an
 * argument from it for each claim that it speaks for or against, and one against all else, of its strength.
 */
export function outcomeRecords(
  graph: Graph,
  { filled, signed }: Signable,
  naming: Naming,
): { readonly observations: readonly WrittenMap[]; readonly arguments: readonly WrittenMap[] } {
  const observations: WrittenMap[] = [];
  const reasons: WrittenMap[] = [];
  for (const [examination, chosen] of Object.entries(filled.found)) {
    const whole = examinationOf(graph, examination);
    const outcome = whole?.outcomes.find((one) => one.id === chosen);
    if (!whole || !outcome) continue;
    const seen = withoutEmpty({
      of: whole.of.length === 1 ? (whole.of[0] ?? "") : whole.of,
      text: inEnglish(outcome.text),
      basis: filled.basis === "" ? "autopsy" : filled.basis,
      ...signature(signed),
      note: visitOf(signed),
    });
    if (hasSeen(graph, seen, signed.day)) continue;
    const id = naming("observations", `${chosen} ${signed.day}`);
    observations.push({ id, ...seen });
    const { strength, against } = outcome;
    const isClaim = (target: Id): boolean => graph.records.get(target)?.list === "claims";
    const evidence = against.filter((target) => !isClaim(target));
    const step = (speaks: WrittenMap): WrittenMap => ({
      id: naming("arguments", `by ${chosen}`),
      because: id,
      ...speaks,
      ...signature(signed),
      ...(strength === "ordinary"
        ? {}
        : { strength, "why-strength": inEnglish(say`As the examination has it, from before the look.`) }),
    });
    reasons.push(
      ...outcome.therefore.map((therefore) => step({ therefore })),
      ...against.filter(isClaim).map((one) => step({ against: one })),
      ...(evidence.length === 0
        ? []
        : [step({ against: evidence.length === 1 ? (evidence[0] ?? "") : evidence })]),
    );
  }
  return { observations, arguments: reasons };
}
