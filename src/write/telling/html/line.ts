import { wayOfLine } from "../set/direction.ts";
import { stretchesOf } from "../set/stretches.ts";
import type { Stretch } from "../set/stretches.ts";
import type { SetInlines } from "../set/set-text.ts";
import { escaped } from "../../../base/text/steering.ts";
import { standingLine } from "./standing.ts";

/** A line as HTML; `linked` false leaves links out, where a line stands in a link itself. */
export function lineHtml(of: SetInlines, linked = true): string {
  return stretchesOf(of)
    .map((one) => stretchHtml(one, linked))
    .join("");
}

/** The attribute that says which way a line runs. */
export function wayOf(of: SetInlines): string {
  return ` dir="${wayOfLine(of)}"`;
}

function stretchHtml(one: Stretch, linked: boolean): string {
  if (one.note > 0) {
    const call = `<a id="call-${one.note}" href="#note-${one.note}" role="doc-noteref">${one.note}</a>`;
    return linked ? `<sup>${call}</sup>` : "";
  }
  const inner = lookHtml(one, wordsHtml(one));
  if (!linked) return inner;
  const run = one.run === null ? "" : ` data-run="${escaped(one.run)}"`;
  if (one.to !== null)
    return `<a${one.as === "number" ? ' class="number"' : ""} href="#${escaped(one.to)}"${run}>${inner}</a>`;
  return one.href === null ? inner : `<a href="${escaped(one.href)}" rel="noreferrer">${inner}</a>`;
}

function wordsHtml({ as, text, lang, run, to }: Stretch): string {
  const words = escaped(text);
  switch (as) {
    case "words": {
      const language = lang === null ? "" : ` lang="${escaped(lang)}"`;
      return `<bdi${language}>${words}</bdi>`;
    }
    case "number":
      return to === null ? `<span class="number" data-run="${escaped(run ?? "")}">${words}</span>` : words;
    case "stands":
    case "open":
    case "falls":
    case "unsupported":
      return `<span class="standing ${as}">${standingLine(as)}${words}</span>`;
    case "text":
      return lang === null ? words : `<span lang="${escaped(lang)}">${words}</span>`;
    case "note":
      return words;
  }
}

function lookHtml({ italic, bold, smallCaps, underlined, raised }: Stretch, inner: string): string {
  let html = inner;
  if (raised !== undefined) html = raised === "above" ? `<sup>${html}</sup>` : `<sub>${html}</sub>`;
  if (smallCaps) html = `<span class="small-caps">${html}</span>`;
  if (underlined) html = `<u>${html}</u>`;
  if (bold) html = `<strong>${html}</strong>`;
  return italic ? `<em>${html}</em>` : html;
}
