import type { Memo, SourceFile } from "../../../build.ts";
import { readCorpus } from "../../../read/read.ts";
import { fileOfBytes, inPathOrder } from "../../../read/source-file.ts";

/** A corpus that is on its way: lists of its files in lines of JSON, of which the first hold the questions. */
export interface Coming {
  /** How many files there will be, and how many of them come first. */
  readonly count: number;
  readonly first: number;
}

/** What is done while a corpus comes. */
export interface Meanwhile {
  /** The files with the questions are there. */
  readonly first: (files: readonly SourceFile[]) => void;
  /** So many files have been read. */
  readonly progress: (done: number) => void;
}

/** Takes a corpus as its bytes come. */
export interface Arriving {
  readonly take: (bytes: Uint8Array) => void;
  /** All files that came, in the order of their paths. */
  readonly files: () => readonly SourceFile[];
}

const text = { to: new TextEncoder(), from: new TextDecoder("utf-8", { ignoreBOM: true }) } as const;

function inBytes(file: SourceFile): SourceFile {
  if (file.problem !== undefined) return file;
  return fileOfBytes(file.path, text.to.encode(file.text), (bytes) => text.from.decode(bytes));
}

/** Reads each file as it comes, so that what it says is remembered when all of them are tied together. */
export function arriving({ count, first }: Coming, memo: Memo["read"], meanwhile: Meanwhile): Arriving {
  const decoder = new TextDecoder("utf-8", { ignoreBOM: true });
  const files: SourceFile[] = [];
  let main: SourceFile | undefined;
  let begun = "";
  let isFirst = first > 0;

  const takeLine = (line: string): void => {
    const some = (JSON.parse(line) as readonly SourceFile[]).map(inBytes);
    files.push(...some);
    main ??= some.find(({ path }) => path === "corpus.yaml");
    if (isFirst && files.length >= first) {
      isFirst = false;
      meanwhile.first(files.slice(0, first));
    }
    // What these files say does not hang on the others; what is said against them is said when all are there.
    if (main && count > some.length) readCorpus([main, ...some.filter((file) => file !== main)], memo);
    meanwhile.progress(files.length);
  };
  return {
    take: (bytes) => {
      const [head = "", ...others] = decoder.decode(bytes, { stream: true }).split("\n");
      begun += head;
      for (const next of others) {
        if (begun !== "") takeLine(begun);
        begun = next;
      }
    },
    files: () => files.toSorted((a, b) => inPathOrder(a.path, b.path)),
  };
}
