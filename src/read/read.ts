import { finding } from "../base/finding.ts";
import type { Finding, Span } from "../base/finding.ts";
import { coded, count, say } from "../base/text/said/said.ts";
import { readBibliography } from "./bibliography/read.ts";
import type { Source } from "./bibliography/read.ts";
import { citationStyleIn } from "./bibliography/style/style.ts";
import type { CitationStyle } from "./bibliography/style/style.ts";
import { forgetMet } from "./decode/met.ts";
import type { AnyRecord, FileRecords, Spoilt } from "./record.ts";
import type { Prose, ProseRead } from "./prose/prose.ts";
import { readProse } from "./prose/read.ts";
import { readRecords } from "./records.ts";
import { fileNamed, missingFile } from "./settings/named-file.ts";
import { readSettings } from "./settings/settings.ts";
import type { Settings } from "./settings/settings.ts";
import { filesApart } from "./settings/companions/files.ts";
import { withTaken } from "./settings/companions/companions.ts";
import type { FileReader, Companion } from "./settings/companions/corpus.ts";
import {
  hasSameText,
  inPathOrder,
  largestPlugin,
  largestProse,
  largestTable,
  largestYaml,
  pluginFilesIn,
  pluginPath,
  prosePath,
} from "./source-file.ts";
import type { PluginFile, SourceFile } from "./source-file.ts";
import { readTableRecords } from "./table/rows.ts";
import { hasTooMany, mostValues } from "./yaml/nesting.ts";
import { unmerged } from "./yaml/unmerged.ts";

/** Everything the files say, before anything is tied to anything. */
export interface Reading {
  readonly settings: Settings;
  readonly sources: readonly Source[];
  readonly records: readonly AnyRecord[];
  readonly spoilt: readonly Spoilt[];
  readonly pluginFiles: readonly PluginFile[];
  /** Left out where the settings were not looked at: then the default. */
  readonly citationStyle?: CitationStyle;
  /** The scholar's own prose, in the order of its files; left out where none was looked for. */
  readonly prose?: readonly Prose[];
  /** The companion corpora, whose artefacts and sources are among the others; left out where there are none. */
  readonly companions?: readonly Companion[];
  readonly findings: readonly Finding[];
}

/** What a file says. */
export type FileRead =
  FileRecords | ProseRead | { readonly sources: readonly Source[]; readonly findings: readonly Finding[] };

/** A file as it was read, in the manner that the settings bring with them, and what it says. */
export interface Remembered {
  readonly manner: string;
  readonly file: SourceFile;
  readonly read: FileRead;
}

/** What was read of each file by its path, what was asked for last first. */
export type ReadMemo = Map<string, readonly Remembered[]>;

/** So many texts of a file are remembered: as it is, as it was before a step, and as two that are compared have it. */
const lastTexts = 4;

const yamlFile = /\.ya?ml$/;

/** Reads the corpus's files in the order of their paths; null when there is no readable `corpus.yaml`. */
export function readCorpus(
  files: readonly SourceFile[],
  memo: ReadMemo,
): Reading | { readonly findings: readonly Finding[] } {
  const read = readAll(files, memo);
  forgetMet();
  return read;
}

