import { useId, useLayoutEffect, useRef, useState } from "react";
import { flushSync } from "react-dom";
import type { Id } from "../../../base/finding.ts";
import { useNames } from "../../map/arguing/asking.ts";
import { useActions } from "../../parts/actions.tsx";
import { floorWords as words } from "../../words/arguing/floor.ts";
import { inReadersWords } from "../../words/reader/said.ts";
import { searchWords } from "../../words/search.ts";
import { useDesk } from "../desk.tsx";
import { keepQuestion, recordLookedAt } from "./floor.ts";

/** One key opens a line anywhere in the app: what is typed into it is kept, about the record that is looked at. */
export function FloorLine() {
  const [about, setAbout] = useState<Id | null | undefined>(undefined);
  const [kept, setKept] = useState(false);
  const open = (): void => {
    // At once: what is typed next is for the line, and no key of the page.
    flushSync(() => {
      setKept(false);
      setAbout(recordLookedAt());
    });
  };
  useActions(searchWords.everywhere, [{ name: words.title, key: "q", run: open }], "everywhere");
  return (
    <p className="commands floor">
      <button type="button" aria-haspopup="dialog" onClick={open}>
        {words.key} <kbd>q</kbd>
      </button>
      <output className="quiet">{kept && words.kept}</output>
      {about !== undefined && (
        <Line
          about={about}
          onShut={(is) => {
            setAbout(undefined);
            setKept(is);
          }}
        />
      )}
    </p>
  );
}

/** What was typed and not kept: it is there again when the line is opened anew. */
let begun = "";

function Line({ about, onShut }: { readonly about: Id | null; readonly onShut: (kept: boolean) => void }) {
  const { readOnly } = useDesk().state;
  const [text, setText] = useState(begun);
  const [trouble, setTrouble] = useState("");
  const dialog = useRef<HTMLDialogElement>(null);
  const kept = useRef(false);
  const title = useId();
  const help = useId();
  const names = useNames(about === null ? [] : [about]);
  const label = about === null ? undefined : names?.[about]?.label;
  useLayoutEffect(() => {
    const own = dialog.current;
    if (!own?.open) own?.showModal();
    // Shut before it is taken away: only so does the focus return.
    return () => own?.close();
  }, []);
  const keep = async (): Promise<void> => {
    if (text.trim() === "" || readOnly !== null) return;
    const why = await keepQuestion({ text: text.trim().replace(/\s+/gu, " "), about });
    if (why !== null) return setTrouble(why);
    begun = "";
    kept.current = true;
    dialog.current?.close();
  };
  return (
    <dialog ref={dialog} className="floor-line" aria-labelledby={title} onClose={() => onShut(kept.current)}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void keep();
        }}
      >
        <h2 id={title}>{words.title}</h2>
        {label && <p className="quiet">{words.about(inReadersWords(label))}</p>}
        {readOnly === null ? (
          <div className="line">
            <input
              type="text"
              dir="auto"
              autoFocus
              autoComplete="off"
              aria-label={words.line}
              aria-describedby={help}
              value={text}
              onChange={({ target: { value } }) => {
                begun = value;
                setText(value);
              }}
            />
            <button type="submit">{words.keep}</button>
          </div>
        ) : (
          <p>{words.cannot(readOnly)}</p>
        )}
        {trouble !== "" && (
          <p className="trouble" role="alert">
            {trouble}
          </p>
        )}
        <p className="quiet" id={help}>
          {readOnly === null && words.help}
        </p>
        <button type="button" className="plain" onClick={() => dialog.current?.close()}>
          {searchWords.close}
        </button>
      </form>
    </dialog>
  );
}
