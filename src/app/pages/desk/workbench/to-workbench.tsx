import { Link, useLocation } from "wouter";
import { underLens } from "../../../address.ts";
import { useActions } from "../../../parts/actions.tsx";
import { workbenchWords as words } from "../../../words/desk/workbench.ts";
import { numberWords } from "../../../words/shown/numbers.ts";

interface Props {
  /** The derivation that is to be changed; null for a new one. */
  readonly of: string | null;
  readonly asOf: number | null;
}

/** The way to the workbench, with a key of its own on the pages of numbers. */
export function ToWorkbench({ of, asOf }: Props) {
  const [, go] = useLocation();
  const path = underLens(of === null ? "/workbench" : `/workbench?of=${encodeURIComponent(of)}`, asOf);
  const name = of === null ? words.make : words.change;
  useActions(numberWords.numbers, [{ name, key: "m", run: () => go(path) }]);
  return (
    <p className="crossing">
      <Link href={path} aria-keyshortcuts="m">
        {name}
      </Link>
    </p>
  );
}
