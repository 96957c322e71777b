import type { GridDraft } from "../../../../show/desk/grid/draft.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { gridWords as words } from "../../../words/recording/grid.ts";
import type { GridKnown } from "./asking.ts";
import type { Said } from "./state.ts";

interface Props {
  readonly draft: GridDraft;
  readonly known: GridKnown;
  readonly said: Said;
  readonly saving: boolean;
  readonly onSave: () => void;
  readonly onRow: (row: number, column: string) => void;
  readonly onDrop: () => void;
}

/** What can be saved of the grid, and the one step that does it. */
export function Foot({ draft, known, said, saving, onSave, onRow, onDrop }: Props) {
  const writable = useDesk().state.readOnly === null;
  const entered = draft.rows.filter(({ key }) => known.reads.has(key));
  const isBad = (key: number): boolean =>
    (known.reads.get(key)?.troubles.length ?? 0) > 0 || (known.weighed.get(key)?.troubles.length ?? 0) > 0;
  const bad = entered.filter(({ key }) => isBad(key));
  const good = entered.length - bad.length;
  const [first] = bad;
  return (
    <div className="saves">
      <button
        type="button"
        className="main"
        disabled={!writable || saving || good === 0}
        onClick={onSave}
        aria-keyshortcuts="Control+Enter"
      >
        {saving ? words.saving : words.save(good)}
      </button>
      <output className={said?.trouble ? "trouble" : undefined}>
        {said?.text ?? (entered.length === 0 ? words.none : words.counts(good, bad.length))}
      </output>
      {first && (
        <button
          type="button"
          onClick={() =>
            onRow(draft.rows.indexOf(first), known.reads.get(first.key)?.troubles[0]?.column ?? "value")
          }
        >
          {words.firstBad}
        </button>
      )}
      {draft.rows.length > 0 && (
        <button type="button" onClick={onDrop}>
          {words.drop}
        </button>
      )}
    </div>
  );
}
