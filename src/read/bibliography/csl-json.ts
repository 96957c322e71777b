import { isMap, isScalar, isSeq, parseDocument } from "yaml";
import type { Finding, Span } from "../../base/finding.ts";
import { collector, lineSpan } from "../collector.ts";
import type { SourceFile } from "../source-file.ts";
import { cslItem, isObject } from "./csl.ts";
import { mostEntries, tooMany } from "./places.ts";
import { orcidIn, sourceOf } from "./source.ts";
import type { Source } from "./source.ts";

/** The sources of a CSL-JSON file: a list of items, each of which can cost only itself. */
export function readCslJson(file: SourceFile): {
  readonly sources: readonly Source[];
  readonly findings: readonly Finding[];
} {
  const found = collector();
  const sources: Source[] = [];
  const whole = parsed(file.text.replace(/^\uFEFF/, " "));
  if ("message" in whole) {
    found.bad(`Unreadable JSON, expected a list of CSL items: ${whole.message}`, lineSpan(file, whole.at), {
      rule: "unreadable-file",
    });
    return { sources, findings: found.all() };
  }
  const list = Array.isArray(whole.value) ? whole.value : isObject(whole.value) ? whole.value["items"] : null;
  if (!Array.isArray(list)) {
    found.bad("Unexpected JSON, expected a list of CSL items", lineSpan(file, 0), {
      rule: "unreadable-file",
    });
    return { sources, findings: found.all() };
  }
  const places = placesOf(file, Array.isArray(whole.value));
  list.forEach((raw: unknown, place) => {
    if (place === mostEntries) tooMany(found, file, places[place]?.item.start ?? 0);
    if (place >= mostEntries) return;
    const item = places[place]?.item ?? lineSpan(file, 0);
    const id =
      isObject(raw) && (typeof raw["id"] === "string" || typeof raw["id"] === "number") ? `${raw["id"]}` : "";
    if (!isObject(raw) || id === "")
      return void found.bad("Missing `id` of the item, expected a CSL item", item);
    const { csl, problems } = cslItem(raw, id.replace(/\s+/g, "-"));
    const keySpan = places[place]?.key ?? item;
    for (const { message, level } of problems) found.bad(message, keySpan, { level, about: [csl.id] });
    const people = Array.isArray(raw["author"]) ? raw["author"] : raw["editor"];
    const orcids = Array.isArray(people)
      ? people.map((one: unknown) => (isObject(one) ? orcidIn(one["ORCID"] ?? one["orcid"]) : null))
      : [];
    sources.push(sourceOf({ csl, span: item, keySpan, orcids }));
  });
  return { sources, findings: found.all() };
}

function parsed(
  text: string,
): { readonly value: unknown } | { readonly message: string; readonly at: number } {
  try {
    return { value: JSON.parse(text) };
  } catch (error) {
    const message = error instanceof Error ? error.message : "";
    const at = /position (\d+)/.exec(message)?.[1];
    return {
      message: (message.split(/ in JSON|, "/)[0] ?? message).slice(0, 120),
      at: at === undefined ? 0 : Number(at),
    };
  }
}

/** The places of the items and of their ids: JSON is YAML, whose parser keeps them. */
function placesOf(file: SourceFile, bare: boolean): readonly { readonly item: Span; readonly key: Span }[] {
  const document = parseDocument(file.text.replace(/^\uFEFF/, " "), {
    schema: "failsafe",
    uniqueKeys: false,
    prettyErrors: false,
  });
  const root = document.contents;
  const list = bare ? root : isMap(root) ? root.get("items", true) : null;
  if (!isSeq(list)) return [];
  const span = (range: readonly number[] | null | undefined): Span => ({
    file: file.path,
    start: range?.[0] ?? 0,
    end: range?.[1] ?? 0,
  });
  return list.items.map((item) => {
    if (!isMap(item)) return { item: span(isScalar(item) ? item.range : null), key: span(null) };
    const id = item.get("id", true);
    return { item: span(item.range), key: span(isScalar(id) ? id.range : item.range) };
  });
}
