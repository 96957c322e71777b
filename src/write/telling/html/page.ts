import { sha256 } from "@noble/hashes/sha2.js";
import { utf8ToBytes } from "@noble/hashes/utils.js";
import { inEnglish } from "../../../base/text/said/english.ts";
import { base64 } from "../../visit/base64.ts";
import type { DrawnPlates } from "../drawn.ts";
import { directionOf } from "../set/direction.ts";
import type { SetText } from "../set/set-text.ts";
import { blockHtml } from "./blocks.ts";
import { escaped } from "../../../base/text/steering.ts";
import { lineHtml, wayOf } from "./line.ts";
import { style } from "./style.ts";

/** A text as one page that needs nothing else: its figures and its style are in it, and nothing in it runs. */
export function textPage(set: SetText, drawn: DrawnPlates): string {
  const title = escaped(inEnglish(set.title));
  const policy = [
    "default-src 'none'",
    "img-src data:",
    `style-src 'sha256-${base64(sha256(utf8ToBytes(style)))}'`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  return [
    "<!doctype html>",
    `<html lang="${escaped(set.language)}" dir="${directionOf(set.language)}">`,
    "<head>",
    `<meta charset="utf-8">`,
    `<meta http-equiv="Content-Security-Policy" content="${escaped(policy)}">`,
    `<meta name="viewport" content="width=device-width, initial-scale=1">`,
    `<title>${title}</title>`,
    `<style>${style}</style>`,
    "</head>",
    "<body>",
    "<main>",
    `<header><h1 dir="auto">${title}</h1>${set.authors.length > 0 ? `<p class="authors" dir="auto">${escaped(set.authors.join(", "))}</p>` : ""}</header>`,
    ...set.blocks.map((block) => blockHtml(block, drawn)),
    ...notesHtml(set),
    "</main>",
    "</body>",
    "</html>",
    "",
  ].join("\n");
}

function notesHtml({ notes }: SetText): readonly string[] {
  if (notes.length === 0) return [];
  const items = notes.map((note, place) => {
    const back = `<a href="#call-${place + 1}" role="doc-backlink" aria-label="Back to where note ${place + 1} is called">↑</a>`;
    return `<li id="note-${place + 1}"${wayOf(note)}>${lineHtml(note)} ${back}</li>`;
  });
  return [`<section class="notes" role="doc-endnotes" aria-label="Notes"><ol>`, ...items, "</ol></section>"];
}
