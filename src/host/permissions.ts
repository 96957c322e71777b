import { createHmac, randomBytes } from "node:crypto";
import { lstatSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { homedir } from "node:os";
import { isAbsolute, join } from "node:path";
import { say } from "../base/text/said/said.ts";
import type { Plugin } from "../plugin.ts";
import { pluginFilesIn } from "../read/source-file.ts";
import type { PluginFile, SourceFile } from "../read/source-file.ts";
import { CannotWrite, kindsSeen, nothingWritten } from "./desk/refusal.ts";

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
export function permissionsIn(folder: string, settings: string = settingsFolder()): (file: Known) => boolean {
  const key = keyIn(settings);
  if (key === null) return () => false;
  const seals = new Set(keptIn(folder).map((one) => one.seal));
  return (file) => seals.has(sealOf(key, file));
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

/** Writes down on the corpus's desk that this user allows a plug-in, as its file now is. */
export function allow(folder: string, file: Known, settings: string = settingsFolder()): void {
  const key = keyIn(settings) ?? newKey(settings);
  const permission = { name: file.name, sha256: file.hash, seal: sealOf(key, file) };
  const kept = keptIn(folder).filter((one) => one.seal !== permission.seal);
  const isOwn = ({ name, sha256, seal }: Permission): boolean => seal === sealOf(key, { name, hash: sha256 });
  // However many came with the corpus, what is written stays small enough to be read again.
  const plugins = [...kept.filter((one) => !isOwn(one)).slice(-500), ...kept.filter(isOwn), permission];
  const desk = join(folder, ".variorum");
  const plain = lstatSync(desk, { throwIfNoEntry: false })?.isDirectory() ?? true;
  if (!plain)
    throw new CannotWrite(
      nothingWritten(say`Unexpected ${kindsSeen.link} at \`${".variorum"}\`, expected a folder`),
    );
  const path = join(desk, deskFile);
  const beside = `${path}.${process.pid}.part`;
  try {
    mkdirSync(desk, { recursive: true });
    writeFileSync(beside, `${JSON.stringify({ plugins }, null, 2)}\n`, { flag: "wx" });
    renameSync(beside, path);
  } catch {
    rmSync(beside, { force: true });
    throw new CannotWrite(
      say`The corpus may not be written, expected one that may: where nothing can be kept, no plug-in can be allowed`,
    );
  }
}

const deskFile = "permissions.json";

function keptIn(folder: string): readonly Permission[] {
  const path = join(folder, ".variorum", deskFile);
  try {
    if (!lstatSync(join(folder, ".variorum")).isDirectory()) return [];
    const found = lstatSync(path);
    if (!found.isFile() || found.size > 1024 * 1024) return [];
    const { plugins } = JSON.parse(readFileSync(path, "utf8")) as { readonly plugins?: unknown };
    return Array.isArray(plugins) ? plugins.filter(isPermission) : [];
  } catch {
    return [];
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

function keyIn(settings: string): string | null {
  try {
    const key = readFileSync(join(settings, "key"), "utf8").trim();
    return /^[0-9a-f]{64}$/.test(key) ? key : null;
  } catch {
    return null;
  }
}

/** A secret of this user's, by which permissions of their own are told from others'. */
function newKey(settings: string): string {
  const key = randomBytes(32).toString("hex");
  try {
    mkdirSync(settings, { recursive: true });
    writeFileSync(join(settings, "key"), `${key}\n`, { mode: 0o600 });
  } catch {
    throw new CannotWrite(say`\`${settings}\` may not be written, expected a place to keep your own key`);
  }
  return key;
}

function settingsFolder(): string {
  const { XDG_CONFIG_HOME, APPDATA } = process.env;
  // A path that is not whole would lead into the folder one stands in, which may be the corpus: the key lies outside it.
  const given = [XDG_CONFIG_HOME, APPDATA].find((path) => path !== undefined && isAbsolute(path));
  return join(given ?? join(homedir(), ".config"), "variorum");
}
