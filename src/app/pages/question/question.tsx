import { yearText } from "../../../base/date/year.ts";
import type { Holder, QuestionPage as Question } from "../../../show/pages/question.ts";
import type { Decider } from "../../../show/plan/deciding.ts";
import { RecordLink } from "../../parts/link.tsx";
import { StandingMark } from "../../parts/standing.tsx";
import { words } from "../../words/index.ts";
import { counted, countedFirst } from "../../../base/text/counted.ts";
import { Deciders } from "../examinations/deciders.tsx";
import { YearRod } from "../../parts/year-rod.tsx";

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
              <td className="sentence">{answer.why}</td>
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
          {holder.since !== null && ` ${yearText(holder.since)}`}
          {holder.until !== null && `, until ${yearText(holder.until)}`}
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
  const people = holders.size === 1 ? "One scholar" : `${countedFirst(holders.size)} scholars`;
  const span = years.length > 1 ? `, ${yearText(Math.min(...years))} to ${yearText(Math.max(...years))}` : "";
  const [stands, open] = [count("stands"), count("open")];
  const verdict =
    stands > 0
      ? `${countedFirst(stands)} ${stands === 1 ? "answer stands" : "answers stand"}`
      : "No answer stands";
  const alive = open > 0 ? `; ${counted(open)} ${open === 1 ? "is" : "are"} open` : "";
  return `${people}${span}. ${verdict}${alive}.`;
}
