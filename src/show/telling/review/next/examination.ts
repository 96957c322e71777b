import { say } from "../../../../base/text/said/said.ts";
import type { Said } from "../../../../base/text/said/said.ts";
import type { Standing } from "../../../../judge/judge.ts";
import type { ExaminationLine } from "../../../plan/line.ts";
import type { OutcomeLine } from "../../../plan/outcome.ts";
import type { Block, Inlines } from "../../blocks/block.ts";
import type { Sight } from "../desk.ts";
import { claimInside, heading, listed, paragraph, sentences, words } from "../pieces/inlines.ts";

/** One examination: what it would decide, what each outcome changes, and what there is to ask and to mind. */
export function examinationBlocks(sight: Sight, one: ExaminationLine): readonly Block[] {
  const method = typeof one.method === "string" ? words(one.method, sight.language) : one.method;
  const things = listed(one.things.map(({ text }) => [text]));
  return [
    heading(2, [method]),
    ...paragraph([
      things.length === 0 ? [] : [say`It looks at `, ...things, "."],
      [one.decides],
      one.destructive ? [say`It uses something up, and cannot be taken back.`] : [],
      gentler(one),
    ]),
    { is: "list", ordered: false, items: one.outcomes.map((outcome) => outcomeItem(sight, outcome)) },
    ...terms(one),
    ...cautions(one),
  ];
}

function gentler({ gentler: others }: ExaminationLine): Inlines {
  if (others.length === 0) return [];
  return [
    say`To be tried first, for they use nothing up: `,
    ...listed(others.map(({ text }) => [quotedText(text)])),
    ".",
  ];
}

const quotedText = (text: ExaminationLine["method"]): Said => say`“${text}”`;

const then: Readonly<Record<Standing, readonly [one: Said, several: Said]>> = {
  stands: [say`would stand`, say`would stand`],
  open: [say`would be open`, say`would be open`],
  falls: [say`would fall`, say`would fall`],
  unsupported: [say`would be without support`, say`would be without support`],
};

const order: readonly Standing[] = ["stands", "falls", "open", "unsupported"];

/** One outcome and what would follow from it, answers first. */
function outcomeItem(sight: Sight, { text, claims, pending }: OutcomeLine): Inlines {
  const lead: Inlines = typeof text === "string" ? [words(ended(text), sight.language)] : [text, "."];
  const told = claims.filter(({ id }) => sight.listed(id));
  const clauses = order.map((standing): Inlines => {
    const those = told.filter(({ is }) => is === standing);
    if (those.length === 0) return [];
    const [one, several] = then[standing];
    const named = listed(those.map(({ id }) => claimInside(sight, id)));
    return those.length === 1
      ? [say`the claim `, ...named, " ", one]
      : [say`the claims `, ...named, " ", several];
  });
  const followed: Inlines =
    told.length === 0
      ? [say`No claim would stand otherwise than now.`]
      : [say`Then `, ...listed(clauses), "."];
  return sentences([
    lead,
    followed,
    pending.length === 0 ? [] : [say`A number on which this hangs is still to be computed.`],
  ]);
}

const ended = (text: string): string => (/[.!?…。]$/u.test(text.trim()) ? text.trim() : `${text.trim()}.`);

/** What there is to ask, of whom, and how long before. */
function terms(one: ExaminationLine): readonly Block[] {
  const rows: readonly (readonly [Said, readonly string[]])[] = [
    [say`Cost`, one.cost === null ? [] : [one.cost]],
    [say`Keeper`, one.keepers],
    [say`Permit`, one.permits],
    [say`Time to ask ahead`, one.leadTimes],
    [say`To be known`, one.notes],
  ];
  const told = rows
    .filter(([, values]) => values.length > 0)
    .map(([name, values]): readonly [Inlines, Inlines] => [
      [name],
      values.flatMap((value, place): Inlines =>
        place === 0 ? [words(value, null)] : ["; ", words(value, null)],
      ),
    ]);
  return told.length === 0 ? [] : [{ is: "terms", rows: told }];
}

/** What is to be minded, and what a keeper will ask of whoever wants to use something up. */
function cautions({ cautions: said, asks }: ExaminationLine): readonly Block[] {
  return [
    ...said.map((text): Block => ({ is: "caution", of: [text] })),
    ...(asks.length === 0
      ? []
      : [
          {
            is: "caution" as const,
            of: sentences([[say`A keeper will ask:`], ...asks.map((text): Inlines => [text])]),
          },
        ]),
  ];
}
