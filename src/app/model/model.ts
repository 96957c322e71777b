import { useEffect, useRef, useState } from "react";
import type { Lens } from "../../build.ts";
import { followCorpus } from "./corpus.ts";
import { searchIn } from "../pages/search/searching.ts";
import type { Asked, Change, Told, Wanted } from "../worker/messages.ts";

/** What the app knows at this moment: the page last told, what changed on disk, and any trouble. */
export interface Known {
  readonly told: Extract<Told, { readonly tell: "page" | "unreadable" }> | null;
  readonly changes: readonly Change[];
  readonly trouble: string | null;
}

/** What is known, and whether the page told is still an earlier one than the page asked for. */
export interface Asking extends Known {
  readonly waiting: boolean;
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
  const [known, setKnown] = useState<Known>({ told: null, changes: [], trouble: null });
  const worker = useRef<Worker | null>(null);
  const number = useRef(0);
  const [toldOf, setToldOf] = useState("");
  const asked = useRef("");
  const asking = JSON.stringify([wanted, lens]);

  useEffect(() => {
    const thread = new Worker(new URL("../worker/model-worker.ts", import.meta.url), { type: "module" });
    worker.current = thread;
    searchIn(thread);
    const say = (asked: Asked): void => thread.postMessage(asked);
    thread.onmessage = (event: MessageEvent<Told>) => {
      const told = event.data;
      if (told.tell === "changed") setKnown((before) => ({ ...before, changes: told.changes }));
      else if (told.tell === "planning") setKnown((before) => withProgress(before, told));
      else if (told.number === number.current) {
        setKnown((before) => ({ ...before, told, trouble: null }));
        setToldOf(asked.current);
      }
    };
    thread.onerror = (event) => setKnown((before) => ({ ...before, trouble: event.message }));
    const stop = followCorpus(
      (files, guests) => say({ ask: "files", files, guests }),
      (trouble) => setKnown((before) => ({ ...before, trouble })),
    );
    return () => {
      stop();
      thread.terminate();
    };
  }, []);

  useEffect(() => {
    number.current += 1;
    asked.current = asking;
    const [page, under] = JSON.parse(asking) as [Wanted, Lens];
    const message: Asked = { ask: "page", number: number.current, lens: under, wanted: page };
    worker.current?.postMessage(message);
  }, [asking]);

  return { ...known, waiting: toldOf !== asking };
}
