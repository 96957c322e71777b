import type { Id } from "../../base/finding.ts";
import type { Model } from "../../build.ts";
import { reasonOf } from "../../judge/explain/reason.ts";
import { sentenceOf } from "../../judge/explain/sentence.ts";
import { labelOf } from "../../link/label.ts";
import { outlineOf } from "../../show/outline.ts";
import type { Branch } from "../../show/outline.ts";
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

/** Why a record has its standing: the sentence, then everything under it as an outline. */
export function whyText(model: Model, id: Id): readonly string[] {
  const { graph, derivations, judgement } = model;
  const standing = judgement.standings.get(id);
  if (standing === undefined || withheldIn(graph)(id)) return [];
  return [
    paint.bold(labelOf(graph, id)),
    `${standingMark(standing)}  ${sentenceOf(graph, reasonOf(graph, derivations, judgement, id))}`,
    ...restingText(model, id),
    "",
    ...outlineOf(graph, judgement, id).under.flatMap((branch) => branchText(model, branch, 0)),
  ];
}

function restingText(model: Model, id: Id): readonly string[] {
  const resting = model.restsOn.get(id) ?? [];
  return resting.length > 0
    ? [`Would not stand without: ${resting.map((one) => labelOf(model.graph, one)).join(", ")}.`]
    : [];
}

function branchText(model: Model, branch: Branch, depth: number): readonly string[] {
  const indent = "  ".repeat(depth);
  const standing = branch.standing === null ? "" : `${standingMark(branch.standing)}  `;
  const again = branch.again ? " (above)" : "";
  const line = `${indent}${standing}${roles[branch.role]}${labelOf(model.graph, branch.id)}${again}`;
  return [line, ...branch.under.flatMap((under) => branchText(model, under, depth + 1))];
}
