import type { Id } from "../../base/finding.ts";
import { count, say } from "../../base/text/said/said.ts";
import type { Said } from "../../base/text/said/said.ts";
import type { FailedAttack, WorkingAttack } from "../../judge/explain/attack.ts";
import type { Core } from "../../judge/explain/core/core.ts";
import { explain } from "../../judge/explain/explanation.ts";
import type { Lack } from "../../judge/explain/lack.ts";
import {
  attackSentence,
  circleSentence,
  failedSentence,
  lackSentence,
  settlerOutcome,
  settlerSentence,
  supportSentence,
  unsettledSentence,
} from "../../judge/explain/sentence-parts.ts";
import type { Support } from "../../judge/explain/support/support.ts";
import type { Standing } from "../../judge/judge.ts";
import type { Graph } from "../../link/graph.ts";
import { labelText } from "../../link/names/label.ts";
import { speakerOf } from "../../link/names/spoken.ts";
import type { Reported } from "../report/report.ts";
import { withheldIn } from "../withhold.ts";
import { linkTo, words } from "./pieces.ts";
import type { Piece } from "./pieces.ts";

/** What a line of an explanation is to the line above it. */
export type ExplainedRole = "for" | "from" | "used" | "against" | "answered" | "member" | "settler" | "lack";

/** One line of an explanation: a record, and where there is something to say of it, a sentence. */
export interface ExplainedLine {
  /** How far in it stands, from 0. */
  readonly depth: number;
  readonly role: ExplainedRole;
  /** None where the sentence says it all. */
  readonly pieces: readonly Piece[];
  readonly said: Said | null;
  /** Its standing, where that is not the same for the whole list. */
  readonly standing: Standing | null;
}

/** What bears out a standing: the smallest support, the attacks on it, the working attack, the contradiction, or what is missing. */
export interface ExplainedBlock {
  readonly kind: "support" | "failed" | "attack" | "core" | "settlers" | "lacks";
  readonly lead: Said | null;
  readonly lines: readonly ExplainedLine[];
}

/** What each kind of block is headed with, on a sheet and on the command line. */
export const explainedTitles: Readonly<Record<ExplainedBlock["kind"], Said>> = {
  support: say`The smallest support`,
  failed: say`Attacks on that, which fail`,
  attack: say`The attack that works`,
  core: say`The contradiction it hangs on`,
  settlers: say`What would settle it`,
  lacks: say`What is missing`,
};

/** Longest list of premises or members shown whole; of a longer one the first of these, and how many more. */
const longestList = 12;

/** Why a record has its standing, in blocks; nothing where the sentence on it says it all, or nothing is judged. */
export function explainedBlocks(model: Reported, id: Id): readonly ExplainedBlock[] {
  const { graph, derivations, judgement } = model;
  const explanation = withheldIn(graph)(id) ? null : explain(graph, derivations, judgement, id);
  switch (explanation?.standing) {
    case undefined:
      return [];
    case "stands": {
      const failed = failedBlock(model, explanation.failed);
      return explanation.support.records.length > 1 || explanation.support.records[0] !== id
        ? [supportBlock(graph, explanation.support), ...failed]
        : failed;
    }
    case "falls":
      return explanation.attacks.map((attack) => attackBlock(model, attack));
    case "open":
      return coreBlocks(model, explanation.core);
    case "unsupported":
      return saysItAll(explanation.lacks) ? [] : [lackBlock(graph, explanation.lacks)];
  }
}

/** The name of a record, leading to it; of a number's argument, to the number; nothing of what is withheld. */
function nameTo(graph: Graph, id: Id): Piece {
  if (withheldIn(graph)(id)) return words(say`something withheld`);
  if (graph.records.has(id)) return linkTo(graph, id);
  const speaker = speakerOf(id);
  return graph.records.has(speaker)
    ? { ...linkTo(graph, id), to: speaker }
    : words(say`something that could not be read`);
}

/** The same for one among several: an argument is told from others by what it leans on first. */
function fullName({ graph, judgement }: Reported, id: Id): Piece {
  const name = nameTo(graph, id);
  const premise = judgement.compiled.arguments
    .find((one) => one.id === id)
    ?.because.find((one) => !withheldIn(graph)(one));
  return name.to === null || premise === undefined || !graph.records.has(premise) || name.to === premise
    ? name
    : { ...name, ...words(say`${name.said ?? name.text}: ${labelText(graph, premise)}`), to: name.to };
}

const line = (role: ExplainedRole, depth: number, pieces: readonly Piece[]): ExplainedLine => ({
  depth,
  role,
  pieces,
  said: null,
  standing: null,
});

function supportBlock(graph: Graph, support: Support): ExplainedBlock {
  const top = support.steps[0]?.id ?? "";
  return { kind: "support", lead: supportSentence(support), lines: supportLines(graph, support, top, 0) };
}

/** What a record of a support leans on, each with what it leans on in turn. */
function supportLines(graph: Graph, { steps }: Support, top: Id, depth: number): readonly ExplainedLine[] {
  const needs = new Map(steps.map((step) => [step.id, step.needs]));
  const told = new Set<Id>([top]);
  const under = (id: Id, at: number): readonly ExplainedLine[] => {
    return folded(graph, needs.get(id) ?? [], roleUnder(graph, id), at, (need) => {
      // What a number argues and the number itself are one line.
      const one = graph.records.has(need) ? need : speakerOf(need);
      if (told.has(one) || withheldIn(graph)(one)) return [];
      told.add(one);
      return under(one, at + 1);
    });
  };
  return under(graph.records.has(top) ? top : speakerOf(top), depth);
}

