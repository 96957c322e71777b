import { useEffect, useState } from "react";
import type { ReactNode } from "react";
import { Link } from "wouter";
import { isOwnColumn, ordered } from "../../../../show/desk/grid/draft.ts";
import type { GridDraft } from "../../../../show/desk/grid/draft.ts";
import type { GridPage } from "../../../../show/desk/grid/page.ts";
import type { ThereRow } from "../../../../show/desk/grid/there.ts";
import { gridWords as words } from "../../../words/recording/grid.ts";
import { marks } from "../../../words/reader/marks.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { askGrid } from "./asking.ts";
import { gridsAtDesk } from "./keeping.ts";
import type { KeptGrid } from "./keeping.ts";
import { columnWord } from "./table/rows.tsx";

interface ColumnsProps {
  readonly page: GridPage;
  readonly draft: GridDraft;
  readonly onChange: (columns: readonly string[]) => void;
}

/** The columns of the grid, to be chosen; a column that is put away keeps what stands in it. */
export function GridColumns({ page, draft, onChange }: ColumnsProps) {
  const own = draft.columns.filter(isOwnColumn);
  return (
    <details className="grid-columns">
      <summary>{words.columns}</summary>
      <ul>
        {page.columns.map(({ name, doc, fixed }) => (
          <li key={name}>
            <label className="tick">
              <input
                type="checkbox"
                checked={draft.columns.includes(name)}
                disabled={fixed}
                onChange={({ target }) =>
                  onChange(
                    ordered(
                      target.checked ? [...draft.columns, name] : draft.columns.filter((one) => one !== name),
                    ),
                  )
                }
              />
              <span>
                <b>{columnWord(name)}</b>{" "}
                {doc !== null && <span className="quiet">{inReadersWords(doc)}</span>}
              </span>
            </label>
          </li>
        ))}
      </ul>
      {own.length > 0 && <p className="quiet">{words.ownColumns(own.join(marks.comma))}</p>}
    </details>
  );
}

/** Of so many things all that is recorded is shown; of more only that of the present row's. */
const fewThings = 5;

/** What is recorded of the things in the grid, where it is wanted, and the choice whether it is. */
export function useRecorded(
  things: readonly string[],
  present: string | null,
  corpus: unknown,
): { readonly recorded: readonly ThereRow[]; readonly choice: ReactNode } {
  const [on, setOn] = useState(false);
  const [recorded, setRecorded] = useState<readonly ThereRow[]>([]);
  const wanted = (things.length <= fewThings ? things : present === null ? [] : [present]).join(" ");
  useEffect(() => {
    let stale = !on;
    if (on)
      void askGrid(
        "recorded",
        wanted.split(" ").filter((one) => one !== ""),
      ).then((told) => {
        if (!stale && told) setRecorded(told);
      });
    return () => void (stale = true);
  }, [on, wanted, corpus]);
  const choice =
    things.length === 0 ? null : (
      <p className="recorded-choice">
        <label className="tick">
          <input type="checkbox" checked={on} onChange={({ target }) => setOn(target.checked)} />
          {words.showRecorded(things.length)}
        </label>
        {on && things.length > fewThings && <span className="quiet">{words.recordedTooMany}</span>}
        {on && wanted !== "" && recorded.length === 0 && (
          <span className="quiet">{words.nothingRecorded}</span>
        )}
      </p>
    );
  return { recorded: on ? recorded : [], choice };
}

/** Grids of other addresses that were begun and not saved. */
export function OtherGrids({ path }: { readonly path: string }) {
  const [kept, setKept] = useState<readonly KeptGrid[]>([]);
  useEffect(() => {
    let stale = false;
    void gridsAtDesk().then((all) => {
      if (!stale) setKept(all.filter((one) => one.at !== path));
    });
    return () => void (stale = true);
  }, [path]);
  if (kept.length === 0) return null;
  return (
    <p className="quiet other-grids">
      {words.begun}{" "}
      {kept.map(({ at, grid }, place) => (
        <span key={at}>
          {place > 0 && marks.comma}
          <Link href={at}>
            <bdi>
              {[grid.every["of"], grid.every["from"]].filter(Boolean).join(marks.comma) || words.title}
            </bdi>
          </Link>{" "}
          ({words.begunRows(grid.rows.length)})
        </span>
      ))}
    </p>
  );
}
