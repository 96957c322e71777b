import type { SourceFile } from "../../src/read/source-file.ts";

/** A value as it is written: a text, a list, or a map in one line. */
export type Written = string | number | readonly Written[] | { readonly [name: string]: Written | undefined };

/** A record as it is written; what is undefined is left out. */
export type Entry = { readonly [name: string]: Written | undefined };

/** Records collected by file and list. */
export interface Sheets {
  /** Adds a record to a list of a file; `source` is what the file's records are from. */
  readonly add: (path: string, list: string, entry: Entry, source?: string) => void;
  /** The files in the order in which they were begun. */
  readonly files: () => readonly SourceFile[];
}

/** An empty collection of records. */
export function emptySheets(): Sheets {
  const begun = new Map<
    string,
    { readonly source: string | undefined; readonly lists: Map<string, Entry[]> }
  >();
  return {
    add: (path, list, entry, source) => {
      const file = begun.get(path) ?? { source, lists: new Map<string, Entry[]>() };
      begun.set(path, file);
      file.lists.set(list, file.lists.get(list) ?? []);
      file.lists.get(list)?.push(entry);
    },
    files: () =>
      [...begun].map(([path, { source, lists }]) => {
        const head = source === undefined ? "" : `source: ${source}\n\n`;
        const body = [...lists].map(([list, entries]) => `${list}:\n${entries.map(lines).join("")}`);
        return { path, text: head + body.join("\n") };
      }),
  };
}

function lines(entry: Entry): string {
  const fields = Object.entries(entry).flatMap(([name, value]) =>
    value === undefined ? [] : [`${name}: ${written(value)}`],
  );
  return `  - ${fields.join("\n    ")}\n`;
}

/** A value in one line of YAML: plain where that is safe, else in double quotes, which JSON shares with YAML. */
export function written(value: Written): string {
  if (typeof value === "number") return String(value);
  if (typeof value === "string") {
    const plain = /^[A-Za-z0-9][A-Za-z0-9 ./()-]*$/.test(value) && !/[ .]$/.test(value);
    return plain ? value : JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map((one: Written) => written(one)).join(", ")}]`;
  const fields = Object.entries(value).flatMap(([name, one]) =>
    one === undefined ? [] : [`${name}: ${written(one)}`],
  );
  return `{ ${fields.join(", ")} }`;
}