/** What stands under a record is an argument for it, computed into it, or what it argues from. */
function roleUnder(graph: Graph, id: Id): "for" | "used" | "from" {
  const list = graph.records.get(id)?.list;
  return list === "claims" ? "for" : list === "derivations" ? "used" : "from";
}

/** Records as lines, those withheld as one, and of a long list the first and how many more. */
function folded(
  graph: Graph,
  ids: readonly Id[],
  role: ExplainedRole,
  depth: number,
  under: (id: Id) => readonly ExplainedLine[] = () => [],
  named: (id: Id) => Piece = (id) => nameTo(graph, id),
): readonly ExplainedLine[] {
  const withheld = withheldIn(graph);
  const open = ids.filter((id) => !withheld(id));
  const shown = open.length > longestList ? open.slice(0, longestList - 1) : open;
  const more = open.length - shown.length;
  return [
    ...shown.flatMap((id) => [line(role, depth, [named(id)]), ...under(id)]),
    ...(more > 0 ? [line(role, depth, [words(say`${count(more)} more`)])] : []),
    ...(open.length < ids.length ? [line(role, depth, [words(say`something withheld`)])] : []),
  ];
}

function failedBlock(model: Reported, failed: readonly FailedAttack[]): readonly ExplainedBlock[] {
  return failed.length === 0
    ? []
    : [{ kind: "failed", lead: null, lines: failedLines(model, failed, "against", 0) }];
}

function failedLines(
  { graph, judgement }: Reported,
  failed: readonly FailedAttack[],
  role: ExplainedRole,
  depth: number,
): readonly ExplainedLine[] {
  return failed.map((attack) => ({
    ...line(role, depth, [nameTo(graph, attack.by)]),
    said: failedSentence(graph, attack),
    standing: judgement.standings.get(attack.by) ?? null,
  }));
}

/** A working attack: the way down to what it hits, whose it is, what it leans on, and the objections to it that fail. */
function attackBlock(model: Reported, attack: WorkingAttack): ExplainedBlock {
  const { graph, judgement } = model;
  const { by, way, support, failed } = attack;
  const standing = (id: Id): Standing | null => judgement.standings.get(id) ?? null;
  const down = way.slice(1).map((id, depth): ExplainedLine => {
    const role = roleUnder(graph, way[depth] ?? "");
    return { ...line(role, depth, [nameTo(graph, id)]), standing: standing(id) };
  });
  const at = down.length;
  return {
    kind: "attack",
    lead: attackSentence(graph, attack),
    lines: [
      ...down,
      { ...line("against", at, [nameTo(graph, by)]), standing: standing(by) },
      ...(withheldIn(graph)(by) ? [] : supportLines(graph, support, by, at + 1)),
      ...failedLines(model, failed, "answered", at + 1),
    ],
  };
}

function coreBlocks(model: Reported, { circles, settlers, untried }: Core): readonly ExplainedBlock[] {
  const { graph, judgement } = model;
  const named = (id: Id): Piece => fullName(model, id);
  const contradictions = circles.map((circle): ExplainedBlock => ({
    kind: "core",
    lead: circleSentence(graph, circle),
    lines: folded(graph, circle.members, "member", 0, undefined, named),
  }));
  const [best] = settlers;
  const leads = [
    ...(best ? [settlerSentence(graph, judgement, best)] : []),
    ...[unsettledSentence(settlers.length, untried)].filter((sentence) => sentence !== null),
  ];
  const lines = settlers.map((settler) => ({
    ...line("settler", 0, [named(settler.id)]),
    said: settlerOutcome(judgement, settler),
  }));
  return [...contradictions, { kind: "settlers", lead: oneAfterAnother(leads), lines }];
}

/** Sentences as one paragraph. */
function oneAfterAnother([lead, ...others]: readonly Said[]): Said {
  return others.reduce((before, next) => say`${before} ${next}`, lead ?? say``);
}

/** Whether the one thing missing is what the sentence on the standing names. */
function saysItAll([first, ...more]: readonly Lack[]): boolean {
  return first?.way.length === 1 && first.missing.what !== "circle" && more.length === 0;
}

/** What is missing as an indented list: the way down to each lack, what several ways share only once. */
function lackBlock(graph: Graph, lacks: readonly Lack[]): ExplainedBlock {
  const lines: ExplainedLine[] = [];
  const told = new Set<string>();
  for (const lack of lacks) {
    const { way, missing } = lack;
    const down = missing.what === "circle" ? [] : way.slice(1);
    down.forEach((id, depth) => {
      const key = way.slice(0, depth + 2).join("\n");
      if (told.has(key)) return;
      told.add(key);
      lines.push(line(roleUnder(graph, way[depth] ?? ""), depth, [nameTo(graph, id)]));
    });
    const of = missing.what === "circle" ? way[0] : missing.of;
    const beside = of !== way[0];
    const pieces = of !== undefined && of !== way.at(-1) ? [nameTo(graph, of)] : [];
    lines.push({ ...line("lack", down.length, pieces), said: lackSentence(graph, lack, beside) });
    if (missing.what === "circle") lines.push(...folded(graph, missing.members, "member", 1));
  }
  return { kind: "lacks", lead: null, lines };
}
