import { PageLink } from "../../parts/link.tsx";
import { scholarWords as words } from "../../words/shown/scholars.ts";

/** On the sheet of a scholar: the way to their positions over time. */
export function ToScholar({ id, asOf }: { readonly id: string; readonly asOf: number | null }) {
  return (
    <p className="crossing">
      <PageLink page="scholar" id={id} text={words.page} asOf={asOf} />
    </p>
  );
}
