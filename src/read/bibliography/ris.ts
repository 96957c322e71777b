import "@citation-js/plugin-ris";
import { plugins } from "@citation-js/core";
import type { Finding, Id, Span } from "../../base/finding.ts";
import { coded, say } from "../../base/text/said/said.ts";
import { collector, quoted } from "../decode/collector.ts";
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

const tagged = /^([A-Z][A-Z0-9]) {1,2}-(?: (.*))?$/;

/** The sources of a RIS file, one record from `TY` to `ER` after another; a record that cannot be read costs itself. */
export function readRis(file: SourceFile): {
  readonly sources: readonly Source[];
  readonly findings: readonly Finding[];
} {
  const found = collector();
  const sources: Source[] = [];
  const keys = new Set<Id>();
  const made = new Map<Id, number>();
  let open: Line[] | null = null;
  const all = linesOf(file.text);
  // A key that a record gives itself is not made for another.
  for (const line of all) if (line.tag === "ID") keys.add(line.text.trim().replace(/\s+/g, "-"));
  for (const line of all) {
    if (line.tag === "TY") {
      if (open) {
        const message = say`Missing ${coded("ER  -")} before the next record, expected one at the end of each`;
        found.bad(message, at(open[0], open[0]));
        close(open);
      }
      open = [line];
    } else if (line.tag === "ER") {
      if (!open)
        found.bad(say`Unexpected ${coded("ER  -")}, expected ${coded("TY  -")} first`, at(line, line));
      else close(open);
      open = null;
    } else if (open) open.push(line);
    else if (line.tag !== "" || line.text.trim() !== "") {
      found.bad(
        say`Unexpected \`${quoted(line.text)}\` outside a record, expected ${coded("TY  -")}`,
        at(line, line),
      );
    }
    if (sources.length > mostEntries) {
      tooMany(found, file, line.start);
      break;
    }
  }
  if (open) {
    found.bad(say`Missing ${coded("ER  -")} at the end of the record, expected one`, at(open[0], open[0]));
    close(open);
  }
  return { sources, findings: found.all() };

  function at(first: Line | undefined, last: Line | undefined): Span {
    return { file: file.path, start: first?.start ?? 0, end: last?.end ?? 0 };
  }

  function close(lines: readonly Line[]): void {
    const values = valuesOf(lines);
    const kind = values.get("TY")?.[0]?.toUpperCase() ?? "";
    const known = converted(values, kind);
    const raw = known ?? converted(values, "GEN");
    if (raw === null)
      return void found.bad(say`Unreadable record, expected ${"RIS"}`, at(lines[0], lines.at(-1)));
    const year = values.get("PY")?.[0] ?? values.get("Y1")?.[0] ?? values.get("DA")?.[0];
    const [y = "", month = "", day = ""] = (year ?? "").split("/");
    const issued = y === "" ? undefined : dateOfYear(y, month, day);
    const said = values.get("ID")?.[0]?.replace(/\s+/g, "-") ?? "";
    const id = said === "" ? unused(madeId(raw, issued ? yearOf(issued) : null)) : said;
    keys.add(id);
    const { csl, problems } = cslItem(issued ? { ...raw, issued } : raw, id);
    const keySpan = keySpanOf(said === "" ? lines[0] : lines.find((line) => line.tag === "ID"));
    for (const { message, level } of problems) found.bad(message, keySpan, { level, about: [id] });
    if (known === null) {
      const message = say`Unknown kind of record \`${quoted(kind)}\`, read as a document`;
      found.bad(message, at(lines[0], lines[0]), { level: "note", about: [id] });
    }
    sources.push(sourceOf({ csl, span: at(lines[0], lines.at(-1)), keySpan }));
  }

  function keySpanOf(line: Line | undefined): Span {
    const { start, end } = at(line, line);
    const length = line?.text.trim().length ?? 0;
    return { file: file.path, start: Math.max(start, end - length), end };
  }

  /** A made key that no record before it has: a letter is put to the year, as in citations (common practice). */
  function unused(id: Id): Id {
    if (!keys.has(id)) return id;
    const times = (made.get(id) ?? 1) + 1;
    made.set(id, times);
    const letter = times <= 26 ? String.fromCharCode(96 + times) : `-${times}`;
    return unused(`${id}${letter}`);
  }
}

/** Tags that may stand more than once; of any other the first is kept. */
const lists: ReadonlySet<string> = new Set("AU A1 A2 A3 A4 ED KW TA C4".split(" "));

function valuesOf(lines: readonly Line[]): ReadonlyMap<string, string[]> {
  const values = new Map<string, string[]>();
  let open: string[] | undefined;
  for (const line of lines) {
    if (line.tag !== "") {
      // Older files call the first authors A1.
      const tag = line.tag === "A1" ? "AU" : line.tag;
      open = values.get(tag) ?? [];
      values.set(tag, open);
      open.push(line.text.trim());
      // A line without a tag goes on with the one above it.
    } else if (open && line.text.trim() !== "") open.push(`${open.pop() ?? ""} ${line.text.trim()}`);
  }
  return values;
}

function converted(
  values: ReadonlyMap<string, readonly string[]>,
  kind: string,
): Readonly<Record<string, unknown>> | null {
  const pairs = [...values].flatMap(([name, all]): (readonly [string, unknown])[] => {
    const said = all.filter((one) => one !== "");
    if (said.length === 0) return [];
    return [[name, lists.has(name) && said.length > 1 ? said : said[0]]];
  });
  try {
    const list = plugins.input.data({ ...Object.fromEntries(pairs), TY: kind }, "@ris/record");
    const raw: unknown = Array.isArray(list) ? list[0] : list;
    return isObject(raw) && typeof raw["type"] === "string" ? raw : null;
  } catch {
    return null;
  }
}

function linesOf(asKept: string): readonly Line[] {
  // A line may end in a carriage return alone.
  const text = asKept.includes("\r") ? asKept.replace(/\r(?!\n)/gu, "\n") : asKept;
  const lines: Line[] = [];
  for (let start = text.charCodeAt(0) === 0xfeff ? 1 : 0; start < text.length;) {
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
export function madeId(raw: Readonly<Record<string, unknown>>, year: number | null): Id {
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
