import { CST, Parser } from "yaml";
import type { Part, Site, Style } from "./site.ts";

/** The sites of a file: that of its one value, null where it has none. */
export interface Sites {
  readonly root: Site | null;
  /** Where the document's own lines end: before a line of three points, or at the end of the text. */
  readonly end: number;
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** What the tokens of one file have said so far. */
interface Reading {
  readonly anchors: Map<string, Site>;
}

const scalarStyles: Readonly<Record<string, Style>> = {
  scalar: "plain",
  "single-quoted-scalar": "single",
  "double-quoted-scalar": "double",
};

/** Finds every value of a YAML text by its tokens; the text must be one that can be read. */
export function sitesIn(text: string): Sites {
  const reading: Reading = { anchors: new Map() };
  let root: Site | null = null;
  let end = text.length;
  for (const token of new Parser().parse(text)) {
    if (token.type === "doc-end") end = Math.min(end, token.offset);
    if (token.type !== "document" || root !== null || !token.value) continue;
    root = siteOf(token.value, token.start, reading);
  }
  return { root, end };
}

function siteOf(
  token: CST.Token | null | undefined,
  before: readonly CST.SourceToken[],
  reading: Reading,
): Site {
  const props = before.filter(({ type }) => type === "anchor" || type === "tag");
  const anchor = props.find(({ type }) => type === "anchor") ?? null;
  const site = token
    ? bare(token, reading, anchor)
    : nothing(lastOf(props) ?? behindIndicator(before), reading, anchor);
  site.from = Math.min(site.start, ...props.map(({ offset }) => offset));
  return site;
}

function bare(token: CST.Token, reading: Reading, anchor: CST.SourceToken | null): Mutable<Site> {
  const named = (site: Mutable<Site>): Mutable<Site> => {
    if (anchor) {
      site.anchor = anchor.source.slice(1);
      reading.anchors.set(site.anchor, site);
    }
    return site;
  };
  switch (token.type) {
    case "scalar":
    case "single-quoted-scalar":
    case "double-quoted-scalar": {
      const style = token.source === "" ? "empty" : (scalarStyles[token.type] ?? "other");
      const text = CST.resolveAsScalar(token, true)?.value ?? "";
      return named({ ...blank(style, token.offset, token.offset + token.source.length), text });
    }
    case "alias": {
      const target = reading.anchors.get(token.source.slice(1)) ?? null;
      const site = { ...blank("alias", token.offset, token.offset + token.source.length), target };
      if (target) (target.aliases as Site[]).push(site);
      return site;
    }
    case "block-scalar": {
      const head = token.props.find(({ type }) => type === "block-scalar-header");
      const sign = head && "source" in head ? head.source : "|";
      const start = head?.offset ?? token.offset;
      const from = token.props.reduce((sum, prop) => sum + lengthOf(prop), token.offset);
      const own = token.source.replace(/\r?\n$/u, "").length;
      const end = token.source === "" ? from - lengthOf(token.props.at(-1) ?? token) : from + own;
      const text = CST.resolveAsScalar(token, true)?.value ?? "";
      const site = blank(sign.startsWith(">") ? "folded" : "literal", start, end);
      return named({ ...site, text, headEnd: start + sign.length });
    }
    case "flow-collection":
      return inBrackets(token, reading, named);
    case "block-map":
    case "block-seq":
      return overLines(token, reading, named);
    default:
      return blank("other", token.offset, token.offset);
  }
}

function overLines(
  token: CST.BlockMap | CST.BlockSequence,
  reading: Reading,
  named: (site: Mutable<Site>) => Mutable<Site>,
): Mutable<Site> {
  const isMap = token.type === "block-map";
  const parts: Part[] = [];
  const site = named({ ...blank(isMap ? "block map" : "block list", token.offset, token.offset), parts });
  for (const item of token.items) {
    const sign = item.start.find(({ type }) => type === "seq-item-ind" || type === "explicit-key-ind");
    const key = "key" in item ? (item.key ?? null) : null;
    if (!sign && !key) continue;
    const sep = isMap ? (item.sep ?? []) : item.start;
    const colon = isMap ? sep.find(({ type }) => type === "map-value-ind") : sign;
    const keyEnd = key ? offsetBehind(key) : (sign?.offset ?? token.offset) + 1;
    const value = siteOf(item.value, colon ? sep.slice(sep.indexOf(colon)) : sep, reading);
    parts.push({
      key: isMap ? wordOf(key) : null,
      from: sign?.offset ?? firstOf(item.start, key),
      at: colon ? colon.offset + 1 : keyEnd,
      value,
      commaBefore: null,
      commaAfter: null,
    });
  }
  const last = parts.at(-1);
  site.end = last ? Math.max(last.value.end, last.at) : token.offset;
  return site;
}

function inBrackets(
  token: CST.FlowCollection,
  reading: Reading,
  named: (site: Mutable<Site>) => Mutable<Site>,
): Mutable<Site> {
  const isMap = token.start.type === "flow-map-start";
  const parts: Mutable<Part>[] = [];
  const site = named({ ...blank(isMap ? "flow map" : "flow list", token.offset, token.offset), parts });
  for (const item of token.items) {
    const comma = item.start.find(({ type }) => type === "comma")?.offset ?? null;
    const last = parts.at(-1);
    if (last && comma !== null) last.commaAfter = comma;
    const key = item.key ?? null;
    if (!key && !item.value && !item.sep) continue;
    const sep = item.sep ?? [];
    const colon = sep.find(({ type }) => type === "map-value-ind");
    const from = firstOf(item.start, key ?? item.value ?? null);
    const pair = !isMap && (key !== null || item.sep !== undefined);
    const value = pair
      ? { ...blank("other", from, item.value ? offsetBehind(item.value) : from) }
      : siteOf(item.value, colon ? sep.slice(sep.indexOf(colon)) : isMap ? sep : item.start, reading);
    parts.push({
      key: isMap ? wordOf(key) : null,
      from,
      at: colon ? colon.offset + 1 : key ? offsetBehind(key) : from,
      value,
      commaBefore: comma,
      commaAfter: null,
    });
  }
  const closing = token.end.find(({ type }) => type === "flow-map-end" || type === "flow-seq-end");
  site.end = (closing?.offset ?? token.offset) + 1;
  return site;
}

function blank(style: Style, start: number, end: number): Mutable<Site> {
  return {
    style,
    start,
    end,
    from: start,
    anchor: null,
    text: "",
    headEnd: start,
    parts: [],
    target: null,
    aliases: [],
  };
}

function nothing(at: number, reading: Reading, anchor: CST.SourceToken | null): Mutable<Site> {
  const site = blank("empty", at, at);
  if (anchor) {
    site.anchor = anchor.source.slice(1);
    reading.anchors.set(site.anchor, site);
  }
  return site;
}

/** The text of a key that is a word; null for another. */
function wordOf(key: CST.Token | null): string | null {
  if (!key || !CST.isScalar(key) || key.type === "alias") return null;
  return CST.resolveAsScalar(key, true)?.value ?? null;
}

function behindIndicator(tokens: readonly CST.SourceToken[]): number {
  const sign = tokens.find(({ type }) => type === "map-value-ind" || type === "seq-item-ind");
  return sign ? sign.offset + 1 : (tokens[0]?.offset ?? 0);
}

function lastOf(tokens: readonly CST.SourceToken[]): number | null {
  const last = tokens.at(-1);
  return last ? last.offset + last.source.length : null;
}

function firstOf(start: readonly CST.SourceToken[], token: CST.Token | null): number {
  const prop = start.find(({ type }) => type === "anchor" || type === "tag" || type === "explicit-key-ind");
  return prop?.offset ?? token?.offset ?? lastOf(start) ?? 0;
}

function offsetBehind(token: CST.Token): number {
  return token.offset + lengthOf(token);
}

function lengthOf(token: CST.Token): number {
  return "source" in token ? token.source.length : 0;
}
