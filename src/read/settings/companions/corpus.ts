import { finding } from "../../../base/finding.ts";
import type { Finding, Id } from "../../../base/finding.ts";
import { byText } from "../../../base/order.ts";
import { say } from "../../../base/text/said/said.ts";
import type { FileRecords } from "../../record.ts";
import type { SourceFile } from "../../source-file.ts";
import { entryAt, nodeAt } from "../../yaml/tree.ts";
import { fileNamed } from "../named-file.ts";
import type { Settings } from "../settings.ts";
import type { Use } from "../use.ts";
import { takenAs } from "./taken.ts";
import type { Said, Taken } from "./taken.ts";

/** A companion corpus, as it is told of. */
export interface Companion extends Use {
  /** Its title; null where it cannot be read. */
  readonly title: string | null;
  /** What may be done with what is taken from it; null where that is not said. */
  readonly licence: string | null;
}

type OfFile = FileRecords | Said["bibliographies"][number];

/** How files are read, what was read before being remembered; a file that cannot be read says so in its findings. */
export interface FileReader {
  readonly settings: (file: SourceFile) => {
    readonly settings: Settings | null;
    readonly findings: readonly Finding[];
  };
  readonly bibliography: (file: SourceFile) => OfFile;
  readonly table: (file: SourceFile, list: "artefacts" | "measurements", settings: Settings) => FileRecords;
  readonly records: (file: SourceFile, settings: Settings) => FileRecords;
}

/** What is taken from one corpus. */
export interface TakenOfOne extends Taken {
  readonly companion: Companion;
  /** Ids that it withholds, as they are called here. */
  readonly withhold: readonly Id[];
  /** Whether its records name what it uses itself from another corpus. */
  readonly beyond: boolean;
}

/** Reads one companion corpus; null where its `corpus.yaml` is not there. */
export function takenOf(use: Use, files: readonly SourceFile[], reader: FileReader): TakenOfOne | null {
  const main = files.find(({ path }) => path === `${use.folder}/corpus.yaml`);
  if (!main) return null;
  const { settings, findings } = reader.settings(main);
  const errors = findings.filter(({ level }) => level === "error").map((one) => ({ ...one, fix: null }));
  if (!settings)
    return {
      companion: { ...use, title: null, licence: null },
      withhold: [],
      ...nothingTaken,
      beyond: false,
      findings: errors,
    };
  const { bibliographies, records, unfound } = filesSaying(use, settings, files, reader);
  const taken = rememberedAs(use.as, settings, { bibliographies, records });
  return {
    ...taken,
    companion: { ...use, title: settings.title, licence: settings.licence },
    withhold: settings.withhold.map((id) => `${use.as}/${id}`),
    findings: [...errors.filter((one) => bearsOnTaking(settings, one)), ...taken.findings, ...unfound],
  };
}

/** What is taken where nothing can be. */
export const nothingTaken = { sources: [], records: [], spoilt: [] } as const;

/** Fields of the settings by which something is taken, or withheld. */
const bearing: ReadonlySet<string> = new Set(["bibliography", "artefact-tables", "withhold"]);

function bearsOnTaking({ node }: Settings, { rule, at }: Finding): boolean {
  if (at === null || rule === "unknown-field") return true;
  const entry = entryAt(node, at.start);
  return entry !== undefined && bearing.has(entry.key);
}

/** What those files say that hold its bibliography and its records, and which of them are not there. */
function filesSaying(
  use: Use,
  settings: Settings,
  files: readonly SourceFile[],
  reader: FileReader,
): Said & { readonly unfound: readonly Finding[] } {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const unfound: Finding[] = [];
  const named = (
    field: "bibliography" | "artefact-tables",
    paths: readonly string[],
  ): readonly SourceFile[] =>
    paths.flatMap((path, place) => {
      if (paths.indexOf(path) < place) return [];
      const file = fileNamed(byPath, `${use.folder}/${path}`);
      if (file) return [file];
      const message = say`Missing file \`${path}\`, expected it below the corpus's folder`;
      const { start, end } = nodeAt(settings.node, [field, place]);
      unfound.push(finding("unreadable-file", message, { file: settings.file, start, end }));
      return [];
    });
  const books = named("bibliography", settings.bibliography).map(reader.bibliography);
  const tables = named("artefact-tables", settings.artefactTables).map((file) =>
    reader.table(file, "artefacts", settings),
  );
  const texts = files
    .filter(({ path }) => /\.ya?ml$/u.test(path) && path !== settings.file)
    .toSorted((a, b) => byText(a.path, b.path))
    .map((file) => reader.records(file, settings));
  return {
    bibliographies: books.filter((one) => "sources" in one),
    records: [...books.filter((one) => "records" in one), ...tables, ...texts],
    unfound,
  };
}

interface Remembered {
  readonly as: string;
  readonly parts: readonly object[];
  readonly taken: ReturnType<typeof takenAs>;
}

/** What was taken before stays the same objects as long as every file says the same, so that an edit here costs nothing there. */
const takenBefore = new WeakMap<Settings, Remembered>();

function rememberedAs(as: string, settings: Settings, said: Said): Remembered["taken"] {
  const parts = [...said.bibliographies, ...said.records];
  const known = takenBefore.get(settings);
  const isSame =
    known?.as === as &&
    known.parts.length === parts.length &&
    known.parts.every((one, place) => one === parts[place]);
  if (isSame) return known.taken;
  const taken = takenAs(as, settings.use, said);
  takenBefore.set(settings, { as, parts, taken });
  return taken;
}
