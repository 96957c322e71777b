import type { Id } from "../../../base/finding.ts";
import type { Said } from "../../../base/text/said/said.ts";
import type { ComputeMemo, Run } from "../../../derive/run.ts";
import { linesTo } from "../../../judge/resting/lines/lines.ts";
import type { Lines } from "../../../judge/resting/lines/lines.ts";
import { lossSets } from "../../../judge/resting/loss-sets.ts";
import type { LossSets } from "../../../judge/resting/loss-sets.ts";
import type { Graph } from "../../../link/graph.ts";
import type { Plugin } from "../../../plugin.ts";
import { linkTo } from "../../pages/pieces.ts";
import type { Piece } from "../../pages/pieces.ts";
import type { Reported } from "../../report/report.ts";
import { factored } from "./factored.ts";
import { gistOf, linesInWords, notLookedFor, setInWords, yetInWords } from "./wording.ts";

/** What a claim that answers a question would fall without, and the lines that lead to it. */
export interface RestingPage {
  /** How many losses it takes; null where nothing was looked for. */
  readonly gist: Said | null;
  /** Sets of two losses and of three, none of which could be spared. */
  readonly together: readonly (readonly Piece[])[];
  /** What was not looked for, or waits. */
  readonly note: Said | null;
  /** Whether it is for the sake of the numbers alone that no larger sets were looked for. */
  readonly further: boolean;
  /** How many lines lead to it, and through what all of them pass. */
  readonly lines: readonly Piece[];
  /** Why that number says too much; null where it does not. */
  readonly yet: readonly Piece[] | null;
  /** Each line from the thing or the report up; the claim itself is left out. */
  readonly paths: readonly (readonly Piece[])[];
  /** Claims that hold each other up in a circle. */
  readonly circles: readonly (readonly Piece[])[];
  /** Two sources of different lines and the author they have in common. */
  readonly sameAuthor: readonly (readonly [Piece, Piece, Piece])[];
}

/** Sets beyond these are not joined in rows. */
const mostSets = 300;

/** What a claim rests on, and the runs that would tell more; nothing for what answers no question or does not stand. */
export function restingPage(
  model: Reported,
  plugins: readonly Plugin[],
  memo: ComputeMemo,
  id: Id,
): { readonly page: RestingPage | null; readonly missing: readonly Run[] } {
  const { graph, judgement } = model;
  if (!graph.list("questions").some((one) => one.values.answers.includes(id)))
    return { page: null, missing: [] };
  const sets = lossSets({ ...model, plugins, memo }, id);
  const lines = linesTo(graph, judgement, id);
  if (!sets || !lines) return { page: null, missing: [] };
  return { page: restingOf(graph, sets, lines), missing: sets.missing };
}

/** Loss sets and lines in words; of what is withheld only that there is something. */
export function restingOf(graph: Graph, sets: LossSets, lines: Lines): RestingPage {
  const link = (id: Id): Piece => linkTo(graph, id);
  /** Alternatives by name; what is withheld comes last and once. */
  const named = (ids: readonly Id[]): readonly Piece[] => {
    const pieces = distinctly(ids.map((id) => [link(id)])).flat();
    return [...pieces.filter((one) => one.to !== null), ...pieces.filter((one) => one.to === null)];
  };
  const larger = [2, 3].flatMap((size) =>
    factored(sets.sets.filter((set) => set.length === size).slice(0, mostSets)),
  );
  return {
    gist: gistOf(sets),
    together: distinctly(larger.map((choice) => setInWords(choice.map(named)))),
    note: notLookedFor(sets),
    further: sets.stopped === "numbers",
    lines: linesInWords(lines.paths.length, lines.singlePoints.map(link)),
    yet: yetInWords(sets, lines.paths.length, link),
    paths: lines.paths.map((path) => path.slice(0, -1).map(link)),
    circles: lines.circles.map((circle) => circle.map(link)),
    sameAuthor: lines.sameAuthor.map(([one, other, scholar]) => [link(one), link(other), link(scholar)]),
  };
}

/** Lines that read the same are told once. */
function distinctly(lines: readonly (readonly Piece[])[]): readonly (readonly Piece[])[] {
  return [
    ...new Map(
      lines.map((pieces) => [pieces.map((piece) => piece.to ?? piece.text).join(""), pieces]),
    ).values(),
  ];
}
