import { useCallback, useEffect, useRef, useState } from "react";
import { flushSync } from "react-dom";
import type { Lens } from "../../build.ts";
import type { Action, Prepared } from "../../link/edit/action.ts";
import { followCorpus } from "./corpus.ts";
import type { Answer, DeskNow, Following } from "./corpus.ts";
import { codeOf } from "./late.tsx";
import { keepOutcomes, recalled, remembering } from "./remembered.ts";
import { argueIn } from "../map/arguing/asking.ts";
import { compareIn } from "../pages/desk/changes/handing.ts";
import { gridIn } from "../pages/desk/grid/asking.ts";
import { importIn } from "../pages/desk/import/asking.ts";
import { leaveAsking } from "./door/asking.ts";
import { formsIn } from "../pages/sheet/form/asking.ts";
import { deskWords } from "../words/desk/desk.ts";
import { searchIn } from "../pages/search/searching.ts";
import { workIn } from "../pages/desk/workbench/on-bench.ts";
import type { Incipit } from "../../show/pages/incipit/incipit.ts";
import type { Asked, Change, Opening, Told, Wanted } from "../worker/messages.ts";

type Shown = Extract<Told, { readonly tell: "page" | "unreadable" }>;

/** What the app knows at this moment: the page last told, what changed on disk, and any trouble. */
export interface Known {
  readonly told: Shown | null;
  readonly changes: readonly Change[];
  readonly trouble: string | null;
  /** The questions of a large corpus that is still being read, and what is being done before the page is there. */
  readonly incipit: Incipit | null;
  readonly opening: Opening | null;
}

/** From so many signs of text on a corpus is told as it is read, and what was computed before is recalled as it is needed. */
const large = 400_000;

const nothing: Known = { told: null, changes: [], trouble: null, incipit: null, opening: null };

/** What is known, and whether the page told is still an earlier one than the page asked for. */
export interface Asking extends Known {
  readonly waiting: boolean;
  /** What can be done at the desk; null before the corpus was read. */
  readonly desk: DeskNow | null;
  /** Asks what an action comes to, as the files now are. */
  readonly prepare: (action: Action) => Promise<Prepared>;
  /** Reads the files at once, as an answer to a change of them tells them. */
  readonly readAgain: (answer: Answer) => Promise<void>;
}

/** The page of examinations with how far its plan has come; any other page stays as it is. */
function withProgress(before: Known, { number, done, of }: Extract<Told, { tell: "planning" }>): Known {
  const { told } = before;
  if (told?.tell !== "page" || told.number !== number || told.page.page !== "examinations") return before;
  const data = { ...told.page.data, progress: { done, of } };
  return { ...before, told: { ...told, page: { page: "examinations", data } } };
}

/** Asks the model's worker for a page, and again whenever files or numbers change. */
export function useModel(wanted: Wanted, lens: Lens): Asking {
  const [known, setKnown] = useState<Known>(nothing);
  const worker = useRef<Worker | null>(null);
  const number = useRef(0);
  const [toldOf, setToldOf] = useState("");
  const asked = useRef("");
  const asking = JSON.stringify([wanted, lens]);
  const [desk, setDesk] = useState<DeskNow | null>(null);
  const following = useRef<Following | null>(null);
  const prepares = useRef(0);
  const preparing = useRef(new Map<number, (prepared: Prepared) => void>());

  useEffect(() => {
    const thread = new Worker(new URL("../worker/model-worker.ts", import.meta.url), { type: "module" });
    worker.current = thread;
    searchIn(thread);
    formsIn(thread);
    importIn(thread);
    gridIn(thread);
    argueIn(thread);
    compareIn(thread);
    workIn(thread);
    const say = (asked: Asked, given: Transferable[] = []): void => thread.postMessage(asked, given);
    const show = (told: Shown): void => {
      if (told.number !== number.current) return;
      const code = told.tell === "page" ? codeOf(told.page.page) : null;
      if (code) {
        // A page is arrived at when it can be seen, not when its data have come.
        const gone = (): void => setKnown((before) => ({ ...before, trouble: deskWords.ended }));
        void code.then(() => show(told), gone);
        return;
      }
      setKnown((before) => ({ ...before, told, trouble: null, incipit: null, opening: null }));
      setToldOf(asked.current);
    };
    thread.onmessage = (event: MessageEvent<Told>) => {
      const told = event.data;
      if (told.tell === "changed") setKnown((before) => ({ ...before, changes: told.changes }));
      else if (told.tell === "prepared") {
        preparing.current.get(told.number)?.(told.prepared);
        preparing.current.delete(told.number);
      } else if (told.tell === "computed") keepOutcomes(told.document);
      else if (told.tell === "recall")
        void recalled(told.keys).then((bytes) =>
          say({ ask: "recalled", bytes }, bytes === null ? [] : [bytes]),
        );
      else if (told.tell === "incipit") setKnown((before) => ({ ...before, incipit: told.incipit }));
      else if (told.tell === "opening") setKnown((before) => ({ ...before, opening: told.opening }));
      else if (told.tell === "planning") setKnown((before) => withProgress(before, told));
      else if (told.tell !== "computing") show(told);
    };
    thread.onerror = (event) => {
      const trouble = deskWords.fault(event.message);
      setKnown((before) => ({ ...before, trouble }));
      // Who waits for an answer would wait for ever.
      for (const resolve of preparing.current.values()) resolve({ problem: trouble });
      preparing.current.clear();
      leaveAsking();
    };
    // Before the files: what is remembered is not computed. Of a large corpus it is too much to wait for.
    let remembered = Promise.resolve();
    const corpus = followCorpus(
      {
        coming: ({ count, first, size }) => {
          if (size < large) remembered = remembering(thread);
          say({ ask: "coming", count, first, large: size >= large });
        },
        lines: (bytes) => say({ ask: "lines", bytes }, [bytes.buffer]),
        came: (now) => {
          if (now) flushSync(() => setDesk(now.desk));
          const message: Asked = { ask: "came", guests: now?.guests ?? [], kept: now !== null };
          void remembered.then(() => say(message));
        },
      },
      ({ desk: state, ...found }) => {
        // At once: whoever waits for the answer to a change finds what can be undone as that answer has it.
        flushSync(() => setDesk(state));
        void remembered.then(() => say({ ask: "files", ...found }));
      },
      (trouble) => setKnown((before) => ({ ...before, trouble })),
    );
    following.current = corpus;
    return () => {
      corpus.stop();
      thread.terminate();
    };
  }, []);

  useEffect(() => {
    number.current += 1;
    asked.current = asking;
    const [page, under] = JSON.parse(asking) as [Wanted, Lens];
    const message: Asked = { ask: "page", number: number.current, lens: under, wanted: page };
    worker.current?.postMessage(message);
    // Beside the making of its data; who waits for the page is told where it fails.
    codeOf(page.page)?.catch(() => undefined);
  }, [asking]);

  const prepare = useCallback(
    (action: Action): Promise<Prepared> =>
      new Promise((resolve) => {
        const next = (prepares.current += 1);
        preparing.current.set(next, resolve);
        const message: Asked = { ask: "prepare", number: next, action };
        worker.current?.postMessage(message);
      }),
    [],
  );

  const readAgain = useCallback(async (answer: Answer) => following.current?.read(answer), []);

  return { ...known, waiting: toldOf !== asking, desk, prepare, readAgain };
}
