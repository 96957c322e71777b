import "@citation-js/plugin-ris";
import { plugins } from "@citation-js/core";
import type { Finding, Id, Span } from "../../base/finding.ts";
import { collector, lineSpan, quoted } from "../collector.ts";
import type { SourceFile } from "../source-file.ts";
import { cslItem, isObject } from "./csl.ts";
import { dateOfYear, yearOf } from "./date.ts";
import { mostEntries, tooMany } from "./places.ts";
import { sourceOf } from "./source.ts";
import type { Source } from "./source.ts";

interface Line {
  readonly tag: string;
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

const tagged = /^\uFEFF?([A-Z][A-Z0-9]) {1,2}-(?: (.*))?$/;

/** The sources of a RIS file, one record from `TY` to `ER` after another; a record that cannot be read costs itself. */
export function readRis(file: SourceFile): {
  readonly sources: readonly Source[];
  readonly findings: readonly Finding[];
} {
  const found = collector();
  const sources: Source[] = [];
  let open: Line[] | null = null;
  for (const line of linesOf(file.text)) {
    if (line.tag === "TY") {
      if (open)
        found.bad(
          "Missing `ER  -` before the next record, expected one at the end of each",
          at(open[0], open.at(-1)),
        );
      open = [line];
    } else if (line.tag === "ER") {
      if (!open) found.bad("Unexpected `ER  -`, expected `TY  -` first", at(line, line));
      else close(open);
      open = null;
    } else if (open) open.push(line);
    else if (line.tag !== "" || line.text.trim() !== "") {
      found.bad(`Unexpected \`${quoted(line.text)}\` outside a record, expected \`TY  -\``, at(line, line));
    }
    if (sources.length > mostEntries) {
      tooMany(found, file, line.start);
      break;
    }
  }
  if (open)
    found.bad("Missing `ER  -` at the end of the record, expected one", lineSpan(file, open[0]?.start ?? 0));
  return { sources, findings: found.all() };

  function at(first: Line | undefined, last: Line | undefined): Span {
    return { file: file.path, start: first?.start ?? 0, end: last?.end ?? 0 };
  }

  function close(lines: readonly Line[]): void {
    const values = new Map<string, string[]>();
    let tag = "";
    for (const line of lines) {
      // A line without a tag goes on with the one above it.
      if (line.tag !== "") values.set((tag = line.tag), [...(values.get(tag) ?? []), line.text.trim()]);
      else values.get(tag)?.push(`${values.get(tag)?.pop() ?? ""} ${line.text.trim()}`);
    }
    const record = Object.fromEntries(
      [...values].map(([name, all]) => [name, all.length === 1 ? all[0] : all]),
    );
    let raw: unknown = null;
    try {
      const list = plugins.input.data(record, "@ris/record");
      raw = Array.isArray(list) ? list[0] : list;
    } catch {
      raw = null;
    }
    if (!isObject(raw)) return void found.bad("Unreadable record, expected RIS", at(lines[0], lines.at(-1)));
    const year = values.get("PY")?.[0] ?? values.get("Y1")?.[0] ?? values.get("DA")?.[0];
    const [y = "", month = "", day = ""] = (year ?? "").split("/");
    const issued = y === "" ? undefined : dateOfYear(y, month, day);
    const id = values.get("ID")?.[0]?.replace(/\s+/g, "-") ?? madeId(raw, issued ? yearOf(issued) : null);
    const { csl, problems } = cslItem(issued ? { ...raw, issued } : raw, id);
    const idLine = lines.find((line) => line.tag === "ID") ?? lines[0];
    for (const { message, level } of problems) found.bad(message, at(idLine, idLine), { level, about: [id] });
    sources.push(sourceOf({ csl, span: at(lines[0], lines.at(-1)), keySpan: at(idLine, idLine) }));
  }
}

function linesOf(text: string): readonly Line[] {
  const lines: Line[] = [];
  for (let start = 0; start < text.length;) {
    const stop = text.indexOf("\n", start);
    const end = stop < 0 ? text.length : stop;
    const line = text.slice(start, end).replace(/\r$/, "");
    const found = tagged.exec(line.length > 100_000 ? line.slice(0, 100_000) : line);
    lines.push({
      tag: found?.[1] ?? "",
      text: found ? (found[2] ?? "") : line,
      start,
      end: start + line.length,
    });
    start = end + 1;
  }
  return lines;
}

/** A key from the first family name and the year, for a record without `ID`. */
function madeId(raw: Readonly<Record<string, unknown>>, year: number | null): Id {
  const people = raw["author"] ?? raw["editor"];
  const first: unknown = Array.isArray(people) ? people[0] : null;
  const name = isObject(first) ? (first["family"] ?? first["literal"]) : raw["title"];
  const word = (typeof name === "string" ? name : "source")
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase();
  return `${word
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-|-$/g, "")
    .slice(0, 40)}${year === null ? "" : `-${year}`}`;
}
