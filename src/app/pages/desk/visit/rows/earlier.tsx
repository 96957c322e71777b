import type { OldValue } from "../../../../../show/desk/visit/sheet/old.ts";
import { RecordLink } from "../../../../parts/link.tsx";
import { marks } from "../../../../words/reader/marks.ts";
import { inReadersWords } from "../../../../words/reader/said.ts";
import { visitWords as words } from "../../../../words/recording/visit.ts";

interface Props {
  readonly old: readonly OldValue[];
  readonly title: string;
  readonly show: string;
  readonly shown: boolean;
  readonly onShow: () => void;
  readonly asOf: number | null;
}

/** What is recorded already: not in the page before the new is in, unless somebody asks for it. */
export function Earlier({ old, title, show, shown, onShow, asOf }: Props) {
  if (old.length === 0) return <p className="earlier">{words.noOld}</p>;
  if (!shown)
    return (
      <p className="earlier">
        <button type="button" onClick={onShow}>
          {show}
        </button>
      </p>
    );
  return (
    <div className="earlier" aria-live="polite">
      <span className="label">{title}</span>
      <ul>
        {old.map((one, place) => (
          <li key={one.id ?? place}>
            {one.id === null ? (
              inReadersWords(one.said)
            ) : (
              <RecordLink id={one.id} text={one.said} asOf={asOf} />
            )}{" "}
            <span className="quiet" dir="auto">
              {[...one.by.map(inReadersWords), ...(one.year === null ? [] : [one.year])].join(marks.comma)}
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}
