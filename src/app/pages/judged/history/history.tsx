import type { HistoryPage as Data } from "../../../../show/judged/history/page.ts";
import type { useAddress } from "../../../address.ts";
import { YearRod } from "../../../parts/year-rod.tsx";
import { Looks } from "../../../parts/places/looks.tsx";
import { historyWords as words } from "../../../words/judged/history.ts";
import { useSome } from "../../../parts/leaves/some.tsx";
import { HistoryStep } from "./step.tsx";

interface Props {
  readonly page: Data;
  readonly address: ReturnType<typeof useAddress>;
}

/** So many years are shown before the others are asked for. */
const firstYears = 60;

/** The dispute publication by publication: a dated column of what came into print, and what that changed. */
export function HistoryPage({ page, address }: Props) {
  const { asOf, toYear, query } = address;
  const { steps, years, pending, progress } = page;
  const dated = steps.flatMap((step) => step.year ?? []);
  const changes = (step: Data["steps"][number]): boolean => step.changes.some((one) => one.was !== null);
  const changing = steps.filter((step) => step.year !== null && changes(step)).length;
  const only = query.get("look") === "changes";
  const shown = only ? steps.filter(changes) : steps;
  const [first] = dated;
  const [some, more] = useSome(shown, firstYears);
  const looks = [
    ["/history", words.every, !only],
    ["/history?look=changes", words.changing, only],
  ] as const;
  return (
    <>
      <h1>{words.history}</h1>
      {first !== undefined && (progress === null || page.again) && (
        <p className="lead">{words.lead(dated.length, changing, first, dated.at(-1) ?? first)}</p>
      )}
      <YearRod years={years} asOf={asOf} toYear={toYear} />
      {progress !== null && (
        <p className="quiet apart">
          <output>{(page.again ? words.again : words.growing)(progress.done, progress.of)}</output>
        </p>
      )}
      {steps.length === 0 && progress === null && (
        <p className="quiet apart">{asOf === null ? words.noYears : words.noneThen}</p>
      )}
      {pending > 0 && (
        <p className="quiet apart">
          <output>{words.pending(pending)}</output>
        </p>
      )}
      {steps.length > 0 && <Looks label={words.looks} looks={looks} asOf={asOf} />}
      {steps.length > 0 && shown.length === 0 && progress === null && (
        <p className="quiet apart">{words.noChanges}</p>
      )}
      <ol className="through">
        {some.map((step) => (
          <HistoryStep key={step.year ?? "own"} step={step} asOf={asOf} />
        ))}
      </ol>
      {more}
    </>
  );
}
