import type { Companion } from "../../../read/settings/companions/corpus.ts";
import { takenWords as words } from "../../words/desk/taken.ts";

/** Beside a record or a source of another corpus: which one it is, and that it is changed in its folder alone. */
export function TakenFrom({ corpus }: { readonly corpus: Companion }) {
  const { title, folder } = corpus;
  return (
    <p className="crossing" role="note">
      {title === null ? words.fromUnnamed : words.from(title)} {words.changedThere(folder)}
    </p>
  );
}
