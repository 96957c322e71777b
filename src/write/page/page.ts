import { escaped } from "../../base/text/steering.ts";
import { sha256 } from "@noble/hashes/sha2.js";
import { utf8ToBytes } from "@noble/hashes/utils.js";
import { inEnglish } from "../../base/text/said/english.ts";
import { yearWords } from "../../base/date/year-words.ts";
import type { Id } from "../../base/finding.ts";
import { directionOf } from "../telling/set/direction.ts";
import { base64 } from "../visit/base64.ts";
import { findingsHtml, frontHtml, kindHtml } from "./front.ts";
import { isolated, toSheet, words } from "./paper.ts";
import type { Paper } from "./paper.ts";
import { questionHtml } from "./question.ts";
import { script } from "./script.ts";
import { sheetHtml } from "./sheets/sheet.ts";
import { style } from "./style.ts";
import { kindWords } from "./words.ts";

/**
 * The dispute as one page that needs nothing else: without its script one long text, with it pages, a year to look from,
 * and a search. Nothing but that script runs in it, and it fetches nothing. `faces` are style rules that hold its fonts.
 */
export function disputePage(paper: Paper, body: string, faces: string): string {
  const { title, language } = paper.dispute;
  const look = `${faces}\n${style}`;
  const policy = [
    "default-src 'none'",
    `script-src '${hashed(script)}'`,
    `style-src '${hashed(look)}'`,
    "img-src data:",
    "font-src data:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  return [
    "<!doctype html>",
    `<html lang="en" dir="${directionOf(language)}">`,
    "<head>",
    `<meta charset="utf-8">`,
    `<meta http-equiv="Content-Security-Policy" content="${escaped(policy)}">`,
    `<meta name="viewport" content="width=device-width, initial-scale=1">`,
    `<title>${escaped(title)}</title>`,
    `<style>${look}</style>`,
    "</head>",
    "<body>",
    body,
    `<script type="application/json" id="course">${courseOf(paper)}</script>`,
    `<script>${script}</script>`,
    "</body>",
    "</html>",
    "",
  ].join("\n");
}

/** All that is to be read on the page. */
export function disputeHtml(paper: Paper): string {
  return [
    lines,
    `<a class="skip" href="#main">To the text</a>`,
    sideHtml(paper),
    `<main id="main" tabindex="-1">`,
    `<p id="notice" role="status" hidden></p>`,
    `<section id="found" hidden><h2 tabindex="-1">Found</h2><p class="quiet" id="count" role="status"></p><ul class="index"></ul></section>`,
    ...sectionsOf(paper),
    "</main>",
  ].join("\n");
}

/** The four lines by which a standing is told, drawn once. */
const lines = `<svg width="0" height="0" class="lines" aria-hidden="true"><symbol id="line-stands" viewBox="0 0 32 12"><path d="M0 6H32" stroke="currentColor" stroke-width="4"/></symbol><symbol id="line-open" viewBox="0 0 32 12"><path d="M0 3.5H32M0 8.5H32" stroke="currentColor" stroke-width="1.8" stroke-dasharray="6.5 6"/></symbol><symbol id="line-falls" viewBox="0 0 32 12"><path d="M0 3H13L17 9H32" stroke="currentColor" stroke-width="2.5" fill="none"/></symbol><symbol id="line-unsupported" viewBox="0 0 32 12"><path d="M1 6H32" stroke="currentColor" stroke-width="2" stroke-dasharray="0.1 5.4" stroke-linecap="round"/></symbol><symbol id="line-none" viewBox="0 0 32 12"/></svg>`;

function hashed(text: string): string {
  return `sha256-${base64(sha256(utf8ToBytes(text)))}`;
}

function sectionsOf(paper: Paper): readonly string[] {
  const { questions, kinds, sheets } = paper.dispute;
  const asked = new Set(questions.map(({ id }) => id));
  const sheetsOf = (ids: readonly Id[]): readonly string[] =>
    ids.flatMap((id) => {
      const sheet = sheets.get(id);
      return sheet === undefined || asked.has(id) ? [] : [sheetHtml(paper, sheet)];
    });
  return [
    frontHtml(paper),
    ...questions.map((one) => questionHtml(paper, one)),
    findingsHtml(paper),
    ...kinds.flatMap(({ name, ids }) =>
      name === "questions" ? [] : [kindHtml(paper, name, ids), ...sheetsOf(ids)],
    ),
  ];
}

/** The way through the page; what needs the script is not to be seen without it. */
function sideHtml(paper: Paper): string {
  const { title, questions, kinds, years } = paper.dispute;
  const asked = questions.map(
    ({ id, text }) => `<li><a href="${toSheet(id)}">${words(paper, text)}</a></li>`,
  );
  const listed = kinds
    .filter(({ name }) => name !== "questions")
    .map(
      ({ name, ids }) =>
        `<li><a href="#${name}">${kindWords[name] ?? name}</a> <span class="count">${ids.length}</span></li>`,
    );
  const options = years.map(
    (year, at) =>
      `<option value="${at}"${at === years.length - 1 ? " selected" : ""}>${year === null ? "all years" : escaped(inEnglish(yearWords(year)))}</option>`,
  );
  return [
    `<header class="side">`,
    `<p class="title"><a href="#dispute">${words(paper, title)}</a></p>`,
    `<form id="tools" hidden role="search"><label for="words">Search</label><input id="words" type="search" autocomplete="off" spellcheck="false" dir="auto">`,
    `<label for="year">Year</label><div class="years"><button type="button" id="earlier" aria-label="Earlier year">earlier</button><select id="year">${options.join("")}</select><button type="button" id="later" aria-label="Later year">later</button></div></form>`,
    `<nav aria-label="Contents"><ul class="asked">${asked.join("\n")}</ul><ul>${listed.join("\n")}<li><a href="#findings">Findings</a></li></ul></nav>`,
    `</header>`,
  ].join("\n");
}

const letters = { later: "-", there: "n", stands: "s", open: "o", falls: "f", unsupported: "u" } as const;

/** Every record through the years: a letter for each; and each sentence on it with the place from which on it is said. */
function courseOf({ dispute, places }: Paper): string {
  const sentences = new Map<string, number>();
  const numbered = (said: string): number => {
    const known = sentences.get(said) ?? sentences.size;
    sentences.set(said, known);
    return known;
  };
  const course: string[] = [];
  const said: Record<number, (readonly [number, number])[]> = {};
  for (const [id, place] of places) {
    const one = dispute.courses.get(id);
    course[place] = (one?.presence ?? []).map((is) => letters[is]).join("");
    const texts = one?.said ?? [];
    const turns = texts.flatMap((text, at) =>
      at === 0 || texts[at - 1] !== text ? [[at, numbered(text)] as const] : [],
    );
    if (texts.some((text) => text !== "")) said[place] = turns;
  }
  const years = dispute.years.map((year) => (year === null ? null : [year, inEnglish(yearWords(year))]));
  return JSON.stringify({ years, course, said, sentences: [...sentences.keys()].map(isolated) }).replace(
    /</g,
    "\\u003c",
  );
}
