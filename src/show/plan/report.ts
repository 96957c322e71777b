import { objectOf } from "../../base/json.ts";
import type { Standing } from "../../judge/judge.ts";
import type { Plan, Planned, PlannedOutcome } from "../../plan/plan.ts";
import type { More } from "../report/report.ts";
import type { Report } from "../report/schema.ts";

/** The plan as the machine-readable result has it. */
export function planReport({ recorded, proposed, trips, contest }: Plan): More {
  const { undecided } = contest;
  return {
    plan: recorded.map(examinedOf),
    proposed: proposed.map(examinedOf),
    trips: trips.map(({ keeper, examinations, cost, permits, leadTimes, together }) => ({
      keeper,
      examinations: [...examinations],
      cost,
      permits: [...permits],
      leadTimes: [...leadTimes],
      together: together && { ...together, examinations: [...together.examinations] },
    })),
    contest: {
      pairs: contest.pairs.map(({ answers: [one, other], by }) => ({ answers: [one, other], by: [...by] })),
      set: [...contest.set],
      nearMinimal: contest.nearMinimal,
      undecidedPairs: undecided.pairs.map(({ answers: [one, other], proposed: those }) => ({
        answers: [one, other],
        proposed: [...those],
      })),
      undecidedAnswers: undecided.answers.map(({ answer, proposed: those }) => ({
        answer,
        proposed: [...those],
      })),
    },
  };
}

function examinedOf({
  examination,
  decides,
  changed,
  outcomes,
  gain,
  idle,
}: Planned): Report["plan"][number] {
  return {
    examination: examination.id,
    decides: [...decides],
    changes: changed.length,
    outcomes: objectOf(outcomes.map((one) => [one.id, changesIn(one)] as const)),
    cost: examination.cost,
    gain: gain?.bits ?? null,
    idle,
  };
}

function changesIn({ changes }: PlannedOutcome): Record<string, [Standing, Standing]> {
  return objectOf(
    [...changes].map(([id, [was, is]]): readonly [string, [Standing, Standing]] => [id, [was, is]]),
  );
}
