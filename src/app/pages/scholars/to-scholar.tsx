import { scholarWords as words } from "../../words/scholars.ts";
import { ScholarLink } from "./scholar-link.tsx";

/** On the sheet of a scholar: the way to their positions over time. */
export function ToScholar({ id, asOf }: { readonly id: string; readonly asOf: number | null }) {
  return (
    <p className="crossing">
      <ScholarLink id={id} text={words.page} asOf={asOf} />
    </p>
  );
}
