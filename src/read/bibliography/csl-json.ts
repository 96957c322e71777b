import type { Finding, Span } from "../../base/finding.ts";
import { coded, say } from "../../base/text/said/said.ts";
import { collector, lineSpan } from "../decode/collector.ts";
import type { Collector } from "../decode/collector.ts";
import type { SourceFile } from "../source-file.ts";
import { cslItem, isObject } from "./csl.ts";
import { afterSpace, jsonAt, unexpected } from "./json.ts";
import type { Placed } from "./json.ts";
import { lineFinder, mostEntries, tooMany } from "./places.ts";
import { orcidIn, sourceOf } from "./source.ts";
import type { Source } from "./source.ts";

/** The beginning of a list of items, bare or under `items`. */
const opening = /^\uFEFF?\s*(?:\{\s*"items"\s*:\s*)?\[/;
const itemHead = /\{\s{0,200}"(?:id|type)"\s{0,20}:/g;

/** The sources of a CSL-JSON file: a list of items. A broken item costs itself; reading goes on where the next one opens. */
export function readCslJson(file: SourceFile): {
  readonly sources: readonly Source[];
  readonly findings: readonly Finding[];
} {
  const { text } = file;
  const found = collector();
  const sources: Source[] = [];
  const open = opening.exec(text)?.[0];
  if (open === undefined) {
    found.bad(
      say`Unexpected text, expected a list of ${"CSL"} items: ${coded('[{ "id": … }]')}`,
      lineSpan(file, 0),
      {
        rule: "unreadable-file",
      },
    );
    return { sources, findings: found.all() };
  }
  const bare = !open.includes("{");
  const nextItem = lineFinder(text, itemHead);
  let count = 0;
  for (let at = afterSpace(text, open.length); !ended(at);) {
    if (count++ === mostEntries) {
      tooMany(found, file, at);
      break;
    }
    const item = jsonAt(text, at);
    if (!("message" in item)) {
      const source = sourceAt(file, item, found);
      if (source) sources.push(source);
      at = afterSpace(text, item.end);
      if (text[at] === "]") continue;
    }
    const trouble =
      "message" in item
        ? item
        : text[at] === ","
          ? null
          : unexpected(text, at, say`${coded(",")} between items or ${coded("]")}`);
    if (trouble === null) at = afterSpace(text, at + 1);
    else {
      found.bad(trouble.message, lineSpan(file, trouble.at));
      // A lost comma leaves the next item whole, just here.
      at = text[at] === "{" && trouble.at === at ? at : nextItem(Math.max(at, trouble.at - 1));
      if (at >= text.length) break;
    }
  }
  return { sources, findings: found.all() };

  function ended(at: number): boolean {
    if (text[at] !== "]") return false;
    const after = afterSpace(text, at + 1);
    if (bare && after < text.length) {
      const { message } = unexpected(text, after, say`the end of the file after the list`);
      found.bad(message, lineSpan(file, after));
    }
    return true;
  }
}

function sourceAt(file: SourceFile, item: Placed, found: Collector): Source | null {
  const span = (placed: Placed): Span => ({ file: file.path, start: placed.start, end: placed.end });
  const raw = item.value;
  const named = item.keys.get("id");
  const id =
    typeof named?.value === "string" || typeof named?.value === "number" ? `${named.value}`.trim() : "";
  if (!isObject(raw) || named === undefined || id === "") {
    found.bad(say`Missing ${coded("id")} of the item, expected a ${"CSL"} item`, lineSpan(file, item.start));
    return null;
  }
  const { csl, problems } = cslItem(raw, id.replace(/\s+/g, "-"));
  for (const { field, message, level } of problems)
    found.bad(message, span(item.keys.get(field) ?? named), { level, about: [csl.id] });
  const people = Array.isArray(raw["author"]) ? raw["author"] : raw["editor"];
  const orcids = Array.isArray(people)
    ? people.map((one: unknown) => (isObject(one) ? orcidIn(one["ORCID"] ?? one["orcid"]) : null))
    : [];
  return sourceOf({ csl, span: span(item), keySpan: span(named), orcids });
}
