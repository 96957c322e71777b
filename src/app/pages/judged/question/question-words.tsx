import { Link } from "wouter";
import { questionPath, underLens } from "../../../address.ts";

/** A question in a list of them: the way to its page, and what is said of its answers. */
export function QuestionWords({
  id,
  text,
  said,
  asOf,
}: {
  readonly id: string;
  readonly text: string;
  readonly said: string;
  readonly asOf: number | null;
}) {
  return (
    <div>
      <Link href={underLens(questionPath(id), asOf)} className="sentence" dir="auto">
        {text}
      </Link>
      <p className="quiet">{said}</p>
    </div>
  );
}
