import { escaped } from "../../base/text/steering.ts";
import type { Id } from "../../base/finding.ts";
import { inEnglish } from "../../base/text/said/english.ts";
import type { Text } from "../../base/text/said/said.ts";
import type { Piece } from "../../show/pages/pieces.ts";
import type { Presence } from "../../show/telling/page/course.ts";
import type { Dispute } from "../../show/telling/page/dispute.ts";
import { directionOf, directionOfLine } from "../telling/set/direction.ts";

/** What every part of the page is written with: the dispute, and the number of each record that has a sheet. */
export interface Paper {
  readonly dispute: Dispute;
  readonly places: ReadonlyMap<Id, number>;
  /** The reference of a source in the corpus's style, as HTML. */
  readonly references: ReadonlyMap<Id, string>;
  /** Published pictures by their record, as `data:` addresses. */
  readonly pictures: ReadonlyMap<Id, PagePicture>;
  /** Draws the figure of a number as inline SVG; empty where it has none. */
  readonly figureOf: (id: Id) => string;
}

/** A picture taken into the page. */
export interface PagePicture {
  readonly address: string;
  readonly width: number;
  readonly height: number;
}

/** The name of a record's sheet within the page. */
export const anchorOf = (id: Id): string => `r-${id.replace(/\s/g, "_")}`;

/** The address of a record's sheet within the page. */
export const toSheet = (id: Id): string => `#${encodeURIComponent(anchorOf(id))}`;

/** Letters that are written from right to left, with what stands between two of them. */
const fromRight =
  /[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}](?:[\p{M}\s]*[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}\p{M}])*/gu;

/** A line of words that run from the left, in which those from the right keep to themselves (Unicode UAX 9, isolates). */
export function isolated(text: string): string {
  if (directionOfLine(text) === "rtl" || /[\u2066-\u2069]/.test(text)) return text;
  return text.replace(fromRight, (words) => `\u2068${words}\u2069`);
}

/** A text as HTML: with its direction and its language where they are not the page's. */
export function words({ dispute }: Paper, text: Text, lang: string | null = null): string {
  const said = inEnglish(text);
  const language = lang ?? (typeof text === "string" ? dispute.language : "en");
  const [own, around] = [directionOfLine(said), directionOf(dispute.language)];
  const bare = said.trim();
  const html = escaped(isolated(said));
  if (bare === "" || (language === "en" && own === around)) return html;
  const named = language === "en" ? "" : ` lang="${escaped(language)}"`;
  // Spaces at its ends are of the line around it.
  const [before = "", after = ""] = said.split(bare);
  return `${before}<span${named}${own === around ? "" : ` dir="${own}"`}>${escaped(isolated(bare))}</span>${after}`;
}

/** A name that leads to a record's sheet, or the name alone where it has none. */
export function link(paper: Paper, id: Id, text: Text): string {
  if (!paper.places.has(id)) return words(paper, text);
  return `<a href="${toSheet(id)}">${words(paper, text)}</a>`;
}

/** Words in a row, names of records among them leading to their sheets. */
export function pieces(paper: Paper, all: readonly Piece[]): string {
  return all
    .map((one) =>
      one.to === null
        ? words(paper, one.said ?? one.text, one.lang)
        : link(paper, one.to, one.said ?? one.text),
    )
    .join("");
}

const standings: readonly Presence[] = ["stands", "open", "falls", "unsupported"];

/** The mark of a record's standing, which changes with the year: its line, then its word; nothing for what is not judged. */
export function mark({ dispute, places }: Paper, id: Id): string {
  const place = places.get(id);
  const presence = dispute.courses.get(id)?.presence ?? [];
  if (place === undefined || !presence.some((one) => standings.includes(one))) return "";
  const last = presence.at(-1) ?? "there";
  return ` ${standing(standings.includes(last) ? last : "there", ` data-m="${place}"`)}`;
}

/** A standing as its line and its word. */
export function standing(is: Presence, more = ""): string {
  const word = standings.includes(is) ? is : "";
  const line = word === "" ? "none" : word;
  return `<span class="m ${line}"${more}><svg aria-hidden="true"><use href="#line-${line}"/></svg> <b>${word}</b></span>`;
}

/** Whatever is of a record that may not be in print yet in the year that is looked at. */
export function ofRecord({ places }: Paper, id: Id): string {
  const place = places.get(id);
  return place === undefined ? "" : ` data-r="${place}"`;
}

/** A list item that leads to a record and tells its standing; `before` says how it is tied. */
export function item(paper: Paper, id: Id, text: Text, before = ""): string {
  const how = before === "" ? "" : `<span class="how">${before}</span> `;
  return `<li${ofRecord(paper, id)}>${how}${link(paper, id, text)}${mark(paper, id)}</li>`;
}

/** A part of a sheet under a heading; nothing where it is empty. `now`: told of the last year alone. */
export function part(title: string, html: string, now = false): string {
  if (html === "") return "";
  return `<section${now ? ' class="now"' : ""}><h3>${escaped(title)}</h3>\n${html}</section>\n`;
}

/** A list; nothing where it has no items. */
export function list(items: readonly string[], kind = "ties"): string {
  return items.length === 0 ? "" : `<ul class="${kind}">${items.join("\n")}</ul>`;
}

/** A table that may be broader than the page; cells are HTML, the first of a row names it. */
export function table(
  name: string,
  head: readonly string[],
  rows: readonly { readonly of?: string; readonly cells: readonly string[] }[],
): string {
  if (rows.length === 0) return "";
  const body = rows.map(
    ({ of = "", cells }) => `<tr${of}>${cells.map((cell, at) => cellOf(cell, at)).join("")}</tr>`,
  );
  const columns = head.map((one) => `<th scope="col">${escaped(one)}</th>`).join("");
  return `<div class="table" role="region" tabindex="0" aria-label="${escaped(name)}"><table><thead><tr>${columns}</tr></thead><tbody>${body.join("\n")}</tbody></table></div>`;
}

function cellOf(cell: string, at: number): string {
  return at === 0 ? `<th scope="row">${cell}</th>` : `<td>${cell}</td>`;
}
