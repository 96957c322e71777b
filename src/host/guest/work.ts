import { say } from "../../base/text/said/said.ts";
import type { Said } from "../../base/text/said/said.ts";
import { compute } from "../../derive/run.ts";
import type { Outcome, Run } from "../../derive/run.ts";
import type { Plugin } from "../../plugin.ts";
import type { Declared, Guest } from "./guest.ts";

/** What a computing worker is given: a run, with the guest whose plug-in it is where it is one's; or a guest to ask what it is. */
export type Work = { readonly run: Run; readonly guest: Declared | null } | { readonly declare: Guest };

/** What a computing worker says: how far a run is, what came of it, or what a guest declared. */
export type Done =
  | { readonly key: string; readonly done: number }
  | { readonly key: string; readonly outcome: Outcome }
  | { readonly declared: Declared };

/** Does one piece of work. The interpreter for guests is fetched when the first of them comes. */
export async function work(
  given: Work,
  plugins: readonly Plugin[],
  engine: () => Promise<WebAssembly.Module>,
  tell: (done: Done) => void,
): Promise<void> {
  if ("declare" in given) {
    const { declaredBy } = await import("./guest.ts");
    return tell({ declared: await declaredBy(await engine(), given.declare) });
  }
  const { run, guest } = given;
  const report = (done: number): void => tell({ key: run.key, done });
  if (guest === null) return tell({ key: run.key, outcome: compute(run, plugins, report) });
  const { runGuest } = await import("./guest.ts");
  tell({ key: run.key, outcome: await runGuest(await engine(), guest, run, { report }) });
}

/** How long a guest's work may take before its thread is ended, in milliseconds: longer than its own limit. */
export const patience = 20_000;

/** The outcome of a run whose thread had to be ended. */
export function endedBy({ name }: Guest): Outcome {
  return { status: "failed", why: endedWords(name), passing: true };
}

/** The outcome of a run that was not tried, since an earlier one of the same guest did not end. */
export function notTried({ name }: Guest): Outcome {
  const why = say`The plug-in \`${name}\` of this corpus was not asked again: an earlier run of it did not come to an end`;
  return { status: "failed", why, passing: true };
}

/** What is said of a guest whose thread had to be ended. */
export function endedWords(name: string): Said {
  return say`The plug-in \`${name}\` of this corpus gave no result: it was ended after ${`${patience / 1000} s`}`;
}
