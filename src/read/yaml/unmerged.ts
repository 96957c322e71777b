import { finding } from "../../base/finding.ts";
import { markedIn } from "../../base/text/conflict-marks.ts";
import { count, say } from "../../base/text/said/said.ts";
import type { FileRecords, Spoilt } from "../record.ts";
import { idsIn } from "../records.ts";
import type { SourceFile } from "../source-file.ts";

/** What is told of a file in which two versions stand between conflict marks; null of any other. Nothing of it is read. */
export function unmerged({ path, text }: SourceFile): FileRecords | null {
  const marked = text.includes("<<<<<<<") ? markedIn(text) : null;
  if (!marked) return null;
  const places = marked.pieces.filter((one) => one.is === "differs");
  const [first] = places;
  const start = first?.start ?? 0;
  const end = start + text.slice(start).search(/[\r\n]|$/u);
  const message =
    places.length === 1
      ? say`Unexpected conflict marks in one place, expected one text: two versions of the file were not merged`
      : say`Unexpected conflict marks in ${count(places.length)} places, expected one text: two versions of the file were not merged`;
  return {
    records: [],
    spoilt: namesIn(path, text),
    findings: [finding("conflict-marks", message, { file: path, start, end })],
  };
}

/** Names that the file seems to hold: references to them are the file's fault, not theirs. */
function namesIn(path: string, text: string): readonly Spoilt[] {
  if (/\.ya?ml$/u.test(path)) return idsIn(text);
  const name = path.endsWith(".bib")
    ? /^\s*@\w+\s*\{\s*([^\s,{}]+)\s*,/gmu
    : path.endsWith(".ris")
      ? /^ID {2}- (\S+)/gmu
      : path.endsWith(".json")
        ? /"id"\s*:\s*"([^"\s]+)"/gu
        : /^"?([a-z0-9][a-z0-9/-]*)"?(?=[,;\t])/gmu;
  return [...text.matchAll(name)].map((match) => ({ id: match[1] ?? "" }));
}
