import { join } from "node:path";
import { count, say } from "../../base/text/said/said.ts";
import type { Said } from "../../base/text/said/said.ts";
import { setAside } from "./aside.ts";
import { keepNames } from "./disk.ts";
import type { Disk } from "./disk.ts";
import { replaceWhole } from "./files/beside.ts";
import { CannotWrite, inWords, isOfDisk } from "./refusal.ts";
import { makeRoom, readOnlyReason, roomCleared, roomIn } from "./room.ts";

/** Forms that are half filled in, kept beside the corpus until they are entered or thrown away. */
export interface Drafts {
  /** Their names, in order. */
  readonly list: () => readonly string[];
  /** The JSON of one; null where there is none, or none that is whole: what is broken is set aside. */
  readonly get: (name: string) => string | null;
  /** Keeps one under its name, in the place of what was kept so. */
  readonly put: (name: string, json: string) => void;
  readonly remove: (name: string) => void;
}

/** The most bytes of one draft. */
export const largestDraft = 1024 * 1024;

const mostDrafts = 200;

/** The drafts of a corpus; what cannot be kept is thrown as `CannotWrite`, what is set aside is told. */
export function draftsOf(disk: Disk, folder: string, tell: (told: Said) => void): Drafts {
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
  const brokenAside = (name: string): void => {
    const path = pathOf(name);
    if (!list().includes(name) || wholeAt(disk, path) !== null) return;
    const aside = setAside(disk, path).slice(drafts.length + 1);
    tell(say`Unexpected content of the draft \`${name}\`, expected JSON: set aside as \`${aside}\``);
  };
  const get = (name: string): string | null => {
    const path = pathOf(name);
    const json = list().includes(name) ? wholeAt(disk, path) : null;
    if (json === null && readOnlyReason(disk, folder) === null) tried(() => brokenAside(name));
    return json;
  };
  const put = (name: string, json: string): void => {
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
    for (const one of roomCleared(disk, folder)) tell(one);
    makeRoom(disk, folder, drafts);
    brokenAside(name);
    replaceWhole(disk, path, bytes);
  };
  const remove = (name: string): void => {
    const path = pathOf(name);
    if (!list().includes(name)) return;
    disk.remove(path);
    keepNames(disk, drafts);
  };
  return {
    list: () => told(list),
    get: (name) => told(() => get(name)),
    put: (name, json) => told(() => put(name, json)),
    remove: (name) => told(() => remove(name)),
  };
}

/** What the disk refuses is told in words. */
function told<T>(one: () => T): T {
  try {
    return one();
  } catch (error) {
    throw inWords(error);
  }
}

/** The JSON at a path; null where there is none that is whole. */
function wholeAt(disk: Disk, path: string): string | null {
  const seen = disk.see(path);
  if (seen?.kind !== "file" || seen.size > largestDraft) return null;
  const json = Buffer.from(disk.read(path)).toString("utf8");
  return isJson(json) ? json : null;
}

/** What cannot be set aside stays where it is. */
function tried(one: () => void): void {
  try {
    one();
  } catch (error) {
    if (!isOfDisk(error)) throw error;
  }
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
