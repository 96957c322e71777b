import { useState } from "react";
import type { PaperData } from "../../../../show/desk/papers/page.ts";
import type { Taken } from "../../../../show/desk/papers/taken.ts";
import { useDesk } from "../../../desk/desk.tsx";
import { captureWords as words } from "../../../words/reading/capture.ts";
import { formWords } from "../../../words/desk/forms.ts";
import { begunFrom, draftNameOf, keepBegun } from "./begun.ts";
import type { Begun } from "./begun.ts";
import { useDrafts } from "./drafts.ts";
import { textAt } from "./passage-fields.tsx";
import { TakingSheet } from "./taking-sheet.tsx";

interface Props {
  readonly source: PaperData;
  /** The file that is open, and all files of the source. */
  readonly file: string;
  readonly papers: readonly string[];
  /** What was taken from the page; null while nothing is. */
  readonly taken: Taken | null;
  /** What is printed on its page, or `12–13` where it goes over two. */
  readonly printed: string | null;
  readonly onDone: () => void;
}

/** Beside a paper: the sheet of the passage that is being taken from it, or what was begun before and not saved. */
export function Capture({ source, file, papers, taken, printed, onDone }: Props) {
  const { readOnly } = useDesk().state;
  const { drafts: kept, look } = useDrafts(source.key);
  const drafts = kept ?? [];
  const [resumed, setResumed] = useState<Begun | null>(null);
  const [fresh, setFresh] = useState<{ readonly taken: Taken; readonly begun: Begun } | null>(null);
  // A sheet keeps what it was opened with, whatever the page says of its paper since.
  if ((fresh?.taken ?? null) !== taken)
    setFresh(taken && { taken, begun: begunFrom(source, taken, file, papers, printed) });
  if (readOnly !== null) {
    return taken && readOnly !== "" ? (
      <p className="trouble" role="note">
        {formWords.readOnly(readOnly)}
      </p>
    ) : null;
  }
  const begun = fresh?.begun ?? resumed;
  if (begun === null)
    return (
      <Unfinished
        drafts={drafts}
        onGo={setResumed}
        onThrow={(one) => {
          keepBegun(draftNameOf(one), null);
          look();
        }}
      />
    );
  const name = draftNameOf(begun);
  const before = drafts.find((one) => draftNameOf(one) === name);
  return (
    <TakingSheet
      key={name}
      source={source}
      begun={before ?? begun}
      title={titleOf(begun, before !== undefined)}
      onDone={() => {
        setResumed(null);
        look();
        onDone();
      }}
    />
  );
}

function titleOf({ passage, entered }: Begun, isBegun: boolean): string {
  if (passage !== null) return words.more(textAt(entered, "at"));
  return isBegun ? words.goesOn : words.title;
}

interface UnfinishedProps {
  readonly drafts: readonly Begun[];
  readonly onGo: (begun: Begun) => void;
  readonly onThrow: (begun: Begun) => void;
}

function Unfinished({ drafts, onGo, onThrow }: UnfinishedProps) {
  if (drafts.length === 0) return null;
  return (
    <section className="unfinished">
      <h2 className="label">{words.unfinished}</h2>
      <ul>
        {drafts.map((one) => {
          const { entered } = one;
          const quote = textAt(entered, "quote") || textAt(entered, "at") || words.region;
          return (
            <li key={draftNameOf(one)}>
              {one.passage !== null && <span className="quiet">{words.more(textAt(entered, "at"))}</span>}
              <span className="sentence" dir="auto" lang={textAt(entered, "lang") || undefined}>
                {quote}
              </span>{" "}
              <button type="button" aria-label={words.goOnWith(quote)} onClick={() => onGo(one)}>
                {words.goOn}
              </button>{" "}
              <button
                type="button"
                className="plain"
                aria-label={words.throwAwayOne(quote)}
                onClick={() => onThrow(one)}
              >
                {words.throwAway}
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
