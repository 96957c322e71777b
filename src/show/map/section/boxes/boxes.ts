import type { Id } from "../../../../base/finding.ts";
import { count, say } from "../../../../base/text/said/said.ts";
import { labelText } from "../../../../link/names/label.ts";
import type { Reported } from "../../../report/report.ts";
import type { BandName, Box, Port } from "../../scene.ts";
import type { Ranks } from "../net/ranks.ts";
import { wholeOf } from "../net/reach.ts";
import type { Field } from "../open/shown.ts";
import { folds } from "../open/sketch.ts";
import type { Sketch } from "../open/sketch.ts";
import { beamLook } from "./beam.ts";
import { claimLook } from "./claim.ts";
import type { Sized } from "./claim.ts";
import { foldWords } from "./fold-words.ts";
import { pileLook, pileTitle } from "./label.ts";
import { numberLook, numberValue } from "./number.ts";
import { settingOf } from "./setting.ts";
import { mostParts, mostPartsNarrow, thingLook } from "./thing.ts";
import { stepWords, titled } from "./words.ts";

/** What boxes are made from. */
export interface Making {
  readonly whole: Reported;
  readonly field: Field;
  readonly ranks: Ranks;
  readonly sketches: readonly Sketch[];
  readonly unfolded: ReadonlySet<Id>;
  readonly narrow: boolean;
  /** The answers of the question, or of all questions. */
  readonly answers: readonly Id[];
  /** The box that shows a node of the map; null where none does. */
  readonly boxOf: (node: Id) => Id | null;
  /** Labels that are in conflict with another of their own pile. */
  readonly conflicts: (members: readonly Id[]) => boolean;
}

type Made = Sized & {
  readonly title: string;
  readonly ports?: readonly Port[];
  readonly folded?: string | null;
};

const foldWidth = 152;
/** The fold of all further claims says how many of them fall and hang, too. */
const widestFold = 208;
const foldHeight = 28;

/** A box of the section with its words, its size, its place above the things and what is folded up in it. */
export function boxOfSketch(making: Making, sketch: Sketch, drawn: ReadonlySet<Id>): Box {
  const { field, whole, ranks } = making;
  const standing = (id: Id) => whole.judgement.standings.get(id) ?? null;
  const folded = foldWords(field, sketch, drawn, standing);
  const words = folded === null ? null : field.net.told(folded);
  const made = madeOf(making, sketch, words);
  const row = rowOf(ranks, sketch);
  return {
    id: sketch.id,
    records: sketch.records,
    title: titled(made.title),
    band: bandOf(sketch, row, ranks.top),
    row,
    width: made.width,
    height: made.height,
    ports: made.ports ?? [],
    folded: made.folded ?? words,
    look: made.look,
  };
}

function madeOf(making: Making, sketch: Sketch, words: string | null): Made {
  const { whole, field, boxOf } = making;
  const { net } = field;
  const { graph, told } = net;
  const { id, records } = sketch;
  switch (sketch.as) {
    case "claim":
      return {
        ...claimLook(net, id, making.answers.includes(id) ? "answer" : "claim", making.narrow),
        title: told(labelText(graph, id)),
      };
    case "step": {
      const step = net.steps.get(id);
      if (!step) throw new Error(`map: no step ${id}`);
      const premises = [...new Set(step.because.flatMap((premise) => boxOf(premise) ?? []))];
      return {
        ...beamLook(net, step, premises, making.narrow),
        title: told(stepWords(net, step) ?? say`an argument`),
      };
    }
    case "number":
      return {
        ...numberLook(net, whole.derivations, id),
        title: told(say`${labelText(graph, id)}: ${numberValue(graph, whole.derivations.byId.get(id))}`),
      };
    case "pile":
      return {
        ...pileLook(net, records, making.conflicts(records)),
        title: told(pileTitle(graph, records)),
      };
    case "thing": {
      const parts = partsSeen(making, id);
      const folded = parts.length > (making.narrow ? mostPartsNarrow : mostParts) && !making.unfolded.has(id);
      return {
        ...thingLook(net, id, folded ? [] : parts, making.narrow),
        title: told(labelText(graph, id)),
        // More parts than are drawn are always several.
        folded: folded ? told(say`${count(parts.length)} parts`) : null,
      };
    }
    case "fold": {
      const width = id === folds.others ? widestFold : foldWidth;
      const measure = { face: "sans", size: 13, width: width - 16, lines: 1 } as const;
      const look = { as: "fold", words: settingOf(words ?? "", measure) } as const;
      return { look, width, height: foldHeight, title: words ?? "" };
    }
  }
}

/** The parts of a whole that labels on the map are of, in corpus order. */
function partsSeen({ field, sketches }: Making, whole: Id): readonly Id[] {
  const { net } = field;
  const labels = sketches.flatMap((one) => (one.as === "pile" ? one.records : []));
  const seen = new Set(labels.flatMap((label) => net.things(label)));
  return net.graph
    .withParts(whole)
    .filter((id) => id !== whole && seen.has(id) && wholeOf(net, id) === whole);
}

/** Things below the ground, a fold beside the steps for its claim, other folds where what they hold would stand. */
function rowOf(ranks: Ranks, { id, as, of }: Sketch): number {
  if (as === "thing" || id === folds.things) return -1;
  if (of !== null) return ranks.rowOf(of) - 0.25;
  if (id === folds.answers) return ranks.top;
  if (id === folds.others) return Math.max(1, ranks.top - 1);
  return ranks.rowOf(id);
}

function bandOf({ as, id }: Sketch, row: number, top: number): BandName {
  if (as === "thing" || id === folds.things) return "things";
  if (as === "pile") return "seen";
  if (as === "number") return "computed";
  return row >= top ? "answers" : "claims";
}
