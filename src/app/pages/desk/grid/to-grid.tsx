import { Link, useLocation } from "wouter";
import { underLens } from "../../../address.ts";
import { useActions } from "../../../parts/actions.tsx";
import { gridWords as words } from "../../../words/recording/grid.ts";
import { gridPath } from "./keeping.ts";

interface Props {
  /** What is known already: the artefact (`of`) or the source (`from`). */
  readonly known?: { readonly of?: string; readonly from?: string };
  readonly asOf: number | null;
}

/** To the grid in which measurements are recorded. */
export function ToGrid({ known = {}, asOf }: Props) {
  const [, go] = useLocation();
  const path = underLens(gridPath(Object.entries(known)), asOf);
  useActions(words.title, [{ name: words.title, key: null, run: () => go(path) }]);
  return (
    <p className="crossing">
      <Link href={path}>{words.title}</Link>
    </p>
  );
}
