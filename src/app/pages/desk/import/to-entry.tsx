import { Link, useLocation } from "wouter";
import { pathOf, underLens } from "../../../address.ts";
import { useActions } from "../../../parts/actions.tsx";
import { entryWords as words } from "../../../words/desk/entry.ts";

/** From the sheet of a source to the form of its entry. */
export function ToEntry({ id, asOf }: { readonly id: string; readonly asOf: number | null }) {
  const [, go] = useLocation();
  const path = underLens(pathOf("entry", id), asOf);
  useActions(words.thisSource, [{ name: words.change, key: "c", run: () => go(path) }]);
  return (
    <p className="crossing">
      <Link href={path} aria-keyshortcuts="c">
        {words.change}
      </Link>
    </p>
  );
}
