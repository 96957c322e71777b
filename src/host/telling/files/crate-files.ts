import type { Id } from "../../../base/finding.ts";
import { build } from "../../../build.ts";
import type { Checked, Model } from "../../../build.ts";
import { portable } from "../../../read/source-file.ts";
import { givenCorpus } from "../../../show/telling/given/given.ts";
import { picturesOpen } from "../../../show/telling/given/records.ts";
import { dataTables } from "../../../show/telling/tables/tables.ts";
import { reportOf } from "../../../show/report/report.ts";
import type { Report } from "../../../show/report/schema.ts";
import { crateOf } from "../../../write/data/crate/crate.ts";
import { differencesOf } from "../../../write/data/crate/differences.ts";
import { aboutCrate, readmeOf } from "../../../write/data/crate/readme.ts";
import { csvOf } from "../../../write/tables/csv.ts";
import type { Made } from "../../../write/telling/made.ts";
import { imageOf } from "../../print/image.ts";
import { computingHere } from "../../evaluate.ts";
import type { Told } from "../kind.ts";

/** Where the corpus that may be given out stands in the crate. */
const place = "corpus/";

const json = (value: object): string => `${JSON.stringify(value, null, 2)}\n`;

/**
 * A crate (RO-Crate 1.2) round files of data: with them the corpus as it may be given out, its published pictures, tables, what
 * follows from the whole record, where the corpus that is given says otherwise, and what all of that is.
 */
export async function crateFiles(
  told: Told,
  data: readonly Made[],
  withNotes: boolean,
): Promise<readonly Made[]> {
  const { model, plugins } = told;
  const { pictures, files: pictureFiles } = await picturesFor(told.folder, model);
  const given = givenCorpus(model, { pictures, notes: withNotes });
  // Places in files that are not here would lead nowhere, and their names may tell.
  const findings = told.findings.map((one) => ({ ...one, at: null, fix: null }));
  const report = reportOf(model, findings, new Map());
  const again = await readAgain(told, given.files);
  const differences = differencesOf(given, report, again);
  const tables = dataTables(model, findings, new Map());
  const files: readonly Made[] = [
    ...data,
    ...tables.map((one) => ({ path: `tables/${one.name}.csv`, content: csvOf(one) })),
    { path: "standings.json", content: json(report) },
    { path: "differences.json", content: json(differences) },
    ...given.files.map(({ path, text }) => ({ path: `${place}${path}`, content: text })),
    ...pictureFiles,
  ];
  const of = { model, differences, withNotes };
  const readme = { path: "README.md", content: readmeOf({ ...of, paths: files.map(({ path }) => path) }) };
  const all = [readme, ...files];
  const about = aboutCrate(of);
  const crate = crateOf({ model, plugins, given, files: all, about, today: told.today });
  return [{ path: "ro-crate-metadata.json", content: crate }, ...all];
}

/** The pictures that may be given and can be read, cleaned of what was written about them; each is called by its record. */
async function picturesFor(
  folder: string,
  model: Model,
): Promise<{ readonly pictures: ReadonlyMap<Id, string>; readonly files: readonly Made[] }> {
  const pictures = new Map<Id, string>();
  const files: Made[] = [];
  for (const { id, values } of picturesOpen(model)) {
    const image = await imageOf(folder, values.file);
    if ("refused" in image) continue;
    const ending = { "image/svg+xml": "svg", "image/png": "png", "image/jpeg": "jpg" }[image.type];
    const path = `images/${portable(id.replaceAll("/", "--"))}.${ending}`;
    pictures.set(id, path);
    files.push({ path: `${place}${path}`, content: image.bytes });
  }
  return { pictures, files };
}

/** What follows from the corpus that is given, under the same lens; a number that only a plug-in of the corpus could compute anew stays open. */
async function readAgain(told: Told, files: Told["files"]): Promise<Report> {
  const own = told.plugins.filter(({ guest }) => guest === undefined);
  const computing = computingHere(own);
  const memo = { read: new Map(), compute: new Map(told.memo.compute) };
  const under = (): Checked<Model> => build(files, told.plugins, memo, told.model.lens);
  for (;;) {
    const { model, findings } = under();
    const missing = (model?.missing ?? []).filter((run) => own.some(({ id }) => id === run.plugin));
    if (missing.length === 0) return reportOf(model, findings, new Map());
    for (const [key, outcome] of await computing(missing, () => undefined)) memo.compute.set(key, outcome);
  }
}
