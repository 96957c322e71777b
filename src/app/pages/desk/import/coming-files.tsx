import { useLayoutEffect, useRef, useState } from "react";
import { DropFiles } from "../../../parts/leaves/drop-files.tsx";
import { importWords as words } from "../../../words/desk/import.ts";
import { filesRead } from "./files.ts";
import type { FileRead } from "./files.ts";
import type { FileTold } from "./serving.ts";

interface Props {
  readonly read: readonly FileRead[];
  readonly told: readonly FileTold[];
  readonly onRead: (read: readonly FileRead[]) => void;
}

/** The files that are to come in: dropped, chosen or pasted, each with what was found in it. */
export function ComingFiles({ read, told, onRead }: Props) {
  const choose = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLUListElement>(null);
  const leaves = useRef(false);
  const [text, setText] = useState("");
  const take = async (files: Iterable<File>): Promise<void> => {
    const fresh = await filesRead(files);
    const names = new Set(fresh.map((one) => one.name));
    onRead([...read.filter((one) => !names.has(one.name)), ...fresh]);
  };
  useLayoutEffect(() => {
    // The button that was pressed is gone: the focus goes on to what has come, or back to where more is chosen.
    if (leaves.current) (list.current ?? choose.current)?.focus();
    leaves.current = false;
  }, [read]);
  const put = (next: readonly FileRead[]): void => {
    leaves.current = true;
    onRead(next);
  };
  const takeText = (): void => {
    const n = read.filter((one) => one.name.startsWith(words.pasted(1))).length + 1;
    put([...read, { name: words.pasted(n), text }]);
    setText("");
  };
  return (
    <>
      <DropFiles
        words={{ drop: words.drop, choose: words.choose, label: words.files }}
        accept=".bib,.bibtex,.ris,.json,.csv,.tsv,.txt"
        several
        button={choose}
        onFiles={(files) => void take(files)}
      />
      <details className="paste">
        <summary>{words.paste}</summary>
        <textarea
          aria-label={words.pasteLabel}
          rows={8}
          spellCheck={false}
          dir="auto"
          value={text}
          onChange={(event) => setText(event.target.value)}
        />
        {text.trim() !== "" && (
          <button type="button" onClick={takeText}>
            {words.readPasted}
          </button>
        )}
      </details>
      {read.length > 0 && (
        <ul className="coming" ref={list} tabIndex={-1} aria-label={words.files}>
          {read.map((one) => (
            <li key={one.name}>
              <bdi className="name">{one.name}</bdi>
              <span className="quiet">{stateOf(one, told)}</span>
              <button
                type="button"
                aria-label={words.takeAwayOne(one.name)}
                onClick={() => put(read.filter((other) => other !== one))}
              >
                {words.takeAway}
              </button>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function stateOf(one: FileRead, told: readonly FileTold[]): string {
  if ("trouble" in one) return one.trouble;
  const known = told.find((other) => other.name === one.name);
  if (!known) return words.reading;
  if (known.rows !== null) return words.rowsIn(known.rows);
  return known.entries === null ? words.noBibliography : words.entriesIn(known.entries);
}
