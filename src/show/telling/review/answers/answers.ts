import type { Id } from "../../../../base/finding.ts";
import { byYear } from "../../../../base/order.ts";
import { say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import type { Footing } from "../../../../judge/footing.ts";
import { evaluationOf } from "../../../../judge/explain/evaluation.ts";
import { withoutStop } from "../../../../link/names/label.ts";
import { claimText } from "../../../pages/question.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import type { Group, Sight } from "../desk.ts";
import { holders } from "../dispute/question.ts";
import { standingIn } from "../dispute/standings.ts";
import { quotationOf } from "../dispute/translated.ts";
import { heading, paragraph, words } from "../pieces/inlines.ts";
import { argumentSentences } from "./argument.ts";
import { objectionBlocks } from "./objections.ts";
import { undecidedBlocks } from "./undecided.ts";
import { standingSentences } from "./why.ts";

/** Each answer with the arguments, the evidence and the objections, then the claims that these lean on. */
export function answersSection(sight: Sight): readonly Block[] {
  const told = new Set<Id>();
  return sight.groups.flatMap((group) => groupBlocks(sight, group, told));
}

/** The answers to one question; what was told under another question is not told again. */
function groupBlocks(sight: Sight, group: Group, told: Set<Id>): readonly Block[] {
  const { question, text, answers } = group;
  const several = sight.groups.length > 1;
  const level = several ? 3 : 2;
  const below = group.below.filter((claim) => argued(sight, claim));
  const blocks = answers.flatMap((claim): readonly Block[] => {
    const name = words(textOf(sight, claim), sight.language);
    if (told.has(claim)) return [heading(level, [name]), ...toldAbove(claim)];
    told.add(claim);
    return [heading(level, [name], claimAnchor(claim)), ...claimBlocks(sight, claim, true)];
  });
  const ways = below.flatMap((claim) => claimBlocks(sight, claim, false));
  if (blocks.length + ways.length === 0) return [];
  const head: Inlines =
    question === null ? [say`Claims that bear on none of the questions`] : [words(text, sight.language)];
  return [
    ...(several ? [heading(2, head)] : []),
    ...blocks,
    ...(ways.length > 0 && question !== null ? [heading(level, [say`The claims that these lean on`])] : []),
    ...ways,
  ];
}

/** The anchor of the heading under which an answer is told. */
const claimAnchor = (claim: Id): string => `claim-${claim}`;

function toldAbove(claim: Id): readonly Block[] {
  return paragraph([
    [
      say`This answer is told `,
      { is: "link", to: claimAnchor(claim), of: [say`above`] },
      say`, with another question that it answers.`,
    ],
  ]);
}

const textOf = ({ graph }: Sight, claim: Id): string => withoutStop(claimText(graph, claim));

/** Whether something is argued for or against a claim; what only hangs in the air is told elsewhere. */
function argued({ model }: Sight, claim: Id): boolean {
  const { argumentsFor, attackersOf } = evaluationOf(model.judgement);
  return argumentsFor(claim).length + attackersOf(claim).length > 0;
}

/** One claim: how it stands and why, then a paragraph for each argument for and against it. */
function claimBlocks(sight: Sight, claim: Id, answer: boolean): readonly Block[] {
  const { model } = sight;
  const { argumentsFor, attackersOf } = evaluationOf(model.judgement);
  const name: Inlines = answer
    ? [say`This answer `]
    : [{ is: "emphasis", of: [words(textOf(sight, claim), sight.language), "."] }, say` This claim `];
  const held = holders(sight, claim);
  return [
    ...paragraph([
      standingSentences(sight, claim, name),
      footingSentence(sight, claim),
      answer && held.length > 0 ? [say`It has been held by `, ...held, "."] : [],
    ]),
    ...(answer ? firstWords(sight, claim) : []),
    ...argumentsFor(claim).flatMap((one) => [
      ...paragraph(argumentSentences(sight, one, "for")),
      ...objectionBlocks(sight, one),
    ]),
    ...attackersOf(claim).flatMap((one) => [
      ...paragraph(argumentSentences(sight, one, "against")),
      ...objectionBlocks(sight, one),
    ]),
    ...undecidedBlocks(sight, claim),
  ];
}

/** The words of the first passage in print in which a claim is held. */
function firstWords(sight: Sight, claim: Id): readonly Block[] {
  const { graph, shown } = sight;
  const held = graph
    .list("positions")
    .filter(({ id, values }) => shown(id) && values.claim === claim && values.stance === "holds")
    .toSorted((a, b) => byYear("last")(graph.provenance(a.id).year, graph.provenance(b.id).year));
  return held.map(({ id }) => quotationOf(sight, id)).find((one) => one.length > 0) ?? [];
}

/** What a claim comes down to, where that is less than something seen or measured. */
function footingSentence(sight: Sight, claim: Id): Inlines {
  const footing = sight.model.footings.get(claim);
  if (footing === undefined || !["stands", "unsupported"].includes(standingIn(sight, claim))) return [];
  const told = comesDownTo[footing];
  return told === undefined ? [] : [told];
}

const comesDownTo: Readonly<Partial<Record<Footing, Said>>> = {
  silent: say`All it comes down to is that something was not reported.`,
  attested: say`All it comes down to is what somebody says.`,
};
