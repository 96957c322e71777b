import type { FileChange } from "../base/text/edit.ts";
import { nodeDisk } from "./desk/disk.ts";
import type { Disk } from "./desk/disk.ts";
import { movesOf } from "./desk/files/moves.ts";
import { putInPlace } from "./desk/files/put.ts";

export { CannotWrite } from "./desk/refusal.ts";

/**
 * Makes edits in the files of a corpus, all of them or none: each new text is written whole beside its file, kept by
 * the disk, and only then put in its place. A file that is no longer what the edits were made for is refused. This
 * keeps no history: it is for changes asked for at a command line, which the desk finds as made outside.
 */
export function writeChanges(folder: string, changes: readonly FileChange[], disk: Disk = nodeDisk): void {
  putInPlace(disk, folder, movesOf(disk, folder, changes));
}
