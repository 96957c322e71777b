import type { Finding, Id } from "../../base/finding.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { Model } from "../../build.ts";
import { reasonOf } from "../../judge/explain/reason.ts";
import { sentenceOf } from "../../judge/explain/sentence.ts";
import { labelOf } from "../../link/names/label.ts";
import { placesIn } from "../../base/text/lines/place.ts";
import { withheldIn } from "../../show/withhold.ts";
import { many } from "./fix.ts";
import { frameOf } from "./frame.ts";
import { levelWord, paint, standingMark } from "./paint.ts";

/** The findings as text, by file and place, each with its code frame and the fix that is offered. */
export function findingsText(
  findings: readonly Finding[],
  texts: ReadonlyMap<string, string>,
): readonly string[] {
  const place = placesIn(texts);
  const out: string[] = [];
  for (const one of findings) {
    const at = one.at ? place(one.at) : null;
    const where = at ? `${at.file}:${at.line}:${at.column}` : "the corpus";
    out.push(`${paint.bold(where)}  ${levelWord(one.level)}  ${one.rule}`);
    out.push(`    ${inEnglish(one.message)}`);
    const text = at ? texts.get(at.file) : undefined;
    if (at && text !== undefined && text !== "") out.push(...frameOf(text, at, (marks) => paint.red(marks)));
    const also = (one.also ?? []).map(place).map((it) => `${it.file}:${it.line}`);
    if (also.length > 0) out.push(`    also: ${also.slice(0, 12).join(", ")}${also.length > 12 ? " …" : ""}`);
    if (one.fix) out.push(`    mend: ${inEnglish(one.fix.label)} (--fix shows the change)`);
    if (one.accepted !== null) out.push(`    accepted: ${one.accepted}`);
    out.push("");
  }
  return out;
}

/** The questions with their answers: standing, and why in one sentence. */
export function questionsText(model: Model): readonly string[] {
  const { graph, judgement, derivations } = model;
  const withheld = withheldIn(graph);
  const out: string[] = [];
  for (const question of graph.list("questions")) {
    if (withheld(question.id)) continue;
    out.push(paint.bold(question.values.text));
    for (const claim of question.values.answers) {
      if (!judgement.listed(claim) || withheld(claim)) continue;
      const standing = judgement.standings.get(claim) ?? "unsupported";
      out.push(`  ${standingMark(standing)}  ${labelOf(graph, claim)}`);
      out.push(`       ${sentenceOf(graph, reasonOf(graph, derivations, judgement, claim))}`);
    }
    out.push("");
  }
  return out;
}

/** How many of each list were loaded, and how many findings of each level there are. */
export function countsText(model: Model, findings: readonly Finding[]): string {
  const graph = model.graph.supposed?.before ?? model.graph;
  const level = (name: Finding["level"]): number => findings.filter((one) => one.level === name).length;
  const lists = (["scholars", "claims", "arguments", "observations", "measurements", "derivations"] as const)
    .map((list) => many(graph.list(list).length, list.slice(0, -1)))
    .join(", ");
  const accepted = findings.filter((one) => one.accepted !== null).length;
  const lived = accepted > 0 ? `, ${accepted} of them accepted` : "";
  return `${many(graph.sources.size, "source")}, ${lists}; ${many(level("error"), "error")}, ${many(level("warning"), "warning")}, ${many(level("note"), "note")}${lived}`;
}

/** Ids that an explanation can be asked for. */
export function explainable(model: Model, id: Id): boolean {
  return model.judgement.standings.has(id);
}
