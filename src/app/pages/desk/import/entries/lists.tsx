import type { Choice } from "../../../../../read/bibliography/incoming/plan.ts";
import type { Some } from "../../../../../show/desk/import/page.ts";
import type { EntryTold } from "../../../../../show/desk/import/told.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { importWords as words } from "../../../../words/desk/import.ts";
import { Ways } from "./ways.tsx";

type Choose = (place: number, choice: Choice) => void;

interface AlikeProps {
  readonly list: Some<EntryTold>;
  readonly choose: Choose;
  readonly everyTwin: (what: "leave" | "merge") => void;
  readonly asOf: number | null;
}

/** Entries that are there already, or like another that comes in, each with what can become of it. */
export function AlikeList({ list, choose, everyTwin, asOf }: AlikeProps) {
  if (list.all === 0) return null;
  const merges = list.shown.some((one) => (one.merge?.missing.length ?? 0) > 0);
  return (
    <section>
      <h2 className="label">
        {words.alike} <span className="count">{list.all}</span>
      </h2>
      <p className="quiet">{words.alikeWhy}</p>
      {merges && (
        <p className="every">
          <button type="button" onClick={() => everyTwin("merge")}>
            {words.allMerge}
          </button>
          <button type="button" onClick={() => everyTwin("leave")}>
            {words.allLeave}
          </button>
        </p>
      )}
      <ol className="brought">
        {list.shown.map((entry) => (
          <li key={entry.place}>
            {entry.hidden ? (
              <p>
                {words.hidden} <Where entry={entry} />
              </p>
            ) : (
              <>
                <Name entry={entry} />
                <Ways entry={entry} choose={choose} asOf={asOf} />
                <Written entry={entry} />
              </>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}

/** Entries that nothing is like, each to be added or left out. */
export function FreshList({ list, choose }: { readonly list: Some<EntryTold>; readonly choose: Choose }) {
  if (list.all === 0) return null;
  return (
    <section>
      <h2 className="label">
        {words.fresh} <span className="count">{list.all}</span>
      </h2>
      <ol className="brought fresh">
        {list.shown.map((entry) => (
          <li key={entry.place}>
            <label>
              <input
                type="checkbox"
                checked={entry.does === "add"}
                disabled={entry.for !== null}
                aria-label={words.addIt(entry.label)}
                onChange={(event) => choose(entry.place, { do: event.target.checked ? "add" : "leave" })}
              />
              <Name entry={entry} />
            </label>
            <Written entry={entry} />
          </li>
        ))}
      </ol>
    </section>
  );
}

function Name({ entry }: { readonly entry: EntryTold }) {
  const { label, title, language, key, keyIs, own } = entry;
  const lang = language === null || /[\s,]/.test(language) ? {} : { lang: language };
  return (
    <p className="name">
      <bdi className="sentence">{label}</bdi>
      {title !== "" && !label.startsWith(title) && (
        <span className="sentence" dir="auto" {...lang}>
          {title}
        </span>
      )}
      <span className="quiet">
        {key !== null && (
          <>
            <bdi>{key}</bdi>
            {keyIs === "made" && ` (${words.keyMade})`}
            {keyIs === "freed" && ` (${words.keyFreed(own ?? "")})`}
            {entry.for !== null && ` (${words.comesAlong(entry.for)})`}
            {" · "}
          </>
        )}
        <Where entry={entry} />
      </span>
    </p>
  );
}

function Where({ entry }: { readonly entry: EntryTold }) {
  return <span className="at-line">{words.line(entry.file, entry.line)}</span>;
}

function Written({ entry }: { readonly entry: EntryTold }) {
  return (
    <>
      {entry.remarks.map((remark, place) => (
        <p className="remark" key={place}>
          {inReadersWords(remark)}
        </p>
      ))}
      <details className="written">
        <summary>{words.asWritten}</summary>
        <pre dir="auto">{entry.text}</pre>
      </details>
    </>
  );
}
