import { useLayoutEffect } from "react";
import type { ReactNode } from "react";
import type { Asked, Incipit } from "../../../../show/pages/incipit/incipit.ts";
import type { Address } from "../../../address.ts";
import { useSome } from "../../../parts/leaves/some.tsx";
import { words } from "../../../words/index.ts";
import { openingWords } from "../../../words/shown/opening.ts";
import type { Opening } from "../../../worker/messages.ts";
import { QuestionWords } from "./question-words.tsx";

interface Props {
  readonly incipit: Incipit | null;
  readonly opening: Opening | null;
  readonly address: Pick<Address, "wanted" | "lens" | "asOf">;
}

/** What can be shown of a page whose model is not there: the questions and their answers in words, and what is being done. */
export function OpeningPage({ incipit, opening, address }: Props) {
  const { wanted, lens, asOf } = address;
  const doing = <p className="quiet opening">{opening === null ? words.reading : said(opening)}</p>;
  // In another year, or under a supposition, other answers may be in print.
  const isPlain = lens.asOf === undefined && lens.suppose === undefined;
  const question = wanted.page === "question" ? incipit?.questions.find(({ id }) => id === wanted.id) : null;
  const title = [...(question ? [question.text] : []), ...(incipit ? [incipit.title] : [])].join(" · ");
  useLayoutEffect(() => {
    if (title !== "") document.title = title;
  }, [title]);
  if (isPlain && question) return <AskedNow question={question}>{doing}</AskedNow>;
  if (isPlain && incipit && wanted.page === "contents")
    return (
      <Questions questions={incipit.questions} asOf={asOf}>
        {doing}
      </Questions>
    );
  return doing;
}

function said(opening: Opening): string {
  return opening.stage === "files"
    ? openingWords.files(opening.done, opening.of)
    : openingWords[opening.stage];
}

/** A question with its answers, before it is known what stands. */
function AskedNow({ question, children }: { readonly question: Asked; readonly children: ReactNode }) {
  return (
    <>
      <h1 dir="auto">{question.text}</h1>
      {children}
      <h2 className="label">{question.exclusive ? words.answersExclusive : words.answersOpen}</h2>
      <table className="answers">
        <thead>
          <tr>
            <th scope="col">{words.answer}</th>
            <th scope="col">{words.standing}</th>
          </tr>
        </thead>
        <tbody>
          {question.answers.map(({ claim, text }) => (
            <tr key={claim}>
              <th scope="row" className="sentence" dir="auto">
                {text}
              </th>
              <td className="quiet">{openingWords.notYet}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

/** Every question by its words. */
function Questions({
  questions,
  asOf,
  children,
}: {
  readonly questions: readonly Asked[];
  readonly asOf: number | null;
  readonly children: ReactNode;
}) {
  const [some, more] = useSome(questions);
  return (
    <>
      <h1>{words.questions}</h1>
      {children}
      <ul className="questions">
        {some.map((question) => (
          <li key={question.id}>
            <QuestionWords {...question} said={openingWords.answers(question.answers.length)} asOf={asOf} />
          </li>
        ))}
      </ul>
      {more}
    </>
  );
}
