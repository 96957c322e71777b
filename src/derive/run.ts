import type { Id } from "../base/finding.ts";
import { inEnglish } from "../base/text/said/english.ts";
import { say } from "../base/text/said/said.ts";
import type { Said, Text } from "../base/text/said/said.ts";
import { hashOf } from "../base/text/hash.ts";
import { canonical, fieldsOf } from "../base/json.ts";
import type { Json } from "../base/json.ts";
import type { PluginFile } from "../read/source-file.ts";
import type { Graph } from "../link/graph.ts";
import { withheldIn } from "../link/withheld.ts";
import type { ComputedNumber, Inputs, LeftOut, Plugin, Recorded, Refusal, Settings } from "../plugin.ts";
import { isRefusal, randomFrom } from "../plugin.ts";
import { leftOutFor } from "./recorded/left-out.ts";

/** One computation, whole: all it needs and nothing of the graph. */
export interface Run {
  /** Hash of the plug-in, its version, the settings and the inputs: the key of the outcome. */
  readonly key: string;
  readonly plugin: string;
  readonly inputs: Inputs;
  readonly settings: Settings;
  readonly looks: number;
  /** Only where the plug-in computes on something that is no quantity. */
  readonly recorded?: Recorded;
  /** A trial, of which nobody looks at a figure: only numbers are asked for. */
  readonly bare?: true;
}

/** What came of a run: its numbers, or why there are none. Plain data, kept in the memo. */
export type Outcome =
  | {
      readonly status: "computed";
      readonly numbers: Readonly<Record<string, ComputedNumber>>;
      readonly leftOut: readonly LeftOut[];
      readonly warnings: readonly string[];
      readonly data: Json;
      /** Numbers alone, with what else is short: no figure can be drawn from it. */
      readonly bare?: true;
    }
  | { readonly status: "refused"; readonly reason: string; readonly why: Text }
  /** `passing`: it might go well another time, so it is not kept. */
  | { readonly status: "failed"; readonly why: Text; readonly passing?: true };

/** A run with its key; two runs on the same inputs and settings are the same run. */
export function runOf(plugin: Plugin, computedOn: Omit<Run, "key" | "plugin">): Run {
  const parts = { plugin: plugin.id, version: plugin.version, ...computedOn };
  return { key: hashOf(canonical(parts as unknown as Json)), plugin: plugin.id, ...computedOn };
}

/** Runs one derivation to its end; a throw in the plug-in is an outcome that failed. `report` gets 0 to 1. */
export function compute(run: Run, plugins: readonly Plugin[], report: (done: number) => void): Outcome {
  const plugin = plugins.find((one) => one.id === run.plugin);
  if (!plugin) return { status: "failed", why: say`Unknown plug-in \`${run.plugin}\`` };
  const random = randomFrom(Number.parseInt(run.key.slice(0, 8), 16) | 0);
  let result;
  try {
    const tools = { random, report, looks: run.looks, ...(run.bare ? { onlyNumbers: run.bare } : {}) };
    result = plugin.compute(run.inputs, run.settings, tools, run.recorded);
  } catch (error) {
    return { status: "failed", why: error instanceof Error ? error.message : String(error) };
  }
  if (isRefusal(result)) return refusedBecause(result);
  const unsound = Object.entries(result.numbers).find(([, number]) => !Number.isFinite(number.value));
  if (unsound) return { status: "failed", why: say`The number \`${unsound[0]}\` is not finite` };
  return asAsked({ status: "computed", ...result }, run);
}

/** An outcome as its run asks for it: of a trial without what only a figure is drawn from, which is nearly all of it. */
export function asAsked(outcome: Outcome, run: Run): Outcome {
  if (!run.bare || outcome.status !== "computed") return outcome;
  const short = Object.entries(fieldsOf(outcome.data)).filter(([, value]) => typeof value !== "object");
  return { ...outcome, warnings: [], data: Object.fromEntries(short), bare: true };
}

/** Whether an outcome answers what a run asks for. */
export function answers(outcome: Outcome | undefined, run: Run): outcome is Outcome {
  return outcome !== undefined && (run.bare === true || isWhole(outcome));
}

/** Whether an outcome has all that came of its run. */
export function isWhole(outcome: Outcome): boolean {
  return outcome.status !== "computed" || outcome.bare !== true;
}

function refusedBecause(refusal: Refusal): Outcome {
  return { status: "refused", reason: refusal.refused, why: refusal.message };
}

/** Outcomes by the key of their run. */
export type ComputeMemo = ReadonlyMap<string, Outcome>;

/** A number of another derivation, as `ID.name` names it. */
export interface NumberReference {
  readonly derivation: Id;
  readonly number: string;
}

/** Why a derivation by a plug-in of the corpus has no number before the user allowed that very file. */
export function notAllowed({ name, file, hash }: PluginFile): Said {
  return say`The plug-in \`${name}\` of this corpus has not been allowed, so nothing of it was run: ${file}, SHA-256 ${hash}. Read it; then allow it on the page of the number, or with \`variorum compute --allow-plugin ${name}\``;
}

/** What a stranger's plug-in said, without its own words where it read something withheld: they could tell it. */
export function discreet(
  outcome: Outcome,
  plugin: Plugin | undefined,
  { run, used }: { readonly run: Run; readonly used: readonly Id[] },
  graph: Graph,
): Outcome {
  if (plugin?.guest === undefined || ![...used, ...idsIn(run)].some(withheldIn(graph))) return outcome;
  const why = say`the plug-in said why, which is not told, since it read something withheld`;
  if (outcome.status === "refused") return { ...outcome, reason: "not-told", why };
  if (outcome.status !== "computed") return { ...outcome, why };
  return {
    ...outcome,
    leftOut: outcome.leftOut.map(({ id }) => ({ id, why: leftOutFor.byPlugin })),
    data: { figure: { title: inEnglish(plugin.title), panels: [] }, sentence: "" },
  };
}

/** Every id that a run hands over. */
function idsIn({ inputs, recorded }: Run): readonly Id[] {
  const measured = Object.values(inputs).flat();
  const observed = Object.values(recorded?.observations ?? {}).flat();
  const dates = Object.values(recorded?.dates ?? {});
  return [
    ...measured.flatMap((one) => [one.id, one.artefact, one.source]),
    ...observed.flatMap((one) => [one.id, ...one.artefacts, one.source, ...one.alsoFrom, ...one.by]),
    ...dates.flatMap((one) => [
      ...one.events.map((event) => event.record),
      ...one.statements.map((statement) => statement.record),
    ]),
  ].filter((id) => id !== null);
}
