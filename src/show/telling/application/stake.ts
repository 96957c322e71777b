import type { Id } from "../../../base/finding.ts";
import { say } from "../../../base/text/said/said.ts";
import { decidedWords } from "../../desk/visit/blocks/after.ts";
import type { ClaimTurn } from "../../plan/outcome.ts";
import type { Block, Inlines } from "../blocks/block.ts";
import { standingSentences } from "../review/answers/why.ts";
import type { Group, Sight } from "../review/desk.ts";
import { claimInside, heading, line, listed, paragraph, words } from "../review/pieces/inlines.ts";
import { aside, citesFor } from "../review/pieces/cites.ts";
import { claimText } from "../../pages/question.ts";
import { withoutStop } from "../../../link/names/label.ts";
import type { Applied } from "./applied.ts";

/** The questions that an outcome bears on, each with its answers as they stand, and why. */
export function questionBlocks(sight: Sight, applied: Applied): readonly Block[] {
  const turned = turnedBy(applied);
  const groups = sight.groups.filter(
    ({ question, answers, below }) =>
      question !== null && [...answers, ...below].some((claim) => turned.has(claim)),
  );
  return groups.flatMap((group) => [
    ...paragraph([[{ is: "strong", of: [words(group.text, sight.language)] }]]),
    answersOf(sight, group),
  ]);
}

function answersOf(sight: Sight, { answers }: Group): Block {
  return {
    is: "list",
    ordered: false,
    items: answers.map((claim): Inlines => {
      const said = words(withoutStop(claimText(sight.graph, claim)), sight.language);
      return [
        said,
        ...aside(citesFor(sight, claim)),
        ". ",
        ...standingSentences(sight, claim, [say`This answer `]),
      ];
    }),
  };
}

/** What hangs on the object: what a look at it can change, and what would not stand without it. */
export function whyBlocks(sight: Sight, applied: Applied): readonly Block[] {
  const { look, things } = applied;
  const turned = [...turnedBy(applied)].map((claim) => claimInside(sight, claim));
  const resting = [...sight.model.restsOn]
    .filter(
      ([claim, on]) => sight.listed(claim) && things.some(({ id }) => on.some((one) => isOf(sight, id, one))),
    )
    .map(([claim]) => claim);
  return [
    ...paragraph([
      [look.decides],
      turned.length === 0
        ? []
        : [say`What is in question is whether it may be said `, ...listed(turned), "."],
    ]),
    ...(resting.length === 0
      ? []
      : paragraph([
          [
            say`Without what was seen and measured on it, the record would not bear out `,
            ...listed(resting.map((claim) => claimInside(sight, claim))),
            say`: a second look bears on it.`,
          ],
        ])),
  ];
}

/** Whether one thing is the other or what it is part of. */
function isOf({ graph }: Sight, whole: Id, part: Id): boolean {
  for (let at: Id | undefined = part; at !== undefined; at = graph.wholeOf.get(at))
    if (at === whole) return true;
  return false;
}

/** Each outcome with the claims that would stand otherwise. */
export function outcomeBlocks(sight: Sight, { look }: Applied): readonly Block[] {
  return look.outcomes.flatMap((one): readonly Block[] => {
    const turns = one.claims.map((turn) => turnOf(sight, turn));
    const items = turns.length > 0 ? turns : decidedWords(one).map(line);
    return [heading(2, [one.text]), { is: "list", ordered: false, items }];
  });
}

/** What a claim says, how it stands, and how it would. */
function turnOf(sight: Sight, { id, was, is }: ClaimTurn): Inlines {
  return [
    words(withoutStop(claimText(sight.graph, id)), sight.language),
    say`: now `,
    { is: "standing", standing: was },
    say`, then `,
    { is: "standing", standing: is },
    ".",
  ];
}

function turnedBy({ look }: Applied): ReadonlySet<Id> {
  return new Set(look.outcomes.flatMap((one) => one.claims.map((claim) => claim.id)));
}
