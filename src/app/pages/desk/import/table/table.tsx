import { useState } from "react";
import type { RowChoice } from "../../../../../show/desk/import/table/asked.ts";
import type { Meaning } from "../../../../../show/desk/grid/columns/meaning.ts";
import type { TableChoices, TablePage } from "../../../../../show/desk/import/table/told/page.ts";
import { useDesk } from "../../../../desk/desk.tsx";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { importWords } from "../../../../words/desk/import.ts";
import { tableWords as words } from "../../../../words/recording/tables.ts";
import { askTable, useTable } from "../asking.ts";
import { Columns } from "./columns.tsx";
import { FailedRows, FreshRows, TwinRows } from "./rows.tsx";
import { TableSettings, Ways } from "./settings.tsx";

interface Props {
  readonly name: string;
  readonly chosen: TableChoices;
  readonly onChoose: (chosen: TableChoices) => void;
  readonly onDone: (said: string) => void;
  readonly corpus: object;
  readonly readOnly: string | null;
  readonly asOf: number | null;
}

/** How many rows of a list are shown at first, and how many more at a time. */
const some = 50;

/** A table that is to come in: its columns, what becomes of its rows, and the one step that brings it in. */
export function ComingTable({ name, chosen, onChoose, onDone, corpus, readOnly, asOf }: Props) {
  const [most, setMost] = useState(some);
  const [page, waiting] = useTable({ name, chosen, most }, corpus);
  if (!page) return <p className="quiet">{waiting ? importWords.reading : importWords.unreadable}</p>;
  const lists = [page.failures, page.fresh, page.twins];
  const unshown = lists.reduce((all, one) => all + one.all - one.shown.length, 0);
  const mean = (column: number, meaning: Meaning): void =>
    onChoose({
      ...chosen,
      list: page.list,
      meanings: [...chosen.meanings.filter(([one]) => one !== column), [column, meaning]],
    });
  const choose = (row: number, choice: RowChoice): void =>
    onChoose({ ...chosen, choices: [...chosen.choices.filter(([one]) => one !== row), [row, choice]] });
  return (
    <section className="coming-table">
      <h2>
        <bdi>{name}</bdi>
      </h2>
      <TableSettings name={name} page={page} chosen={chosen} onChoose={onChoose} />
      <Columns page={page} onMean={mean} />
      <div className={waiting ? "waiting" : undefined}>
        <p className="counts" aria-live="polite">
          {words.counts(page.fresh.all, page.merged, page.left, page.failures.all, page.without)}
        </p>
        {page.hidden > 0 && <p className="quiet">{words.hidden(page.hidden)}</p>}
        <FailedRows list={page.failures} />
        <TwinRows list={page.twins} asOf={asOf} choose={choose} />
        <FreshRows list={page.fresh} />
        {unshown > 0 && (
          <p className="apart">
            <button type="button" onClick={() => setMost(most + some * 5)}>
              {words.more(unshown)}
            </button>
          </p>
        )}
        <Saving
          name={name}
          page={page}
          chosen={chosen}
          onChoose={onChoose}
          onDone={onDone}
          readOnly={readOnly}
        />
      </div>
    </section>
  );
}

function Saving({
  name,
  page,
  chosen,
  onChoose,
  onDone,
  readOnly,
}: Omit<Props, "corpus" | "asOf"> & { readonly page: TablePage }) {
  const desk = useDesk();
  const [state, setState] = useState<"choosing" | "saving" | { readonly trouble: string }>("choosing");
  const { fresh, merged, problem, files } = page;
  const save = async (): Promise<void> => {
    setState("saving");
    const answer = await askTable({ name, chosen, most: 0, changes: true });
    if (!answer) return setState({ trouble: importWords.unreadable });
    const saved = await desk.saveChanges(words.step(name), answer.changes);
    if ("done" in saved) return onDone(words.done(name, answer.page.fresh.all, answer.page.merged));
    return setState({ trouble: "problem" in saved ? inReadersWords(saved.problem) : "" });
  };
  return (
    <section className="saving">
      {fresh.all > 0 && (
        <Ways
          legend={words.as}
          name={`${name} as`}
          ways={[
            ["records", words.ways.records],
            ["table", words.ways.table],
          ]}
          value={chosen.as}
          onChange={(as) => onChoose({ ...chosen, as })}
        />
      )}
      {files.map(({ file, isNew, records }) => (
        <p key={file}>{words.goes(file, isNew, records)}</p>
      ))}
      {problem !== null && <p role="alert">{inReadersWords(problem)}</p>}
      {typeof state === "object" && <p role="alert">{state.trouble}</p>}
      {problem === null && fresh.all + merged === 0 && <p>{words.nothing}</p>}
      {problem === null && fresh.all + merged > 0 && readOnly === null && (
        <button type="button" className="save" disabled={state === "saving"} onClick={() => void save()}>
          {state === "saving" ? words.saving : words.save(page.list, fresh.all, merged)}
        </button>
      )}
    </section>
  );
}
