import { createContext, useCallback, useContext, useLayoutEffect, useMemo, useRef, useState } from "react";
import type { FileChange } from "../../base/text/edit.ts";
import type { Action } from "../../link/edit/action.ts";
import type { DeskNow } from "../model/corpus.ts";
import { isTyping, useActions } from "../parts/actions.tsx";
import { deskWords } from "../words/desk/desk.ts";
import { saved, savedChanges, stepped } from "./saving.ts";
import type { Saved, Ways } from "./saving.ts";

/** What a page can do at the desk of the corpus. */
export interface Desk {
  readonly state: DeskNow;
  readonly save: (action: Action) => Promise<Saved>;
  /** Writes changes made for the texts as they are shown. */
  readonly saveChanges: (step: string, changes: readonly FileChange[]) => Promise<Saved>;
  readonly undo: () => Promise<Saved>;
  readonly redo: () => Promise<Saved>;
}

/** What was last done at the desk, in words; trouble is said as an alert. */
export interface Said {
  readonly text: string;
  readonly trouble: boolean;
  /** The step it is about. */
  readonly step?: string;
}

const closed: DeskNow = { readOnly: "", undo: null, redo: null };
const nothing = (): Promise<Saved> => Promise.resolve({ problem: "" });

const DeskContext = createContext<Desk>({
  state: closed,
  save: nothing,
  saveChanges: nothing,
  undo: nothing,
  redo: nothing,
});

/** Gives the pages below it the desk. */
export const DeskProvider = DeskContext.Provider;

/** The desk of the corpus that is open. */
export function useDesk(): Desk {
  return useContext(DeskContext);
}

/** Makes the desk of a frame from its ways to the model, with the keys that undo and redo, and what was last said. */
export function useDeskOf(state: DeskNow | null, ways: Ways): readonly [Desk, Said | null, () => void] {
  const [said, setSaid] = useState<Said | null>(null);
  const { prepare, readAgain } = ways;
  const turns = useRef({ last: Promise.resolve<unknown>(null), underWay: 0 });
  const desk = useMemo((): Desk => {
    const given = { prepare, readAgain };
    const told = (words: (step: string) => string, doing: Promise<Saved>): Promise<Saved> => {
      turns.current.underWay++;
      return doing
        .finally(() => turns.current.underWay--)
        .then((what) => {
          if ("done" in what) setSaid({ text: words(what.step), trouble: false, step: what.step });
          return what;
        });
    };
    // Keys may be quicker than the answers: each step is sent when the one before is done.
    const inTurn = (way: "undo" | "redo"): Promise<Saved> => {
      const mine = turns.current.last.then(() => stepped(given, way));
      turns.current.last = mine.catch(() => null);
      return mine;
    };
    const step = async (way: "undo" | "redo"): Promise<Saved> => {
      const what = await told(way === "undo" ? deskWords.undone : deskWords.redone, inTurn(way));
      if ("problem" in what) setSaid({ text: what.problem, trouble: true });
      return what;
    };
    return {
      state: state ?? closed,
      save: (action: Action) => told(deskWords.done, saved(given, action)),
      saveChanges: (name, changes) => told(deskWords.done, savedChanges(given, name, changes)),
      undo: () => step("undo"),
      redo: () => step("redo"),
    };
  }, [state, prepare, readAgain]);

  const undone = useCallback((): void => {
    // While a change is under way nobody here knows what there is to take back: whoever keeps the history says so.
    const known = turns.current.underWay === 0;
    if (known && desk.state.undo === null) setSaid({ text: deskWords.nothingToUndo, trouble: false });
    else void desk.undo();
  }, [desk]);
  const redone = useCallback((): void => {
    const known = turns.current.underWay === 0;
    if (known && desk.state.redo === null) setSaid({ text: deskWords.nothingToRedo, trouble: false });
    else void desk.redo();
  }, [desk]);
  useDeskKeys(undone, redone);
  useActions(
    deskWords.title,
    state === null || state.readOnly !== null
      ? []
      : [
          ...(state.undo === null
            ? []
            : [{ name: deskWords.undoStep(state.undo), key: "Ctrl+Z", run: undone, own: true as const }]),
          ...(state.redo === null
            ? []
            : [
                {
                  name: deskWords.redoStep(state.redo),
                  key: "Ctrl+Shift+Z",
                  run: redone,
                  own: true as const,
                },
              ]),
        ],
    "everywhere",
  );
  return [desk, said, () => setSaid(null)];
}

/** Control (or Command) with Z takes back, with Shift or with Y does again; while typing, the field keeps its own. */
function useDeskKeys(undo: () => void, redo: () => void): void {
  useLayoutEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isTyping(event.target)) return;
      if (event.defaultPrevented || document.querySelector("dialog[open]") !== null) return;
      const key = event.key.toLowerCase();
      const way = key === "y" || (key === "z" && event.shiftKey) ? redo : key === "z" ? undo : null;
      if (way === null) return;
      event.preventDefault();
      way();
    };
    document.addEventListener("keydown", onKey);
    return () => document.removeEventListener("keydown", onKey);
  }, [undo, redo]);
}
