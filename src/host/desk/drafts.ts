import { join } from "node:path";
import { count, say } from "../../base/text/said/said.ts";
import { cleared, keepNames, writeWhole } from "./disk.ts";
import type { Disk } from "./disk.ts";
import { CannotWrite, inWords } from "./refusal.ts";
import { makeRoom, readOnlyReason, roomIn } from "./room.ts";

/** Forms that are half filled in, kept beside the corpus until they are entered or thrown away. */
export interface Drafts {
  /** Their names, in order. */
  readonly list: () => readonly string[];
  /** The JSON of one; null where there is none, or none that is whole. */
  readonly get: (name: string) => string | null;
  /** Keeps one under its name, in the place of what was kept so. */
  readonly put: (name: string, json: string) => void;
  readonly remove: (name: string) => void;
}

/** The most bytes of one draft. */
export const largestDraft = 1024 * 1024;

const mostDrafts = 200;

/** The drafts of a corpus; what cannot be kept is thrown as `CannotWrite`. */
export function draftsOf(disk: Disk, folder: string): Drafts {
  const { drafts } = roomIn(folder);
  const pathOf = (name: string): string => {
    if (!isDraftName(name))
      throw new CannotWrite(say`Unexpected name of a draft, expected small letters, digits, \`-\` and \`_\``);
    return join(drafts, `${name}.json`);
  };
  const list = (): readonly string[] => {
    if (disk.see(drafts)?.kind !== "folder") return [];
    const names = disk.list(drafts).flatMap((file) => (file.endsWith(".json") ? [file.slice(0, -5)] : []));
    return names.filter(isDraftName).toSorted();
  };
  return {
    list,
    get: (name) => {
      const path = pathOf(name);
      const seen = list().includes(name) ? disk.see(path) : null;
      if (seen?.kind !== "file" || seen.size > largestDraft) return null;
      const json = Buffer.from(disk.read(path)).toString("utf8");
      return isJson(json) ? json : null;
    },
    put: (name, json) => {
      const path = pathOf(name);
      const bytes = Buffer.from(json, "utf8");
      if (bytes.length > largestDraft || !isJson(json))
        throw new CannotWrite(say`Unexpected draft, expected JSON of at most ${"1 MiB"}: it was not kept`);
      const kept = list();
      if (!kept.includes(name) && kept.length >= mostDrafts)
        throw new CannotWrite(
          say`Unexpected ${count(mostDrafts + 1)} drafts, expected at most ${count(mostDrafts)}: it was not kept`,
        );
      const reason = readOnlyReason(disk, folder);
      if (reason !== null) throw new CannotWrite(say`${reason}: the draft was not kept`);
      try {
        replaced(disk, folder, path, bytes);
      } catch (error) {
        throw inWords(error);
      }
    },
    remove: (name) => {
      const path = pathOf(name);
      if (!list().includes(name)) return;
      try {
        disk.remove(path);
        keepNames(disk, drafts);
      } catch (error) {
        throw inWords(error);
      }
    },
  };
}

function replaced(disk: Disk, folder: string, path: string, bytes: Uint8Array): void {
  const { drafts } = roomIn(folder);
  makeRoom(disk, folder, drafts);
  const beside = join(drafts, `.${process.pid}.part`);
  cleared(disk, beside);
  writeWhole(disk, beside, bytes);
  disk.rename(beside, path);
  keepNames(disk, drafts);
}

/** Some systems keep a few names for their devices, whatever the ending. */
const devices = /^(con|prn|aux|nul|com\d|lpt\d)$/;

/** Whether a draft may have this name. */
export function isDraftName(name: string): boolean {
  return /^[a-z0-9][a-z0-9_-]{0,99}$/.test(name) && !devices.test(name);
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
