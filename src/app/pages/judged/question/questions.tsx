import type { Standing } from "../../../../judge/judge.ts";
import type { Contents } from "../../../../show/pages/contents.ts";
import { FloorList } from "../../../desk/floor/floor-list.tsx";
import { ArgumentDrafts } from "../../../map/arguing/slip/draft-list.tsx";
import { ToImport } from "../../desk/import/to-import.tsx";
import { StandingMark } from "../../../parts/standing.tsx";
import { useSome } from "../../../parts/leaves/some.tsx";
import { Empty } from "../../../parts/empty.tsx";
import { empty } from "../../../words/shown/empty.ts";
import { words } from "../../../words/index.ts";
import { marks } from "../../../words/reader/marks.ts";
import { QuestionWords } from "./question-words.tsx";

const inOrder = ["stands", "open", "falls", "unsupported"] as const;

/** How many answers stand, are open, fall, hang in the air: `2 stand, 1 falls`. */
function answersSaid(answers: readonly Standing[]): string {
  const told = inOrder.flatMap((standing) => {
    const count = answers.filter((one) => one === standing).length;
    return count === 0 ? [] : [words.answerCount(count, standing)];
  });
  return told.length === 0 ? words.noAnswers : words.answersAre(told.join(marks.comma));
}

/** Every question with the standings of its answers. */
export function QuestionsPage({
  contents,
  asOf,
}: {
  readonly contents: Contents;
  readonly asOf: number | null;
}) {
  const [some, more] = useSome(contents.questions);
  return (
    <>
      <h1>{words.questions}</h1>
      {contents.questions.length === 0 && (
        <Empty {...empty.questions} make={["questions"]}>
          <ToImport asOf={asOf} />
        </Empty>
      )}
      <ul className="questions">
        {some.map((question) => (
          <li key={question.id}>
            <QuestionWords {...question} said={answersSaid(question.answers)} asOf={asOf} />
            <span className="marks" aria-hidden="true">
              {question.answers.map((standing, place) => (
                <StandingMark key={place} standing={standing} bare />
              ))}
            </span>
          </li>
        ))}
      </ul>
      {more}
      <FloorList asOf={asOf} />
      <ArgumentDrafts />
    </>
  );
}
