import type { Id } from "../../../base/finding.ts";
import { row, say } from "../../../base/text/said/said.ts";
import { examinationOf } from "../../../link/suppose/examination.ts";
import { examinationLine } from "../../plan/line.ts";
import { linesOf } from "../../plan/page.ts";
import { visitedIn } from "../../desk/visit/sheet/examined.ts";
import { thingLines } from "../../desk/visit/sheet/things.ts";
import { withholdingSaid } from "../withholding.ts";
import type { Block, Manuscript } from "../blocks/block.ts";
import { sightOf } from "../review/desk.ts";
import type { ReviewDesk, Sight } from "../review/desk.ts";
import { heading, line, paragraph } from "../review/pieces/inlines.ts";
import type { Applied } from "./applied.ts";
import { conditionBlocks, objectBlocks } from "./asked.ts";
import { earlierBlocks } from "./earlier.ts";
import { outcomeBlocks, questionBlocks, whyBlocks } from "./stake.ts";

/** An application to a keeper for one examination; null where there is none of that name, or it is withheld. */
export function applicationOf(desk: ReviewDesk, id: Id): Manuscript | null {
  const { model, plugins } = desk;
  const { graph, plan } = model;
  const examination = examinationOf(graph, id);
  const visited = visitedIn(graph, { examination: id, keeper: null, also: [] });
  const planned = plan?.recorded.find((one) => one.examination.id === id);
  if (!examination || !visited || !plan || !planned) return null;
  const sight = { ...sightOf(desk, null), itself: say`the present application` };
  const applied: Applied = {
    examination,
    look: examinationLine(linesOf(model, plugins, plan), planned, null),
    things: thingLines(graph, visited.things),
  };
  return {
    title: titleOf(applied),
    authors: graph.settings.authors.map((one) => one.name),
    language: "en",
    blocks: blocksOf(sight, applied),
    computations: [],
  };
}

function titleOf({ things }: Applied): Manuscript["title"] {
  const names = things.map((one) => one.text);
  return names.length > 0 ? say`Application to examine ${row(names)}` : say`Application for an examination`;
}

/** Sections without anything to say are left out. */
function blocksOf(sight: Sight, applied: Applied): readonly Block[] {
  const sections: readonly (readonly [ReturnType<typeof say>, readonly Block[]])[] = [
    [say`What is asked for`, objectBlocks(sight, applied)],
    [say`The question`, questionBlocks(sight, applied)],
    [say`Why this object`, whyBlocks(sight, applied)],
    [say`What was done so far`, earlierBlocks(sight, applied)],
    [say`What each outcome decides`, outcomeBlocks(sight, applied)],
    [say`Amounts, risks and conditions`, conditionBlocks(applied)],
  ];
  return [
    ...sections.flatMap(([title, blocks]) =>
      blocks.length === 0 ? [] : [heading(1, line(title)), ...blocks],
    ),
    heading(1, line(say`Literature`)),
    { is: "references" },
    ...paragraph(withholdingSaid(sight.graph).map(line)),
  ];
}
