import { Link, useLocation } from "wouter";
import { underLens } from "../../../address.ts";
import { useActions } from "../../../parts/actions.tsx";
import { words as pageWords } from "../../../words/index.ts";
import { importWords as words } from "../../../words/desk/import.ts";

/** From the records to the page on which bibliographies come in. */
export function ToImport({ asOf }: { readonly asOf: number | null }) {
  const [, go] = useLocation();
  const path = underLens("/import", asOf);
  useActions(pageWords.records, [{ name: words.action, key: null, run: () => go(path) }]);
  return (
    <p className="crossing">
      <Link href={path}>{words.action}</Link>
    </p>
  );
}