function readAll(
  files: readonly SourceFile[],
  memo: ReadMemo,
): Reading | { readonly findings: readonly Finding[] } {
  const main = files.find((file) => file.path === "corpus.yaml");
  if (!main)
    return {
      findings: [
        finding("unreadable-file", say`Missing ${coded("corpus.yaml")}, expected one in the folder`, null),
      ],
    };
  const reader = readerWith(memo);
  const { settings, findings: said } = reader.settings(main);
  if (!settings) return { findings: said };

  const { own, others } = filesApart(files);
  const findings: Finding[] = [...said];
  const sources: Source[] = [];
  const records: AnyRecord[] = [];
  const spoilt: Spoilt[] = [];
  const byPath = new Map(own.map((file) => [file.path, file]));

  const take = (read: FileRecords): void => {
    // One by one: more are read of a file than a call may have arguments.
    for (const one of read.records) records.push(one);
    for (const one of read.spoilt) spoilt.push(one);
    for (const one of read.findings) findings.push(one);
  };
  const met = new Set<string>();
  const named = (field: string, path: string, place: number): SourceFile | null => {
    const file = fileNamed(byPath, path);
    const again = met.has(file?.path ?? path);
    met.add(file?.path ?? path);
    const at = namedAt(settings, field, place);
    if (again && file) {
      const once = say`Duplicate file \`${path}\`, expected it once; it is read the first time`;
      findings.push(finding("bad-value", once, at));
    } else if (!again && !file) findings.push(missingFile(path, byPath.keys(), at));
    return again ? null : file;
  };

  settings.bibliography.forEach((path, place) => {
    const file = named("bibliography", path, place);
    const read = file && reader.bibliography(file);
    if (read && "sources" in read) {
      for (const one of read.sources) sources.push(one);
      findings.push(...read.findings);
    } else if (read) take(read);
  });
  for (const [field, paths] of [
    ["artefact-tables", settings.artefactTables],
    ["measurement-tables", settings.measurementTables],
  ] as const) {
    const list = field === "artefact-tables" ? "artefacts" : "measurements";
    paths.forEach((path, place) => {
      const file = named(field, path, place);
      if (file) take(reader.table(file, list, settings));
    });
  }
  const [texts, beside] = byKind(own);
  for (const file of texts.sort((a, b) => inPathOrder(a.path, b.path)))
    if (file !== main) take(reader.records(file, settings));
  // A folder that cannot be opened has no ending by which anything would look for it.
  const shut = beside
    .filter(({ path }) => !/\.(?:ya?ml|bib|ris|json|csv|csl|js|md)$/iu.test(path))
    .map(problemOf);
  findings.push(...shut.filter((one) => one !== null));
  const code = beside.filter((file) => pluginPath.test(file.path));
  const unread = code.map(
    (file) => problemOf(file) ?? tooLarge(file, largestPlugin) ?? unmerged(file)?.findings[0] ?? null,
  );
  findings.push(...unread.filter((one) => one !== null));
  const pluginFiles = pluginFilesIn(code.filter((_, place) => unread[place] === null));
  const prose: Prose[] = [];
  for (const file of beside
    .filter(({ path }) => prosePath.test(path))
    .sort((a, b) => inPathOrder(a.path, b.path))) {
    const bad = problemOf(file) ?? tooLarge(file, largestProse);
    const read = bad ?? remembered(memo, file, "prose", () => unmerged(file) ?? readProse(file));
    if ("rule" in read) findings.push(read);
    else findings.push(...read.findings);
    if ("prose" in read) prose.push(read.prose);
  }
  const { style, findings: ofStyle } = citationStyleIn(
    settings.citationStyle,
    byPath,
    namedAt(settings, "citation-style", 0),
  );
  findings.push(...ofStyle);
  const all = { settings, sources, records, spoilt, pluginFiles, citationStyle: style, prose, findings };
  return settings.use.length === 0 ? all : withTaken(all, others, reader);
}

/** The files that can only hold records or settings, and the others. */
function byKind(files: readonly SourceFile[]): readonly [yaml: SourceFile[], beside: SourceFile[]] {
  const kinds: [SourceFile[], SourceFile[]] = [[], []];
  for (const file of files) kinds[yamlFile.test(file.path) ? 0 : 1].push(file);
  return kinds;
}

