import { useEffect, useMemo, useState } from "react";
import { Link } from "wouter";
import type { Choice } from "../../../../read/bibliography/incoming/plan.ts";
import type { ImportPage as Page, Some } from "../../../../show/desk/import/page.ts";
import type { EntryTold } from "../../../../show/desk/import/told.ts";
import { underLens } from "../../../address.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { RecordLink } from "../../../parts/link.tsx";
import { inReadersWords } from "../../../words/reader/said.ts";
import { literatureWords } from "../../../words/reading/literature.ts";
import { importWords as words } from "../../../words/desk/import.ts";
import { askImport, useImport } from "./asking.ts";
import { ComingFiles } from "./coming-files.tsx";
import type { FileRead } from "./files.ts";
import { AlikeList, FreshList } from "./entries/lists.tsx";
import { keepImport, keptImport, noImport, nothingChosen } from "./keeping.ts";
import type { ImportDraft } from "./keeping.ts";
import type { FileTold, Given } from "./serving.ts";
import { ComingTable } from "./table/table.tsx";
import { Besides, Failures } from "./entries/unread.tsx";
import { marks } from "../../../words/reader/marks.ts";

/** How many entries of a list are shown at first, and how many more at a time. */
const some = 100;

/** The page on which bibliographies and tables come in: files, what becomes of each entry, and the one step that does it. */
export function ImportPage({ page: corpus, asOf }: { readonly page: object; readonly asOf: number | null }) {
  const desk = useDesk();
  const readOnly = desk.state.readOnly && inReadersWords(desk.state.readOnly);
  const [draft, setDraft] = useImportDraft();
  const { read, duplicates, tables } = draft;
  const choices = useMemo(() => new Map(draft.choices), [draft.choices]);
  const [most, setMost] = useState(some);
  const [state, setState] = useState<State>({ is: "choosing" });
  const files = useMemo(() => read.filter((one): one is Given => "text" in one), [read]);
  const coming = useMemo(
    () => ({ files, choices: [...choices], duplicates, most }),
    [files, choices, duplicates, most],
  );
  const [told, waiting] = useImport(coming, corpus);
  const restart = (next: readonly FileRead[]): void => {
    const kept = Object.entries(tables).filter(([name]) => next.some((one) => same(one, name, read)));
    setDraft({ ...noImport, read: next, tables: Object.fromEntries(kept) });
    setState({ is: "choosing" });
  };
  const save = async (): Promise<void> => {
    setState({ is: "saving" });
    const answer = await askImport({ ...coming, changes: true });
    if (!answer) return setState({ is: "trouble", text: words.unreadable });
    const { added, merged, keys } = answer.page;
    const isTable = tableIn(told?.files ?? []);
    const names = files.map((one) => one.name).filter((name) => !isTable(name));
    const saved = await desk.saveChanges(words.step(names, added, merged), answer.changes);
    if (!("done" in saved))
      return setState({ is: "trouble", text: "problem" in saved ? inReadersWords(saved.problem) : "" });
    setDraft({ ...noImport, read: read.filter((one) => isTable(one.name)), tables });
    setState({ is: "done", added, merged, keys });
  };
  const choose = (place: number, choice: Choice): void =>
    setDraft({ ...draft, choices: [...new Map(choices).set(place, choice)] });
  const everyTwin = (what: "leave" | "merge"): void => setDraft({ ...draft, duplicates: what, choices: [] });
  const inTables = read.filter((one) => tableIn(told?.files ?? [])(one.name));
  const page = files.length > inTables.length ? told?.page : undefined;
  return (
    <article className="import-page">
      <h1>{words.title}</h1>
      <p className="lead">{words.lead}</p>
      {readOnly !== null && readOnly !== "" && <p role="note">{words.readOnly(readOnly)}</p>}
      <ComingFiles read={read} told={told?.files ?? []} onRead={restart} />
      <Done state={state} asOf={asOf} />
      {files.length > 0 && told === null && (
        <p className="quiet">{waiting ? words.reading : words.unreadable}</p>
      )}
      {page && (
        <div className={waiting ? "waiting" : undefined}>
          <p className="counts">{words.counts(page.added, page.merged, page.left, page.failures.all)}</p>
          <Failures list={page.failures} />
          <AlikeList list={chosenIn(page.alike, choices)} choose={choose} everyTwin={everyTwin} asOf={asOf} />
          <FreshList list={chosenIn(page.fresh, choices)} choose={choose} />
          {[page.alike, page.fresh, page.failures].some((one) => one.all > one.shown.length) && (
            <More page={page} onMore={() => setMost(most + some * 5)} />
          )}
          <Besides list={page.besides} />
          <Saving page={page} readOnly={readOnly} state={state} save={() => void save()} />
        </div>
      )}
      {inTables.map(({ name }) => (
        <ComingTable
          key={name}
          name={name}
          chosen={tables[name] ?? nothingChosen}
          onChoose={(chosen) => setDraft({ ...draft, tables: { ...tables, [name]: chosen } })}
          onDone={(said) => {
            const { [name]: _, ...others } = tables;
            setDraft({ ...draft, read: read.filter((one) => one.name !== name), tables: others });
            setState({ is: "said", text: said });
          }}
          corpus={corpus}
          readOnly={readOnly}
          asOf={asOf}
        />
      ))}
    </article>
  );
}

