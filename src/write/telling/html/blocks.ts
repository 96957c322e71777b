import { inEnglish } from "../../../base/text/said/english.ts";
import { base64 } from "../../visit/base64.ts";
import type { Drawn, DrawnPlates } from "../drawn.ts";
import type { SetBlock, SetEntry, SetHeading, SetInlines, SetPlate, SetTable } from "../set/set-text.ts";
import { escaped } from "../../../base/text/steering.ts";
import { lineHtml, wayOf } from "./line.ts";

/** A block as HTML. */
export function blockHtml(block: SetBlock, drawn: DrawnPlates): string {
  switch (block.is) {
    case "heading": {
      const level = block.level + 1;
      const apart = block.apart ? ' class="apart"' : "";
      return `<h${level} id="${escaped(block.anchor)}"${apart}${wayOf(block.of)}>${lineHtml(block.of)}</h${level}>`;
    }
    case "paragraph":
      return paragraph(block.of);
    case "quotation":
      return `<blockquote>${paragraph(block.of)}</blockquote>`;
    case "caution":
      return `<p class="caution"${wayOf(block.of)}><strong>Caution:</strong> ${lineHtml(block.of)}</p>`;
    case "list": {
      const element = block.ordered ? "ol" : "ul";
      return `<${element}>${block.items.map((one) => `<li${wayOf(one)}>${lineHtml(one)}</li>`).join("")}</${element}>`;
    }
    case "terms":
      return `<dl>${block.rows.map(([name, value]) => `<div><dt${wayOf(name)}>${lineHtml(name)}</dt><dd${wayOf(value)}>${lineHtml(value)}</dd></div>`).join("")}</dl>`;
    case "table":
      return tableHtml(block);
    case "plate":
      return plateHtml(block, drawn.get(block.number));
    case "contents":
      return contentsHtml(block.entries);
    case "references":
      return `<ul class="references">${block.entries.map(entryHtml).join("")}</ul>`;
    case "computations":
      return `<ul class="computations">${block.entries.map(({ anchor, title, method, key }) => `<li id="${escaped(anchor)}" dir="auto"><span>${escaped(inEnglish(title))}</span>, ${escaped(method)}<br><code dir="ltr">${escaped(key)}</code></li>`).join("")}</ul>`;
    case "room":
      return `<div class="room">${"<div></div>".repeat(block.lines)}</div>`;
  }
}

function entryHtml({ runs, lang }: SetEntry): string {
  const of: SetInlines = [{ is: "runs", runs }];
  return `<li${wayOf(of)}${lang === null ? "" : ` lang="${escaped(lang)}"`}>${lineHtml(of)}</li>`;
}

/** A line as a paragraph. */
export function paragraph(of: SetInlines): string {
  return `<p${wayOf(of)}>${lineHtml(of)}</p>`;
}

/** A table that may be broader than the page: it is then moved under it, by keys too. */
function tableHtml({ number, anchor, caption, head, rows, figures }: SetTable): string {
  const figure = (place: number): string => (figures.includes(place) ? ' class="figure"' : "");
  const columns = head.map(
    (one, place) => `<th scope="col"${wayOf(one)}${figure(place)}>${lineHtml(one)}</th>`,
  );
  const cell = (one: SetInlines, place: number): string =>
    place === 0 && !figures.includes(0)
      ? `<th scope="row"${wayOf(one)}>${lineHtml(one)}</th>`
      : `<td${wayOf(one)}${figure(place)}>${lineHtml(one)}</td>`;
  const body = rows.map((row) => `<tr>${row.map(cell).join("")}</tr>`);
  return [
    `<div class="table" id="${anchor}" role="region" tabindex="0" aria-label="Table ${number}">`,
    `<table><caption${wayOf(caption)}><b>Table ${number}.</b> ${lineHtml(caption)}</caption>`,
    `<thead><tr>${columns.join("")}</tr></thead>`,
    `<tbody>${body.join("\n")}</tbody></table></div>`,
  ].join("\n");
}

/** A picture stands by itself in the page: what it is drawn with has no effect on the rest. */
function plateHtml({ number, anchor, caption, alt }: SetPlate, drawn: Drawn | undefined): string {
  const words = `<figcaption${wayOf(caption)}><b>Figure ${number}.</b> ${lineHtml(caption)}</figcaption>`;
  const shows = escaped(inEnglish(alt));
  const address = drawn ? addressOf(drawn) : null;
  const picture =
    drawn === undefined || address === null
      ? `<p class="unseen" dir="auto">${shows}</p>`
      : `<img src="${address}" alt="${shows}" width="${pixels(drawn.width)}" height="${pixels(drawn.height)}">`;
  return `<figure id="${anchor}">${picture}${words}</figure>`;
}

function addressOf({ svg, raster }: Drawn): string | null {
  if (svg !== null) return `data:image/svg+xml,${escaped(svg.replace(/[%#]/g, encodeURIComponent))}`;
  return raster === null ? null : `data:image/${raster.type};base64,${base64(raster.bytes)}`;
}

/** Millimetres as the pixels of style sheets, 96 to the inch. */
const pixels = (millimetres: number): number => Math.round((millimetres / 25.4) * 96);

function contentsHtml(entries: readonly SetHeading[]): string {
  const items = entries.map(
    ({ level, of, anchor }) =>
      `<li class="level-${level}"><a href="#${escaped(anchor)}">${lineHtml(of, false)}</a></li>`,
  );
  return `<nav aria-label="Contents"><ul class="contents">${items.join("")}</ul></nav>`;
}
