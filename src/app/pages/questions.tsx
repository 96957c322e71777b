import { Link } from "wouter";
import type { Contents } from "../../show/pages/contents.ts";
import { questionPath, withYear } from "../address.ts";
import { StandingMark } from "../parts/standing.tsx";
import { Empty } from "../parts/empty.tsx";
import { empty } from "../words/empty.ts";
import { words } from "../words/index.ts";

/** Every question with the standings of its answers. */
export function QuestionsPage({
  contents,
  asOf,
}: {
  readonly contents: Contents;
  readonly asOf: number | null;
}) {
  return (
    <>
      <h1>{words.questions}</h1>
      {contents.questions.length === 0 && <Empty {...empty.questions} />}
      <ul className="questions">
        {contents.questions.map((question) => (
          <li key={question.id}>
            <Link href={withYear(questionPath(question.id), asOf)} className="sentence" dir="auto">
              {question.text}
            </Link>
            <span className="marks">
              {question.answers.map((standing, place) => (
                <StandingMark key={place} standing={standing} bare />
              ))}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}