/** Reads single files, what was read before being remembered. */
function readerWith(memo: ReadMemo): FileReader {
  const unread = (finding: Finding): FileRecords => ({ records: [], spoilt: [], findings: [finding] });
  const checked = <T>(file: SourceFile, limit: number, read: () => T): T | FileRecords => {
    const bad = tooLarge(file, limit) ?? (limit === largestYaml ? tooMany(file) : null);
    return bad ? unread(bad) : (unmerged(file) ?? read());
  };
  // A file with a problem has no text by which it could be remembered.
  const once = (file: SourceFile, limit: number, manner: string, read: () => FileRead): FileRead => {
    const bad = problemOf(file);
    return bad ? unread(bad) : remembered(memo, file, manner, () => checked(file, limit, read));
  };
  const records = (file: SourceFile, limit: number, manner: string, read: () => FileRecords): FileRecords => {
    const one = once(file, limit, manner, read);
    return "records" in one ? one : { records: [], spoilt: [], findings: one.findings };
  };
  return {
    settings: (main) => {
      const bad = problemOf(main);
      const read = bad ? unread(bad) : checked(main, largestYaml, () => settingsIn(main));
      return "records" in read ? { settings: null, findings: read.findings } : read;
    },
    bibliography: (file) => {
      const one = once(file, largestTable, "bibliography", () => readBibliography(file));
      return "prose" in one ? { sources: [], findings: one.findings } : one;
    },
    table: (file, list, settings) =>
      records(file, largestTable, `${list} ${mannerOf(settings)}`, () =>
        readTableRecords(file, list, settings),
      ),
    records: (file, settings) =>
      records(file, largestYaml, mannerOf(settings), () => readRecords(file, settings.quantities)),
  };
}

function remembered(memo: ReadMemo, file: SourceFile, manner: string, read: () => FileRead): FileRead {
  const files = memo.get(file.path) ?? [];
  const known = files.find((one) => one.manner === manner && hasSameText(one.file, file));
  if (known && known === files[0]) return known.read;
  const last = known ?? { manner, file, read: read() };
  // What was asked for longest ago goes first.
  memo.set(file.path, [last, ...files.filter((one) => one !== known)].slice(0, lastTexts));
  return last.read;
}

/** Settings that are the same object say that nothing else is read in another way. */
const settingsRead = new WeakMap<SourceFile, ReturnType<typeof readSettings>>();

function settingsIn(main: SourceFile): ReturnType<typeof readSettings> {
  const known = settingsRead.get(main) ?? readSettings(main);
  settingsRead.set(main, known);
  return known;
}

const manners = new WeakMap<Settings, string>();

/** What of the settings changes how a file is read. */
function mannerOf(settings: Settings): string {
  const known = manners.get(settings) ?? mannerIn(settings);
  manners.set(settings, known);
  return known;
}

function mannerIn(settings: Settings): string {
  const units = settings.units.map((unit) => [unit.name, unit.size, unit.u, unit.kind, unit.names]);
  return JSON.stringify([settings.approximate, settings.plusMinus, settings.decimal, units]);
}

function problemOf(file: SourceFile): Finding | null {
  return file.problem === undefined
    ? null
    : finding("unreadable-file", file.problem, { file: file.path, start: 0, end: 0 });
}

function tooLarge(file: SourceFile, limit: number): Finding | null {
  if (file.text.length <= limit) return null;
  const mib = limit / 1024 / 1024;
  const message = say`Unexpected size of more than ${`${mib} MiB`}, expected the records divided among several files`;
  return finding("unreadable-file", message, { file: file.path, start: 0, end: 0 });
}

function tooMany(file: SourceFile): Finding | null {
  if (!hasTooMany(file.text)) return null;
  const message = say`Unexpected number of more than ${count(mostValues)} values, expected the records divided among several files`;
  return finding("unreadable-file", message, { file: file.path, start: 0, end: 0 });
}

/** Where the settings name a file. */
function namedAt(settings: Settings, field: string, place: number): Span {
  const list = settings.node.entries.find((entry) => entry.key === field)?.value;
  const node = list?.is === "list" ? (list.items[place] ?? list) : (list ?? settings.node);
  return { file: settings.file, start: node.start, end: node.end };
}
