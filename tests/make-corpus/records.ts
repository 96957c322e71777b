import { kindOf } from "../../src/read/grammar/kinds.ts";
import type { ListName } from "../../src/read/grammar/field.ts";
import type { SourceFile } from "../../src/read/source-file.ts";
import { portion } from "./shares.ts";

/** A value as it is written: a text, a list, or a map in one line. */
export type Written = string | number | readonly Written[] | { readonly [name: string]: Written | undefined };

/** A record as it is written; what is undefined is left out. */
export type Entry = { readonly [name: string]: Written | undefined };

/** Records collected by file and list. */
export interface Sheets {
  /** Adds a record to a list of a file; `source` is what the file's records are from. */
  readonly add: (path: string, list: ListName, entry: Entry, source?: string) => void;
  /** The files in the order in which they were begun; about so many, as far as those of one source can be gathered in one. */
  readonly files: (wanted?: number) => readonly SourceFile[];
}

/** The records of one file, by list; `source` is what they are from. */
interface Sheet {
  readonly source: string | undefined;
  readonly lists: Map<ListName, Entry[]>;
}

/** An empty collection of records. */
export function emptySheets(): Sheets {
  const begun = new Map<string, Sheet>();
  return {
    add: (path, list, entry, source) => {
      const file = begun.get(path) ?? { source, lists: new Map<ListName, Entry[]>() };
      begun.set(path, file);
      file.lists.set(list, file.lists.get(list) ?? []);
      file.lists.get(list)?.push(entry);
    },
    files: (wanted = Infinity) =>
      [...gathered(begun, wanted)].map(([path, { source, lists }]) => {
        const head = source === undefined ? "" : `source: ${source}\n\n`;
        const body = [...lists].map(([list, entries]) => `${list}:\n${entries.map(lines).join("")}`);
        return { path, text: head + body.join("\n") };
      }),
  };
}

/** Sheets of one source each put together with those begun after them, in equal shares, until there are so many in all. */
function gathered(sheets: ReadonlyMap<string, Sheet>, wanted: number): ReadonlyMap<string, Sheet> {
  const single = [...sheets].filter(([, { source }]) => source !== undefined);
  const groups = Math.max(1, wanted - (sheets.size - single.length));
  if (groups >= single.length) return sheets;
  const all = new Map([...sheets].filter(([, { source }]) => source === undefined));
  for (let group = 0, at = 0; group < groups; group++) {
    const those = single.slice(at, (at += portion(single.length, group, groups)));
    const lists = new Map<ListName, Entry[]>();
    for (const [, sheet] of those)
      for (const [list, entries] of sheet.lists)
        lists.set(list, [...(lists.get(list) ?? []), ...entries.map((one) => naming(one, list, sheet))]);
    all.set(those[0]?.[0] ?? "", { source: undefined, lists });
  }
  return all;
}

/** A record that names the source at the head of its sheet itself, where it could and does not. */
function naming(entry: Entry, list: ListName, { source }: Sheet): Entry {
  return "from" in kindOf(list).fields && entry["from"] === undefined ? { ...entry, from: source } : entry;
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
