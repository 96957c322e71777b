import { createHmac, randomBytes } from "node:crypto";
import { homedir } from "node:os";
import { isAbsolute, join } from "node:path";
import { inEnglish } from "../base/text/said/english.ts";
import { say } from "../base/text/said/said.ts";
import type { Said } from "../base/text/said/said.ts";
import type { Plugin } from "../plugin.ts";
import { pluginFilesIn } from "../read/source-file.ts";
import type { PluginFile, SourceFile } from "../read/source-file.ts";
import { setAside } from "./desk/aside.ts";
import { makeFolders, nodeDisk } from "./desk/disk.ts";
import type { Disk } from "./desk/disk.ts";
import { putNew, replaceSoon } from "./desk/files/beside.ts";
import { CannotWrite, isOfDisk, kindsSeen, nothingWritten } from "./desk/refusal.ts";
import { makeRoom, roomCleared, roomIn } from "./desk/room.ts";
import { seated, usualSitting } from "./desk/seat.ts";
import type { Sitting } from "./desk/seat.ts";

/**
 * One plug-in that somebody allowed, by its name and the SHA-256 of its file. The seal tells whose word it is: a
 * permission that came with a corpus, from somebody else's machine, allows nothing here.
 */
interface Permission {
  readonly name: string;
  readonly sha256: string;
  readonly seal: string;
}

type Known = Pick<PluginFile, "name" | "hash">;

/** Tells the plug-ins that this user allowed to run, as their files now are. */
export function permissionsIn(
  folder: string,
  settings: string = settingsFolder(),
  disk: Disk = nodeDisk,
): (file: Known) => boolean {
  try {
    const key = keyIn(disk, settings);
    if (key === null) return () => false;
    const seals = new Set((keptIn(disk, folder) ?? []).map((one) => one.seal));
    return (file) => seals.has(sealOf(key, file));
  } catch (error) {
    if (!isOfDisk(error)) throw error;
    return () => false;
  }
}

/** The plug-ins of a corpus that this user allowed; none takes the place of one of the program's own. */
export function allowedGuests(
  folder: string,
  files: readonly SourceFile[],
  own: readonly Plugin[],
): readonly PluginFile[] {
  const found = pluginFilesIn(files).filter((file) => !own.some((one) => one.id === file.name));
  return found.length === 0 ? [] : found.filter(permissionsIn(folder));
}

/** What a permission is written with, and who is told what could not be read and was set aside. */
export interface Allowing {
  readonly disk: Disk;
  readonly sitting: Sitting;
  readonly tell: (told: Said) => void;
}

const usual: Allowing = {
  disk: nodeDisk,
  sitting: usualSitting,
  tell: (told) => void process.stderr.write(`${inEnglish(told)}\n`),
};

/** Writes down on the corpus's desk that this user allows a plug-in, as its file now is. */
export function allow(
  folder: string,
  file: Known,
  settings: string = settingsFolder(),
  given: Partial<Allowing> = {},
): void {
  const allowing = { ...usual, ...given };
  const { disk, sitting, tell } = allowing;
  const key = ownKey(settings, allowing);
  const { desk } = roomIn(folder);
  try {
    if (disk.see(desk)?.kind === "link")
      throw new CannotWrite(
        nothingWritten(say`Unexpected ${kindsSeen.link} at \`${".variorum"}\`, expected a folder`),
      );
    roomCleared(disk, folder).forEach(tell);
    makeRoom(disk, folder, desk);
    seated(disk, folder, sitting, () => allowed(folder, file, key, allowing));
  } catch (error) {
    if (error instanceof CannotWrite || !isOfDisk(error)) throw error;
    throw new CannotWrite(
      say`The corpus may not be written, expected one that may: where nothing can be kept, no plug-in can be allowed`,
    );
  }
}

