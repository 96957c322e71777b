import { useEffect, useState } from "react";
import { useLocation } from "wouter";
import type { Row } from "../../../../read/bibliography/incoming/fields/change.ts";
import type { EntryDraft, EntryPage as Page } from "../../../../show/desk/import/entry.ts";
import { recordPath, underLens } from "../../../address.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { dirOf, RecordLink } from "../../../parts/link.tsx";
import { entryWords as words } from "../../../words/desk/entry.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { Reference } from "../../sheet/reference/reference.tsx";
import { TakenFrom } from "../../sheet/taken-from.tsx";
import { askEntry } from "./asking.ts";

interface Props {
  readonly page: Page;
  readonly asOf: number | null;
}

/** The form of an entry: its fields as they are written, and its reference as it would be. */
export function EntryPage({ page, asOf }: Props) {
  const { key, label, takenFrom } = page;
  if (takenFrom === null) return <Entry key={key} page={page} asOf={asOf} />;
  return (
    <article className="entry-page form-page">
      <h1 dir={dirOf(label)}>
        <RecordLink id={key} text={label} asOf={asOf} />
      </h1>
      <TakenFrom corpus={takenFrom} />
    </article>
  );
}

/** How long nothing is typed before the reference is written anew, in milliseconds. */
const pause = 250;

function Entry({ page, asOf }: Props) {
  const [seen, setSeen] = useState(page.rows);
  const [rows, setRows] = useState<readonly Row[]>(page.rows);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [saving, setSaving] = useState(false);
  const desk = useDesk();
  const [, go] = useLocation();
  const { key, label, file, format } = page;
  const draft = useDraft(page, seen, rows);
  const readOnly = desk.state.readOnly && inReadersWords(desk.state.readOnly);
  const put = (place: number, row: Partial<Row>): void =>
    setRows(rows.map((one, at) => (at === place ? { ...one, ...row } : one)));
  const save = async (): Promise<void> => {
    setSaving(true);
    setTrouble(null);
    const made = await askEntry({ key, seen, rows, whole: true });
    const against =
      made === null ? words.gone : made.stale ? words.stale : made.problem && inReadersWords(made.problem);
    const changes = made?.changes ?? [];
    const saved =
      against === null && changes.length > 0 ? await desk.saveChanges(words.step(label), changes) : null;
    setSaving(false);
    if (against !== null) setTrouble(against);
    else if (saved === null) setTrouble(words.nothing);
    else if ("problem" in saved) setTrouble(inReadersWords(saved.problem));
    else go(underLens(recordPath(key), asOf));
  };
  return (
    <article className="entry-page form-page">
      <h1 dir={dirOf(label)}>{words.title(label)}</h1>
      <p className="lead">{words.lead(file, key)}</p>
      {readOnly !== null && readOnly !== "" && <p role="note">{words.readOnly(readOnly)}</p>}
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void save();
        }}
      >
        <datalist id="field-names">
          {page.names.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </datalist>
        <ol className="rows" aria-label={words.fields}>
          {rows.map((row, place) => (
            <li key={place}>
              {place < seen.length ? (
                <span className="field-name">{row.name}</span>
              ) : (
                <input
                  type="text"
                  list="field-names"
                  aria-label={words.name}
                  placeholder={words.name}
                  value={row.name}
                  onChange={(event) => put(place, { name: event.target.value })}
                />
              )}
              <div>
                <textarea
                  aria-label={words.value(row.name)}
                  aria-invalid={draft?.field === row.name && row.name !== ""}
                  className={row.is === "bare" && format !== "ris" ? "code" : undefined}
                  dir="auto"
                  rows={1}
                  value={row.text}
                  onChange={(event) => put(place, { text: event.target.value })}
                />
                {row.is === "bare" && format !== "ris" && <p className="quiet">{words.asWritten}</p>}
              </div>
            </li>
          ))}
        </ol>
        <p>
          <button type="button" onClick={() => setRows([...rows, { name: "", text: "", is: "braces" }])}>
            {words.add}
          </button>
        </p>
        {draft?.problem && <p role="alert">{inReadersWords(draft.problem)}</p>}
        {(draft?.stale || trouble !== null) && <p role="alert">{draft?.stale ? words.stale : trouble}</p>}
        {draft?.stale && (
          <button
            type="button"
            onClick={() => {
              setSeen(page.rows);
              setRows(page.rows);
            }}
          >
            {words.again}
          </button>
        )}
        <Reference reference={{ ...page.reference, items: draft?.items ?? page.reference.items }} />
        {readOnly === null && (
          <button type="submit" className="save" disabled={saving}>
            {saving ? words.saving : words.save}
          </button>
        )}
      </form>
    </article>
  );
}

/** What the form comes to, a little after the last key; the one before stays till then. */
function useDraft(page: Page, seen: readonly Row[], rows: readonly Row[]): EntryDraft | null {
  const [draft, setDraft] = useState<EntryDraft | null>(null);
  useEffect(() => {
    let left = false;
    const timer = setTimeout(() => {
      void askEntry({ key: page.key, seen, rows, whole: false }).then((told) => {
        if (!left) setDraft(told);
      });
    }, pause);
    return () => {
      left = true;
      clearTimeout(timer);
    };
  }, [page, seen, rows]);
  return draft;
}
