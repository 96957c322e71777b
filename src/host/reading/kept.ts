import { statSync } from "node:fs";
import type { Stats } from "node:fs";
import { basename, dirname } from "node:path";
import { fileURLToPath } from "node:url";
import { inEnglish } from "../../base/text/said/english.ts";
import { say } from "../../base/text/said/said.ts";
import { canBeKept } from "../../read/decode/kept/kept.ts";
import type { ReadMemo } from "../../read/read.ts";
import { hasSameText } from "../../read/source-file.ts";
import type { SourceFile } from "../../read/source-file.ts";
import { readCorpusFolder } from "../corpus-folder.ts";
import { setAside } from "../desk/aside.ts";
import { cleared, makeFolders, nodeDisk } from "../desk/disk.ts";
import { besideOf, writeWhole } from "../desk/files/beside.ts";
import { isOfDisk } from "../desk/refusal.ts";
import { cacheFileFor } from "../memo-store.ts";
import type { Keeping } from "../memo-store.ts";
import { isAsItWas, packed, stampOf, unpacked } from "./pack.ts";
import type { PackedFile, Stamp } from "./pack.ts";

/** A corpus's folder, with what was read of it the last time. */
export interface KeptReading {
  /** The files as they now are; one that is known to be as it was is not read again. */
  readonly files: () => readonly SourceFile[];
  /** What was read of their texts: what a text says is looked up by the whole of it. */
  readonly memo: ReadMemo;
  /** Keeps what has been read for the next time; a cache that cannot be written is passed over. */
  readonly keep: () => void;
}

/** Where something is kept, by whom, and at what time. */
export interface Place extends Keeping {
  /** Smaller corpora, in UTF-16 units of text, are read as quickly as what was kept of them would be. */
  readonly least: number;
  readonly file: string;
  readonly edition: string;
  readonly now: () => number;
}

/** The reading of a corpus as it is kept in the user's cache folder, where it may be deleted at any time. */
export function keptReading(folder: string, given: Partial<Place> = {}): KeptReading {
  const place: Place = {
    file: cacheFileFor(folder, "-read"),
    edition: ownEdition(),
    now: Date.now,
    least: 200_000,
    disk: nodeDisk,
    tell: (told) => void process.stderr.write(`${inEnglish(told)}\n`),
    ...given,
  };
  const known = new Map(loaded(place).map((one) => [one.file.path, one]));
  const memo: ReadMemo = new Map();
  for (const one of known.values()) remember(one, memo);
  /** Of the files that are read now. */
  let stamps = new Map<string, Stamp | null>();
  let now: readonly SourceFile[] = [];
  let isKept = false;
  const earlier = (path: string, about: Stats): SourceFile | null => {
    const one = known.get(path);
    if (one?.stamp && isAsItWas(one.stamp, about)) return one.file;
    stamps.set(path, stampOf(about, place.now()));
    return null;
  };
  const kept = (): readonly PackedFile[] => {
    return now.flatMap((file) => {
      const one = known.get(file.path);
      const stamp = one?.file === file ? one.stamp : stamps.get(file.path);
      if (stamp === undefined || file.problem !== undefined) return [];
      return [{ file, stamp, said: saidOf(file, memo) }];
    });
  };
  return {
    memo,
    files: () => {
      stamps = new Map();
      now = readCorpusFolder(folder, earlier);
      isKept = false;
      return now;
    },
    keep: () => {
      if (isKept || now.reduce((sum, { text }) => sum + text.length, 0) < place.least) return;
      isKept = true;
      const next = kept();
      const isNew = next.length !== known.size || !next.every((one) => isSame(one, known.get(one.file.path)));
      if (isNew) put(place, packed(place.edition, next));
      // What was kept is done with; the memo may have gone on to other texts.
      known.clear();
    },
  };
}

/** Puts what is kept in its place, for its owner alone: it has all that the corpus says, of find-spots too. */
function put({ disk, file }: Place, bytes: Uint8Array): void {
  const beside = besideOf(file, "part");
  try {
    makeFolders(disk, dirname(file));
    cleared(disk, beside);
    writeWhole(disk, beside, bytes, "own");
    disk.rename(beside, file);
  } catch (error) {
    if (!isOfDisk(error)) throw error;
    cleared(disk, beside);
  }
}

/** What was kept; what cannot be read is set aside and told. */
function loaded({ file, edition, disk, tell }: Place): readonly PackedFile[] {
  try {
    const found = disk.see(file);
    if (!found) return [];
    const files = found.kind === "file" ? unpacked(edition, disk.read(file)) : null;
    if (files) return files;
    if (found.kind === "file") cleared(disk, `${file}.set-aside`);
    const aside = setAside(disk, file);
    tell(
      say`Unexpected content of \`${file}\`, expected what was read before: set aside as \`${basename(aside)}\``,
    );
    return [];
  } catch (error) {
    if (isOfDisk(error)) return [];
    throw error;
  }
}

function remember({ file, said }: PackedFile, memo: ReadMemo): void {
  if (said) memo.set(file.path, [{ manner: said.manner, file, read: said.read }]);
}

/** What a file was read to say last, where it can be kept. */
function saidOf(file: SourceFile, memo: ReadMemo): PackedFile["said"] {
  const one = memo.get(file.path)?.find((it) => hasSameText(it.file, file));
  return one && canBeKept(file.path, one.read) ? { manner: one.manner, read: one.read } : null;
}

function isSame(one: PackedFile, other: PackedFile | undefined): boolean {
  return (
    other !== undefined &&
    hasSameText(one.file, other.file) &&
    (one.stamp === other.stamp || one.stamp?.every((part, at) => part === other.stamp?.[at]) === true) &&
    one.said?.manner === other.said?.manner
  );
}

/** Names this program as it was built or installed: another may read the same text otherwise. */
function ownEdition(): string {
  const own = fileURLToPath(import.meta.url);
  const { size, mtimeMs, ctimeMs } = statSync(own);
  return `${own} ${size} ${mtimeMs} ${ctimeMs}`;
}