function allowed(folder: string, file: Known, key: string, { disk, tell }: Allowing): void {
  const path = pathIn(folder);
  const found = keptIn(disk, folder);
  if (found === null) {
    const aside = setAside(disk, path).slice(folder.length + 1);
    tell(
      say`Unexpected content of \`${`.variorum/${deskFile}`}\`, expected permissions: set aside as \`${aside}\``,
    );
  }
  const permission = { name: file.name, sha256: file.hash, seal: sealOf(key, file) };
  const kept = (found ?? []).filter((one) => one.seal !== permission.seal);
  const isOwn = ({ name, sha256, seal }: Permission): boolean => seal === sealOf(key, { name, hash: sha256 });
  // However many came with the corpus, what is written stays small enough to be read again.
  const plugins = [...kept.filter((one) => !isOwn(one)).slice(-500), ...kept.filter(isOwn), permission];
  replaceSoon(disk, path, Buffer.from(`${JSON.stringify({ plugins }, null, 2)}\n`, "utf8"));
}

const deskFile = "permissions.json";

const pathIn = (folder: string): string => join(roomIn(folder).desk, deskFile);

/** The permissions that are kept on a desk, those that cannot be one left out; null where something else stands in their place. */
function keptIn(disk: Disk, folder: string): readonly Permission[] | null {
  const path = pathIn(folder);
  if (disk.see(roomIn(folder).desk)?.kind !== "folder") return [];
  const found = disk.see(path);
  if (!found) return [];
  if (found.kind !== "file" || found.size > 1024 * 1024) return null;
  const kept = jsonIn(Buffer.from(disk.read(path)).toString("utf8"));
  const plugins = (kept as { readonly plugins?: unknown } | null)?.plugins;
  return Array.isArray(plugins) ? plugins.filter(isPermission) : null;
}

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function isPermission(one: unknown): one is Permission {
  const { name, sha256, seal } = (one ?? {}) as Partial<Record<keyof Permission, unknown>>;
  const isHash = (part: unknown): boolean => typeof part === "string" && /^[0-9a-f]{64}$/.test(part);
  return typeof name === "string" && name.length <= 255 && isHash(sha256) && isHash(seal);
}

function sealOf(key: string, { name, hash }: Known): string {
  return createHmac("sha256", key).update(`${name}\n${hash}`).digest("hex");
}

/** The key that is kept; null where there is none that is one. */
function keyIn(disk: Disk, settings: string): string | null {
  const path = join(settings, "key");
  if (!["file", "link"].includes(disk.see(path)?.kind ?? "")) return null;
  const key = Buffer.from(disk.read(path)).toString("utf8").trim();
  return /^[0-9a-f]{64}$/.test(key) ? key : null;
}

/** The secret of this user's by which permissions of their own are told from others'; a new one where there is none. */
function ownKey(settings: string, { disk, tell }: Allowing): string {
  const path = join(settings, "key");
  const key = randomBytes(32).toString("hex");
  try {
    const kept = keyIn(disk, settings);
    if (kept !== null) return kept;
    makeFolders(disk, settings);
    if (disk.see(path)) {
      const aside = setAside(disk, path);
      tell(say`Unexpected content of \`${path}\`, expected your own key: set aside as \`${aside}\``);
    }
    if (putNew(disk, path, Buffer.from(`${key}\n`, "utf8"), "own")) return key;
    // Another program was quicker.
    const other = keyIn(disk, settings);
    if (other !== null) return other;
  } catch (error) {
    if (!isOfDisk(error)) throw error;
  }
  throw new CannotWrite(say`\`${settings}\` may not be written, expected a place to keep your own key`);
}

function settingsFolder(): string {
  const { XDG_CONFIG_HOME, APPDATA } = process.env;
  // A path that is not whole would lead into the folder one stands in, which may be the corpus: the key lies outside it.
  const given = [XDG_CONFIG_HOME, APPDATA].find((path) => path !== undefined && isAbsolute(path));
  return join(given ?? join(homedir(), ".config"), "variorum");
}
