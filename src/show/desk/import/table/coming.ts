import type { Finding } from "../../../../base/finding.ts";
import { linesIn } from "../../../../base/text/lines/lines.ts";
import { formatOf } from "../../../../read/bibliography/incoming/formats.ts";
import type { SourceFile } from "../../../../read/source-file.ts";
import { readTable } from "../../../../read/table/csv.ts";
import type { Row } from "../../../../read/table/csv.ts";

/** A table that is to come into a corpus, as it was read. */
export interface ComingTable {
  readonly file: SourceFile;
  readonly head: readonly string[];
  readonly rows: readonly Row[];
  /** What could not be read of it. */
  readonly findings: readonly Finding[];
  readonly separator: string;
  /** The line, from 1, in which a place of the file stands. */
  readonly lineAt: (offset: number) => number;
}

/** Reads a table of measurements or artefacts: comma, semicolon or tab, told by the head line. */
export function comingTable(file: SourceFile): ComingTable {
  const { head, rows, findings } = readTable(file, "all");
  const lineOf = linesIn(new Map([[file.path, file.text]]));
  const [first, second] = head;
  const between = first && second ? file.text.slice(first.span.end, second.span.start) : "";
  return {
    file,
    head: head.map(({ text }) => text),
    rows,
    findings,
    separator: /[,;\t]/u.exec(between)?.[0] ?? ",",
    lineAt: (offset) => lineOf(file.path, offset).line,
  };
}

/** Whether a file is a table rather than a bibliography: by its ending, else since its first lines have cells, as many in each. */
export function isTable({ path, text }: SourceFile): boolean {
  if (/\.(?:csv|tsv|tab)$/iu.test(path)) return true;
  if (!/^[^.]*$|\.txt$/iu.test(path.replace(/^.*[/\\]/u, "")) || formatOf(path, text) !== null) return false;
  const first = text.slice(0, 20_000).split(/\r\n|\r|\n/u);
  const [head = "", next = ""] = first.filter((line) => line.trim() !== "");
  return [",", ";", "\t"].some((mark) => {
    const cells = head.split(mark).length;
    return cells > 1 && next.split(mark).length === cells;
  });
}
