import type { Graph } from "../../../../link/graph.ts";
import type { Id } from "../../../../base/finding.ts";
import type { GridDraft, Place } from "../../../../show/desk/grid/draft.ts";
import { landed, landingOf, withHead } from "../../../../show/desk/grid/landing.ts";
import type { Landing } from "../../../../show/desk/grid/landing.ts";
import type { Block } from "../../../../show/desk/grid/pasted.ts";
import { everyRead, rowsRead } from "../../../../show/desk/grid/read.ts";
import type { CellTold, RowRead } from "../../../../show/desk/grid/read.ts";
import { thingsIn } from "../../../../show/desk/grid/said.ts";
import { stepFor } from "../../../../show/desk/grid/saving.ts";
import type { GridStep } from "../../../../show/desk/grid/saving.ts";
import { recordedOf } from "../../../../show/desk/grid/there.ts";
import type { ThereRow } from "../../../../show/desk/grid/there.ts";
import { rowsWeighed } from "../../../../show/desk/grid/weighed.ts";
import type { RowWeighed } from "../../../../show/desk/grid/weighed.ts";
import { answerThrough } from "../../../model/door/serving.ts";
import type { CorpusRead } from "../../../worker/desk.ts";
import { plugins } from "../../../worker/plugins.ts";

/** How a grid is read: its rows, what holds for all of them, and the things that it names. */
export interface GridTold {
  readonly rows: readonly RowRead[];
  readonly every: readonly CellTold[];
  readonly things: readonly Id[];
}

/** What the grid asks of the model, and what each question is answered with. */
export interface GridQuestions {
  readonly read: (draft: GridDraft) => GridTold;
  readonly weigh: (draft: GridDraft) => readonly RowWeighed[];
  readonly recorded: (things: readonly Id[]) => readonly ThereRow[];
  readonly land: (of: { readonly draft: GridDraft; readonly at: Place; readonly block: Block }) => Landing;
  readonly head: (of: {
    readonly draft: GridDraft;
    readonly landing: Landing;
    readonly head: boolean;
  }) => Landing;
  readonly put: (of: { readonly draft: GridDraft; readonly landing: Landing }) => GridDraft;
  readonly step: (draft: GridDraft) => GridStep | null;
}

/** The corpus in which rows are read: what it says, and what it was read from. */
export type GridGround = CorpusRead & { readonly graph: Graph };

/** Answers the grid through a door. */
export function serveGrid(port: MessagePort, ground: () => GridGround | null): void {
  answerThrough<GridQuestions>(port, () => {
    const now = ground();
    return now && answersFrom(now);
  });
}

function answersFrom({ graph, files, read, compute }: GridGround): GridQuestions {
  const weigh = (draft: GridDraft) => rowsWeighed({ graph, files, read, compute, plugins }, draft);
  return {
    read: (draft) => ({
      rows: rowsRead(graph, draft).map((one) => one.read),
      every: everyRead(graph, draft),
      things: thingsIn(graph, draft),
    }),
    weigh,
    recorded: (things) => recordedOf(graph, things),
    land: ({ draft, at, block }) => landingOf(graph, draft, at, block),
    head: ({ draft, landing, head }) => withHead(graph, draft, landing, head),
    put: ({ draft, landing }) => landed(graph, draft, landing),
    step: (draft) => stepFor(graph, draft, weigh(draft)),
  };
}
