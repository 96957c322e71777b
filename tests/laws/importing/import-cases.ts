import { edited } from "../../../src/base/text/edit.ts";
import { inEnglish } from "../../../src/base/text/said/english.ts";
import { arrivedIn } from "../../../src/read/bibliography/incoming/arrived.ts";
import { importChanges } from "../../../src/read/bibliography/incoming/changes.ts";
import { formatOf } from "../../../src/read/bibliography/incoming/formats.ts";
import { planned } from "../../../src/read/bibliography/incoming/plan.ts";
import type { Choice, Plan } from "../../../src/read/bibliography/incoming/plan.ts";
import { shelfOf } from "../../../src/read/bibliography/incoming/shelf.ts";
import { readSettings } from "../../../src/read/settings/settings.ts";

/** The files of a corpus by their paths. */
export type Files = Readonly<Record<string, string>>;

/** What an import was told beside its files. */
export interface Told {
  readonly choices?: Readonly<Record<number, Choice>>;
  readonly duplicates?: "leave" | "merge";
  readonly hidden?: readonly string[];
  readonly ids?: readonly string[];
}

/** The least corpus, with a bibliography where one is named. */
export function corpusWith(files: Files = {}): Files {
  const named = Object.keys(files).filter((one) => /\.(?:bib|ris|json)$/.test(one));
  const line = named.length === 0 ? "" : `bibliography: [${named.join(", ")}]\n`;
  return { "corpus.yaml": `format: 1\ntitle: Pits\nlanguage: en\n${line}`, ...files };
}

/** The plan of an import into a corpus. */
export function planOf(corpus: Files, incoming: Files, told: Told = {}): Plan {
  const files = Object.entries(corpus).map(([path, text]) => ({ path, text }));
  const { settings } = readSettings({ path: "corpus.yaml", text: corpus["corpus.yaml"] ?? "" });
  const named = settings?.bibliography ?? [];
  const shelf = shelfOf({ files, settings: "corpus.yaml", named, ids: told.ids ?? [] });
  const arrived = Object.entries(incoming).map(([path, text]) => {
    const format = formatOf(path, text);
    if (format === null) throw new Error(`unexpected ${path}, expected a bibliography`);
    return arrivedIn({ path, text }, format);
  });
  return planned(shelf, arrived, {
    choices: new Map(
      Object.entries<Choice>(told.choices ?? {}).map(([place, one]): [number, Choice] => [
        Number(place),
        one,
      ]),
    ),
    duplicates: told.duplicates ?? "leave",
    isHidden: (key) => (told.hidden ?? []).includes(key),
  });
}

/** The files of a corpus after an import. */
export function after(corpus: Files, incoming: Files, told: Told = {}): Files {
  const made = importChanges(planOf(corpus, incoming, told));
  if ("problem" in made) throw new Error(inEnglish(made.problem));
  const files = { ...corpus };
  for (const { file, edits } of made.changes) files[file] = edited(files[file] ?? "", edits);
  return files;
}
