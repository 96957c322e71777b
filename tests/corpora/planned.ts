import { plugins } from "../../plugins/index.ts";
import type { Lens, Memo, Model, SourceFile } from "../../src/build.ts";
import { computingHere, emptyMemo, evaluate } from "../../src/host/evaluate.ts";
import type { Plan, Planned } from "../../src/plan/plan.ts";

/** The plan of files with the model it is of, every number computed. */
export async function planned(
  files: readonly SourceFile[],
  lens: Lens = {},
  memo: Memo = emptyMemo(),
): Promise<{ readonly model: Model; readonly plan: Plan }> {
  const { model } = await evaluate(files, plugins, memo, computingHere(plugins), { lens, reach: { plan: true } });
  if (!model?.plan) throw new Error("no plan");
  return { model, plan: model.plan };
}

/** A recorded examination of a plan. */
export function recordedIn(plan: Plan, id: string): Planned {
  const found = plan.recorded.find((one) => one.examination.id === id);
  if (!found) throw new Error(`no examination ${id}`);
  return found;
}
