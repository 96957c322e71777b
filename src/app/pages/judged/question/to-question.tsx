import { Link } from "wouter";
import { questionPath, underLens } from "../../../address.ts";
import { words } from "../../../words/index.ts";

/** From the sheet of a question to its page, with the answers as they stand. */
export function ToQuestion({ id, asOf }: { readonly id: string; readonly asOf: number | null }) {
  return (
    <p className="crossing">
      <Link href={underLens(questionPath(id), asOf)}>{words.toAnswers}</Link>
    </p>
  );
}
