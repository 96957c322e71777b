import { differing } from "../base/text/edit.ts";
import { NoCorpus, fileIn, filesTaken, readCorpusFolder } from "../host/corpus-folder.ts";
import { hashOfText } from "../host/desk/files/standing.ts";
import { filesApart } from "../read/settings/companions/files.ts";
import { hasSameText } from "../read/source-file.ts";
import type { SourceFile } from "../read/source-file.ts";

/** What a corpus's files are, told to somebody who may have some of them. */
export interface FilesTold {
  /** Names this state of the files: who has it asks for what changed since. */
  readonly version: string;
  /** The version for whom what changed is told; null where these are all the files. */
  readonly since: string | null;
  /** Whether these are all the files; else those that changed or came. */
  readonly whole: boolean;
  readonly files: readonly SourceFile[];
  /** Large files of which a stretch changed since, and no more is told. */
  readonly stretches: readonly Stretch[];
  /** Paths of files that went. */
  readonly gone: readonly string[];
}

/** A stretch of a text that is now another, in UTF-16 units of what it was; and the SHA-256 of the whole text as it is now. */
export interface Stretch {
  readonly path: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly is: string;
}

/** Smaller texts are told whole. */
const large = 64 * 1024;

/** A file as it was last read, in which turn it came to be so, and what of it is another than in an earlier turn. */
interface Now {
  readonly file: SourceFile;
  readonly turn: number;
  readonly change: { readonly since: number; readonly stretch: Stretch } | null;
}

/** The files of a corpus as they were last read, so that only what changed is told again. */
export interface Reading {
  readonly version: () => string;
  /** Reads all of the folder again; throws `NoCorpus` where it is none. */
  readonly again: () => readonly SourceFile[];
  /** The files as they were last read; null where they never were, or where the folder was no corpus then. */
  readonly known: () => readonly SourceFile[] | null;
  /** Reads a few files again that are known to have changed. */
  readonly some: (paths: readonly string[]) => void;
  /** What changed since a version; everything where that is none of this program's, or not given. */
  readonly since: (version: string | undefined) => FilesTold;
  /** Has everybody ask again, though no file changed. */
  readonly renew: () => void;
}

/** Follows the files in a folder; `session` names the program, since it counts from 1 each time. */
export function readingOf(folder: string, session: string): Reading {
  let turn = 0;
  let now = new Map<string, Now>();
  const went = new Map<string, number>();
  let isCorpus = false;

  const put = (file: SourceFile): void => {
    const known = now.get(file.path);
    if (known && hasSameText(known.file, file) && sameProblem(known.file, file)) return;
    now.set(file.path, { file, turn, change: known ? changeOf(known, file) : null });
    went.delete(file.path);
  };
  const drop = (path: string): void => {
    if (now.delete(path)) went.set(path, turn);
  };
  /** A turn in which nothing changed leaves the version as it was. */
  const inTurn = (change: () => void): void => {
    turn += 1;
    change();
    const isNew = [...now.values()].some((one) => one.turn === turn) || [...went.values()].includes(turn);
    if (!isNew) turn -= 1;
  };
  /** Which other corpora are used is said in the settings. */
  const takeAgain = (): void => {
    const taken = filesTaken(folder, now.get("corpus.yaml")?.file);
    const kept = new Set([...filesApart(inOrder()).own, ...taken].map(({ path }) => path));
    for (const path of now.keys()) if (!kept.has(path)) drop(path);
    for (const file of taken) put(file);
  };
  const inOrder = (): readonly SourceFile[] => [...now.values()].map((one) => one.file);

  return {
    version: () => `${session}.${turn}`,
    again: () => {
      try {
        const files = readCorpusFolder(folder);
        inTurn(() => {
          const paths = new Set(files.map((file) => file.path));
          for (const path of now.keys()) if (!paths.has(path)) drop(path);
          for (const file of files) put(file);
        });
        // In the order of the folder, whenever a file came.
        now = new Map(files.flatMap(({ path }) => [[path, now.get(path)] as const]).filter(isThere));
        isCorpus = true;
        return inOrder();
      } catch (error) {
        isCorpus = false;
        if (error instanceof NoCorpus) turn += 1;
        throw error;
      }
    },
    known: () => (isCorpus ? inOrder() : null),
    some: (paths) =>
      inTurn(() => {
        for (const path of paths) {
          const file = fileIn(folder, path);
          if (file) put(file);
          else drop(path);
        }
        if (paths.includes("corpus.yaml")) takeAgain();
      }),
    since: (version) => {
      const [whose, since = ""] = version?.split(".") ?? [];
      const whole = whose !== session || !/^\d+$/.test(since) || Number(since) > turn;
      const from = whole ? -1 : Number(since);
      const changed = [...now.values()].filter((one) => one.turn > from);
      const told = changed.map((one) => ({ ...one, stretch: stretchSince(one, from) }));
      return {
        version: `${session}.${turn}`,
        since: whole ? null : `${session}.${from}`,
        whole,
        files: told.flatMap(({ file, stretch }) => (stretch ? [] : [file])),
        stretches: told.flatMap(({ stretch }) => stretch ?? []),
        gone: whole ? [] : [...went].filter(([, at]) => at > from).map(([path]) => path),
      };
    },
    renew: () => {
      turn += 1;
    },
  };
}

/** What of a large file is another than it was; null where it is told whole. */
function changeOf(known: Now, { path, text, problem }: SourceFile): Now["change"] {
  const was = known.file;
  if (text.length < large || problem !== undefined || was.problem !== undefined) return null;
  const stretch = { path, ...differing(was.text, text), is: hashOfText(text) };
  return stretch.text.length < text.length / 2 ? { since: known.turn, stretch } : null;
}

/** What to tell of a file to who had it as it was after a turn. */
function stretchSince({ change }: Now, from: number): Stretch | null {
  return change && change.since <= from ? change.stretch : null;
}

function isThere(entry: readonly [string, Now | undefined]): entry is readonly [string, Now] {
  return entry[1] !== undefined;
}

function sameProblem(one: SourceFile, other: SourceFile): boolean {
  return JSON.stringify(one.problem) === JSON.stringify(other.problem);
}
