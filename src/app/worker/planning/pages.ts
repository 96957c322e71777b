import { plugins } from "../plugins.ts";
import type { Model } from "../../../build.ts";
import type { Plan } from "../../../plan/plan.ts";
import { decidersOf } from "../../../show/plan/deciding.ts";
import type { Decider } from "../../../show/plan/deciding.ts";
import { examinationLine } from "../../../show/plan/line.ts";
import type { ExaminationLine } from "../../../show/plan/line.ts";
import { examinationsPage, linesOf } from "../../../show/plan/page.ts";
import type { ExaminationsPage } from "../../../show/plan/page.ts";
import type { QuestionPage } from "../../../show/pages/question.ts";
import type { Sheet } from "../../../show/pages/sheet.ts";
import type { Desk } from "../desk.ts";
import { unsupposed } from "../../../derive/lens.ts";
import type { Progress } from "./slices.ts";

/** The model of the record itself in the year looked at: what is to be planned. */
const record = ({ model, under }: Desk): Model =>
  model.lens.suppose === undefined ? model : under(unsupposed(model.lens));

/** A plan in words stays the same however often it is asked for. */
const pages = new WeakMap<Plan, ExaminationsPage>();

/** The page of examinations; where its plan is not made yet, how far it has come, or for how many numbers it waits. */
export function examinationsAt(
  desk: Desk,
): ExaminationsPage & { readonly progress: Progress | null; readonly waitsFor: number } {
  const model = record(desk);
  const own = model.derivations.missing;
  // What would change cannot be told before it is known what is.
  if (own.length > 0) {
    desk.need(own);
    return { ...examinationsPage(model, plugins, null), progress: null, waitsFor: own.length };
  }
  const { plan, progress, missing } = desk.plans.make(model);
  desk.need(missing);
  const page = (plan && pages.get(plan)) ?? examinationsPage(model, plugins, plan);
  if (plan) pages.set(plan, page);
  return { ...page, progress, waitsFor: 0 };
}

/** What would decide something: null where no plan is made yet. */
interface Deciding {
  readonly deciders: readonly Decider[] | null;
}

/** A question with the examinations that would decide an answer of it. */
export function withDeciders(desk: Desk, page: QuestionPage | null): (QuestionPage & Deciding) | null {
  return (
    page && {
      ...page,
      deciders: deciders(
        desk,
        page.answers.map((one) => one.claim),
      ),
    }
  );
}

/** A sheet with the examinations that would decide its claim, or with what the outcomes of its examination would change. */
export function withOutcomes(
  desk: Desk,
  sheet: Sheet | null,
): (Sheet & Deciding & { readonly examination: ExaminationLine | null }) | null {
  if (!sheet) return null;
  const model = record(desk);
  const plan = desk.plans.made(model);
  const planned = plan && [...plan.recorded, ...plan.proposed].find((one) => one.examination.id === sheet.id);
  return {
    ...sheet,
    deciders: sheet.kind === "claim" ? deciders(desk, [sheet.id]) : [],
    examination: plan && planned ? examinationLine(linesOf(model, plugins, plan), planned, null) : null,
  };
}

function deciders(desk: Desk, claims: readonly string[]): readonly Decider[] | null {
  const model = record(desk);
  const plan = desk.plans.made(model);
  return plan && decidersOf(linesOf(model, plugins, plan), plan, claims);
}
