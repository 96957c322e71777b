import { realpathSync } from "node:fs";
import type { Stats } from "node:fs";
import { dirname, join } from "node:path";
import { say } from "../../../base/text/said/said.ts";
import type { Text } from "../../../base/text/said/said.ts";
import { readSettings } from "../../../read/settings/settings.ts";
import type { Use } from "../../../read/settings/use.ts";
import type { SourceFile } from "../../../read/source-file.ts";
import { nodeDisk } from "../disk.ts";
import { kindsSeen } from "../refusal.ts";

/** Is told what the disk says of a file, and gives the file where it is known without being read. */
export type Earlier = (path: string, about: Stats) => SourceFile | null;

/** Finds the files below a folder, named by their paths in it, whose paths are wanted. */
export type FilesBelow = (
  folder: string,
  wanted: (path: string) => boolean,
  earlier: Earlier,
) => readonly SourceFile[];

/** The corpora that a `corpus.yaml` uses, each where it is on the disk. */
function foldersOfCompanions(
  folder: string,
  main: SourceFile | undefined,
): readonly (Use & { readonly at: string })[] {
  return usesOf(main).map((use) => ({ ...use, at: placeOf(folder, use) }));
}

/** The folders outside a corpus of which files are taken, those that are there. */
export function foldersBeside(folder: string, main: SourceFile | undefined): readonly string[] {
  const beside = foldersOfCompanions(folder, main).filter((use) => use.folder.startsWith("../"));
  return beside.flatMap(({ at }) => (nodeDisk.see(at)?.kind === "folder" ? [at] : []));
}

/**
 * The files of the companions of a corpus from which something is taken, named from its folder: the settings, the
 * files of records, and the bibliographies and tables of artefacts that the settings name. No link is followed, and what
 * those corpora use themselves is not looked for. `earlier` is asked by those names.
 */
export function filesOfCompanions(
  folder: string,
  main: SourceFile | undefined,
  below: FilesBelow,
  earlier: Earlier = () => null,
): readonly SourceFile[] {
  return foldersOfCompanions(folder, main).flatMap((use) => {
    const known = new Set<SourceFile>();
    const knownThere: Earlier = (path, about) => {
      const one = earlier(`${use.folder}/${path}`, about);
      if (one) known.add(one);
      return one;
    };
    const named = (one: SourceFile): SourceFile =>
      known.has(one) ? one : { ...one, path: `${use.folder}/${one.path}` };
    if (nodeDisk.see(use.at) === null) return [];
    const trouble = troubleWith(folder, use);
    if (trouble !== null) return [named({ path: "corpus.yaml", text: "", problem: trouble })];
    const [found] = below(use.at, (path) => path === "corpus.yaml", knownThere);
    if (!found) return [];
    const settings = { ...found, path: "corpus.yaml" };
    const read = settings.problem === undefined ? readSettings(settings).settings : null;
    if (!read) return [named(settings)];
    // The disk may have the letters of a name whole or in parts.
    const wanted = new Set([...read.bibliography, ...read.artefactTables].map((one) => one.normalize("NFC")));
    const isTaken = (path: string): boolean => /\.ya?ml$/u.test(path) || wanted.has(path.normalize("NFC"));
    return below(use.at, isTaken, knownThere).map(named);
  });
}

/** Most corpora use no other: their settings are not read twice. */
function usesOf(main: SourceFile | undefined): readonly Use[] {
  if (!main || !/\buse\b/u.test(main.text)) return [];
  return readSettings(main).settings?.use ?? [];
}

/** The folder itself may have been named by a link: what is beside it is beside where that leads. */
function placeOf(folder: string, use: Use): string {
  const parts = use.folder.split("/");
  const here = realpathSync(folder);
  return parts[0] === ".." ? join(dirname(here), ...parts.slice(1)) : join(here, ...parts);
}

/** Why a folder that is there is none to be used; null where it may be, or is not there. */
function troubleWith(folder: string, use: Use & { readonly at: string }): Text | null {
  const parts = use.folder.split("/");
  for (
    let at = use.at, count = parts.length;
    count > 0 && parts[count - 1] !== "..";
    count--, at = dirname(at)
  ) {
    const kind = nodeDisk.see(at)?.kind ?? "folder";
    const below = parts.slice(0, count).join("/");
    if (kind !== "folder") return say`Unexpected ${kindsSeen[kind]} at \`${below}\`, expected a folder`;
  }
  const isItself = use.at === realpathSync(folder);
  return isItself
    ? say`Unexpected folder \`${use.folder}\` of this corpus itself, expected that of another`
    : null;
}
