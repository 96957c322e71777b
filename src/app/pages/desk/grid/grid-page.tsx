import { useState } from "react";
import { cellAt } from "../../../../show/desk/grid/draft.ts";
import { landsAtOnce } from "../../../../show/desk/grid/landing.ts";
import type { Landing } from "../../../../show/desk/grid/landing.ts";
import type { GridPage as Page } from "../../../../show/desk/grid/page.ts";
import type { Pasted } from "../../../../show/desk/grid/pasted.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { useActions } from "../../../parts/actions.tsx";
import { gridWords as words } from "../../../words/recording/grid.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { askGrid, useKnown } from "./asking.ts";
import { GridColumns, OtherGrids, useRecorded } from "./besides.tsx";
import { doingOn } from "./doing.ts";
import { Foot } from "./foot.tsx";
import { gridPath } from "./keeping.ts";
import { LandingPart } from "./landing.tsx";
import type { Said } from "./state.ts";
import { isBegun, selectedColumns, selectedRows, useFilledGrid } from "./state.ts";
import { GridTable } from "./table/table.tsx";
import { RowTold } from "./told.tsx";

/** The grid in which measurements are recorded, of what its address tells already. */
export function GridPage({ page }: { readonly page: Page }) {
  const at = gridPath(page.presets);
  // Another address is another grid, with nothing of this one in it.
  return <Grid key={at} page={page} path={at} />;
}

