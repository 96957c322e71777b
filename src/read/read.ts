import { finding } from "../base/finding.ts";
import type { Finding, Span } from "../base/finding.ts";
import { byText } from "../base/order.ts";
import { coded, say } from "../base/text/said/said.ts";
import { readBibliography } from "./bibliography/read.ts";
import type { Source } from "./bibliography/read.ts";
import { citationStyleIn } from "./bibliography/style/style.ts";
import type { CitationStyle } from "./bibliography/style/style.ts";
import type { AnyRecord, FileRecords, Spoilt } from "./record.ts";
import type { Prose, ProseRead } from "./prose/prose.ts";
import { readProse } from "./prose/read.ts";
import { readRecords } from "./records.ts";
import { readSettings } from "./settings.ts";
import type { Settings } from "./settings.ts";
import {
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
  readonly findings: readonly Finding[];
}

/** What a file says. */
type FileRead =
  FileRecords | ProseRead | { readonly sources: readonly Source[]; readonly findings: readonly Finding[] };

/** What was read of each file, with the settings that bear on reading: its last texts, and what they say. */
export type ReadMemo = Map<string, readonly { readonly text: string; readonly read: FileRead }[]>;

/** So many texts of a file are remembered: as it is, as it was before a step, and as two that are compared have it. */
const lastTexts = 4;

const yamlFile = /\.ya?ml$/;

/** Reads the corpus's files in the order of their paths; null when there is no readable `corpus.yaml`. */
export function readCorpus(
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
  const trouble = tooLarge(main, largestYaml) ?? problemOf(main);
  if (trouble) return { findings: [trouble] };
  const marks = unmerged(main);
  if (marks) return { findings: marks.findings };
  const { settings, findings: said } = settingsIn(main);
  if (!settings) return { findings: said };

  const manner = mannerOf(settings);
  const findings: Finding[] = [...said];
  const sources: Source[] = [];
  const records: AnyRecord[] = [];
  const spoilt: Spoilt[] = [];
  const byPath = new Map(files.map((file) => [file.path, file]));

  const take = (read: FileRecords): void => {
    records.push(...read.records);
    spoilt.push(...read.spoilt);
    findings.push(...read.findings);
  };
  const met = new Set<string>();
  const named = (field: string, path: string, place: number): SourceFile | null => {
    const file = byPath.get(path) ?? null;
    const again = met.has(path);
    met.add(path);
    const trouble = again
      ? file && say`Duplicate file \`${path}\`, expected it once; it is read the first time`
      : !file && say`Missing file \`${path}\`, expected it below the corpus's folder`;
    if (trouble)
      findings.push(
        finding(again ? "bad-value" : "unreadable-file", trouble, namedAt(settings, field, place)),
      );
    return again ? null : file;
  };

  settings.bibliography.forEach((path, place) => {
    const file = named("bibliography", path, place);
    if (!file) return;
    const bad = problemOf(file) ?? tooLarge(file, largestTable);
    if (bad) return void findings.push(bad);
    const marks = unmerged(file);
    if (marks) return void take(marks);
    const read = remembered(memo, file, "bibliography", () => readBibliography(file));
    if ("sources" in read) sources.push(...read.sources);
    findings.push(...read.findings);
  });
  for (const [field, list, paths] of [
    ["artefact-tables", "artefacts", settings.artefactTables],
    ["measurement-tables", "measurements", settings.measurementTables],
  ] as const) {
    paths.forEach((path, place) => {
      const file = named(field, path, place);
      if (!file) return;
      const bad = problemOf(file) ?? tooLarge(file, largestTable);
      if (bad) return void findings.push(bad);
      const read = remembered(
        memo,
        file,
        `${list} ${manner}`,
        () => unmerged(file) ?? readTableRecords(file, list, settings),
      );
      if ("records" in read) take(read);
    });
  }
  const texts = files.filter((file) => yamlFile.test(file.path) && file !== main);
  for (const file of [...texts].sort((a, b) => byText(a.path, b.path))) {
    const bad = problemOf(file) ?? tooLarge(file, largestYaml);
    if (bad) {
      findings.push(bad);
      continue;
    }
    const read = remembered(
      memo,
      file,
      manner,
      () => unmerged(file) ?? readRecords(file, settings.quantities),
    );
    if ("records" in read) take(read);
  }
  const code = files.filter((file) => pluginPath.test(file.path));
  const unread = code.map((file) => problemOf(file) ?? tooLarge(file, largestPlugin));
  findings.push(...unread.filter((one) => one !== null));
  const pluginFiles = pluginFilesIn(code.filter((_, place) => unread[place] === null));
  const prose: Prose[] = [];
  for (const file of files
    .filter(({ path }) => prosePath.test(path))
    .sort((a, b) => byText(a.path, b.path))) {
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
  return { settings, sources, records, spoilt, pluginFiles, citationStyle: style, prose, findings };
}

function remembered(memo: ReadMemo, file: SourceFile, manner: string, read: () => FileRead): FileRead {
  const key = `${manner}\n${file.path}`;
  const texts = memo.get(key) ?? [];
  const known = texts.find(({ text }) => text === file.text);
  if (known && known === texts[0]) return known.read;
  const last = known ?? { text: file.text, read: read() };
  // What was asked for longest ago goes first.
  memo.set(key, [last, ...texts.filter((one) => one !== known)].slice(0, lastTexts));
  return last.read;
}

/** Settings that are the same object say that nothing else is read in another way. */
const settingsRead = new WeakMap<SourceFile, ReturnType<typeof readSettings>>();

function settingsIn(main: SourceFile): ReturnType<typeof readSettings> {
  const known = settingsRead.get(main) ?? readSettings(main);
  settingsRead.set(main, known);
  return known;
}

/** What of the settings changes how a file is read. */
function mannerOf(settings: Settings): string {
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

/** Where the settings name a file. */
function namedAt(settings: Settings, field: string, place: number): Span {
  const list = settings.node.entries.find((entry) => entry.key === field)?.value;
  const node = list?.is === "list" ? (list.items[place] ?? list) : (list ?? settings.node);
  return { file: settings.file, start: node.start, end: node.end };
}
