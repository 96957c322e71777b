import { join } from "node:path";
import { say } from "../../../base/text/said/said.ts";
import { isPortable } from "../../../read/source-file.ts";
import type { Disk } from "../disk.ts";
import { CannotWrite, nothingWritten } from "../refusal.ts";

/** A name as some disks compare it: without regard to capitals, and to whether an accented letter is whole or in parts. */
const folded = (name: string): string => name.normalize("NFC").toLowerCase().normalize("NFC");

/**
 * Refuses a path for a new file that not every system can have, and one that some disks take for that of another: where
 * a corpus is copied to such a disk, the one would take the place of the other. `coming` are the other new files of the same step.
 */
export function checkNew(disk: Disk, folder: string, file: string, coming: readonly string[]): void {
  const parts = file.split("/");
  const other = parts.find((part) => !isPortable(part));
  if (other !== undefined)
    throw new CannotWrite(
      nothingWritten(say`Unexpected name \`${other}\`, expected one that files have on every system`),
    );
  const twin =
    coming.find((one) => one !== file && folded(one) === folded(file)) ?? twinOnDisk(disk, folder, parts);
  if (twin !== null)
    throw new CannotWrite(
      nothingWritten(
        say`Unexpected name \`${file}\` beside \`${twin}\`, which some disks take for the same; expected another`,
      ),
    );
}

/** What is on the disk at the same path but for such differences, as it is called there; null for nothing. */
function twinOnDisk(disk: Disk, folder: string, parts: readonly string[]): string | null {
  for (const [at, part] of parts.entries()) {
    const below = parts.slice(0, at);
    const place = join(folder, ...below);
    // What is not there yet has nothing in it.
    if (disk.see(place)?.kind !== "folder") return null;
    const names = disk.list(place);
    if (names.includes(part)) continue;
    const twin = names.find((name) => folded(name) === folded(part));
    return twin === undefined ? null : [...below, twin].join("/");
  }
  return null;
}

/** A path as the disk has it, which may write an accented letter in parts where a text that names it has it whole. */
export function asOnDisk(disk: Disk, folder: string, file: string): string {
  // What has no letter beyond ASCII is written in one way only.
  if (!/[^\u0000-\u007f]/u.test(file) || disk.see(join(folder, file))) return file;
  const found: string[] = [];
  for (const part of file.split("/")) {
    const place = join(folder, ...found);
    const wanted = part.normalize("NFC");
    const names = disk.see(place)?.kind === "folder" ? disk.list(place) : [];
    const name = names.find((one) => one.normalize("NFC") === wanted);
    if (name === undefined) return file;
    found.push(name);
  }
  return found.join("/");
}