/** Tells which of the files are tables. */
function tableIn(told: readonly FileTold[]): (name: string) => boolean {
  const names = new Set(told.flatMap(({ name, rows }) => (rows === null ? [] : [name])));
  return (name) => names.has(name);
}

/** Whether a file is the one of that name that was there before. */
function same(one: FileRead, name: string, before: readonly FileRead[]): boolean {
  return one.name === name && before.includes(one);
}

/** What is to come in, kept until it has come in: over a reload, and at the desk. */
function useImportDraft(): readonly [ImportDraft, (draft: ImportDraft) => void] {
  const [draft, setDraft] = useState<ImportDraft>(noImport);
  useEffect(() => {
    let left = false;
    void keptImport().then((kept) => {
      if (kept && !left) setDraft((now) => (now === noImport ? kept : now));
    });
    return () => void (left = true);
  }, []);
  const put = (next: ImportDraft): void => {
    setDraft(next);
    keepImport(next);
  };
  return [draft, put];
}

/** Entries as they were chosen to be, before the model has answered what that comes to. */
function chosenIn(list: Some<EntryTold>, choices: ReadonlyMap<number, Choice>): Some<EntryTold> {
  const shown = list.shown.map((entry): EntryTold => {
    const choice = choices.get(entry.place);
    if (!choice || entry.for !== null) return entry;
    const taken = choice.do === "merge" ? choice.take : [];
    const differing =
      entry.merge?.differing.map((one) => ({ ...one, taken: taken.includes(one.name) })) ?? [];
    return { ...entry, does: choice.do, merge: entry.merge && { ...entry.merge, differing } };
  });
  return { shown, all: list.all };
}

type State =
  | { readonly is: "choosing" | "saving" }
  | { readonly is: "trouble" | "said"; readonly text: string }
  | {
      readonly is: "done";
      readonly added: number;
      readonly merged: number;
      readonly keys: readonly string[];
    };

function More({ page, onMore }: { readonly page: Page; readonly onMore: () => void }) {
  const lists = [page.alike, page.fresh, page.failures];
  const hidden = lists.reduce((all, one) => all + one.all - one.shown.length, 0);
  return (
    <p className="apart">
      <button type="button" onClick={onMore}>
        {words.more(hidden)}
      </button>
    </p>
  );
}

function Saving({
  page,
  readOnly,
  state,
  save,
}: {
  readonly page: Page;
  readonly readOnly: string | null;
  readonly state: State;
  readonly save: () => void;
}) {
  const { added, merged, problem, goals, abbreviations, lenders } = page;
  const saving = state.is === "saving";
  return (
    <section className="saving">
      {goals.map(({ file, isNew, entries }) => (
        <p key={file}>{words.goals(file, isNew, entries)}</p>
      ))}
      {abbreviations.length > 0 && <p>{words.abbreviations(abbreviations)}</p>}
      {lenders.length > 0 && <p>{words.lenders(lenders)}</p>}
      {problem !== null && <p role="alert">{inReadersWords(problem)}</p>}
      {state.is === "trouble" && <p role="alert">{state.text}</p>}
      {problem === null && added + merged === 0 && <p>{words.nothing}</p>}
      {problem === null && added + merged > 0 && readOnly === null && (
        <button type="button" className="save" disabled={saving} onClick={save}>
          {saving ? words.saving : words.save(added, merged)}
        </button>
      )}
    </section>
  );
}

function Done({ state, asOf }: { readonly state: State; readonly asOf: number | null }) {
  if (state.is === "said")
    return (
      <section className="done" aria-live="polite">
        <p>{state.text}</p>
      </section>
    );
  if (state.is !== "done") return null;
  const { added, merged, keys } = state;
  return (
    <section className="done" aria-live="polite">
      <p>{words.done(added, merged)}</p>
      {keys.length > 0 && (
        <p>
          {words.came}{" "}
          {keys.map((key, place) => (
            <span key={key}>
              {place > 0 && marks.comma}
              <RecordLink id={key} text={key} asOf={asOf} />
            </span>
          ))}
        </p>
      )}
      <p className="crossing">
        <Link href={underLens("/literature", asOf)}>{literatureWords.list}</Link>
      </p>
    </section>
  );
}
