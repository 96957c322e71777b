import type { MergedAlone } from "../../../../show/desk/changes/merging/told.ts";
import { fieldWord } from "../../../words/index.ts";
import { mergeWords as words } from "../../../words/desk/merge.ts";
import { kindName } from "../../../words/desk/kinds.ts";
import { marks } from "../../../words/reader/marks.ts";
import { inReadersWords } from "../../../words/reader/said.ts";

/** What was put together by itself, so that it is seen before it is written. */
export function Alone({ alone }: { readonly alone: readonly MergedAlone[] }) {
  if (alone.length === 0) return null;
  return (
    <section>
      <h2 className="label">
        {words.alone} <span className="count">{alone.length}</span>
      </h2>
      <ul className="record-changes">
        {alone.map(({ kind, text, side, how, fields }, place) => (
          <li key={place}>
            <p className="what">
              <span className="kind">{kindName(kind)}</span>
              <span className="sentence" dir="auto">
                {inReadersWords(text)}
              </span>
              <span className="quiet">
                {words.became(side, how, fields.map(fieldWord).join(marks.comma))}
              </span>
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
