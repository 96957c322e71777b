import type { KeyboardEvent } from "react";
import { Link } from "wouter";
import type { ReadingLine, Status } from "../../../../show/desk/literature/reading-list.ts";
import { pathOf, underLens } from "../../../address.ts";
import { dirOf, RecordLink } from "../../../parts/link.tsx";
import { literatureWords as words } from "../../../words/reading/literature.ts";
import { inReadersWords } from "../../../words/reader/said.ts";
import { StatusChoice, statusName } from "./status.tsx";

interface Props {
  readonly line: ReadingLine;
  readonly asOf: number | null;
  readonly hasPaper: boolean;
  readonly canSave: boolean;
  readonly isChosen: boolean;
  readonly onChoose: (isChosen: boolean) => void;
  readonly onKey: (event: KeyboardEvent<HTMLInputElement>) => void;
  readonly onSet: (status: Status | null) => void;
}

/** One source of the reading list. */
export function SourceRow({ line, asOf, hasPaper, canSave, isChosen, onChoose, onKey, onSet }: Props) {
  const { key, label, title, status, when, note, taken, secondHand, odd } = line;
  const paper = underLens(pathOf("paper", key), asOf);
  const had = [
    ...taken.map(([kind, count]) => words.taken(kind, count)),
    ...(secondHand > 0 ? [words.secondHand(secondHand)] : []),
  ];
  return (
    <li>
      {canSave && (
        <label className="box">
          <input
            type="checkbox"
            aria-label={words.choose(label)}
            checked={isChosen}
            onChange={(event) => onChoose(event.target.checked)}
            onKeyDown={onKey}
          />
        </label>
      )}
      <div className="what">
        <RecordLink id={key} text={label} asOf={asOf} />
        {title !== "" && (
          <span className="sentence" dir={dirOf(title)}>
            {title}
          </span>
        )}
        {had.length > 0 && <span className="quiet">{had.join(" · ")}</span>}
        {note !== null && (
          <span className="sentence note" dir="auto">
            {note}
          </span>
        )}
        {odd !== null && <span className="odd">{words.odd(odd)}</span>}
      </div>
      <div className="status">
        {canSave ? (
          <StatusChoice status={status} label={words.statusOf(label)} onSet={onSet} />
        ) : (
          inReadersWords(statusName(status))
        )}
        {when !== null && <span className="quiet figure">{when}</span>}
      </div>
      <div className="paper">
        {(hasPaper || canSave) && (
          <Link href={paper} className={hasPaper ? undefined : "soft"}>
            {hasPaper ? words.paper : words.bringPaper}
          </Link>
        )}
      </div>
    </li>
  );
}
