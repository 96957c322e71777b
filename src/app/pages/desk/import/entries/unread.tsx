import type { Some } from "../../../../../show/desk/import/page.ts";
import type { UnreadTold } from "../../../../../show/desk/import/told.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { importWords as words } from "../../../../words/desk/import.ts";

/** What was to be an entry and could not be read: where, why, and its text. */
export function Failures({ list }: { readonly list: Some<UnreadTold> }) {
  if (list.all === 0) return null;
  return (
    <section>
      <h2 className="label">
        {words.failed} <span className="count">{list.all}</span>
      </h2>
      <p className="quiet">{words.failedWhy}</p>
      <Stretches list={list.shown} />
    </section>
  );
}

/** What stands between the entries and stays behind, folded. */
export function Besides({ list }: { readonly list: Some<UnreadTold> }) {
  if (list.all === 0) return null;
  return (
    <details className="besides">
      <summary>{words.besides(list.all)}</summary>
      <Stretches list={list.shown} />
    </details>
  );
}

function Stretches({ list }: { readonly list: readonly UnreadTold[] }) {
  return (
    <ol className="brought">
      {list.map((one, place) => (
        <li key={place}>
          <p className="at-line">{words.line(one.file, one.line)}</p>
          {one.why.map((why, at) => (
            <p key={at}>{inReadersWords(why)}</p>
          ))}
          {one.text === "" ? <p className="quiet">{words.unshown}</p> : <pre dir="auto">{one.text}</pre>}
        </li>
      ))}
    </ol>
  );
}
