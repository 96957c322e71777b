import type { Finding } from "../../base/finding.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Checked, Memo, Model, SourceFile } from "../../build.ts";
import type { Plugin } from "../../plugin.ts";
import type { Made } from "../../write/telling/made.ts";

/** A corpus worked out, from which things are told. */
export interface Told {
  /** The folder, for pictures and styles in it. */
  readonly folder: string;
  readonly files: readonly SourceFile[];
  readonly model: Model;
  readonly findings: readonly Finding[];
  readonly plugins: readonly Plugin[];
  /** All that was read and computed: what else a text needs under another lens is built from it. */
  readonly memo: Memo;
  /** Builds and computes under another lens or with more reach. */
  readonly under: (
    lens: Model["lens"],
    reach?: { readonly plan?: boolean; readonly history?: boolean },
  ) => Promise<Checked<Model>>;
  /** The day it is written, YYYY-MM-DD. */
  readonly today: string;
}

/** What is asked of a kind, by the names of its options without their dashes; one that was not given is not there. */
export type Asked = Readonly<Record<string, string | readonly string[] | boolean>>;

/** What cannot be told as it was asked, in a sentence for the user. */
export interface Refusal {
  readonly refused: Text;
}

/** An option of a kind, as the command line has it: `--sections <names>`. */
export interface KindOption {
  /** Its name without dashes, which is also its name in `Asked`. */
  readonly name: string;
  /** What stands after it, in the words of the help (`names`); null where it is only said or not. */
  readonly takes: string | null;
  /** Whether several values may follow, parted by spaces or commas; they are then a list in `Asked`. */
  readonly several?: boolean;
  /** One line of help, small letters, no point at the end. */
  readonly doc: string;
}

/** Something that a corpus is told as: a review, slides, tables. */
export interface Kind {
  /** One line of help: what it is, small letters, no point at the end. */
  readonly doc: string;
  /** Formats by the ending of the file, the usual one first. */
  readonly formats: readonly string[];
  /** Whether it may be several files, in a folder or a `.zip`: `format` is then the usual one. */
  readonly several: boolean;
  /** Its own options, beside those that every kind has (`--to`, `--over`, `--as-of`, `--suppose`). */
  readonly options: readonly KindOption[];
  /** What more than the usual model it needs. */
  readonly reach: { readonly plan?: boolean; readonly history?: boolean; readonly allRestsOn?: boolean };
  /** Makes the files; `name` is the wanted name of the file without its folder and ending. */
  readonly make: (
    told: Told,
    format: string,
    name: string,
    asked: Asked,
  ) => Promise<readonly Made[] | Refusal>;
}
