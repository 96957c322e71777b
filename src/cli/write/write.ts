import { existsSync, realpathSync, statSync } from "node:fs";
import { basename, dirname, extname, join, resolve } from "node:path";
import { plugins } from "../../../plugins/index.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { SourceFile } from "../../build.ts";
import { fileIn } from "../../host/corpus-folder.ts";
import { CannotWrite } from "../../host/desk/refusal.ts";
import { keptReading } from "../../host/reading/kept.ts";
import { memoStoreFor } from "../../host/memo-store.ts";
import { placedBelow, placeFiles, takenAmong } from "../../host/telling/files/place.ts";
import type { Placed } from "../../host/telling/files/place.ts";
import { zipOf } from "../../host/telling/files/zip.ts";
import type { Asked, Kind } from "../../host/telling/kind.ts";
import { atWork, todayHere, toldOf } from "../../host/telling/told.ts";
import type { Made } from "../../write/telling/made.ts";
import { checkSupposed, computeScript, filesOf, lensOf, progressLine } from "../evaluated.ts";
import { Stop } from "../fault.ts";
import { placesOf } from "./options.ts";
import type { Usual } from "./options.ts";

/** Makes what is asked for from a corpus, writes it, and prints the paths of the files. */
export async function write(
  name: string,
  kind: Kind,
  folder: string,
  usual: Usual,
  asked: Asked,
): Promise<void> {
  const { to } = usual;
  if (to === undefined)
    throw new Stop(`Missing --to, expected ${placesOf(kind)}: variorum write ${name} CORPUS --to PATH`);
  const format = formatOf(kind, to);
  const whole = kind.several && extname(to) === "";
  if (!whole) {
    checkFree([{ path: to, content: "" }], usual);
    checkNoneRead([{ path: to }], folder);
  }
  const made = await madeOf(kind, folder, usual, { format, asked, to });
  const placed = placesFor(made, to, whole);
  checkFree(placed, usual);
  checkNoneRead(placed, folder);
  const failed = placedOrTold(placed);
  if (failed !== null) throw new Stop(`Unwritable file \`${failed}\`, expected one that may be written`);
  process.stdout.write(placed.map(({ path }) => `${path}\n`).join(""));
}

/** Writes the files; what could be written only in part is told. */
function placedOrTold(placed: readonly Placed[]): string | null {
  try {
    return placeFiles(placed);
  } catch (error) {
    if (error instanceof CannotWrite) throw new Stop(error.message);
    throw error;
  }
}

/** The format that a path asks for by its ending. */
function formatOf(kind: Kind, to: string): string {
  const ending = extname(to).slice(1).toLowerCase();
  if (kind.formats.includes(ending)) return ending;
  const [usual] = kind.formats;
  if (kind.several && ["", "zip"].includes(ending)) return usual ?? ending;
  throw new Stop(`Unexpected name \`${to}\`, expected ${placesOf(kind)}`);
}

async function madeOf(
  kind: Kind,
  folder: string,
  usual: Usual,
  { format, asked, to }: { readonly format: string; readonly asked: Asked; readonly to: string },
): Promise<readonly Made[]> {
  const lens = lensOf(usual);
  const reading = usual.memo === false ? null : keptReading(folder);
  const files = [...filesOf(folder, reading?.files), ...styleBeside(asked)];
  const progress = progressLine();
  const store = usual.memo === false ? null : memoStoreFor(folder);
  const work = await atWork(folder, files, {
    plugins,
    script: computeScript,
    store,
    ...(reading ? { reading } : {}),
    progress: progress.tell,
  });
  const told = await toldOf(folder, work, { lens, reach: kind.reach, today: todayHere() });
  if ("unreadable" in told)
    throw new Stop(`Unreadable corpus \`${folder}\`, expected one that variorum check can read`);
  if ("refused" in told) throw new Stop(inEnglish(told.refused));
  checkSupposed(told.model, lens);
  const made = await kind.make(told, format, basename(to, extname(to)), asked);
  progress.end();
  if ("refused" in made) throw new Stop(inEnglish(made.refused));
  return made;
}

/** A style that is named by its path on this machine, as if the corpus had it. */
function styleBeside(asked: Asked): readonly SourceFile[] {
  const path = asked["style"];
  if (typeof path !== "string" || !/\.csl$/i.test(path)) return [];
  const file = fileIn(dirname(path), basename(path));
  return file ? [{ ...file, path }] : [];
}

/** One file goes to the path itself, several into it or beside it; packed into one where it is a `.zip`. */
function placesFor(made: readonly Made[], to: string, whole: boolean): readonly Placed[] {
  if (whole) return placedBelow(to, made);
  const [first, ...others] = made;
  const isZip = extname(to).toLowerCase() === ".zip" && !first?.path.toLowerCase().endsWith(".zip");
  if (isZip || first === undefined) return [{ path: to, content: zipOf(made) }];
  return [{ path: to, content: first.content }, ...placedBelow(dirname(to), others)];
}

function checkFree(placed: readonly Placed[], { over }: Usual): void {
  const folder = placed.find(({ path }) => existsSync(path) && statSync(path).isDirectory());
  if (folder) throw new Stop(`Unexpected folder \`${folder.path}\`, expected the name of a file`);
  const taken = over === true ? null : takenAmong(placed);
  if (taken !== null)
    throw new Stop(`Unexpected file \`${taken}\`, expected a name that is not taken, or --over`);
}

/** What the corpus itself is read from is written over by nothing, with `--over` either: prose and records are the scholar's own. */
function checkNoneRead(placed: readonly Pick<Placed, "path">[], folder: string): void {
  const own = new Set(filesOf(folder).map((file) => realPath(join(folder, file.path))));
  const taken = placed.find(({ path }) => own.has(realPath(path)));
  if (taken)
    throw new Stop(
      `Unexpected file \`${taken.path}\` of the corpus itself, expected a name that it does not read`,
    );
}

/** A path without links; one that leads nowhere as it is. */
function realPath(path: string): string {
  try {
    return realpathSync.native(path);
  } catch {
    return resolve(path);
  }
}
