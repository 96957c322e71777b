import { useEffect, useRef, useState } from "react";
import type { EntryDraft } from "../../../../show/desk/import/entry.ts";
import { doorTo } from "../../../model/door/asking.ts";
import type {
  EntryAsked,
  Given,
  ImportAnswer,
  ImportAsked,
  ImportQuestions,
  TableAnswer,
  TableQuestion,
} from "./serving.ts";

const door = doorTo<ImportQuestions>("import");

/** Opens a door for imports, and for changes of entries, to the worker that holds the model. */
export const importIn = door.open;

/** Asks the model what an import comes to; null where the corpus cannot be read. */
export const askImport = (given: ImportAsked): Promise<ImportAnswer | null> => door.ask("import", given);

/** Asks the model what a change of an entry comes to; null where there is no such entry. */
export const askEntry = (given: EntryAsked): Promise<EntryDraft | null> => door.ask("entry", given);

/** Asks the model what a table comes to, one of the files handed over before; null where there is none of that name. */
export const askTable = (given: TableQuestion): Promise<TableAnswer | null> => door.ask("table", given);

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
