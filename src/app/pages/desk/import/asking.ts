import { useEffect, useRef, useState } from "react";
import type { EntryDraft } from "../../../../show/desk/import/entry.ts";
import type { Asked } from "../../../worker/messages.ts";
import type {
  Answer,
  EntryAsked,
  Given,
  ImportAnswer,
  ImportAsked,
  Question,
  TableAnswer,
  TableQuestion,
} from "./serving.ts";

let door: MessagePort | null = null;
let number = 0;
const waiting = new Map<number, (told: Answer["told"]) => void>();

/** Opens a door for imports, and for changes of entries, to the worker that holds the model. */
export function importIn(holder: Worker): void {
  const { port1, port2 } = new MessageChannel();
  door = port2;
  port2.onmessage = ({ data }: MessageEvent<Answer>) => {
    waiting.get(data.number)?.(data.told);
    waiting.delete(data.number);
  };
  const lend: Asked = { ask: "import", port: port1 };
  holder.postMessage(lend, [port1]);
}

function asked<T extends Answer["told"]>(question: Omit<Question, "number">): Promise<T | null> {
  return new Promise((resolve) => {
    number += 1;
    waiting.set(number, (told) => resolve(told as T | null));
    const message: Question = { ...question, number };
    door?.postMessage(message);
  });
}

/** Asks the model what an import comes to; null where the corpus cannot be read. */
export const askImport = (given: ImportAsked): Promise<ImportAnswer | null> => asked({ import: given });

/** Asks the model what a change of an entry comes to; null where there is no such entry. */
export const askEntry = (given: EntryAsked): Promise<EntryDraft | null> => asked({ entry: given });

/** Asks the model what a table comes to, one of the files handed over before; null where there is none of that name. */
export const askTable = (given: TableQuestion): Promise<TableAnswer | null> => asked({ table: given });

/** What is to come in, and what was chosen for it. */
export interface Coming extends Omit<ImportAsked, "files" | "changes"> {
  readonly files: readonly Given[];
}

/** What an import comes to, asked for again whenever a choice or the corpus is another; null until the first answer. */
export function useImport(coming: Coming, corpus: unknown): readonly [ImportAnswer | null, boolean] {
  const [told, setTold] = useState<{ readonly of: Coming; readonly told: ImportAnswer | null } | null>(null);
  const handed = useRef<readonly Given[] | null>(null);
  useEffect(() => {
    let left = false;
    const { files, choices, duplicates, most } = coming;
    const fresh = handed.current === files ? {} : { files };
    handed.current = files;
    void askImport({ ...fresh, choices, duplicates, most, changes: false }).then((answer) => {
      if (!left) setTold({ of: coming, told: answer });
    });
    return () => void (left = true);
  }, [coming, corpus]);
  return [told?.told ?? null, told?.of !== coming];
}

/** What a table comes to, asked for again whenever a choice or the corpus is another; null until the first answer. */
export function useTable(
  question: Omit<TableQuestion, "changes">,
  corpus: unknown,
): readonly [TableAnswer["page"] | null, boolean] {
  const { name, chosen, most } = question;
  const key = JSON.stringify([name, chosen, most]);
  const [told, setTold] = useState<{ readonly of: string; readonly page: TableAnswer["page"] | null } | null>(
    null,
  );
  useEffect(() => {
    let left = false;
    const [of, given, rows] = JSON.parse(key) as [string, TableQuestion["chosen"], number];
    void askTable({ name: of, chosen: given, most: rows, changes: false }).then((answer) => {
      if (!left) setTold({ of: key, page: answer?.page ?? null });
    });
    return () => void (left = true);
  }, [key, corpus]);
  return [told?.page ?? null, told?.of !== key];
}
