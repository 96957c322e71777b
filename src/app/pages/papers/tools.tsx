import { useState } from "react";
import type { ReactNode, RefObject } from "react";
import { pageAsked } from "../../../show/desk/papers/printing.ts";
import { paperWords as words } from "../../words/reading/papers.ts";

interface Props {
  readonly page: number;
  readonly count: number;
  readonly printed: (page: number) => string | null;
  readonly go: (page: number) => void;
  readonly field: RefObject<HTMLInputElement | null>;
  readonly size: Size;
  /** Leaves the field of the page for the paper. */
  readonly onLeave: () => void;
  readonly children?: ReactNode;
}

/** How large a paper's pages are shown, and the ways to change it. */
export interface Size {
  /** In percent of their real size. */
  readonly percent: number;
  readonly isFit: boolean;
  readonly larger: () => void;
  readonly smaller: () => void;
  readonly fit: () => void;
}

/** What stands over the pages of a paper: which of them is looked at, how large, and more ways to go on. */
export function PaperTools({ page, count, printed, go, field, size, onLeave, children }: Props) {
  return (
    <div className="paper-tools">
      <PageField page={page} count={count} printed={printed} go={go} field={field} onLeave={onLeave} />
      <fieldset aria-label={words.size}>
        <button type="button" aria-label={words.smaller} aria-keyshortcuts="-" onClick={size.smaller}>
          −
        </button>
        <output className="percent">{size.percent} %</output>
        <button type="button" aria-label={words.larger} aria-keyshortcuts="+" onClick={size.larger}>
          +
        </button>
        <button type="button" aria-pressed={size.isFit} aria-keyshortcuts="0" onClick={size.fit}>
          {words.fit}
        </button>
      </fieldset>
      {children}
    </div>
  );
}

/** The page that is looked at, by its printed number where that is known; another is gone to by writing it. */
function PageField({ page, count, printed, go, field, onLeave }: Omit<Props, "size" | "children">) {
  const now = printed(page) ?? String(page + 1);
  const [written, setWritten] = useState({ over: now, text: now, isWrong: false });
  const { text, isWrong } = written.over === now ? written : { text: now, isWrong: false };
  const write = (next: string, wrong = false): void => setWritten({ over: now, text: next, isWrong: wrong });
  const follow = (): boolean => {
    const asked = pageAsked(text, count, printed);
    write(text, asked === null);
    if (asked !== null && asked !== page) go(asked);
    return asked !== null;
  };
  return (
    <form
      className="paper-page-field"
      onSubmit={(event) => {
        event.preventDefault();
        if (follow()) onLeave();
      }}
    >
      <label>
        <span>{words.page}</span>
        <input
          ref={field}
          value={text}
          size={Math.max(3, text.length)}
          inputMode="numeric"
          autoComplete="off"
          aria-invalid={isWrong}
          aria-keyshortcuts="g"
          onFocus={(event) => event.target.select()}
          onChange={(event) => write(event.target.value)}
          onBlur={() => {
            if (text !== now) follow();
          }}
          onKeyDown={(event) => {
            if (event.key !== "Escape") return;
            write(now);
            onLeave();
          }}
        />
      </label>
      <span className="quiet">{words.inFile(page + 1, count)}</span>
      {isWrong && <span role="alert">{words.noPage}</span>}
    </form>
  );
}
