import { useMemo } from "react";
import type { Id } from "../../../base/finding.ts";
import type { PaperData } from "../../../show/desk/papers/page.ts";
import type { Taken } from "../../../show/desk/papers/taken.ts";
import { paperWords as words } from "../../words/reading/papers.ts";
import { Capture } from "./capture/capture.tsx";
import { Passages } from "./capture/passages.tsx";
import type { OpenPaper } from "./reader/paper.ts";
import type { Marked, PageMark } from "./words/marked.ts";

interface Props {
  readonly data: PaperData;
  readonly paper: OpenPaper;
  readonly papers: readonly string[];
  readonly marked: readonly Marked[];
  readonly taken: Taken | null;
  readonly printed: (page: number) => string | null;
  /** The passage that was asked for and is not found in the file; null for none. */
  readonly gone: Id | null;
  readonly reach: (mark: PageMark) => void;
  readonly onDone: () => void;
  readonly asOf: number | null;
}

/** What stands beside a paper: the sheet of what is being taken from it, and the passages that were. */
export function BesidePaper(props: Props) {
  const { data, paper, papers, marked, taken, printed, gone, reach, onDone, asOf } = props;
  const places = useMemo(
    () => new Map(marked.map(({ id, number, marks }) => [id, { number, page: marks[0]?.page ?? 0 }])),
    [marked],
  );
  const lost = data.passages.find(({ id }) => id === gone);
  return (
    <aside className="paper-beside" aria-label={words.beside}>
      {lost && <p role="alert">{words.notFound(lost.at)}</p>}
      <Capture
        source={data}
        file={paper.fileOf(taken?.pageIndex ?? 0)}
        papers={papers}
        taken={taken}
        printed={taken && printedOf(taken, printed)}
        onDone={onDone}
      />
      <Passages
        page={data}
        places={places}
        onGo={(id) => {
          const mark = marked.find((one) => one.id === id)?.marks[0];
          if (mark) reach(mark);
        }}
        asOf={asOf}
      />
    </aside>
  );
}

/** The printed page of what was taken, `12–13` where it goes over more than one; null where that is not known. */
function printedOf({ pageIndex, lastIndex }: Taken, printed: (page: number) => string | null): string | null {
  const [first, last] = [printed(pageIndex), printed(lastIndex)];
  return pageIndex === lastIndex || first === null || last === null ? first : `${first}–${last}`;
}
