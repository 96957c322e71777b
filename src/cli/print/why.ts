import type { Id } from "../../base/finding.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { Model } from "../../build.ts";
import { reasonOf } from "../../judge/explain/reason.ts";
import { sentenceOf } from "../../judge/explain/sentence.ts";
import { labelOf } from "../../link/names/label.ts";
import { outlineOf } from "../../show/pages/outline/branch.ts";
import type { Branch } from "../../show/pages/outline/branch.ts";
import { explainedBlocks, explainedTitles } from "../../show/pages/explained.ts";
import type { ExplainedBlock, ExplainedLine, ExplainedRole } from "../../show/pages/explained.ts";
import { withheldIn } from "../../show/withhold.ts";
import { paint, standingMark } from "./paint.ts";

const roles: Readonly<Record<Branch["role"], string>> = {
  answer: "",
  for: "for it: ",
  against: "against it: ",
  from: "from: ",
  used: "computed on: ",
  thing: "on: ",
};

const parts: Readonly<Record<ExplainedRole, string>> = {
  for: "for it: ",
  from: "from: ",
  used: "computed on: ",
  against: "against it: ",
  answered: "an objection that fails: ",
  member: "",
  settler: "",
  lack: "",
};

/** Why a record has its standing: the sentence, what bears it out as an indented list, and everything under it as an outline. */
export function whyText(model: Model, id: Id): readonly string[] {
  const { graph, derivations, judgement } = model;
  const standing = judgement.standings.get(id);
  if (standing === undefined || withheldIn(graph)(id)) return [];
  const told = new Set<Id>();
  const under = outlineOf(graph, judgement, id).under.flatMap((branch) => branchText(model, branch, 0, told));
  return [
    paint.bold(labelOf(graph, id)),
    `${standingMark(standing)}  ${sentenceOf(graph, reasonOf(graph, derivations, judgement, id))}`,
    ...restingText(model, id),
    "",
    ...explainedText(explainedBlocks(model, id)),
    ...(under.length > 0 ? [paint.bold("Everything under it"), ...under] : []),
  ];
}

/** The blocks of an explanation, each under its title; blocks of one kind share theirs. */
function explainedText(blocks: readonly ExplainedBlock[]): readonly string[] {
  return blocks.flatMap(({ kind, lead, lines }, place) => [
    ...(blocks[place - 1]?.kind === kind ? [] : [paint.bold(inEnglish(explainedTitles[kind]))]),
    ...(lead === null ? [] : [`  ${inEnglish(lead)}`]),
    ...lines.map(lineText),
    "",
  ]);
}

function lineText({ depth, role, pieces, said, standing }: ExplainedLine): string {
  const name = pieces.map((piece) => piece.text).join("");
  const mark = standing === null ? "" : `${standingMark(standing)}  `;
  const told = [name, said === null ? "" : inEnglish(said)].filter((part) => part !== "").join(". ");
  return `${"  ".repeat(depth + 2)}${mark}${parts[role]}${told}`;
}

function restingText(model: Model, id: Id): readonly string[] {
  const resting = model.restsOn.get(id) ?? [];
  return resting.length > 0
    ? [`Would not stand without: ${resting.map((one) => labelOf(model.graph, one)).join("; ")}.`]
    : [];
}

/** What was laid out once is not laid out again: it is said to be above. */
function branchText(model: Model, branch: Branch, depth: number, told: Set<Id>): readonly string[] {
  const indent = "  ".repeat(depth + 1);
  const standing = branch.standing === null ? "" : `${standingMark(branch.standing)}  `;
  const again = branch.again || (told.has(branch.id) && branch.under.length > 0);
  told.add(branch.id);
  const line = `${indent}${standing}${roles[branch.role]}${labelOf(model.graph, branch.id)}${again ? " (above)" : ""}`;
  return [line, ...(again ? [] : branch.under.flatMap((under) => branchText(model, under, depth + 1, told)))];
}
