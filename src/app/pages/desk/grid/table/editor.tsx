import { useEffect, useId, useLayoutEffect, useRef, useState } from "react";
import type { GridColumn } from "../../../../../show/desk/grid/page.ts";
import type { Help } from "../../../../../show/desk/forms/layout.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { askModel } from "../../../sheet/form/asking.ts";

interface Props {
  readonly label: string;
  readonly column: GridColumn | null;
  readonly text: string;
  readonly onType: (text: string) => void;
}

/** What is offered while a cell is typed into, by its column. */
const helps: Readonly<Record<string, Help>> = {
  of: { from: "records", to: ["artefacts"] },
  from: { from: "records", to: ["sources", "passages"] },
  via: { from: "records", to: ["sources", "passages"] },
  by: { from: "records", to: ["scholars"] },
  repeats: { from: "records", to: ["sources", "measurements"] },
  dimension: { from: "used", list: "measurements", name: "dimension" },
  instrument: { from: "used", list: "measurements", name: "instrument" },
  between: { from: "used", list: "measurements", name: "between" },
};

/** How many texts are offered for a cell. */
const most = 8;

/** The field in a cell that is being changed. */
export function CellEditor({ label, column, text, onType }: Props) {
  const field = useRef<HTMLInputElement>(null);
  const list = useId();
  const offered = useOffered(column, text);
  useLayoutEffect(() => {
    const { current } = field;
    current?.focus();
    current?.setSelectionRange(current.value.length, current.value.length);
  }, []);
  return (
    <>
      <input
        ref={field}
        type="text"
        dir="auto"
        autoComplete="off"
        spellCheck={false}
        aria-label={label}
        list={offered.length > 0 ? list : undefined}
        value={text}
        onChange={(event) => onType(event.target.value)}
      />
      {offered.length > 0 && (
        <datalist id={list}>
          {offered.map(({ id, label: name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </datalist>
      )}
    </>
  );
}

function useOffered(
  column: GridColumn | null,
  text: string,
): readonly { readonly id: string; readonly label: string }[] {
  const [found, setFound] = useState<readonly { readonly id: string; readonly label: string }[]>([]);
  const from = column ? helps[column.name] : undefined;
  useEffect(() => {
    let stale = false;
    if (from)
      void askModel("choose", { from, text, most }).then((told) => {
        if (!stale && told)
          setFound(told.first.map(({ id, label }) => ({ id, label: inReadersWords(label) })));
      });
    return () => void (stale = true);
  }, [from, text]);
  return column && column.choices.length > 0 ? column.choices.map((id) => ({ id, label: id })) : found;
}
