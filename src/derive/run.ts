import type { Id } from "../base/finding.ts";
import { hashOf } from "../base/hash.ts";
import { canonical } from "../base/json.ts";
import type { Json } from "../base/json.ts";
import type { ComputedNumber, Inputs, LeftOut, Plugin, Refusal, Settings } from "../plugin.ts";
import { isRefusal, randomFrom } from "../plugin.ts";

/** One computation, whole: all it needs and nothing of the graph. */
export interface Run {
  /** Hash of the plug-in, its version, the settings and the inputs: the key of the outcome. */
  readonly key: string;
  readonly plugin: string;
  readonly inputs: Inputs;
  readonly settings: Settings;
  readonly looks: number;
}

/** What came of a run: its numbers, or why there are none. Plain data, kept in the memo. */
export type Outcome =
  | {
      readonly status: "computed";
      readonly numbers: Readonly<Record<string, ComputedNumber>>;
      readonly leftOut: readonly LeftOut[];
      readonly warnings: readonly string[];
      readonly data: Json;
    }
  | { readonly status: "refused"; readonly reason: string; readonly why: string }
  | { readonly status: "failed"; readonly why: string };

/** A run with its key; two runs on the same inputs and settings are the same run. */
export function runOf(plugin: Plugin, inputs: Inputs, settings: Settings, looks: number): Run {
  const parts = { plugin: plugin.id, version: plugin.version, inputs, settings, looks };
  return { key: hashOf(canonical(parts as unknown as Json)), plugin: plugin.id, inputs, settings, looks };
}

/** Runs one derivation to its end; a throw in the plug-in is an outcome that failed. `report` gets 0 to 1. */
export function compute(run: Run, plugins: readonly Plugin[], report: (done: number) => void): Outcome {
  const plugin = plugins.find((one) => one.id === run.plugin);
  if (!plugin) return { status: "failed", why: `Unknown plug-in \`${run.plugin}\`` };
  const random = randomFrom(Number.parseInt(run.key.slice(0, 8), 16) | 0);
  let result;
  try {
    result = plugin.compute(run.inputs, run.settings, { random, report, looks: run.looks });
  } catch (error) {
    return { status: "failed", why: error instanceof Error ? error.message : String(error) };
  }
  if (isRefusal(result)) return refusedBecause(result);
  const unsound = Object.entries(result.numbers).find(([, number]) => !Number.isFinite(number.value));
  if (unsound) return { status: "failed", why: `The number \`${unsound[0]}\` is not finite` };
  return { status: "computed", ...result };
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
