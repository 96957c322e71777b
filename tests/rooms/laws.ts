import { circles } from "./circles.ts";
import { isPure, knowsAllPlugins, maySee, packagesFor, roomOf } from "./house.ts";
import { importsOf, resolve } from "./imports.ts";
import { impurities } from "./purity.ts";

/** The files of a tree: path from the project's root, with `/`, to text. */
export type Files = ReadonlyMap<string, string>;

/** Code of the program; the launcher in plain JavaScript runs before anything is built, and so stands outside the rooms. */
const isCode = (path: string): boolean =>
  /\.(?:ts|tsx|mts|mjs|js)$/.test(path) && !(path.startsWith("src/cli/") && path.endsWith(".mjs"));

/** Tables, which may be as long as what they list: one row after another, and nothing that decides. */
const isTable = (path: string): boolean =>
  path === "src/read/grammar/kinds.ts" || /[/-]table\.ts$/.test(path);

/** Every import that goes against the direction, reaches into another plug-in, or names a package not on the room's list. */
export function againstDirection(files: Files): readonly string[] {
  const broken: string[] = [];
  for (const [path, text] of files) {
    if (!isCode(path)) continue;
    for (const { specifier, line } of importsOf(text)) {
      const target = resolve(path, specifier);
      const complaint = target === null ? ofPackage(path, specifier) : ofFile(path, target);
      if (complaint !== null) broken.push(`${path}:${line} ${complaint}`);
    }
  }
  return broken;
}

function ofPackage(path: string, specifier: string): string | null {
  const room = roomOf(path);
  const allowed = packagesFor(room).some((entry) =>
    /[/:-]$/.test(entry) ? specifier.startsWith(entry) : specifier === entry,
  );
  return allowed ? null : `Unexpected package \`${specifier}\`, expected one from the list of \`${room}\``;
}

function ofFile(path: string, target: string): string | null {
  if (target === "plugins/index.ts") {
    return knowsAllPlugins(path)
      ? null
      : "Unexpected import of all plug-ins, expected one in a face or a worker of host";
  }
  if (roomOf(path) === "plugins") {
    if (target === "src/plugin.ts") return null;
    const own = path.split("/").slice(0, 2).join("/");
    const inside = path === "plugins/index.ts" ? target.startsWith("plugins/") : target.startsWith(`${own}/`);
    return inside
      ? null
      : `Unexpected import of \`${target}\`, expected \`src/plugin.ts\` or the plug-in's own folder`;
  }
  if (target.startsWith("src/") && maySee(roomOf(path), roomOf(target))) return null;
  // The command line tells the version that the manifest states.
  if (target === "package.json" && roomOf(path) === "cli") return null;
  // Built files are named by their address in dist/, which has no rooms.
  if (target.endsWith("worker.js")) return null;
  return `Unexpected import of \`${target}\`, expected a room to the left of \`${roomOf(path)}\``;
}

/** Every package that a file imports and the manifest does not list: it would be there by chance only. */
export function undeclared(files: Files, declared: readonly string[]): readonly string[] {
  const missing: string[] = [];
  for (const [path, text] of files) {
    if (!isCode(path)) continue;
    for (const { specifier, line, kind } of importsOf(text)) {
      if (kind === "url" || specifier.startsWith(".") || specifier.startsWith("node:")) continue;
      const name = /^(?:@[^/]+\/)?[^/]+/.exec(specifier)?.[0] ?? specifier;
      if (!declared.includes(name))
        missing.push(`${path}:${line} Unknown package \`${name}\`, expected one in package.json`);
    }
  }
  return missing;
}

/** Every circle of imports, types included, as the files that form it. */
export function importCircles(files: Files): readonly string[] {
  const graph = new Map<string, readonly string[]>();
  for (const [path, text] of files) {
    if (!isCode(path)) continue;
    const targets = importsOf(text).filter(({ kind }) => kind === "import");
    graph.set(
      path,
      targets.map(({ specifier }) => resolve(path, specifier)).filter((target) => target !== null),
    );
  }
  return circles(graph).map((members) => `Unexpected circle of imports: ${members.join(", ")}`);
}

/** Every use of clock, chance, locale, Node or the document in what must be pure. */
export function impure(files: Files): readonly string[] {
  return [...files]
    .filter(([path]) => isCode(path) && isPure(path))
    .flatMap(([path, text]) =>
      impurities(text).map(({ line, what }) => `${path}:${line} Unexpected ${what} in pure code`),
    );
}

/** Every file of code over 300 lines; tables and data are exempt. */
export function tooLong(files: Files): readonly string[] {
  return [...files]
    .filter(([path]) => isCode(path) && !isTable(path))
    .map(([path, text]) => ({ path, lines: text.replace(/\n$/, "").split("\n").length }))
    .filter(({ lines }) => lines > 300)
    .map(({ path, lines }) => `${path} Unexpected length of ${lines} lines, expected at most 300`);
}

/** Every file or room named for holding odds and ends. */
export function drawers(files: Files): readonly string[] {
  const drawer = /(?:^|[-/.])(?:utils?|helpers?|common)(?=[-/.]|$)/;
  return [...files.keys()]
    .filter((path) => drawer.test(path))
    .map((path) => `${path} Unexpected name, expected the meaning of what is inside`);
}

/** Every room and plug-in folder that holds more than twelve files and sub-rooms; the README of a plug-in is not counted. */
export function crowded(files: Files): readonly string[] {
  const inside = new Map<string, Set<string>>();
  for (const path of files.keys()) {
    const parts = path.split("/");
    // The house itself, `src` and `plugins`, is as wide as the design says.
    for (let depth = 2; depth < parts.length; depth++) {
      const room = parts.slice(0, depth).join("/");
      const entry = parts[depth] ?? "";
      if (entry !== "README.md") inside.set(room, (inside.get(room) ?? new Set()).add(entry));
    }
  }
  return [...inside]
    .filter(([, entries]) => entries.size > 12)
    .map(([room, entries]) => `${room} Unexpected ${entries.size} files and sub-rooms, expected at most 12`);
}
