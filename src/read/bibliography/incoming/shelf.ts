import type { Id } from "../../../base/finding.ts";
import type { SourceFile } from "../../source-file.ts";
import { unmerged } from "../../yaml/unmerged.ts";
import { lexBibtex } from "../bibtex/lexer.ts";
import type { BibEntry } from "../bibtex/lexer.ts";
import type { Source } from "../source.ts";
import { emptyIndex } from "./alike/alike.ts";
import type { Index } from "./alike/alike.ts";
import { readAs } from "./formats.ts";
import type { Format } from "./formats.ts";

/** One bibliography of a corpus, as it is now. */
export interface Holding {
  readonly path: string;
  readonly format: Format;
  readonly text: string;
  readonly sources: readonly Source[];
  /** All entries of BibTeX, those that are no sources among them; empty for other formats. */
  readonly lexed: readonly BibEntry[];
}

/** A source of a corpus with the bibliography that it stands in. */
export interface Held {
  readonly source: Source;
  readonly holding: Holding;
}

/** What a corpus has of sources: its bibliographies, and the names that are taken. */
export interface Shelf {
  /** `corpus.yaml` as it is. */
  readonly settings: { readonly path: string; readonly text: string };
  /** The bibliographies that it names. */
  readonly named: readonly string[];
  readonly holdings: readonly Holding[];
  readonly index: Index<Held>;
  readonly taken: ReadonlySet<Id>;
  /** Bibliographies that it names and that cannot be read, or are not there. */
  readonly closed: readonly string[];
  /** Every file of the corpus. */
  readonly paths: ReadonlySet<string>;
}

/** What is needed of a corpus to see what it has. */
export interface Corpus {
  readonly files: readonly SourceFile[];
  readonly settings: string;
  readonly named: readonly string[];
  /** Ids of records and keys of sources. */
  readonly ids: Iterable<Id>;
}

/** The bibliographies of a corpus, read anew, so that every place in them is one of their texts now. */
export function shelfOf({ files, settings, named, ids }: Corpus): Shelf {
  const open = files.filter((one) => one.problem === undefined && unmerged(one) === null);
  const texts = new Map(open.map((one) => [one.path, one.text]));
  const holdings = [...new Set(named)].flatMap((path): readonly Holding[] => {
    const text = texts.get(path);
    const format = formats.find((one) => path.endsWith(`.${one}`));
    return text === undefined || format === undefined ? [] : [holdingOf(path, format, text)];
  });
  const index = emptyIndex<Held>();
  const taken = new Set(ids);
  for (const holding of holdings) {
    for (const source of holding.sources) index.add(source, { source, holding });
    for (const { key } of [...holding.sources, ...holding.lexed]) taken.add(key);
  }
  return {
    settings: { path: settings, text: texts.get(settings) ?? "" },
    named,
    holdings,
    index,
    taken,
    closed: named.filter((path) => !texts.has(path)),
    paths: new Set(files.map((one) => one.path)),
  };
}

const formats: readonly Format[] = ["bib", "ris", "json"];

/** A bibliography read from its text. */
export function holdingOf(path: string, format: Format, text: string): Holding {
  const file = { path, text };
  const { sources } = readAs(format, file);
  return { path, format, text, sources, lexed: format === "bib" ? lexBibtex(file).entries : [] };
}

/** The bibliography that entries of a format would go to, where it cannot be read; null where nothing is in the way. */
export function closedFor({ named, closed }: Shelf, format: Format): string | null {
  const first = named.find((path) => path.endsWith(`.${format}`));
  return first !== undefined && closed.includes(first) ? first : null;
}

/** Where entries of a format go: the first bibliography of that format that is named, else a new one with a free name. */
export function goalFor(
  shelf: Shelf,
  format: Format,
): { readonly path: string; readonly holding: Holding | null } {
  const holding = shelf.holdings.find((one) => one.format === format);
  if (holding) return { path: holding.path, holding };
  for (let n = 1; ; n++) {
    const path = `bibliography${n === 1 ? "" : `-${n}`}.${format}`;
    if (!shelf.paths.has(path) && !shelf.named.includes(path)) return { path, holding: null };
  }
}
