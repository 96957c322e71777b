import { row, say } from "../../../../base/text/said/said.ts";
import type { Text } from "../../../../base/text/said/said.ts";
import type { ExaminationLine } from "../../../plan/line.ts";
import type { VisitSheet } from "../sheet/sheet.ts";
import { heading, listed, sentence } from "./block.ts";
import type { Block } from "./block.ts";

/** What is to be known and asked before anybody goes: keepers, permissions, cautions; what uses nothing up first. */
export function beforeBlocks({ looks, examinations }: VisitSheet): readonly Block[] {
  if (!looks || looks.length === 0) return [];
  return [
    heading(say`Before the visit`),
    ...looks.flatMap((look) => [
      ...(examinations.length > 1 ? [heading(look.method, 3)] : []),
      ...lookBlocks(look),
    ]),
    sentence(
      say`Nothing here is leave to do anything: the keeper's rules, the law of the place and licensed people decide.`,
    ),
  ];
}

function lookBlocks(look: ExaminationLine): readonly Block[] {
  const rows: readonly (readonly [Text, readonly Text[]])[] = [
    [
      say`On`,
      look.things.length === 0
        ? []
        : [
            say`${row(
              look.things.map((one) => one.text),
              "comma",
            )}`,
          ],
    ],
    [say`Keeper`, look.keepers],
    [say`Permission`, look.permits],
    [say`Ask ahead`, look.leadTimes],
    [say`Cost`, look.cost === null ? [] : [look.cost]],
  ];
  const told = rows.flatMap(([name, texts]) => texts.map((text): readonly [Text, Text] => [name, text]));
  const gentler = look.gentler.map((one) => one.text);
  return [
    { is: "terms", rows: told },
    ...listed(look.notes),
    ...(look.destructive ? [sentence(say`It uses something up.`, true)] : []),
    ...(gentler.length > 0
      ? [sentence(say`Ways that use nothing up come first: ${row(gentler, "comma")}.`)]
      : []),
    ...(look.asks.length > 0 ? [sentence(say`A keeper will ask:`), ...listed(look.asks)] : []),
    ...look.cautions.map((one) => sentence(one)),
  ];
}
