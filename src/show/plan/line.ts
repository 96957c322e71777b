import type { Id } from "../../base/finding.ts";
import type { Said, Text } from "../../base/text/said/said.ts";
import { quotedLabel } from "../../judge/rules/tell.ts";
import type { Planned } from "../../plan/plan.ts";
import { named } from "../judged/standpoints/named.ts";
import type { Named } from "../judged/standpoints/named.ts";
import { gainTable, noGainLine } from "./gain.ts";
import type { GainTable } from "./gain.ts";
import { byPlace, outcomeLine } from "./outcome.ts";
import type { OutcomeLine, Telling } from "./outcome.ts";
import { costInWords, decidesInWords } from "./wording.ts";

/** One examination as the page lists it. */
export interface ExaminationLine {
  readonly id: Id;
  /** It has a sheet of its own; the record itself suggests the others. */
  readonly recorded: boolean;
  readonly method: Text;
  readonly things: readonly Named[];
  /** What it would decide, in one line. */
  readonly decides: Said;
  /** It can make an answer stand or fall. */
  readonly decidesAnswer: boolean;
  readonly idle: boolean;
  readonly cost: string | null;
  readonly destructive: boolean;
  /** Others that use nothing up, to be asked for first. */
  readonly gentler: readonly Named[];
  readonly keepers: readonly string[];
  readonly permits: readonly string[];
  readonly leadTimes: readonly string[];
  /** What those say who let one in. */
  readonly notes: readonly string[];
  /** What a keeper will ask; empty for what uses nothing up. */
  readonly asks: readonly Said[];
  /** What is to be borne in mind besides. */
  readonly cautions: readonly Said[];
  readonly outcomes: readonly OutcomeLine[];
  readonly gain: GainTable | null;
  readonly noGain: Said | null;
}

/** What the lines of one plan are told with. */
export interface Lines extends Telling {
  readonly costsIn: string;
  /** The name of any examination of the plan. */
  readonly methodOf: (id: Id) => Text;
}

/** An examination with its outcomes in words; `place` is its place by gain for its cost. */
export function examinationLine(lines: Lines, planned: Planned, place: number | null): ExaminationLine {
  const { graph, methodOf } = lines;
  const { examination, places, cautions } = planned;
  const gained = planned.gain?.outcomes ?? [];
  const pending = planned.outcomes.some((one) => one.pending.length > 0);
  const inOrder = planned.decides.toSorted(byPlace(lines));
  return {
    id: examination.id,
    recorded: examination.origin === "recorded",
    method: methodOf(examination.id),
    things: places.map((one) => named(graph, one.artefact)),
    decides: decidesInWords(
      {
        decides: inOrder.filter((claim) => !overturns(planned, claim)),
        overturns: inOrder.filter((claim) => overturns(planned, claim)),
        changed: planned.changed.length,
        always: planned.decidesInEveryOutcome,
        outcomes: planned.outcomes.length,
        idle: planned.idle,
        pending,
      },
      (claim) => quotedLabel(graph, claim),
    ),
    decidesAnswer: planned.decides.length > 0 && !planned.idle,
    idle: planned.idle && !pending,
    cost: costInWords(examination.cost, lines.costsIn),
    destructive: examination.destructive,
    gentler: planned.gentler.map((id) => ({ id, text: methodOf(id) })),
    keepers: once(places.map((one) => one.keeper ?? one.heldAt)),
    permits: toldOnce([examination.permit, ...places.map((one) => one.permit)]),
    leadTimes: once(places.map((one) => one.leadTime)),
    notes: once(places.map((one) => one.note)),
    asks: cautions.flatMap((one) => (one.kind === "destructive" ? one.asks : [])),
    cautions: cautions.flatMap((one) => (one.kind === "in-the-ground" ? [one.says] : [])),
    outcomes: planned.outcomes.map((one, at) => outcomeLine(lines, one, gained[at]?.p ?? null)),
    gain: gainTable(graph, planned, place),
    noGain: noGainLine(graph, planned),
  };
}

/** Whether an answer that can be made to stand or fall does one of the two now. */
function overturns({ outcomes }: Planned, claim: Id): boolean {
  return outcomes.some(({ changes }) => {
    const [was] = changes.get(claim) ?? [];
    return was === "stands" || was === "falls";
  });
}

/** Texts without those that another one says with more words. */
export function toldOnce(texts: readonly (string | null)[]): readonly string[] {
  const all = once(texts);
  return all.filter((one) => !all.some((other) => other !== one && other.includes(one)));
}

function once(texts: readonly (string | null)[]): readonly string[] {
  return [...new Set(texts.flatMap((one) => one ?? []))];
}
