import { join } from "node:path";
import { row, say } from "../../../base/text/said/said.ts";
import type { Disk } from "../disk.ts";
import { CannotWrite, kindsSeen, nothingWritten } from "../refusal.ts";

/** The endings of the files that the desk writes: those that hold records, bibliographies and tables, and no code. */
const written = /\.(ya?ml|bib|ris|json|csv)$/;
const endings = [".yaml", ".yml", ".csv", ".bib", ".ris", ".json"] as const;

/**
 * Where a file of a corpus that the desk writes stands on the disk, as the corpus names it; refused where the reader
 * would pass it over, where it leads out of the corpus, or into another one. Links are not followed.
 */
export function placeIn(disk: Disk, folder: string, file: string): string {
  checkName(file);
  if (!written.test(file)) {
    throw new CannotWrite(
      nothingWritten(say`Unexpected ending of \`${file}\`, expected ${row(endings, "or")}`),
    );
  }
  return pathIn(disk, folder, file);
}

/** The same of a file with any ending. */
export function pathIn(disk: Disk, folder: string, file: string): string {
  checkName(file);
  const parts = file.split("/");
  for (const count of parts.keys()) if (count > 0) checkFolder(disk, folder, parts.slice(0, count).join("/"));
  if (parts.length > 1 && parts.at(-1) === "corpus.yaml") throw anotherCorpus(parts.slice(0, -1).join("/"));
  return join(folder, ...parts);
}

function checkName(file: string): void {
  if (!file.split("/").every(isPlain) || file.length > 4096)
    throw new CannotWrite(nothingWritten(say`Unexpected name \`${file}\`, expected one that a corpus reads`));
}

function isPlain(part: string): boolean {
  return (
    /^[^.\\/:\u0000-\u001f\u007f][^\\/:\u0000-\u001f\u007f]{0,254}$/.test(part) && part !== "node_modules"
  );
}

function checkFolder(disk: Disk, folder: string, below: string): void {
  const path = join(folder, below);
  const kind = disk.see(path)?.kind ?? null;
  if (kind === null) return;
  if (kind !== "folder")
    throw new CannotWrite(
      nothingWritten(say`Unexpected ${kindsSeen[kind]} at \`${below}\`, expected a folder`),
    );
  if (disk.see(join(path, "corpus.yaml"))) throw anotherCorpus(below);
}

function anotherCorpus(below: string): CannotWrite {
  return new CannotWrite(
    nothingWritten(say`Unexpected corpus in \`${below}\`, expected a folder of this one`),
  );
}
