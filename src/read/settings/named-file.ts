import { finding } from "../../base/finding.ts";
import type { Finding, Fix, Span } from "../../base/finding.ts";
import { nearest } from "../../base/nearest.ts";
import { coded, row, say } from "../../base/text/said/said.ts";
import { slipFor } from "../../base/text/slip.ts";
import type { SourceFile } from "../source-file.ts";

/** The file that a text of the corpus names, whether the disk has the letters of the name whole or in parts; null for none. */
export function fileNamed(files: ReadonlyMap<string, SourceFile>, path: string): SourceFile | null {
  const found = files.get(path);
  // What has no letter beyond ASCII is written in one way only.
  if (found || !/[^\u0000-\u007f]/u.test(path)) return found ?? null;
  const wanted = path.normalize("NFC");
  for (const [name, file] of files) if (name.normalize("NFC") === wanted) return file;
  return null;
}

/** What there is to say where the settings name a file that is not there, with the names most like it among those with its ending. */
export function missingFile(path: string, files: Iterable<string>, at: Span): Finding {
  const ending = (file: string): string => (/\.[^./]*$/u.exec(file)?.[0] ?? "").toLowerCase();
  const alike = [...files].filter((file) => ending(file) === ending(path));
  const near = nearest(path, alike);
  const message =
    near.length > 0
      ? say`Missing file \`${path}\`, expected ${row(near.map(coded), "or")}`
      : say`Missing file \`${path}\`, expected it below the corpus's folder`;
  return finding("unreadable-file", message, at, { fix: fixFor(slipFor(path, near), at) });
}

/** Writes the one name that can be meant, where it needs no quotes. */
function fixFor(meant: string | null, at: Span): Fix | null {
  if (meant === null || !/^[\p{L}_][\p{L}\p{M}\p{N}_./-]*$/u.test(meant)) return null;
  return { label: say`Write ${meant}`, edits: [{ ...at, text: meant }] };
}
