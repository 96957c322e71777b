import type { Desk } from "../change/desk.ts";
import type { ListName } from "../../grammar/field.ts";
import { listNames } from "../../grammar/kinds.ts";
import { lineEnd, lineEndAt, lineStart } from "../hand/lines.ts";
import { endOf } from "../site/site.ts";
import type { Part } from "../site/site.ts";
import type { Sites } from "../site/sites.ts";
import { commentsAbove, isParted, pastComments } from "./own-lines.ts";

/**
 * Puts a list into a file that has none of that name: where the manual's order gives it a place between lists that
 * follow that order, else at the end of the file.
 */
export function addList(
  desk: Desk,
  sites: Sites,
  head: string,
  list: ListName,
  body: readonly string[],
): void {
  const { text, put } = desk;
  const lines = [head, ...body];
  const parts = sites.root?.parts ?? [];
  const parted = desk.manner.piecewise && isParted(text, parts, true);
  const { after, before } = neighbours(parts, list);
  if (after && before) {
    const at = pastComments(text, lineEnd(text, endOf(after)), 1);
    const mark = lineEndAt(text, at);
    return put(at, at, (parted ? mark : "") + lines.map((line) => mark + line).join(""));
  }
  if (before && commentsAbove(text, lineStart(text, before.from), 0) === lineStart(text, before.from)) {
    const mark = lineEndAt(text, before.from);
    return put(before.from, before.from, lines.map((line) => line + mark).join("") + (parted ? mark : ""));
  }
  atEnd(desk, sites, lines, parted);
}

/** Puts lines at the end of a file: behind all that stands there, before blank lines and a line of three points. */
export function atEnd(
  { text, put }: Desk,
  { root, end }: Sites,
  lines: readonly string[],
  parted: boolean,
): void {
  const written = Math.max(text.slice(0, end).replace(/[ \t\r\n]+$/u, "").length, root?.end ?? 0);
  const bare = text.slice(0, written).replace(/^\ufeff/u, "") === "";
  const at = bare ? written : lineEnd(text, written);
  const mark = lineEndAt(text, at);
  if (bare) return put(at, at, lines.map((line) => line + mark).join(""));
  put(at, at, (parted ? mark : "") + lines.map((line) => mark + line).join(""));
}

/** Between what a list would stand by the manual's order; nothing where the file's lists do not follow it. */
function neighbours(
  parts: readonly Part[],
  list: ListName,
): { readonly after: Part | null; readonly before: Part | null } {
  const rank = (part: Part): number => listNames.findIndex((name) => name === part.key);
  const own = listNames.indexOf(list);
  const lists = parts.filter((part) => rank(part) >= 0);
  const ordered = lists.every((part, place) => place === 0 || rank(part) > rank(lists[place - 1] ?? part));
  if (!ordered) return { after: null, before: null };
  const before = lists.find((part) => rank(part) > own) ?? null;
  const after = before ? (parts[parts.indexOf(before) - 1] ?? null) : null;
  return { after, before };
}
