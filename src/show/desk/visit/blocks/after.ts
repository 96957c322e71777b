import { row, say } from "../../../../base/text/said/said.ts";
import type { Said, Text } from "../../../../base/text/said/said.ts";
import type { Standing } from "../../../../judge/judge.ts";
import type { ClaimTurn, OutcomeLine } from "../../../plan/outcome.ts";
import type { VisitSheet } from "../sheet/sheet.ts";
import { heading, line, listed, sentence } from "./block.ts";
import type { Block, FieldRow } from "./block.ts";
import { oldWords } from "./rows.ts";

/** What each outcome decides, on a leaf that is read when all is measured. */
export function afterBlocks({ examinations, looks }: VisitSheet): readonly Block[] {
  const asked = examinations.filter((one) => one.outcomes.length > 0);
  if (asked.length === 0) return [];
  return [
    { is: "heading", text: say`After the visit: what it decides`, level: 2, apart: true },
    sentence(say`To be read when all is measured and looked for, so that nothing leads the eye.`),
    ...asked.flatMap(({ id, method, outcomes }): readonly Block[] => {
      const lines = looks?.find((one) => one.id === id)?.outcomes ?? [];
      const choice: FieldRow = {
        name: say`What was found`,
        says: [],
        fields: [
          {
            ...line(["found", id], say`outcome`),
            is: "choice",
            choices: [
              { value: "", text: say`none of them yet` },
              ...outcomes.map((one) => ({ value: one.id, text: one.text })),
            ],
          },
        ],
        after: null,
      };
      return [
        heading(method, 3),
        ...outcomes.flatMap((one): readonly Block[] => {
          const told = lines.find((other) => other.id === one.id);
          return [sentence(one.text, true), ...listed(told ? decidedWords(told) : [])];
        }),
        { is: "row", row: choice },
      ];
    }),
  ];
}

/** What an outcome would change, a sentence for each claim. */
export function decidedWords({ claims, pending }: OutcomeLine): readonly Said[] {
  if (claims.length === 0 && pending.length === 0) return [say`No claim would stand differently.`];
  return [
    ...claims.map(turnWords),
    ...(pending.length > 0
      ? [
          say`Still to be computed for it: ${row(
            pending.map((one) => one.text),
            "comma",
          )}.`,
        ]
      : []),
  ];
}

const standings: Readonly<Record<Standing, Said>> = {
  stands: say`stands`,
  open: say`open`,
  falls: say`falls`,
  unsupported: say`unsupported`,
};

function turnWords({ text, was, is }: ClaimTurn): Said {
  return say`${quoted(text)}: now ${standings[was]}, then ${standings[is]}.`;
}

const quoted = (mention: Text) => ({ mention, words: 10_000, quoted: true }) as const;

/** Earlier values on a leaf of their own, for whoever asks for it. */
export function valuesBlocks({ measures, features }: VisitSheet): readonly Block[] {
  const old = [
    ...measures.map((one) => ({ name: say`${one.dimension} of ${one.of.text}`, old: one.old })),
    ...features.map((one) => ({
      name: say`${one.feature}, on ${row(one.of.map((thing) => thing.text))}`,
      old: one.old,
    })),
  ].filter((one) => one.old.length > 0);
  if (old.length === 0) return [];
  return [
    { is: "heading", text: say`Earlier values`, level: 2, apart: true },
    sentence(say`Not to be looked at before the new readings are in.`, true),
    {
      is: "terms",
      rows: old.map((one) => [one.name, say`${row(one.old.map(oldWords), "comma")}`] as const),
    },
  ];
}