function Grid({ page, path }: { readonly page: Page; readonly path: string }) {
  const desk = useDesk();
  const writable = desk.state.readOnly === null;
  const filled = useFilledGrid(page, path, writable);
  const { draft, shown, at, setAt, change } = filled;
  const known = useKnown(shown, page);
  const [landing, setLanding] = useState<Landing | null>(null);
  const [said, setSaid] = useState<Said>(null);
  const [saving, setSaving] = useState(false);
  const present = shown.rows[at.here.row];
  const read = (present && known.reads.get(present.key)) ?? null;
  const weighed = (present && known.weighed.get(present.key)) ?? null;
  const { recorded, choice } = useRecorded(known.told?.things ?? [], read?.of?.id ?? null, page);
  const every = at.here.row === -1 ? (known.told?.every ?? []) : [];
  const told = [...every, ...(read?.troubles ?? []), ...(read?.notes ?? [])];
  const doing = doingOn(filled, told, toGrid);

  const putLanding = async (one: Landing): Promise<void> => {
    const next = await askGrid("put", { draft, landing: one });
    setLanding(null);
    if (next) {
      change(next);
      const lines = one.block.length - (one.head ? 1 : 0);
      setSaid({ text: words.landed(Math.max(next.rows.length - draft.rows.length, lines)), trouble: false });
    }
    toGrid();
  };
  const onPaste = async ({ block, parted }: Pasted): Promise<void> => {
    if (at.typed !== null) setAt({ typed: null });
    const [row] = selectedRows(at);
    const place = { row, column: selectedColumns(draft, at)[0] ?? at.here.column };
    const found = await askGrid("land", { draft, at: place, block });
    if (!found || found.block.length === 0) return setSaid({ text: words.noClip, trouble: true });
    if (parted === "cells" && landsAtOnce(found)) await putLanding(found);
    else setLanding(found);
  };
  const save = async (): Promise<void> => {
    if (!writable || saving) return;
    setSaving(true);
    const step = await askGrid("step", shown);
    const saved = step && (await desk.save(step.action));
    setSaving(false);
    if (!step || !saved) return setSaid({ text: words.none, trouble: true });
    if (!("done" in saved))
      return setSaid({ text: "problem" in saved ? saved.problem : words.changedUnder, trouble: true });
    const rows = shown.rows.filter(({ key }) => !step.keys.includes(key));
    filled.restart({ ...shown, rows, fresh: shown.fresh.filter((name) => !step.made.includes(name)) });
    const left = isBegun({ ...shown, rows }) ? rows.length : 0;
    setSaid({ text: words.saved(step.keys.length, left), trouble: false });
    doing.goTo(0, at.here.column);
  };

  useActions(words.title, [
    { name: words.move, key: "Arrow keys, Tab, Enter", run: null, own: true },
    { name: words.changeCell, key: "F2", run: null, own: true },
    { name: words.takeOffer, key: "F8", run: doing.takeOffer, own: true },
    { name: words.fillDown, key: "Ctrl+D", run: doing.fillDown, own: true },
    { name: words.putIn, key: "Insert", run: doing.putIn, own: true },
    { name: words.takenOut, key: "Shift+Delete", run: doing.takeOut, own: true },
    { name: words.clear, key: "Delete", run: doing.clear, own: true },
    { name: words.undo, key: "Ctrl+Z", run: null, own: true },
    { name: words.redo, key: "Ctrl+Shift+Z", run: null, own: true },
    ...(writable
      ? [{ name: words.saveKey, key: "Ctrl+Enter", run: () => void save(), own: true } as const]
      : []),
  ]);
  const brief = told.find((one) => one.column === at.here.column);
  return (
    <article className="grid-page form-page">
      <Heading page={page} restored={filled.restored} />
      <OtherGrids path={path} />
      <GridColumns page={page} draft={draft} onChange={(columns) => change({ ...draft, columns })} />
      {choice}
      {landing && (
        <LandingPart
          landing={landing}
          fields={page.columns.map((one) => one.name)}
          onChange={setLanding}
          onHead={(head) =>
            void askGrid("head", { draft, landing, head }).then((next) => next && setLanding(next))
          }
          onPut={() => void putLanding(landing)}
          onLeave={() => {
            setLanding(null);
            toGrid();
          }}
        />
      )}
      <GridTable
        page={page}
        hands={{
          ...doing,
          filled,
          commit: () => {
            doing.commit();
            setSaid(null);
          },
          save: () => void save(),
        }}
        known={known}
        recorded={recorded}
        onPaste={(pasted) => void onPaste(pasted)}
      />
      <p className="unseen" id="grid-cell-told">
        {brief && inReadersWords(brief.message)}
      </p>
      <RowTold
        name={rowName(at.here.row)}
        draft={shown}
        read={read}
        weighed={weighed}
        every={every}
        of={cellAt(shown, { row: at.here.row, column: "of" }) || (shown.every["of"] ?? "")}
        onTake={doing.take}
        onMake={doing.make}
      />
      <Foot
        draft={shown}
        known={known}
        said={said}
        saving={saving}
        onSave={() => void save()}
        onRow={doing.goTo}
        onDrop={() => {
          change({ ...draft, rows: [], fresh: [] });
          setSaid({ text: words.dropped, trouble: false });
        }}
      />
      <p className="quiet" id="grid-hint">
        {words.hint} {words.hintPaste}
      </p>
    </article>
  );
}

/** Brings the focus back to the cell that is looked at. */
function toGrid(): void {
  requestAnimationFrame(() => document.querySelector<HTMLElement>(".entry-grid td[tabindex='0']")?.focus());
}

function rowName(row: number): string {
  return row === -1 ? words.everyLong : row < -1 ? words.recorded : words.row(row + 1);
}

function Heading({ page, restored }: { readonly page: Page; readonly restored: boolean }) {
  const { readOnly } = useDesk().state;
  const { of, from } = page.about;
  return (
    <>
      <h1 dir="auto">
        {of !== null
          ? words.titleOf(inReadersWords(of))
          : from !== null
            ? words.titleFrom(inReadersWords(from))
            : words.title}
      </h1>
      <p className="lead">{words.lead}</p>
      {readOnly !== null && readOnly !== "" && <p role="note">{words.readOnly(readOnly)}</p>}
      {restored && <p className="quiet">{words.restored}</p>}
    </>
  );
}
