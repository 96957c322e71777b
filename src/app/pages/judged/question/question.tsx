import type { Holder, QuestionPage as Question } from "../../../../show/pages/question.ts";
import type { Decider } from "../../../../show/plan/deciding.ts";
import { ArguingOn } from "../../../map/arguing/ways-row.tsx";
import { RecordLink } from "../../../parts/link.tsx";
import { StandingMark } from "../../../parts/standing.tsx";
import { words, yearIn } from "../../../words/index.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { Deciders } from "../../examinations/deciders.tsx";
import { ToForms } from "../../sheet/form/to-form.tsx";
import { YearRod } from "../../../parts/year-rod.tsx";

interface Props {
  /** Deciders are null where no plan is made yet. */
  readonly question: Question & { readonly deciders: readonly Decider[] | null };
  readonly asOf: number | null;
  readonly toYear: (year: number | null) => void;
}

/** One question: its answers, their standing, why, and who holds them since when. */
export function QuestionPage({ question, asOf, toYear }: Props) {
  return (
    <>
      <h1 dir="auto">{question.text}</h1>
      <p className="lead">{summary(question)}</p>
      <ToForms kind="question" id={question.id} asOf={asOf} />
      <ArguingOn kind="question" id={question.id} />
      <YearRod years={question.years} asOf={asOf} toYear={toYear} />
      <h2 className="label">{question.exclusive ? words.answersExclusive : words.answersOpen}</h2>
      <table className="answers">
        <thead>
          <tr>
            <th scope="col">{words.answer}</th>
            <th scope="col">{words.standing}</th>
            <th scope="col">{words.why}</th>
            <th scope="col">{words.heldBy}</th>
          </tr>
        </thead>
        <tbody>
          {question.answers.map((answer) => (
            <tr key={answer.claim}>
              <th scope="row" className="sentence">
                <RecordLink id={answer.claim} text={answer.text} asOf={asOf} />
              </th>
              <td>
                <StandingMark standing={answer.standing} />
              </td>
              <td className="sentence">{inReadersWords(answer.why)}</td>
              <td>
                <Holders holders={answer.holders} asOf={asOf} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {question.later > 0 && <p className="quiet">{words.unnamed(question.later)}</p>}
      <Deciders deciders={question.deciders} asOf={asOf} />
    </>
  );
}

/** Holders of a claim, those who have left it since marked so. */
export function Holders({
  holders,
  asOf,
}: {
  readonly holders: readonly Holder[];
  readonly asOf: number | null;
}) {
  if (holders.length === 0) return <span className="quiet">{words.nobody}</span>;
  return (
    <ul className="holders">
      {holders.map((holder) => (
        <li key={holder.scholar}>
          <RecordLink id={holder.scholar} text={holder.name} asOf={asOf} />
          {holder.since !== null && ` ${yearIn(holder.since)}`}
          {holder.until !== null && words.heldUntil(yearIn(holder.until))}
        </li>
      ))}
    </ul>
  );
}

/** How the question stands, in a sentence. */
function summary(question: Question): string {
  const count = (standing: string): number =>
    question.answers.filter((one) => one.standing === standing).length;
  const holders = new Set(question.answers.flatMap((one) => one.holders.map((holder) => holder.scholar)));
  const years = question.answers.flatMap((one) => one.holders.flatMap((holder) => holder.since ?? []));
  return words.disputeSoFar({
    people: holders.size,
    years: years.length > 1 ? [Math.min(...years), Math.max(...years)] : null,
    stands: count("stands"),
    open: count("open"),
  });
}
